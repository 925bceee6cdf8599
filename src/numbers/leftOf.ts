import { Decimal, ZERO } from './decimal.js';

/** What the rounding of the arithmetic may come to, as a share of what is taken; no figure is given to so many digits. */
const ROUNDING = '1e-28';
const ROUNDED_DIGITS = 28;

/**
 * What is left of a when b is taken from it. Where the two are the same but for the rounding of the arithmetic that is nought,
 * so that nothing that is said of what is left hangs on the last digits.
 */
export function leftOf(a: Decimal, b: Decimal): Decimal {
  const left = a.minus(b);
  // most often the exponents tell
  if (left.e > Math.max(a.e, b.e) - ROUNDED_DIGITS) return left;
  return left.abs().lte(Decimal.max(a.abs(), b.abs()).times(ROUNDING)) ? ZERO : left;
}
