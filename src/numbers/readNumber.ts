import { Decimal, type DecimalNumber } from './decimal.js';
import { asWritten } from './described.js';
import { refuse } from './refuse.js';

/** A number as a caller may give it: a finite number, a decimal text such as `'0.183'`, or a Decimal of any copy. */
export type Numeric = number | string | DecimalNumber;

const DECIMAL_TEXT = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d{1,6})?$/i;
const DECIMAL_COMMA = /^[+-]?\d+,\d+$/;
const LONGEST_TEXT = 64;

/** Limits of an accepted number; each is a closed end unless it says otherwise. */
export interface Limits {
  readonly min?: number | string | Decimal;
  readonly max?: number | string | Decimal;
  /** Nothing at or below this. */
  readonly above?: number | string | Decimal;
  /** Nothing at or above this. */
  readonly below?: number | string | Decimal;
}

function parsed(path: string, value: unknown): Decimal {
  if (typeof value === 'number' && Number.isFinite(value)) return new Decimal(value);
  const text = typeof value === 'object' && value !== null ? decimalText(value) : value;
  if (text instanceof Decimal) return text;
  if (typeof text === 'string' && text.length <= LONGEST_TEXT && DECIMAL_TEXT.test(text)) return rounded(text);
  return refuse(value === undefined ? 'missing' : 'not-a-number', path, expectedFor(value), asWritten(value));
}

/** What to write instead; of a comma that may part thousands, both. */
function expectedFor(value: unknown): string {
  if (typeof value !== 'string' || value.length > LONGEST_TEXT || !DECIMAL_COMMA.test(value)) {
    return 'a finite number or decimal text';
  }
  const pointed = `a decimal point: '${value.replace(',', '.')}'`;
  return /,\d{3}$/.test(value) ? `${pointed}, or no separator: '${value.replace(',', '')}'` : pointed;
}

/** No more digits than ours, so that the text of what was read is never longer than what is accepted. */
function rounded(text: string): Decimal {
  const number = new Decimal(text);
  return number.precision() > Decimal.precision ? number.toSignificantDigits(Decimal.precision) : number;
}

/**
 * A Decimal as it is, if our constructor made it, and of any other its text: clones of one copy of decimal.js share their
 * prototype but not their settings, and of another copy the insides may differ.
 */
function decimalText(value: object): unknown {
  try {
    if (!Decimal.isDecimal(value) || !value.isFinite()) return undefined;
    return value.constructor === Decimal ? value : value.toPrecision(Decimal.precision);
  } catch {
    return undefined; // not a Decimal after all
  }
}

/** Whether an object is a Decimal of any copy, rather than a quantity. */
export function isDecimal(value: unknown): value is Decimal {
  return typeof value === 'object' && value !== null && decimalText(value) !== undefined;
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
  return checkedNumber(path, number, limits, typeof value === 'object' ? number.toString() : value);
}

type Limit = number | string | Decimal;

/**
 * Refuses a number outside limits, or too great or too small for any bench.
 *
 * @param shown - what came, for the message
 * @param told - a limit in the unit that came
 * @param unit - what the limits are told in, where that is not what came
 */
export function checkedNumber(
  path: string,
  number: Decimal,
  limits: Limits | undefined,
  shown: unknown,
  told: (limit: Limit) => string = String,
  unit = '',
): Decimal {
  const { min, max, above, below } = limits ?? {};
  const outside = (expected: string): never => refuse('out-of-range', path, expected + unit, shown);
  // the exponent tells the magnitude without arithmetic
  if (!number.isZero() && (number.e < -40 || number.e > 15 || (number.e === 15 && number.abs().gt(1e15)))) {
    outside('a magnitude from 1e-40 to 1e15');
  }
  if (above !== undefined && number.lte(above)) outside(`more than ${told(above)}`);
  if (below !== undefined && number.gte(below)) {
    outside(min === undefined ? `less than ${told(below)}` : `${told(min)} to below ${told(below)}`);
  }
  if ((min !== undefined && number.lt(min)) || (max !== undefined && number.gt(max))) {
    if (min === undefined) outside(`at most ${told(max ?? 0)}`);
    else if (max !== undefined) outside(`${told(min)} to ${told(max)}`);
    else outside(below === undefined ? `at least ${told(min)}` : `${told(min)} to below ${told(below)}`);
  }
  return number;
}
