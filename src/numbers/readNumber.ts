import { Decimal } from './decimal.js';
import { refuse } from './refuse.js';

/** A number as a caller may give it: a finite number, a decimal text such as `'0.183'`, or a Decimal of any copy. */
export type Numeric = number | string | Decimal;

const DECIMAL_TEXT = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d{1,6})?$/i;
const LONGEST_TEXT = 64;
const FINITE = 'a finite number or decimal text';

/** Limits of an accepted number; each is a closed end unless it says otherwise. */
export interface Limits {
  readonly min?: number | string;
  readonly max?: number | string;
  /** Nothing at or below this. */
  readonly above?: number | string;
}

function parsed(path: string, value: unknown): Decimal {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) refuse('not-a-number', path, FINITE, value);
    return new Decimal(value);
  }
  if (typeof value === 'string') {
    if (value.length > LONGEST_TEXT || !DECIMAL_TEXT.test(value)) refuse('not-a-number', path, FINITE, value);
    return new Decimal(value);
  }
  if (value instanceof Decimal && value.isFinite()) return value;
  if (Decimal.isDecimal(value)) return rewrapped(path, value);
  return refuse(value === undefined ? 'missing' : 'not-a-number', path, FINITE, value);
}

/** A Decimal of another copy of decimal.js is read by its text: its insides may differ. */
function rewrapped(path: string, value: Decimal): Decimal {
  try {
    const text = value.toString();
    if (DECIMAL_TEXT.test(text)) return new Decimal(text).toSignificantDigits(Decimal.precision);
  } catch {
    // not a Decimal after all: refused below, with everything else that is no number
  }
  return refuse('not-a-number', path, FINITE, value);
}

/**
 * Reads one number.
 *
 * Refused: NaN, infinities, anything but a plain decimal text (`'1,5'`), text over 64 characters, a magnitude over
 * 1e15 or, unless it is zero, under 1e-40.
 *
 * @throws CalculationError `missing`, `not-a-number` or `out-of-range`, with the path
 */
export function readNumber(path: string, value: unknown, limits?: Limits): Decimal {
  const number = parsed(path, value);
  // the exponent tells the magnitude without arithmetic
  if (!number.isZero() && (number.e < -40 || number.e > 15 || (number.e === 15 && number.abs().gt(1e15)))) {
    refuse('out-of-range', path, 'a magnitude from 1e-40 to 1e15', value);
  }
  if (limits !== undefined) checkLimits(path, number, limits, value);
  return number;
}

function checkLimits(path: string, number: Decimal, { min, max, above }: Limits, value: unknown): void {
  if (min !== undefined && number.lt(min)) {
    refuse(
      'out-of-range',
      path,
      max === undefined ? `at least ${String(min)}` : `${String(min)} to ${String(max)}`,
      value,
    );
  }
  if (above !== undefined && number.lte(above)) refuse('out-of-range', path, `more than ${String(above)}`, value);
  if (max !== undefined && number.gt(max)) {
    refuse(
      'out-of-range',
      path,
      min === undefined ? `at most ${String(max)}` : `${String(min)} to ${String(max)}`,
      value,
    );
  }
}
