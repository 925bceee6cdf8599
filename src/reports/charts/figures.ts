import { Decimal, toStep, type RoundingDirection } from '../../numbers/index.js';
import type { Estimate } from '../../quantities/index.js';

/** A figure as a number of so many decimals, for a picture. */
export function drawn(value: Decimal, decimals: number, direction: RoundingDirection = 'nearest'): number {
  // a minus before nought says nothing
  return toStep(value, new Decimal(10).pow(-decimals), direction).toNumber() + 0;
}

/** The ends of an interval that is drawn. */
export interface Interval {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** An estimate as numbers: rounded outward, so that an interval covers all that it stands for; without spread to the nearest. */
export function interval({ low, likely, high }: Estimate<Decimal>, decimals: number): Interval {
  const isRange = low.lt(high);
  return {
    low: drawn(low, decimals, isRange ? 'down' : 'nearest'),
    likely: drawn(likely, decimals),
    high: drawn(high, decimals, isRange ? 'up' : 'nearest'),
  };
}

/** An estimate in words: `38.0 % (37.3 to 39.1)`. */
export function inWords(estimate: Estimate<Decimal>, decimals: number, unit = ''): string {
  const { low, likely, high } = interval(estimate, decimals);
  const text = (value: number): string => value.toFixed(decimals).replace('-', '−');
  const range = estimate.low.lt(estimate.high) ? ` (${text(low)} to ${text(high)})` : '';
  return `${text(likely)}${unit}${range}`;
}
