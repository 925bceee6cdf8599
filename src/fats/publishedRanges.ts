import { Decimal } from '../numbers/index.js';
import type { PublishedLimits } from './data/publishedFats.js';

/** Two ends, both of them set. */
export interface ClosedRange {
  readonly low: Decimal;
  readonly high: Decimal;
}

/** The union of ranges that have both ends. */
export function unionOf(limits: readonly PublishedLimits[]): ClosedRange | undefined {
  const closed = limits.flatMap(([low, high]) => (low === null || high === null ? [] : [[low, high] as const]));
  if (closed.length === 0) return undefined;
  return {
    low: Decimal.min(...closed.map(([low]) => low)),
    high: Decimal.max(...closed.map(([, high]) => high)),
  };
}
