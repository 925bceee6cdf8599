import { expandedCharges, gramsOf, readFatCharges, type FatCharge, type SingleFat } from '../fats/index.js';
import { givenCharge, readLyeCharge, type LyeCharge, type LyeChargeGiven } from '../lye/index.js';
import {
  fieldPath,
  frozen,
  readList,
  readShape,
  refuse,
  ZERO,
  type Decimal,
  type Remark,
  type Steps,
} from '../numbers/index.js';
import { mapEnds, readOptionalMass, type Estimate, type Mass } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';
import { basisOfFats, givenFats, notesOfFats, notesOfLye, type ChargedFat } from './alkaliDemandOf.js';
import { balanceOf, hydroxideCharged, type Balance } from './balance.js';
import { demandOf, type Demand } from './demand.js';
import { fatSumsAt, lotsOf } from './fatSums.js';
import { lyeSumsAt } from './lyeSums.js';
import { alongOnly, carbonateOf, totalAlkaliOf, type Dimension, type Place } from './place.js';
import { reaction, type Products } from './reaction.js';

/** Fats, alkalis and water of a pot, in a result. */
export interface GivenPot {
  readonly fats: readonly ChargedFat[];
  readonly lye: readonly LyeChargeGiven[];
  readonly water: Mass;
}

/** A pot as charged, and what it becomes wherever its lots and assays lie within their ranges. */
export interface ReactingPot {
  readonly fats: readonly FatCharge[];
  readonly lye: readonly LyeCharge[];
  /** Fats, lye and water, grams. */
  readonly charge: Decimal;
  readonly demand: Estimate<Demand>;
  readonly balance: Balance;
  /** What varies in it. */
  readonly dimensions: readonly Dimension[];
  /** What it becomes. */
  readonly at: (place: Place) => Products;
  readonly given: GivenPot;
  readonly notes: readonly Remark[];
  readonly basis: readonly SourceId[];
}

/** The corners of the box double with every assay that is a range. */
const MOST_ALKALIS = 4;

/**
 * Reads a pot as charged; an empty path is that of the input itself.
 *
 * @throws CalculationError `missing`, `bad-shape`, `out-of-range` and the faults of a fat, source or quantity
 */
export function readReactingPot(path: string, value: unknown, steps?: Steps): ReactingPot {
  const fields = readShape(path === '' ? 'input' : path, value, ['fats', 'lye', 'water']);
  const [fatsPath, lyePath] = [fieldPath(path, 'fats'), fieldPath(path, 'lye')];
  const fats = readFatCharges(fatsPath, fields['fats']);
  const lye = readList(lyePath, fields['lye']).map((entry, at) => readLyeCharge(`${lyePath}[${String(at)}]`, entry));
  if (lye.length > MOST_ALKALIS) {
    refuse('bad-shape', lyePath, `at most ${String(MOST_ALKALIS)} alkalis`, `a list of ${String(lye.length)}`);
  }
  if (lye.every(({ grams }) => grams.isZero())) refuse('out-of-range', lyePath, 'more than 0 g of alkali', '0 g');
  const water = readOptionalMass(fieldPath(path, 'water'), fields['water']) ?? ZERO;

  const singles = expandedCharges(fats);
  const demand = demandOf(fats, steps);
  const fatGrams = gramsOf(fats);
  const charge = lye.reduce((sum, { grams }) => sum.plus(grams), fatGrams.plus(water));
  const [ofFats, ofLye] = [varyingFats(singles), varyingLye(lye)];
  const fatSums = alongOnly(ofFats, (place) => fatSumsAt(singles, place));
  const lyeSums = alongOnly(ofLye, (place) => lyeSumsAt(lye, water, place));
  return {
    fats,
    lye,
    charge,
    demand,
    balance: balanceOf(demand, hydroxideCharged(lye), fatGrams, charge, steps),
    dimensions: [...ofFats, ...ofLye],
    at: (place) => reaction(fatSums(place), lyeSums(place)),
    given: frozen({ fats: givenFats(fats), lye: frozen(lye.map(givenCharge)), water: frozen({ g: water }) }),
    notes: frozen([...notesOfFats(fats), ...notesOfLye(lye)]),
    basis: frozen<readonly SourceId[]>([...basisOfFats(fats), 'ghs-naoh']),
  };
}

const isRange = ({ low, high }: Estimate<Decimal>): boolean => low.lt(high);

/** What varies in the fats of this charge: dimensions whose low and high end differ. */
function varyingFats(fats: readonly FatCharge<SingleFat>[]): readonly Dimension[] {
  const found = new Set<Dimension>();
  for (const { fat } of fats) {
    if (isRange(mapEnds(fat.saponificationValue, ({ mgKohPerG }) => mgKohPerG))) found.add(lotsOf(fat));
    if (isRange(mapEnds(fat.unsaponifiable, ({ percent }) => percent))) found.add('unsaponifiable');
    if (isRange(mapEnds(fat.moisture, ({ percent }) => percent))) found.add('moisture');
  }
  return [...found];
}

/** What varies in its alkalis, each with its own assay. */
function varyingLye(lye: readonly LyeCharge[]): readonly Dimension[] {
  return lye.flatMap(({ source: { totalAlkali, carbonate } }, at) => [
    ...(isRange(totalAlkali) ? [totalAlkaliOf(at)] : []),
    ...(carbonate !== undefined && isRange(carbonate) ? [carbonateOf(at)] : []),
  ]);
}
