import { frozen, readFields, readShape, refuse, type Decimal } from '../numbers/index.js';

/** A figure with its bounds: the lowest and highest the inputs allow, and the likely one. */
export interface Estimate<Q> {
  readonly low: Q;
  readonly likely: Q;
  readonly high: Q;
}

/**
 * A quantity as a single value or as a range; `likely` is the middle unless given. An `Estimate` of a result fits it.
 */
export type Ranged<Q> =
  | (Q & { readonly low?: never; readonly likely?: never; readonly high?: never })
  | { readonly low: Q; readonly likely?: Q; readonly high: Q };

/** A range as read: three values of one unit. */
export type RangeOf<T> = Estimate<T>;

/**
 * An estimate with each of its three figures put through the same function.
 *
 * @param estimate - low, likely and high
 * @param change - what to do with each
 * @returns the three answers in the same places
 *
 * @example
 * ```ts
 * const mass = { low: { g: 900 }, likely: { g: 1000 }, high: { g: 1100 } };
 * mapEstimate(mass, (m) => valueIn(m, 'kg')).likely; // => '1'
 * ```
 */
export function mapEstimate<Q, R>(estimate: Estimate<Q>, change: (quantity: Q) => R): Estimate<R> {
  return frozen({ low: change(estimate.low), likely: change(estimate.likely), high: change(estimate.high) });
}

/**
 * Reads a value or a range with one reader for each end.
 *
 * @param direction - `either-way` for units that run against the canonical one: an upside-down range is turned round
 * @throws CalculationError as the reader does; `out-of-range` if low, likely and high are not in this order
 */
export function readRanged(
  path: string,
  value: unknown,
  readOne: (path: string, value: unknown) => Decimal,
  direction: 'upward' | 'either-way' = 'upward',
): RangeOf<Decimal> {
  if (!isRange(path, value)) {
    const only = readOne(path, value);
    return frozen({ low: only, likely: only, high: only });
  }
  const ends = readShape(path, value, ['low', 'likely', 'high']);
  let low = readOne(`${path}.low`, ends['low']);
  let high = readOne(`${path}.high`, ends['high']);
  if (direction === 'either-way' && low.gt(high)) [low, high] = [high, low];
  if (low.gt(high))
    refuse('out-of-range', path, 'low at most as high as high', `${low.toString()} to ${high.toString()}`);
  const likely = ends['likely'] === undefined ? low.plus(high).div(2) : readOne(`${path}.likely`, ends['likely']);
  if (likely.lt(low) || likely.gt(high)) {
    refuse('out-of-range', `${path}.likely`, `${low.toString()} to ${high.toString()}`, likely.toString());
  }
  return frozen({ low, likely, high });
}

function isRange(path: string, value: unknown): boolean {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
  const fields = readFields(path, value);
  return 'low' in fields || 'high' in fields || 'likely' in fields;
}
