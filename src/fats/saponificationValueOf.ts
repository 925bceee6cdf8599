import { frozen, type Remark } from '../numbers/index.js';
import type { Estimate, SaponificationValue } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';
import type { Fat, SaponificationValueOrigin } from './fatType.js';
import { readFat } from './readFat.js';

/** Result of {@link saponificationValueOf}. */
export interface SaponificationValueResult {
  /** Low and high hold for every lawful lot, or for the certified one. */
  readonly saponificationValue: Estimate<SaponificationValue>;
  /** What the figure rests on. */
  readonly from: SaponificationValueOrigin;
  readonly notes: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Saponification value of a fat: bounds for lots, and the likely value.
 *
 * Bounds: a certificate's value with its uncertainty; else the union of the published standards' ranges; else 7 %
 * about the likely value (a convention) or the profile's bounds where these are wider. Likely: the certificate; else the
 * likely profile less half the maximum unsaponifiable matter (a convention), held inside the bounds; else the middle.
 *
 * @param of - a fat of this library, or one read from JSON
 * @returns mg KOH per g of fat, what it rests on, and the sources
 * @throws CalculationError the faults of a fat
 *
 * @example
 * ```ts
 * const { saponificationValue, from } = saponificationValueOf(fat('coconut-oil'));
 * [saponificationValue.low.mgKohPerG, saponificationValue.high.mgKohPerG]; // => ['248', '265']
 * from; // => 'standard'
 * ```
 */
export function saponificationValueOf(of: Fat): SaponificationValueResult {
  const { saponificationValue, from, notes, basis, edition } = readFat(of);
  return frozen({ saponificationValue, from, notes, basis, edition });
}
