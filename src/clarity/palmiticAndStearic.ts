import { expandedCharges, ratioOverProfile, readProfile, type FatCharge, type SingleFat } from '../fats/index.js';
import { Decimal, frozen, ZERO } from '../numbers/index.js';
import type { Estimate } from '../quantities/index.js';

/** The share of palmitic with stearic acid, or the fats for want of whose profile it cannot be told. */
export type PalmiticAndStearic =
  | { readonly percent: Estimate<Decimal>; readonly withoutProfile?: never }
  | { readonly withoutProfile: readonly string[]; readonly percent?: never };

/**
 * Palmitic with stearic acid, percent of the fats: each fat by its mass, as the published figures are, so that like is
 * compared with like. Of the fatty acids alone it would differ by less than one, because a triglyceride is 4 to 6 %
 * glycerol. Rosin holds neither acid and counts in the mass. Bounds are exact over the profiles.
 */
export function palmiticAndStearicOf(charges: readonly FatCharge[]): PalmiticAndStearic {
  const charged = expandedCharges(charges).filter(({ grams }) => !grams.isZero());
  const without = charged.filter(({ fat }) => fat.kind !== 'rosin' && fat.profile === undefined);
  if (without.length > 0) return { withoutProfile: [...new Set(without.map(({ fat }) => fat.name))] };
  const shares = charged.map(({ fat, grams }) => ({ grams, share: shareOf(fat) }));
  const all = shares.reduce((sum, { grams }) => sum.plus(grams), ZERO);
  const mean = (end: keyof Estimate<Decimal>): Decimal =>
    shares.reduce((sum, { grams, share }) => sum.plus(grams.times(share[end])), ZERO).div(all);
  return { percent: frozen({ low: mean('low'), likely: mean('likely'), high: mean('high') }) };
}

function shareOf({ profile }: SingleFat): Estimate<Decimal> {
  if (profile === undefined) return { low: ZERO, likely: ZERO, high: ZERO };
  const { rows } = readProfile('profile', profile);
  return ratioOverProfile(rows, {
    over: ({ acid: { id } }) => new Decimal(id === 'C16:0' || id === 'C18:0' ? 100 : 0),
  });
}
