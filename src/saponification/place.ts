import { ONE, type Decimal } from '../numbers/index.js';
import type { Estimate } from '../quantities/index.js';

/**
 * What varies between one lawful pot and another: the lots of a kind of fat, unsaponifiable matter, moisture, and of each
 * alkali, by its number in the charge, its total alkali and its carbonate; of what is added after, the strength of spirit,
 * the assays of all else, and how a loss splits into spirit and water.
 */
export type Dimension =
  | 'triglycerides'
  | 'waxes'
  | 'acids'
  | 'unsaponifiable'
  | 'moisture'
  | `total alkali ${string}`
  | `carbonate ${string}`
  | 'spirit'
  | 'assays'
  | 'loss';

/** The total alkali of the alkali of this number. */
export function totalAlkaliOf(at: number): Dimension {
  return `total alkali ${String(at)}`;
}

/** The carbonate of the alkali of this number. */
export function carbonateOf(at: number): Dimension {
  return `carbonate ${String(at)}`;
}

/** A pot away from the likely one: how far each dimension is from its low end (0) to its high end (1); 0 unless said. */
export type Corner = ReadonlyMap<Dimension, Decimal>;

/** One pot: everything at its likely value, or each dimension somewhere between its ends. */
export type Place = 'likely' | Corner;

/** The value of an estimate at a place. */
export function valueAt({ low, likely, high }: Estimate<Decimal>, place: Place, dimension: Dimension): Decimal {
  if (place === 'likely') return likely;
  const at = place.get(dimension);
  if (at === undefined) return low;
  return at.eq(ONE) ? high : low.plus(high.minus(low).times(at));
}

/** A function of a place that depends on some dimensions only, worked out once for each place along these. */
export function alongOnly<T>(dimensions: readonly Dimension[], work: (place: Place) => T): (place: Place) => T {
  const kept = new Map<string, T>();
  return (place) => {
    const key = place === 'likely' ? place : dimensions.map((dimension) => String(place.get(dimension) ?? 0)).join();
    const found = kept.get(key) ?? work(place);
    kept.set(key, found);
    return found;
  };
}
