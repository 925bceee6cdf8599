import { molarMass } from '../../chemistry/index.js';
import { SOLVENT_IDS, type SolventId } from '../../composition/index.js';
import { namedAcid } from '../../composition/namedAdditions.js';
import { isNamedAlkali } from '../../composition/namedAlkalis.js';
import { isKnownFat, type Fat, type SingleFat } from '../../fats/index.js';
import { dissolvesTo, hydroxideMolarMass, type Alkali } from '../../lye/index.js';
import { hydroxidePerCarbonate } from '../../lye/alkali.js';
import { ONE } from '../../numbers/index.js';
import { unitsByKind, type Estimate, type Units } from '../../quantities/index.js';
import { fatOf, type OwnFats } from '../../recipe/readRecipe.js';
import { isCertificateContradicted } from '../checks/contradictedFats.js';
import { SOLID_ASSAY } from '../checks/solidAssay.js';
import { legible } from '../legible.js';
import { UNSTATED_ASSAY } from '../pot.js';
import { potAddition } from '../potAdditions.js';
import { printedFloat, type FloatPrinted } from './float64.js';
import { remembered } from './remembered.js';

/** Fields that were read once. */
export type Plain = Readonly<Record<string, unknown>>;
type Ends = Estimate<number>;

export interface FloatFat {
  /** g */
  readonly grams: number;
  /** mg KOH/g, over the lots. */
  readonly value: Ends;
  readonly acidValue: number;
  readonly printedValue: FloatPrinted | undefined;
  readonly printedShare: FloatPrinted | undefined;
}

export interface FloatLye {
  readonly alkali: Alkali;
  readonly grams: FloatPrinted;
  /** Hydroxide, a fraction of one. */
  readonly strength: Ends;
  readonly isSolution: boolean;
  /** Whether its assay is clearly none that solids are not sold with. */
  readonly isUsual: boolean;
}

interface FloatAddition {
  readonly solvent: SolventId | undefined;
  readonly grams: FloatPrinted;
  readonly printedShare: FloatPrinted | undefined;
}

/** What is in the pot, g; a figure that is not of the plainest shape is no number. */
export interface FloatPot {
  readonly fats: readonly FloatFat[];
  readonly lye: readonly FloatLye[];
  /** Undefined where none is stated. */
  readonly water: number | undefined;
  readonly additions: readonly FloatAddition[];
  readonly claimed: Plain;
  readonly aim: FloatPrinted | undefined;
  readonly temperatures: readonly unknown[];
  /** Fats, alkalis, additions and the water. */
  readonly rows: number;
}

/** More rows are for the audit. */
const MOST_ROWS = 60;
const LONGEST_NAME = 200;

type Factors = ReadonlyMap<string, number>;

/** What the library has exactly, rounded to float64. */
interface Constants {
  readonly mass: Factors;
  readonly volume: Factors;
  readonly fraction: Factors;
  /** A share by mass or, of spirit, by volume. */
  readonly assay: Factors;
  readonly saponificationValue: Factors;
  readonly time: Factors;
  readonly molarMass: Readonly<Record<Alkali, number>>;
  /** Grams of hydroxide with the alkali of one gram of carbonate. */
  readonly hydroxidePerCarbonate: Readonly<Record<Alkali, number>>;
  /** Percent of hydroxide above which a lye stays partly solid. */
  readonly dissolvesTo: Readonly<Record<Alkali, number>>;
  /** mg KOH to a mole. */
  readonly perMol: number;
}

function constantsMade(): Constants {
  const { mass, volume, fraction, saponificationValue, time, spiritStrength } = unitsByKind();
  const factors = <U extends string>(units: Units<U>, except?: string): Factors =>
    new Map(
      (Object.keys(units) as U[]).flatMap((unit) =>
        unit === except ? [] : [[unit, Number(units[unit].toCanonical(ONE, unit))] as const],
      ),
    );
  return {
    mass: factors(mass),
    volume: factors(volume),
    fraction: factors(fraction),
    assay: factors({ ...fraction, ...spiritStrength }),
    // an equivalent is no multiple of a value
    saponificationValue: factors(saponificationValue, 'saponificationEquivalent'),
    time: factors(time),
    molarMass: { naoh: Number(hydroxideMolarMass('naoh')), koh: Number(hydroxideMolarMass('koh')) },
    hydroxidePerCarbonate: {
      naoh: Number(hydroxidePerCarbonate('naoh')),
      koh: Number(hydroxidePerCarbonate('koh')),
    },
    dissolvesTo: { naoh: Number(dissolvesTo(['naoh'])), koh: Number(dissolvesTo(['koh'])) },
    perMol: Number(molarMass('KOH').times(1000)),
  };
}

let made: Constants | undefined;

/** The same, made when first needed. */
export const constants = (): Constants => (made ??= constantsMade());

/** The own fields of an object, read once, if all of them are known and hold something. */
export function fieldsIn(value: unknown, known: readonly string[]): Plain | undefined {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return undefined;
  const fields: Record<string, unknown> = {};
  for (const key of Object.keys(value)) {
    const field = (value as Plain)[key];
    if (field === undefined || !known.includes(key)) return undefined;
    fields[key] = field;
  }
  return fields;
}

/** The rows of a list, each read; undefined if one cannot be, or there are too few or too many. */
function rowsIn<T>(value: unknown, least: 0 | 1, read: (row: unknown) => T | undefined): readonly T[] | undefined {
  if (value === undefined && least === 0) return [];
  if (!Array.isArray(value) || value.length < least || value.length > MOST_ROWS) return undefined;
  const rows = Array.from(value as readonly unknown[], read);
  return rows.includes(undefined) ? undefined : (rows as readonly T[]);
}

/** One unit with one figure. */
export function quantityIn(value: unknown): readonly [unit: string, figure: unknown] | undefined {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return undefined;
  const [unit, ...others] = Object.keys(value);
  return unit === undefined || others.length > 0 ? undefined : [unit, (value as Plain)[unit]];
}

/** A figure in one of some units; no number where it is not one, and where it is negative and may not be. */
export function figureIn(value: unknown, factors: Factors, least = 0): FloatPrinted {
  const [unit = '', figure] = quantityIn(value) ?? [];
  const printed = printedFloat(figure, factors.get(unit) ?? Number.NaN);
  return printed.value >= least ? printed : printedFloat(undefined, 1);
}

const claimIn = (value: unknown, factors: Factors): FloatPrinted | undefined =>
  value === undefined ? undefined : figureIn(value, factors);

const isName = (value: unknown): value is string =>
  typeof value === 'string' && value.length <= LONGEST_NAME && value.trim() !== '';

/** Reads a recipe of the plainest shape; undefined for any other. */
export function floatPot(recipe: unknown, own: OwnFats): FloatPot | undefined {
  const { mass, fraction } = constants();
  const fields = fieldsIn(recipe, RECIPE);
  if (fields?.['version'] !== 1 || (fields['title'] !== undefined && !isName(fields['title']))) return undefined;
  const fats = rowsIn(fields['fats'], 1, (row) => floatFat(row, own));
  const lye = rowsIn(fields['lye'], 1, floatLye);
  const additions = rowsIn(fields['additions'], 0, floatAddition);
  const temperatures = rowsIn(fields['temperatures'], 0, (row) => row ?? undefined);
  const claimed = fields['claimed'] === undefined ? {} : fieldsIn(fields['claimed'], claimKeys());
  const target = fields['target'] === undefined ? {} : fieldsIn(fields['target'], ['superfat']);
  if (!fats || !lye || !additions || !temperatures || !claimed || !target) return undefined;
  return {
    fats,
    lye,
    water: claimIn(fields['water'], mass)?.value,
    additions,
    claimed,
    aim: claimIn(target['superfat'], fraction),
    temperatures,
    rows: fats.length + lye.length + additions.length + 1,
  };
}

const RECIPE = ['version', 'title', 'fats', 'lye', 'water', 'additions', 'target', 'claimed', 'temperatures'];
/** What is printed of the parts of the whole pot. */
export const PARTS: readonly string[] = ['shares', 'clearingAgentsPerSoap', 'waterPerSoap'];
const claimKeys = (): readonly string[] => [
  'superfat',
  'strength',
  'waterPerAlkali',
  'waterPerFat',
  'kohShare',
  'total',
  'ph',
  'freeCausticAlkali',
  ...PARTS,
];

interface FloatValues {
  readonly value: Ends;
  readonly acidValue: number;
  /** Whether its certificate contradicts what is published: then the audit has more to say. */
  readonly isContradicted: boolean;
}

const valuesOfFats = /* @__PURE__ */ new WeakMap<SingleFat, FloatValues>();

function valuesOf(fat: SingleFat): FloatValues {
  const kept = valuesOfFats.get(fat);
  if (kept !== undefined) return kept;
  const { low, likely, high } = fat.saponificationValue;
  const values = {
    value: { low: Number(low.mgKohPerG), likely: Number(likely.mgKohPerG), high: Number(high.mgKohPerG) },
    acidValue: Number(fat.acidValue.mgKohPerG),
    isContradicted: isCertificateContradicted(fat),
  };
  valuesOfFats.set(fat, values);
  return values;
}

function fatNamed(named: unknown, own: OwnFats): Fat | undefined {
  if (isKnownFat(named)) return named;
  return isName(named) ? fatOf('fat', named, own) : undefined;
}

function floatFat(row: unknown, own: OwnFats): FloatFat | undefined {
  const { mass, fraction, saponificationValue } = constants();
  const fields = fieldsIn(row, ['fat', 'mass', 'claimed']);
  if (fields === undefined) return undefined;
  const claimed = fields['claimed'] === undefined ? {} : fieldsIn(fields['claimed'], ['saponificationValue', 'share']);
  if (claimed === undefined) return undefined;
  const fat = fatNamed(fields['fat'], own);
  const grams = figureIn(fields['mass'], mass).value;
  if (fat === undefined || fat.kind === 'blend' || !(grams > 0)) return undefined;
  const { value, acidValue, isContradicted } = valuesOf(fat);
  if (isContradicted) return undefined;
  return {
    grams,
    value,
    acidValue,
    printedValue: claimIn(claimed['saponificationValue'], saponificationValue),
    printedShare: claimIn(claimed['share'], fraction),
  };
}

/** The strength of an alkali in percent, away from the limits of what is read. */
const within = (percent: number, [least, most]: readonly [number, number]): number =>
  percent > least && percent < most ? percent : Number.NaN;
const OF_SOLID = [10.1, 109.9] as const;
const OF_SOLUTION = [0.01, 74.9] as const;

function strengthIn(fields: Plain, alkali: Alkali): Ends | undefined {
  const { fraction, hydroxidePerCarbonate: per } = constants();
  const { solid, solution } = fields;
  if (solid !== undefined && solution !== undefined) return undefined;
  if (solid === undefined && solution === undefined) {
    const { low: least, high: most } = UNSTATED_ASSAY[alkali];
    const [low, high] = [least / 100, Number(most) / 100];
    return { low, likely: (low + high) / 2, high };
  }
  const of = fieldsIn(
    solid ?? solution,
    solid === undefined ? ['hydroxide'] : ['hydroxide', 'totalAlkali', 'carbonate'],
  );
  if (of === undefined) return undefined;
  const { hydroxide, totalAlkali, carbonate } = of;
  const exactly = (percent: number): Ends => ({ low: percent / 100, likely: percent / 100, high: percent / 100 });
  if (hydroxide !== undefined) {
    if (totalAlkali !== undefined || carbonate !== undefined) return undefined;
    return exactly(within(figureIn(hydroxide, fraction).value, solid === undefined ? OF_SOLUTION : OF_SOLID));
  }
  const total = within(figureIn(totalAlkali, fraction).value, OF_SOLID);
  const asHydroxide = figureIn(carbonate, fraction).value * per[alkali];
  // with more of it the difference would be less sure; and 35 % of it is less than may be read
  return asHydroxide < 35 && asHydroxide < total / 2 ? exactly(total - asHydroxide) : undefined;
}

/** Whether an assay, where a solid is stated, is clearly one that solids are sold with. */
function isOfSolid(solid: unknown, alkali: Alkali): boolean {
  if (solid === undefined) return true;
  const { hydroxide, totalAlkali } = solid as Plain;
  const { least, most } = SOLID_ASSAY[alkali];
  const { value } = figureIn(hydroxide ?? totalAlkali, constants().fraction);
  return value > least + 1e-6 && value < most - 1e-6;
}

function floatLye(row: unknown): FloatLye | undefined {
  const fields = fieldsIn(row, ['alkali', 'mass', 'solid', 'solution']);
  const alkali = fields?.['alkali'];
  if (fields === undefined || (alkali !== 'naoh' && alkali !== 'koh')) return undefined;
  const grams = figureIn(fields['mass'], constants().mass);
  const strength = strengthIn(fields, alkali);
  if (strength === undefined || !(grams.value > 0)) return undefined;
  return {
    alkali,
    grams,
    strength,
    isSolution: fields['solution'] !== undefined,
    isUsual: isOfSolid(fields['solid'], alkali),
  };
}

function floatAddition(row: unknown): FloatAddition | undefined {
  const { mass, fraction } = constants();
  const fields = fieldsIn(row, ['solvent', 'name', 'mass', 'volume', 'assay', 'claimed']);
  if (fields === undefined) return undefined;
  const claimed = fields['claimed'] === undefined ? {} : fieldsIn(fields['claimed'], ['share']);
  if (claimed === undefined) return undefined;
  const { name, assay, volume } = fields;
  const solvent = SOLVENT_IDS.find((id) => id === fields['solvent']);
  const isNamed = solvent === undefined && fields['solvent'] === undefined && assay === undefined && isName(name);
  if (!isNamed && (solvent === undefined || name !== undefined)) return undefined;
  // one that is doubted for its name, or may take up lye, is looked at by the audit
  if (isNamed && remembered(doubtedNames, name, () => isDoubted(legible(name)))) return undefined;
  if ((fields['mass'] === undefined) === (volume === undefined)) return undefined;
  const isStated = assay !== undefined;
  if (isStated && !isAssay(assay, solvent)) return undefined;
  const ofMass = figureIn(fields['mass'], mass).value;
  const grams =
    volume === undefined
      ? { low: ofMass, value: ofMass, high: ofMass }
      : measured(volume, solvent, isStated ? quantityIn(assay) : undefined);
  if (!(grams.value > 0)) return undefined;
  return { solvent, grams, printedShare: claimIn(claimed['share'], fraction) };
}

const doubtedNames = /* @__PURE__ */ new Map<string, boolean>();

/** Whether something goes by the name of an alkali, or of an acid that takes up a known amount of lye. */
function isDoubted(name: string): boolean {
  const acid = namedAcid(name);
  return isNamedAlkali(name) || (acid !== undefined && acid !== 'other');
}

/** More than nothing and clearly no more than all of it; spirit by volume is looked up when it is, and nowhere refused. */
function isAssay(assay: unknown, solvent: SolventId | undefined): boolean {
  const { value } = figureIn(assay, constants().assay);
  const unit = quantityIn(assay)?.[0];
  if (unit === 'percentByVolume' && solvent !== 'ethanol') return false;
  // in percent the figure itself is compared, and is exact where it is 100
  return value > 0.01 && value <= (unit === 'percent' || unit === 'percentByVolume' ? 100 : 99.9);
}

const densities = /* @__PURE__ */ new Map<string, FloatPrinted>();

/** What a volume may weigh, g; no number where no density is on file. */
function measured(volume: unknown, solvent: SolventId | undefined, assay: ReturnType<typeof quantityIn>): FloatPrinted {
  const { value: mL } = figureIn(volume, constants().volume);
  if (solvent === undefined) return printedFloat(undefined, 1);
  const { low, value, high } = remembered(densities, [solvent, ...(assay ?? [])].join(' '), () => {
    const stated = assay === undefined ? {} : { assay: { [assay[0]]: assay[1] } as never };
    const { grams } = potAddition({ path: 'addition', row: { solvent, volume: { mL: '1' }, ...stated } });
    return grams === undefined
      ? printedFloat(undefined, 1)
      : { low: Number(grams.low), value: Number(grams.value), high: Number(grams.high) };
  });
  return { low: mL * low, value: mL * value, high: mL * high };
}
