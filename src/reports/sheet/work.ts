import { STRONGER_THAN_DISSOLVES } from '../../lye/cautions.js';
import { judgingWindow } from '../../process/processWindows.js';
import { orderOfWork } from '../../process/index.js';
import { Decimal } from '../../numbers/index.js';
import { mapEnds, type Temperature } from '../../quantities/index.js';
import { escaped } from '../markdown.js';
import { clearSteps, restSteps } from './clearSteps.js';
import { cautionsAt } from './placedCautions.js';
import { finished, hasNamedSpirit, hidesAlkali, isPotash, type Sheet } from './sheet.js';
import { ceiling, type SheetStep } from './sheetStep.js';

/** The order of the work, numbered, each caution at the step it belongs to. */
export function work(sheet: Sheet): readonly string[] {
  const steps = [
    lyeStep(sheet),
    fatsStep(sheet),
    saponifyStep(sheet),
    testStep(),
    ...clearSteps(sheet),
    ...restSteps(sheet),
    potStep(sheet),
    pourStep(sheet),
  ];
  return [
    '## Work',
    '',
    ...steps.flatMap(({ title, does, cautions: place }, at) => [
      `${String(at + 1)}. **${title}.** ${does}`,
      ...cautionsAt(place, sheet.cautions).map((text) => `   - ${text}`),
    ]),
  ];
}

const isSolid = ({ pot }: Sheet): boolean => pot.soap.lye.some(({ source }) => source.state === 'solid');
const isDiluted = ({ batch }: Sheet): boolean => batch.weigh.some(({ kind }) => kind === 'water');
/** Whether solid alkali would stay solid: nobody is to be told how to pour that. */
const staysSolid = (sheet: Sheet): boolean =>
  isSolid(sheet) && (!isDiluted(sheet) || sheet.cautions.includes(STRONGER_THAN_DISSOLVES));

function lyeStep(sheet: Sheet): SheetStep {
  return { title: 'Lye', does: madeLye(sheet), cautions: 'lye' };
}

function madeLye(sheet: Sheet): string {
  const { batch, write, pot } = sheet;
  const strength = `${write.number(batch.lye.strength.likely.percent, 1)} % by mass`;
  const cool = write.temperature(batch.heat.reaction.given.start.lye);
  const solutions = pot.soap.lye.filter(({ source }) => source.state === 'solution').length;
  const lyes = solutions > 1 ? 'lyes' : 'lye';
  if (staysSolid(sheet)) {
    return isDiluted(sheet)
      ? `The recipe gives the solid alkali too little water (${strength}): plan more before anything is weighed.`
      : `The recipe gives solid alkali no water of its own (${strength}): do not melt it into fat; plan water for it first.`;
  }
  if (isSolid(sheet)) {
    return `Dissolve the solid alkali in the water, a little at a time${solutions > 0 ? `, then stir in the ${lyes}` : ''}: ${strength} when all is clear. Let it cool to ${cool}.`;
  }
  if (isDiluted(sheet)) return `Stir the ${lyes} into the water: ${strength}. Let it cool to ${cool}.`;
  return solutions > 1
    ? `Mix the lyes as they stand in the store: ${strength} together, at ${cool}.`
    : `It is used as it stands in the store, ${strength}, at ${cool}.`;
}

function fatsStep(sheet: Sheet): SheetStep {
  const { pot } = sheet.batch.heat.reaction.given.start;
  return {
    title: 'Fats',
    does: `Melt them together, stirred, until all is liquid; then bring them to ${sheet.write.temperature(pot)}, or as low as they stay liquid. Fats and lye are to fill the pot to a third at most.`,
    cautions: 'fats',
  };
}

function saponifyStep(sheet: Sheet): SheetStep {
  return {
    title: 'Lye into the fats',
    does: staysSolid(sheet) ? 'Not as it is planned here: the lye stays partly solid.' : pouredLye(sheet),
    cautions: 'saponify',
  };
}

function pouredLye(sheet: Sheet): string {
  const { batch, write } = sheet;
  const usual = ceiling('saponification-usual', sheet);
  const tolerable = ceiling('saponification-tolerable', sheet);
  const { reaction, portions, notes } = batch.heat;
  const start = write.temperature(reaction.given.start.pot);
  const { likely, high } = reaction.final;
  const [parted, between] =
    portions === undefined
      ? ['In small portions', '']
      : [portionsText(sheet, portions), `, and cool it back to ${start}: warmer, they are too large`];
  const why = notes
    .flatMap(({ code, text }) => (code === 'lye-cannot-be-parted' ? [` ${escaped(text)}`] : []))
    .join('');
  return `${parted}, stirred; wait after each until the pot has risen and falls again by itself${between}.${why} Stop if it cannot be stirred: no more lye until it can. All at once would likely bring it to ${write.temperature(whole(likely))}, at the most to ${write.temperature(whole(high))}. Keep below ${usual}; to ${tolerable} is tolerable, hotter darkens.`;
}

/** An estimate to the degree. */
const whole = ({ celsius }: Temperature): Temperature => ({ celsius: celsius.toDecimalPlaces(0) });

function portionsText({ write }: Sheet, { portions }: NonNullable<Sheet['batch']['heat']['portions']>): string {
  const masses = portions.map(({ mass }) => mass.g);
  // written as fine as the finest of them, so that none is rounded
  const finest = masses.reduce((one, other) => (other.decimalPlaces() > one.decimalPlaces() ? other : one));
  const each = { low: Decimal.min(...masses), likely: finest, high: Decimal.max(...masses) };
  const size = write.massSpan(mapEnds(each, (g) => ({ g })));
  return portions.length === 1 ? `In one portion of ${size}` : `In ${String(portions.length)} portions of ${size}`;
}

function testStep(): SheetStep {
  const holds = orderOfWork().flatMap((step) => (step.id === 'finish-saponification' ? step.holds : []));
  const minutes = holds.flatMap(({ low, high = low }) => [low.minutes, high.minutes]);
  const printed = `${Decimal.min(...minutes).toString()} minutes to ${Decimal.max(...minutes)
    .div(60)
    .toString()} hours`;
  return {
    title: 'Hold and test',
    does: `Keep it warm and stirred until two tests of free alkali, an hour of heat apart, agree; no hold time of this route is in print, of others ${printed}. While they still fall: more heat. Two that agree above the limit: correct it by sums made for that, not by eye.`,
    cautions: 'test',
  };
}

function potStep(sheet: Sheet): SheetStep {
  const { batch, write } = sheet;
  const { mass, gone } = batch.composition;
  const lost = gone.water.likely.g.plus(gone.spirit.likely.g);
  const { ethanol, isopropanol } = batch.composition.components;
  const hasSpirit = hasNamedSpirit(sheet) || !ethanol.mass.high.g.plus(isopropanol.mass.high.g).isZero();
  const less = hasSpirit
    ? 'If it is less, water or spirit is missing: which, the scale cannot tell.'
    : 'If it is less, make it good with hot water.';
  // vapour of spirit is not to be driven into the room
  const wetter = hasSpirit
    ? 'accept a wetter base, and drive no spirit off to mend it'
    : 'keep it open, hot and stirred until it has, or accept a wetter base';
  const [planned, more] = lost.isZero()
    ? ['nothing is planned to evaporate', 'If it is more, more was weighed in than planned: find out what.']
    : [
        `${write.mass({ g: lost })} are planned to have evaporated`,
        `If it is more, less has gone as steam: ${wetter}.`,
      ];
  return {
    title: 'Weigh the pot',
    does: `Without the pot itself it should be ${write.mass(mass.likely)}; ${planned}. ${less} ${more}`,
    cautions: 'weigh-pot',
  };
}

function pourStep(sheet: Sheet): SheetStep {
  const { batch, write } = sheet;
  const { moulds, given } = batch;
  const pourAt: Temperature = given.options.pourAt;
  const { to, from = to } = judgingWindow('pouring-usual');
  const set =
    moulds === undefined
      ? ''
      : ` Set out ${moulds.setOut.toString()} ${moulds.setOut.eq(1) ? 'mould' : 'moulds'} of ${write.volume(moulds.each.volume)}; ${moulds.filled.toString()} are sure to be full.`;
  const most = moulds?.tooMuch?.high;
  const over =
    most === undefined || most.mL.isZero() ? '' : ` The moulds there are may fall short by ${write.volume(most)}.`;
  const lastTest = hidesAlkali(sheet)
    ? 'No test of the finished soap can tell what the triethanolamine hides: what was found before it went in decides whether any of it touches skin.'
    : `Test ${isPotash(sheet) ? 'the' : 'a'} ${finished(sheet)} before any of it touches skin.`;
  return {
    title: 'Pour',
    does: `Cool to ${write.temperature(pourAt)}; the trade pours at ${write.temperatureSpan(from, to)}.${set}${over} ${lastTest}`,
    cautions: 'pour',
  };
}
