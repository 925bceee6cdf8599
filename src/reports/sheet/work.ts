import { judgingWindow } from '../../process/processWindows.js';
import { orderOfWork } from '../../process/index.js';
import { Decimal } from '../../numbers/index.js';
import { mapEnds, type Temperature } from '../../quantities/index.js';
import { clearSteps, restSteps } from './clearSteps.js';
import { cautionsAt } from './placedCautions.js';
import type { Sheet } from './sheetBatch.js';
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
      ...(place === undefined ? [] : cautionsAt(place, sheet.cautions).map((text) => `   - ${text}`)),
    ]),
  ];
}

const isSolid = ({ pot }: Sheet): boolean => pot.soap.lye.some(({ source }) => source.state === 'solid');
const isDiluted = ({ batch }: Sheet): boolean => batch.weigh.some(({ kind }) => kind === 'water');

function lyeStep(sheet: Sheet): SheetStep {
  const { batch, write } = sheet;
  const strength = `${write.number(batch.lye.strength.likely.percent, 1)} % by mass`;
  const cool = write.temperature(batch.heat.reaction.given.start.lye);
  const hasLye = sheet.pot.soap.lye.some(({ source }) => source.state === 'solution');
  const does = !isDiluted(sheet)
    ? isSolid(sheet)
      ? `The recipe gives solid alkali no water of its own (${strength}): do not melt it into fat; plan water for it first.`
      : `It is used as it stands in the store, ${strength}, at ${cool}.`
    : isSolid(sheet)
      ? `Dissolve the solid alkali in the water, a little at a time${hasLye ? ', then stir in the lye' : ''}: ${strength} when all is clear. Let it cool to ${cool}.`
      : `Stir the lye into the water: ${strength}. Let it cool to ${cool}.`;
  return { title: 'Lye', does, cautions: 'lye' };
}

function fatsStep(sheet: Sheet): SheetStep {
  const { pot } = sheet.batch.heat.reaction.given.start;
  return {
    title: 'Fats',
    does: `Melt them together, stirred, until all is liquid; then bring them to ${sheet.write.temperature(pot)}, or as low as they stay liquid. Pot at most a third full.`,
    cautions: 'fats',
  };
}

function saponifyStep(sheet: Sheet): SheetStep {
  const { batch } = sheet;
  const usual = ceiling('saponification-usual', sheet);
  const tolerable = ceiling('saponification-tolerable', sheet);
  const { reaction, portions } = batch.heat;
  return {
    title: 'Lye into the fats',
    does: `${portions === undefined ? 'In small portions' : portionsText(sheet, portions)}, stirred; wait after each until the pot has risen and falls again by itself${portions === undefined ? '' : ', and cool it back to its start'}. All at once would likely bring it to ${sheet.write.temperature(whole(reaction.final.likely))}. Keep below ${usual}; to ${tolerable} is tolerable, hotter darkens.`,
    cautions: 'saponify',
  };
}

/** An estimate to the degree. */
const whole = ({ celsius }: Temperature): Temperature => ({ celsius: celsius.toDecimalPlaces(0) });

function portionsText({ write }: Sheet, { portions }: NonNullable<Sheet['batch']['heat']['portions']>): string {
  const masses = portions.map(({ mass }) => mass.g);
  const each = { low: Decimal.min(...masses), likely: Decimal.max(...masses), high: Decimal.max(...masses) };
  const size = write.massSpan(mapEnds(each, (g) => ({ g })));
  return portions.length === 1 ? `In one portion of ${size}` : `In ${String(portions.length)} portions of ${size}`;
}

function testStep(): SheetStep {
  const holds = orderOfWork().find(({ id }) => id === 'finish-saponification')?.holds ?? [];
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

function potStep({ batch, write }: Sheet): SheetStep {
  const { mass, gone } = batch.composition;
  const lost = gone.water.likely.g.plus(gone.spirit.likely.g);
  const planned = lost.isZero()
    ? 'nothing is planned to evaporate'
    : `${write.mass({ g: lost })} are planned to have evaporated`;
  const less = batch.composition.components.ethanol.mass.high.g
    .plus(batch.composition.components.isopropanol.mass.high.g)
    .isZero()
    ? 'If it is less, make it good with hot water.'
    : 'If it is less, water or spirit is missing: which, the scale cannot tell.';
  return {
    title: 'Weigh the pot',
    does: `Without the pot itself it should be ${write.mass(mass.likely)}; ${planned}. ${less}`,
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
      : ` Set out ${moulds.setOut.toString()} moulds of ${write.volume(moulds.each.volume)}; ${moulds.filled.toString()} are sure to be full.`;
  const most = moulds?.tooMuch?.high;
  const over =
    most === undefined || most.mL.isZero() ? '' : ` The moulds there are may fall short by ${write.volume(most)}.`;
  return {
    title: 'Pour',
    does: `Cool to ${write.temperature(pourAt)}; the trade pours at ${write.temperatureSpan(from, to)}.${set}${over} Test a set bar before any of it touches skin.`,
    cautions: 'pour',
  };
}
