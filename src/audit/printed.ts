import { Decimal } from '../numbers/index.js';
import { unitsByKind, type MassInput, type Units } from '../quantities/index.js';

/**
 * A figure as printed, in the canonical unit of its kind, and what it may stand for: one unit of its last digit either way,
 * because old books cut where we round.
 */
export interface Printed {
  readonly low: Decimal;
  readonly value: Decimal;
  readonly high: Decimal;
  /** The number as it stands there, and its unit; empty where it has none. */
  readonly text: string;
  readonly unit: string;
}

/** One unit of the last digit of a number as printed: `'4.0'` has a tenth, `'900'` a whole one. */
export function lastDigitOf(text: string): Decimal {
  const [digits = '', power = '0'] = text.toLowerCase().split('e');
  // nought times a power of ten is nought, and may have been given any
  const exponent = /[1-9]/.test(digits) ? power : '0';
  const decimals = digits.includes('.') ? digits.length - digits.indexOf('.') - 1 : 0;
  return new Decimal(10).pow(Number(exponent) - decimals);
}

/** What a number of a text may stand for. One above nothing stays so, whatever its last digit. */
function mayStandFor(text: string): { readonly least: Decimal; readonly number: Decimal; readonly most: Decimal } {
  const number = new Decimal(text);
  const step = lastDigitOf(text);
  const least = number.gt(0) && number.lte(step) ? number.div(2) : number.minus(step);
  return { least, number, most: number.plus(step) };
}

/** A quantity of a recipe as printed. */
export function printedQuantity<U extends string>(quantity: object, units: Units<U>): Printed {
  const [[unit, figure] = ['', '0']] = Object.entries(quantity) as [string, unknown][];
  const text = String(figure);
  const { least, number, most } = mayStandFor(text);
  const { toCanonical } = units[unit as U];
  const [one, other] = [toCanonical(least, unit), toCanonical(most, unit)];
  return { low: Decimal.min(one, other), value: toCanonical(number, unit), high: Decimal.max(one, other), text, unit };
}

/** A number without unit, as printed. */
export function printedNumber(figure: unknown): Printed {
  const text = String(figure);
  const { least, number, most } = mayStandFor(text);
  return { low: least, value: number, high: most, text, unit: '' };
}

/** A ratio is off by no more than this part of itself, whatever its last digit: a convention. */
export const WIDEST_RATIO = 0.25;

/** A ratio as printed: `'2'` for 1.03 or 3 would be no rounding. */
export function printedRatio(figure: unknown): Printed {
  const printed = printedNumber(figure);
  const { value } = printed;
  if (value.lte(0)) return printed;
  const off = value.times(WIDEST_RATIO);
  return {
    ...printed,
    low: Decimal.max(printed.low, value.minus(off)),
    high: Decimal.min(printed.high, value.plus(off)),
  };
}

/** A mass that is weighed as printed, g: it is what the pot holds. */
export function weighedMass(mass: MassInput): Printed {
  const { value, text, unit } = printedQuantity(mass, unitsByKind().mass);
  return { low: value, value, high: value, text, unit };
}

/** A mass that was worked out and printed, g. */
export function printedMass(mass: MassInput): Printed {
  const printed = printedQuantity(mass, unitsByKind().mass);
  return printed.low.isNeg() ? { ...printed, low: printed.value } : printed;
}
