import { carbonateMolarMass, hydroxideMolarMass, hydroxidePerCarbonate, type LyeCharge } from '../lye/index.js';
import { ZERO, type Decimal } from '../numbers/index.js';
import { carbonateOf, totalAlkaliOf, valueAt, type Place } from './place.js';

/** One alkali of a pot: hydroxide and carbonate, in moles. */
export interface AlkaliSum {
  readonly hydroxide: Decimal;
  readonly carbonate: Decimal;
}

/** The lye of one pot, summed up. */
export interface LyeSums {
  readonly naoh: AlkaliSum;
  readonly koh: AlkaliSum;
  /** Water of solutions, of moist potash, and added; grams. */
  readonly water: Decimal;
  /** What is neither hydroxide, carbonate nor water; grams. Below zero where an assay is over 100 %. */
  readonly other: Decimal;
}

/**
 * The lye of one pot, summed up. What a solution or a solid potash holds besides alkali is water; what a solid soda holds
 * besides is not known and stays `other`.
 */
export function lyeSumsAt(lye: readonly LyeCharge[], addedWater: Decimal, place: Place): LyeSums {
  const sums = { naoh: { hydroxide: ZERO, carbonate: ZERO }, koh: { hydroxide: ZERO, carbonate: ZERO } };
  let [water, other] = [addedWater, ZERO];
  for (const [at, { alkali, grams, source }] of lye.entries()) {
    const carbonate = source.carbonate === undefined ? ZERO : valueAt(source.carbonate, place, carbonateOf(at));
    const total = valueAt(source.totalAlkali, place, totalAlkaliOf(at));
    const hydroxide = carbonate.isZero() ? total : total.minus(carbonate.times(hydroxidePerCarbonate(alkali)));
    const rest = grams.minus(grams.times(hydroxide.plus(carbonate)));
    if (source.state === 'solution' || alkali === 'koh') water = water.plus(rest);
    else other = other.plus(rest);
    const { hydroxide: sofar, carbonate: carbonates } = sums[alkali];
    sums[alkali] = {
      hydroxide: sofar.plus(grams.times(hydroxide).div(hydroxideMolarMass(alkali))),
      carbonate: carbonates.plus(grams.times(carbonate).div(carbonateMolarMass(alkali))),
    };
  }
  return { ...sums, water, other };
}
