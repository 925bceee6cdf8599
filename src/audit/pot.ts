import { molarMass } from '../chemistry/index.js';
import { fatFromCertificate, type Fat } from '../fats/index.js';
import { hydroxideMolarMass, readLyeCharge, type Alkali, type LyeCharge, type LyeChargeInput } from '../lye/index.js';
import { frozen, unlessRefused, ZERO, type CalculationError, type Decimal } from '../numbers/index.js';
import { unitsByKind, type Estimate } from '../quantities/index.js';
import { alkaliDemandOf, superfatFromLye, type SuperfatFromLyeResult } from '../saponification/index.js';
import type { FatRow, RecipeParts, Row } from '../recipe/readParts.js';
import { printedMass, printedQuantity, weighedMass, type Printed } from './printed.js';
import { legible } from './legible.js';
import { potAddition, type PotAddition, type ReadAddition } from './potAdditions.js';
import { spanOver, type Span } from './span.js';

/** A fat of the pot. */
export interface PotFat {
  readonly path: string;
  readonly name: string;
  /** Of a fat that is not known: one of the value that the recipe claims for it, if it claims one. */
  readonly fat: Fat | undefined;
  readonly isKnown: boolean;
  readonly grams: Printed;
  /** Hydroxide that splits it, mol, over its lots. */
  readonly demand: Estimate<Decimal> | undefined;
  /** The same with the value that the recipe claims, to its last digit. */
  readonly ownDemand: Span | undefined;
  readonly claimed: FatRow['claimed'];
}

/** An alkali of the pot. */
export interface PotLye {
  readonly path: string;
  readonly alkali: Alkali;
  readonly grams: Printed;
  /** The assay or strength, as stated or as it may be. */
  readonly charge: LyeCharge;
  readonly input: LyeChargeInput;
  /** Whether the recipe says how strong it is. */
  readonly isStated: boolean;
}

/** What is in the pot, as far as it can be read. */
export interface Pot {
  readonly fats: readonly PotFat[];
  readonly lye: readonly PotLye[];
  readonly water: Printed;
  /** The additions whose mass is known. */
  readonly additions: readonly PotAddition[];
  /** Those given by volume whose density is not on file. */
  readonly unweighed: readonly ReadAddition[];
  /** Fats, lye, water and additions as far as their mass is known, g: the least where they are given by volume. */
  readonly batchGrams: Decimal;
  readonly fatGrams: Decimal;
  /** Whether every fat can be read. */
  readonly areAllFats: boolean;
  /** Whether every alkali and the water can be read. */
  readonly isAllLye: boolean;
  /** Whether it is said what the lye is made up with: solid alkali without water is only half of one. */
  readonly isMadeUp: boolean;
  readonly areAllAdditions: boolean;
  /** Whether everything in the pot can be read and its mass is known. */
  readonly hasAllMasses: boolean;
  /** How fats and lye stand to each other; undefined where a fat or an alkali cannot be read or is not known. */
  readonly balance: SuperfatFromLyeResult | undefined;
  /** Why they cannot be set against each other. */
  readonly faults: readonly CalculationError[];
  /** The strength that the recipe claims for its lye, as a fraction of one. */
  readonly claimedStrength: Decimal | undefined;
  /** Hydroxide charged, mol, over assays and the last digit of the masses as printed. */
  readonly charged: Span;
}

/** What technical grades of alkali hold, percent by mass, where a recipe does not say; common practice, no source. */
export const UNSTATED_ASSAY = { naoh: { low: 95, high: '100.5' }, koh: { low: 82, high: 100 } } as const;

const NONE: Printed = /* @__PURE__ */ frozen({ low: ZERO, value: ZERO, high: ZERO, text: '0', unit: 'g' });

/** Puts together what can be read of a recipe. */
export function potOf(parts: RecipeParts): Pot {
  const fats = parts.fats.rows.map(potFat);
  const lye = parts.lye.rows.map(potLye);
  const water = parts.water === undefined ? NONE : weighedMass(parts.water);
  const read = parts.additions.rows.map(potAddition);
  const additions = read.flatMap((one): readonly PotAddition[] =>
    one.grams === undefined ? [] : [{ ...one, grams: one.grams }],
  );
  const fatGrams = sum(fats.map(({ grams }) => grams.value));
  const isAllLye = parts.lye.areAll && !parts.faults.some(({ path }) => path.startsWith('water'));
  const isMadeUp =
    isAllLye && (parts.water !== undefined || lye.every(({ charge }) => charge.source.state === 'solution'));
  const batchGrams = sum([
    fatGrams,
    ...lye.map(({ grams }) => grams.value),
    water.value,
    // least, so that no free caustic looks thinner than it is
    ...additions.map(({ grams }) => grams.low),
  ]);
  const faults: CalculationError[] = [];
  const balance =
    parts.fats.areAll && parts.lye.areAll ? balanceOf({ fats, lye, water, batchGrams }, faults) : undefined;
  return {
    fats,
    lye,
    water,
    additions,
    unweighed: read.filter(({ grams }) => grams === undefined),
    batchGrams,
    fatGrams,
    areAllFats: parts.fats.areAll,
    isAllLye,
    isMadeUp,
    areAllAdditions: parts.additions.areAll,
    hasAllMasses:
      parts.fats.areAll && isMadeUp && parts.additions.areAll && additions.length === parts.additions.rows.length,
    balance,
    faults,
    claimedStrength: strengthOf(parts),
    charged: chargedBy(lye),
  };
}

const sum = (values: readonly Decimal[]): Decimal => values.reduce((total, value) => total.plus(value), ZERO);

function potFat({ path, row: { named, fat, mass, claimed } }: Row<FatRow>): PotFat {
  const grams = weighedMass(mass);
  const name = legible(fat?.name ?? (typeof named === 'string' ? named : 'a fat'));
  const value = claimed.saponificationValue;
  const own = value === undefined ? undefined : printedQuantity(value, unitsByKind().saponificationValue);
  const used =
    fat ?? (own === undefined || own.value.lt(20) || own.value.gt(700) ? undefined : ofClaimedValue(name, own.value));
  return {
    path,
    name,
    fat: used,
    isKnown: fat !== undefined,
    grams,
    demand: used === undefined ? undefined : demandOf(used, grams.value),
    ownDemand: own === undefined ? undefined : ownDemandOf(own, grams.value),
    claimed,
  };
}

function ownDemandOf({ low, value, high }: Printed, grams: Decimal): Span {
  const mol = (mgKohPerG: Decimal): Decimal => mgKohPerG.times(grams).div(molarMass('KOH').times(1000));
  return { low: mol(low), likely: mol(value), high: mol(high) };
}

function ofClaimedValue(name: string, mgKohPerG: Decimal): Fat {
  return fatFromCertificate({ name, kind: 'triglyceride', saponificationValue: { mgKohPerG } });
}

/** Hydroxide that splits a mass of fat, mol. */
export function demandOf(fat: Fat, grams: Decimal): Estimate<Decimal> {
  const { low, likely, high } = alkaliDemandOf([{ fat, mass: { g: 1 } }]).hydroxide;
  return { low: low.mol.times(grams), likely: likely.mol.times(grams), high: high.mol.times(grams) };
}

function potLye({ path, row }: RecipeParts['lye']['rows'][number]): PotLye {
  const { alkali, mass } = row;
  const isStated = row.solid !== undefined || row.solution !== undefined;
  const { low, high } = UNSTATED_ASSAY[alkali];
  const input: LyeChargeInput = isStated
    ? row
    : { alkali, mass, solid: { hydroxide: { low: { percent: low }, high: { percent: high } } } };
  return {
    path,
    alkali,
    grams: printedMass(mass),
    charge: readLyeCharge(path, input),
    input,
    isStated,
  };
}

/** Moles of hydroxide in a mass of an alkali as it stands in the store. */
export function molIn({ alkali, charge }: PotLye, grams: Decimal, end: keyof Estimate<unknown>): Decimal {
  return grams.times(charge.source.hydroxide[end]).div(hydroxideMolarMass(alkali));
}

function strengthOf({ claimed: { strength } }: RecipeParts): Decimal | undefined {
  const percent = strength === undefined ? ZERO : printedQuantity(strength, unitsByKind().fraction).value;
  return percent.isZero() ? undefined : percent.div(100);
}

function chargedBy(lye: readonly PotLye[]): Span {
  const at = (size: 'low' | 'value' | 'high', end: keyof Estimate<unknown>): Decimal =>
    sum(lye.map((one) => molIn(one, one.grams[size], end)));
  return spanOver(at('value', 'likely'), [at('low', 'low'), at('high', 'high')]);
}

/** The balance of a pot with another lye: `change` is asked of each alkali. */
export function balanceWith(pot: Pot, change: (one: PotLye) => LyeChargeInput): SuperfatFromLyeResult | undefined {
  return balanceOfLye(pot, pot.lye.map(change));
}

/** An alkali of unstated assay as the weakest it may be. */
export function atWeakest({ input, isStated, charge }: PotLye): LyeChargeInput {
  if (isStated) return input;
  const { alkali, mass } = input;
  return { alkali, mass, solid: { hydroxide: { fraction: charge.source.hydroxide.low } } };
}

/** The balance of a pot with quite another lye, everything in it weighing the same. */
export function balanceOfLye(pot: Pot, lye: readonly LyeChargeInput[]): SuperfatFromLyeResult | undefined {
  return balanceOf({ ...pot, lye: lye.map((input) => ({ input })) }, []);
}

/** How fats and lye stand to each other, where all of them are known. */
function balanceOf(
  {
    fats,
    lye,
    water,
    batchGrams,
  }: Pick<Pot, 'fats' | 'water' | 'batchGrams'> & { readonly lye: readonly Pick<PotLye, 'input'>[] },
  faults: CalculationError[],
): SuperfatFromLyeResult | undefined {
  const charge = fats.flatMap(({ fat, grams }) => (fat === undefined ? [] : [{ fat, mass: { g: grams.value } }]));
  if (charge.length < fats.length || fats.length === 0) return undefined;
  return unlessRefused(
    () =>
      superfatFromLye({
        fats: charge,
        lye: lye.map(({ input }) => input),
        water: { g: water.value },
        batchMass: { g: batchGrams },
      }),
    (refusal) => faults.push(refusal),
  );
}
