import { frozen, isDecimal, isList, readFields, readShape, refuse, type Decimal } from '../numbers/index.js';
import { refuseMeantRange } from './meantRange.js';

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

/** A figure without spread. */
function atAllEnds<Q>(only: Q): Estimate<Q> {
  return frozen({ low: only, likely: only, high: only });
}

/** An estimate with each of its three figures put through the same function; a figure without spread only once. */
export function mapEnds<Q, R>(estimate: Estimate<Q>, change: (quantity: Q) => R): Estimate<R> {
  const likely = change(estimate.likely);
  if (estimate.low === estimate.likely && estimate.high === estimate.likely) return atAllEnds(likely);
  return frozen({ low: change(estimate.low), likely, high: change(estimate.high) });
}

/**
 * Reads a value or a range with one reader for each end.
 *
 * @param backward - a unit that runs against the canonical one: a range in it is turned round
 * @throws CalculationError as the reader does; `out-of-range` if low, likely and high are not in this order
 */
export function readRanged(
  path: string,
  value: unknown,
  readOne: (path: string, value: unknown) => Decimal,
  backward = '',
): RangeOf<Decimal> {
  if (!isRange(path, value)) {
    try {
      return atAllEnds(readOne(path, value));
    } catch (error) {
      return refuseMeantRange(path, value, error);
    }
  }
  const ends = readShape(path, value, ['low', 'likely', 'high']);
  let low = readOne(`${path}.low`, ends['low']);
  let high = readOne(`${path}.high`, ends['high']);
  if (low.gt(high) && isIn(backward, ends['low']) && isIn(backward, ends['high'])) [low, high] = [high, low];
  if (low.gt(high))
    refuse('out-of-range', path, 'low at most as high as high', `${low.toString()} to ${high.toString()}`);
  const likely = ends['likely'] === undefined ? low.plus(high).div(2) : readOne(`${path}.likely`, ends['likely']);
  if (likely.lt(low) || likely.gt(high)) {
    refuse('out-of-range', `${path}.likely`, `${low.toString()} to ${high.toString()}`, likely.toString());
  }
  return frozen({ low, likely, high });
}

const isIn = (unit: string, quantity: unknown): boolean => Object.hasOwn(Object(quantity) as object, unit);

function isRange(path: string, value: unknown): boolean {
  if (typeof value !== 'object' || value === null || isList(value) || isDecimal(value)) return false;
  const fields = readFields(path, value);
  return 'low' in fields || 'high' in fields || 'likely' in fields;
}
