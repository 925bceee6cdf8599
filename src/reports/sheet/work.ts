import type { SolventId, ChargedPot } from '../../composition/index.js';
import { DILUTING_WARMS } from '../../lye/index.js';
import { judgingWindow } from '../../process/processWindows.js';
import { orderOfWork, type JudgingWindowId } from '../../process/index.js';
import { Decimal } from '../../numbers/index.js';
import type { Temperature } from '../../quantities/index.js';
import { additionName } from './itemNames.js';
import { cautionsAt, type CautionPlace } from './placedCautions.js';
import type { Sheet } from './sheetBatch.js';

/** A step of the work: what is done, and the cautions that stand with it. */
interface SheetStep {
  readonly title: string;
  readonly does: string;
  readonly cautions?: CautionPlace;
}

/** The order of the work, numbered, each caution at the step it belongs to. */
export function work(sheet: Sheet): readonly string[] {
  const { cautions } = sheet.batch;
  // a lye that is made of a stronger one warms; what was planned from masses does not know
  const all = dilutes(sheet) ? [...cautions, DILUTING_WARMS] : cautions;
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
      ...(place === undefined ? [] : cautionsAt(place, all).map((text) => `   - ${text}`)),
    ]),
  ];
}

const ceiling = (id: JudgingWindowId, { batch, write }: Sheet): string => {
  const { to = batch.given.options.pourAt } = judgingWindow(id);
  return write.temperature(to);
};

const isSolid = ({ pot }: Sheet): boolean => pot.soap.lye.some(({ source }) => source.state === 'solid');
const isDiluted = ({ batch }: Sheet): boolean => batch.weigh.some(({ kind }) => kind === 'water');
const dilutes = (sheet: Sheet): boolean => isDiluted(sheet) && !isSolid(sheet);

function lyeStep(sheet: Sheet): SheetStep {
  const { batch, write } = sheet;
  const strength = `${write.number(batch.lye.strength.likely.percent, 1)} % by mass`;
  const hasLye = sheet.pot.soap.lye.some(({ source }) => source.state === 'solution');
  const does = !isDiluted(sheet)
    ? isSolid(sheet)
      ? `The recipe gives solid alkali no water of its own (${strength}): do not melt it into fat; plan water for it first.`
      : `It is used as it stands in the store, ${strength}.`
    : isSolid(sheet)
      ? `Dissolve the solid alkali in the water, a little at a time${hasLye ? ', then stir in the lye' : ''}: ${strength} when all is clear. Let it cool.`
      : `Stir the lye into the water: ${strength}. Let it cool.`;
  return { title: 'Lye', does, cautions: 'lye' };
}

function fatsStep(sheet: Sheet): SheetStep {
  const most = ceiling('saponification-usual', sheet);
  return {
    title: 'Fats',
    does: `Melt them together, stirred, until all is liquid; no hotter than that takes, below ${most} when the lye goes in. Pot at most a third full.`,
    cautions: 'fats',
  };
}

function saponifyStep(sheet: Sheet): SheetStep {
  const { batch } = sheet;
  const usual = ceiling('saponification-usual', sheet);
  const tolerable = ceiling('saponification-tolerable', sheet);
  const portions = batch.stagedLye === undefined ? 'in small portions, stirred' : stagedText(sheet, batch.stagedLye);
  return {
    title: 'Lye into the fats',
    does: `${upper(portions)}; wait after each until the pot has risen and falls again by itself. Keep below ${usual}; to ${tolerable} is tolerable, hotter darkens.`,
    cautions: 'saponify',
  };
}

function stagedText({ write }: Sheet, { portions, given }: NonNullable<Sheet['batch']['stagedLye']>): string {
  const [first] = portions;
  const each = first === undefined ? '' : ` of about ${write.mass(first.mass)}`;
  const start = `pot at ${write.temperature(given.start.pot)}, lye at ${write.temperature(given.start.lye)}`;
  return `in ${String(portions.length)} portions${each}, ${start}, each brought back to that before the next`;
}

const upper = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

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

/** In the order of the trade: glycerol, glycols, sorbitol and sugars, then triethanolamine; spirit last, off the heat. */
const LATE: readonly SolventId[] = ['sorbitol', 'sucrose', 'glucose', 'triethanolamine', 'ethanol', '2-propanol'];
const SPIRITS: readonly SolventId[] = ['ethanol', '2-propanol'];

function solventsInOrder({ additions }: ChargedPot): readonly ChargedPot['additions'][number][] {
  const rank = ({ holds }: ChargedPot['additions'][number]): number =>
    typeof holds === 'object' ? LATE.indexOf(holds.solvent) : -1;
  return additions.filter(({ holds }) => typeof holds === 'object').sort((a, b) => rank(a) - rank(b));
}

function clearSteps(sheet: Sheet): readonly SheetStep[] {
  const { pot, write } = sheet;
  const solvents = solventsInOrder(pot);
  if (solvents.length === 0) return [];
  const names = solvents.map((one) => additionName(one, write).toLowerCase()).join(', then ');
  const hasSpirit = solvents.some(({ holds }) => typeof holds === 'object' && SPIRITS.includes(holds.solvent));
  const spirit = hasSpirit ? ' The spirit goes in off the heat.' : '';
  const most = ceiling('clearing-usual', sheet);
  return [
    {
      title: 'Clear',
      does: `Stir in ${names}. Keep below ${most} from here on, covered, until all is one clear mass and a cooled sample stays so.${spirit}`,
      cautions: 'clear',
    },
  ];
}

function restSteps({ pot, write }: Sheet): readonly SheetStep[] {
  const rest = pot.additions.filter(({ holds }) => typeof holds !== 'object');
  if (rest.length === 0) return [];
  return [{ title: 'What else goes in', does: `Stir in ${rest.map((one) => additionName(one, write)).join(', ')}.` }];
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
  const { from = pourAt, to = from } = judgingWindow('pouring-usual');
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
