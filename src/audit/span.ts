import { Decimal } from '../numbers/index.js';

/** What a figure may be, from the least to the greatest, and what it most likely is. */
export interface Span {
  readonly low: Decimal;
  readonly likely: Decimal;
  readonly high: Decimal;
}

/** The span of a figure, from its likely value and those at the corners of what varies, between which it is monotone. */
export function spanOver(likely: Decimal, corners: readonly Decimal[]): Span {
  return { low: Decimal.min(likely, ...corners), likely, high: Decimal.max(likely, ...corners) };
}

/** Whether some value lies in both. */
export function meet(
  one: { readonly low: Decimal; readonly high: Decimal },
  other: { readonly low: Decimal; readonly high: Decimal },
): boolean {
  return one.low.lte(other.high) && other.low.lte(one.high);
}
