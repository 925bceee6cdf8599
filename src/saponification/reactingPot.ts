import { expandedCharges, type FatCharge, type SingleFat } from '../fats/index.js';
import type { LyeCharge } from '../lye/index.js';
import { fieldPath, readShape, refuse, type Decimal, type Steps } from '../numbers/index.js';
import { mapEnds, type Estimate } from '../quantities/index.js';
import { balanceOf, hydroxideCharged, type Balance } from './balance.js';
import { demandOf, type Demand } from './demand.js';
import { fatSumsAt, lotsOf } from './fatSums.js';
import { lyeSumsAt } from './lyeSums.js';
import { alongOnly, carbonateOf, totalAlkaliOf, type Dimension, type Place } from './place.js';
import { reaction, type Products } from './reaction.js';
import { readCharge, type Charge } from './readCharge.js';

/** A pot as charged, and what it becomes wherever its lots and assays lie within their ranges. */
export interface ReactingPot extends Charge {
  readonly demand: Estimate<Demand>;
  readonly balance: Balance;
  /** What varies in it. */
  readonly dimensions: readonly Dimension[];
  /** What it becomes. */
  readonly at: (place: Place) => Products;
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
  const charged = readCharge(path, fields);
  const { fats, lye, water, fatGrams, charge } = charged;
  if (lye.length > MOST_ALKALIS) {
    const most = `at most ${String(MOST_ALKALIS)} alkalis`;
    refuse('bad-shape', fieldPath(path, 'lye'), most, `a list of ${String(lye.length)}`);
  }

  const singles = expandedCharges(fats);
  const demand = demandOf(fats, steps);
  const [ofFats, ofLye] = [varyingFats(singles), varyingLye(lye)];
  const fatSums = alongOnly(ofFats, (place) => fatSumsAt(singles, place));
  const lyeSums = alongOnly(ofLye, (place) => lyeSumsAt(lye, water, place));
  return {
    ...charged,
    demand,
    balance: balanceOf(demand, hydroxideCharged(lye), fatGrams, charge, steps),
    dimensions: [...ofFats, ...ofLye],
    at: (place) => reaction(fatSums(place), lyeSums(place)),
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
