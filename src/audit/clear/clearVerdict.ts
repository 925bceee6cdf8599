import type { Alkali } from '../../lye/index.js';
import { ZERO } from '../../numbers/index.js';
import { readTemperature, unitsByKind, type Estimate, type TemperatureInput } from '../../quantities/index.js';
import { readParts } from '../../recipe/readParts.js';
import type { OwnFats } from '../../recipe/readRecipe.js';
import { WORK_STAGES } from '../../process/index.js';
import { MOST_TO_FATS } from '../checks/diluted.js';
import { MUCH } from '../checks/fatLeft.js';
import { partFindings } from '../checks/partShares.js';
import { partPoints } from '../checks/partValues.js';
import { phFinding } from '../checks/ph.js';
import { sharesAboveWholeFindings } from '../checks/sharesAboveWhole.js';
import { temperatureFindings } from '../checks/temperatures.js';
import { potOf } from '../pot.js';
import { potAddition } from '../potAdditions.js';
import { WIDEST_RATIO } from '../printed.js';
import type { Verdict } from '../verdict.js';
import { aboveOf, anyOf, not, printedFloat, type FloatPrinted, type Told } from './float64.js';
import {
  constants,
  fieldsIn,
  figureIn,
  floatPot,
  PARTS,
  quantityIn,
  type FloatFat,
  type FloatLye,
  type FloatPot,
} from './floatPot.js';
import { remembered } from './remembered.js';

/**
 * The verdict of a recipe in float64, where it is clear: a recipe of the plainest shape of which every comparison that
 * decides is further from its edge than the arithmetic may be off (the proof stands in `float64.ts`). Undefined for all else;
 * then the audit itself decides. The comparisons are those of `checks`, one by one, without findings and slips; the parts of
 * the whole pot, if they are printed, are compared by the check itself.
 *
 * @param limit - free caustic above which a recipe is dangerous, mol of hydroxide to a gram of the pot
 */
export function clearVerdict(recipe: unknown, own: OwnFats, limit: number): Verdict | undefined {
  try {
    const pot = floatPot(recipe, own);
    return pot === undefined ? undefined : verdictOfPot(pot, limit, () => arePartsWrong(recipe, own));
  } catch {
    // a getter that throws, a revoked proxy, a fat that nobody knows: for the audit to say
    return undefined;
  }
}

type End = keyof Estimate<unknown>;
type Size = keyof FloatPrinted;
type Above = ReturnType<typeof aboveOf>;

/** The lye at one end of its assays and of its last digits: g, and mol of hydroxide. */
interface LyeAt {
  readonly weighed: number;
  readonly pure: number;
  readonly mol: Readonly<Record<Alkali, number>>;
  readonly charged: number;
}

export function lyeAt(lye: readonly FloatLye[], end: End, size: Size): LyeAt {
  const { molarMass } = constants();
  let [weighed, pure] = [0, 0];
  const mol = { naoh: 0, koh: 0 };
  for (const { alkali, grams, strength } of lye) {
    const held = grams[size] * strength[end];
    weighed += grams[size];
    pure += held;
    mol[alkali] += held / molarMass[alkali];
  }
  return { weighed, pure, mol, charged: mol.naoh + mol.koh };
}

/** Hydroxide that splits the fats, mol. */
export const demandAt = (fats: readonly FloatFat[], end: End): number =>
  sum(fats, ({ grams, value }) => grams * value[end]) / constants().perMol;

/** Everything in the pot, g: the least of what is given by volume. */
export const potGrams = (pot: FloatPot): number => gramsOf(pot, 'value') + sum(pot.additions, ({ grams }) => grams.low);

/** Fats, lye and water, g, at one end of the last digits of the lye. */
const gramsOf = ({ fats, lye, water = 0 }: FloatPot, size: Size): number =>
  sum(fats, ({ grams }) => grams) + sum(lye, ({ grams }) => grams[size]) + water;

function sum<T>(rows: readonly T[], of: (row: T) => number): number {
  let total = 0;
  for (const row of rows) total += of(row);
  return total;
}

/** Well below what a mass may be. */
const MOST_GRAMS = 1e11;

/** The worst first, as `verdictOf` has it; undefined as soon as something that decides is not clear. */
function verdictOfPot(pot: FloatPot, limit: number, partsOf: () => Told): Verdict | undefined {
  const { fats, lye, claimed, aim } = pot;
  const above = aboveOf(pot.rows);
  const grams = potGrams(pot);
  if (!(grams < MOST_GRAMS)) return undefined;
  const allowed = grams * limit;
  const [leanest, likely] = [demandAt(fats, 'low'), demandAt(fats, 'likely')];
  // an assay that is not stated counts at its lowest; one that is stated has one end only
  const [weakest, strongest] = [lyeAt(lye, 'low', 'value').charged, lyeAt(lye, 'high', 'value').charged];
  const isDangerous = above(weakest, likely + allowed);
  if (isDangerous !== false) return isDangerous ? 'dangerous' : undefined;
  const isWrong = anyOf(contradictionsIn(pot, above));
  if (isWrong !== false) return isWrong ? 'wrong' : undefined;
  if (claimed['freeCausticAlkali'] !== undefined) return undefined;
  const hangsOnAssay = above(strongest, leanest + allowed);
  const isDoubtful = anyOf([
    above(weakest, leanest + allowed),
    // what hangs on the assay is said before what stays below the limit
    hangsOnAssay === false ? above(weakest, likely) : hangsOnAssay && false,
    claimed['superfat'] === undefined && aim === undefined && above(leanest * (1 - MUCH / 100), strongest),
    ...doubtsIn(pot),
    above(grams, MOST_TO_FATS * sum(fats, (row) => row.grams)),
    ...staysSolid(pot, above),
    pot.lye.every(({ isUsual }) => isUsual) ? false : undefined,
  ]);
  if (isDoubtful === undefined) return undefined;
  // they cost most, and are asked last
  const areParts =
    PARTS.some((claim) => claimed[claim] !== undefined) || mayPassWhole(fats) || mayPassWhole(pot.additions);
  const arePartsOff = areParts && partsOf();
  if (arePartsOff !== false) return arePartsOff ? 'wrong' : undefined;
  return isDoubtful ? 'doubtful' : hangsOnAssay === true ? 'cannot-tell' : 'sound';
}

/** Whether printed shares of one whole come near to more than all of it. */
const mayPassWhole = (rows: readonly { readonly printedShare: FloatPrinted | undefined }[]): boolean =>
  !(sum(rows, ({ printedShare }) => Math.max(0, printedShare?.low ?? 0)) < 99.9);

/** Whether the printed parts of the whole pot are contradicted, in exact decimals; undefined where something cannot be read. */
function arePartsWrong(recipe: unknown, { fats }: OwnFats): Told {
  const parts = readParts(recipe, { fats });
  const pot = potOf(parts);
  if (parts.faults.length > 0 || pot.faults.length > 0) return undefined;
  if (sharesAboveWholeFindings(pot, parts.claimed).length > 0) return true;
  const points = partPoints(pot);
  return points !== undefined && partFindings(points, parts.claimed).length > 0;
}

const isMadeUpIn = ({ water, lye }: FloatPot): boolean =>
  water !== undefined || lye.every(({ isSolution }) => isSolution);

/** Whether the lye, or a solution by itself, is stronger than dissolves. */
function staysSolid(pot: FloatPot, above: Above): readonly Told[] {
  const { lye, water = 0 } = pot;
  const { naoh, koh } = constants().dissolvesTo;
  const { mol, pure, weighed } = lyeAt(lye, 'likely', 'value');
  const most = mol.naoh > 0 && mol.koh > 0 ? Math.min(naoh, koh) : mol.naoh > 0 ? naoh : koh;
  return [
    isMadeUpIn(pot) && above(100 * pure, most * (weighed + water)),
    ...lye.map(
      ({ alkali, isSolution, strength }) => isSolution && above(100 * strength.likely, constants().dissolvesTo[alkali]),
    ),
  ];
}

/** Whether each printed figure is contradicted by the rest of the recipe; what is not judged is left out. */
function contradictionsIn(pot: FloatPot, above: Above): readonly Told[] {
  const meets = ({ low, high }: Ends, figures: readonly number[]): Told =>
    not(anyOf([above(low, Math.max(...figures)), above(Math.min(...figures), high)]));
  const isMadeUp = isMadeUpIn(pot);
  return [
    ...ofSuperfat(pot, above),
    ...ofFats(pot, meets),
    ...ofLye(pot, isMadeUp, meets, above),
    ...(isMadeUp ? ofPot(pot, meets) : []),
    ofPh(pot, above),
  ];
}

type Ends = Pick<FloatPrinted, 'low' | 'high'>;
type Meets = (printed: Ends, figures: readonly number[]) => Told;

/** What a superfat leaves of the hydroxide, parts of 100; of one that is beyond reason no number. */
const keptBy = ({ low, high }: Ends): Ends =>
  low > -90 && high < 90 ? { low: 100 - high, high: 100 - low } : printedFloat(undefined, 1);

function ofSuperfat({ fats, lye, claimed, aim }: FloatPot, above: Above): readonly Told[] {
  const claim =
    claimed['superfat'] === undefined ? undefined : figureIn(claimed['superfat'], constants().fraction, -90);
  const [least, most] = [lyeAt(lye, 'low', 'low').charged, lyeAt(lye, 'high', 'high').charged];
  const fitsNot = (needed: Ends): Told => anyOf([above(needed.low, 100 * most), above(100 * least, needed.high)]);
  const ofLots = [claim, aim].flatMap((printed) => (printed === undefined ? [] : [keptBy(printed)]));
  const told = ofLots.map((kept) =>
    fitsNot({ low: demandAt(fats, 'low') * kept.low, high: demandAt(fats, 'high') * kept.high }),
  );
  const [kept] = ofLots;
  const own = (size: Size): number =>
    sum(fats, ({ grams, printedValue }) => grams * (printedValue?.[size] ?? Number.NaN)) / constants().perMol;
  if (kept === undefined || fats.some(({ printedValue }) => printedValue === undefined)) return told;
  return [...told, fitsNot({ low: own('low') * kept.low, high: own('high') * kept.high })];
}

function ofFats({ fats }: FloatPot, meets: Meets): readonly Told[] {
  const all = sum(fats, ({ grams }) => grams);
  return fats.flatMap(({ grams, value, printedValue, printedShare }) => [
    printedValue !== undefined && not(meets(printedValue, [value.low, value.high])),
    printedShare !== undefined && not(meets(printedShare, [(100 * grams) / all])),
  ]);
}

function ofLye(
  { fats, lye, water = 0, claimed }: FloatPot,
  isMadeUp: boolean,
  meets: Meets,
  above: Above,
): readonly Told[] {
  const { strength, waterPerAlkali, waterPerFat, kohShare } = claimed;
  const { fraction } = constants();
  const [least, most] = [lyeAt(lye, 'low', 'low'), lyeAt(lye, 'high', 'high')];
  const all = [least, most, lyeAt(lye, 'low', 'high'), lyeAt(lye, 'high', 'low'), lyeAt(lye, 'likely', 'value')];
  const each = <T>(of: (one: LyeAt, whole: number) => T): readonly T[] =>
    all.map((one) => of(one, one.weighed + water));
  const told: Told[] = [];
  if (isMadeUp && strength !== undefined) {
    told.push(
      not(
        meets(
          figureIn(strength, fraction),
          each(({ pure }, whole) => (100 * pure) / whole),
        ),
      ),
    );
  }
  if (isMadeUp && waterPerAlkali !== undefined) {
    const { low, high } = ratioIn(waterPerAlkali);
    const readings = [
      // all that is not alkali is water: without a difference that would cancel
      meets(
        { low: low + 1, high: high + 1 },
        each(({ pure }, whole) => whole / pure),
      ),
      meets(
        { low, high },
        each(({ weighed }) => water / weighed),
      ),
      meets(
        { low, high },
        each(({ pure }) => water / pure),
      ),
    ];
    told.push(not(anyOf(readings)));
  }
  if (isMadeUp && waterPerFat !== undefined) {
    const fatGrams = sum(fats, ({ grams }) => grams);
    const printed = figureIn(waterPerFat, fraction);
    const { low, high } = printed.low > 0 ? printed : printedFloat(undefined, 1);
    // the same, with the alkali on the other side; met if some corner reaches the low end, and some does not pass the high one
    const passes = (end: number): readonly Told[] =>
      each(({ pure }, whole) => above(100 * whole, end * fatGrams + 100 * pure));
    const ofAll = not(anyOf([not(anyOf(passes(low))), not(anyOf(passes(high).map(not)))]));
    told.push(not(anyOf([ofAll, meets({ low, high }, [(100 * water) / fatGrams])])));
  }
  if (kohShare !== undefined) {
    const share = (koh: number, naoh: number): number => (100 * koh) / (koh + naoh);
    const likely = lyeAt(lye, 'likely', 'value').mol;
    const shares = [
      share(least.mol.koh, most.mol.naoh),
      share(most.mol.koh, least.mol.naoh),
      share(likely.koh, likely.naoh),
    ];
    told.push(not(meets(figureIn(kohShare, fraction), shares)));
  }
  return told;
}

function ofPot(pot: FloatPot, meets: Meets): readonly Told[] {
  const { additions, claimed } = pot;
  const told = additions.map(({ grams, printedShare }, at) => {
    if (printedShare === undefined) return false;
    const share = (own: Size, others: Size): number => {
      const rest = sum(additions.filter((_, other) => other !== at), (other) => other.grams[others]); // prettier-ignore
      return (100 * grams[own]) / (gramsOf(pot, others) + rest + grams[own]);
    };
    return not(meets(printedShare, [share('low', 'high'), share('high', 'low'), share('value', 'value')]));
  });
  if (claimed['total'] === undefined) return told;
  const printed = figureIn(claimed['total'], constants().mass);
  const total = (size: Size): number => gramsOf(pot, size) + sum(additions, ({ grams }) => grams[size]);
  return [...told, not(meets(printed, [total('low'), total('value'), total('high')]))];
}

/** A number without unit. */
function numberIn(value: unknown, most = Infinity): FloatPrinted {
  const printed = printedFloat(value, 1);
  return printed.value >= 0 && printed.value <= most ? printed : printedFloat(undefined, 1);
}

/** The same, of a ratio: θ_4 at its narrowed ends. */
function ratioIn(printed: unknown): Ends {
  const { low, value, high } = numberIn(printed);
  if (value === 0) return { low, high };
  return { low: Math.max(low, value * (1 - WIDEST_RATIO)), high: Math.min(high, value * (1 + WIDEST_RATIO)) };
}

type PhCode = ReturnType<typeof phFinding>['code'] | 'not-printed';
const phCodes = /* @__PURE__ */ new Map<string, PhCode>();
/** A pot without free acid, into which nothing else goes. */
const ONLY_SOAP = {
  fats: [], additions: [], unweighed: [], areAllFats: true, isAllLye: true, areAllAdditions: true,
  charged: { low: ZERO, likely: ZERO, high: ZERO },
} as const; // prettier-ignore

/** What a printed pH says of a pot of soap and nothing else: exact, and remembered by its text. Undefined if it cannot be told. */
function phOf({ additions, claimed: { ph } }: FloatPot): PhCode | undefined {
  if (ph === undefined) return 'not-printed';
  if ((typeof ph !== 'string' && typeof ph !== 'number') || Number.isNaN(numberIn(ph, 14).value)) return undefined;
  if (additions.some(({ solvent }) => solvent === 'triethanolamine')) return undefined;
  return remembered(phCodes, String(ph), () => phFinding(ONLY_SOAP, ph).code);
}

function ofPh(pot: FloatPot, above: Above): Told {
  const code = phOf(pot);
  if (code !== 'ph-contradicted') return code === undefined ? undefined : false;
  const { fats, lye, additions } = pot;
  if (additions.some(({ solvent }) => solvent === undefined)) return false;
  const acid = sum(fats, ({ grams, acidValue }) => grams * acidValue) / constants().perMol;
  return not(above(acid, lyeAt(lye, 'low', 'low').charged));
}

/** Whether there is something else to doubt. */
function doubtsIn(pot: FloatPot): readonly Told[] {
  const code = phOf(pot);
  return [
    code === undefined ? undefined : code === 'ph-above-soap',
    ...pot.temperatures.map((row) => isDoubted(row, pot)),
  ];
}

const temperatures = /* @__PURE__ */ new Map<string, boolean>();
/** What decides, besides the temperature, whether it is one of the work. */
const DECIDING = ['sorbitol', 'ethanol', '2-propanol'] as const;

/** Whether a temperature is one to doubt: exact, and remembered by its text, its stage and what boils or clears at it. */
function isDoubted(row: unknown, { additions }: FloatPot): Told {
  const fields = fieldsIn(row, ['stage', 'time', 'temperature']);
  if (fields === undefined) return undefined;
  const stage = WORK_STAGES.find((one) => one === fields['stage']);
  const [unit = '', figure] = quantityIn(fields['temperature']) ?? [];
  const isRead = !Number.isNaN(printedFloat(figure, 1).value) && Object.hasOwn(unitsByKind().temperature, unit);
  if (stage === undefined || !isRead) return undefined;
  if (fields['time'] !== undefined && Number.isNaN(figureIn(fields['time'], constants().time).value)) return undefined;
  const solvents = DECIDING.filter((id) => additions.some(({ solvent }) => solvent === id));
  return remembered(temperatures, [stage, unit, figure, ...solvents].join(' '), () => {
    const temperature = { [unit]: figure } as unknown as TemperatureInput;
    readTemperature('temperature', temperature);
    const unweighed = solvents.map((solvent) => potAddition({ path: '', row: { solvent, mass: { g: '1' } } }));
    const rows = [{ path: '', row: { stage, temperature } }];
    const found = temperatureFindings({ additions: [], unweighed }, { temperatures: { rows, areAll: true } });
    return found.some(({ severity }) => severity === 'caution');
  });
}
