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

/** A quantity of a recipe as printed. A figure above nothing stays so, whatever its last digit. */
export function printedQuantity<U extends string>(quantity: object, units: Units<U>): Printed {
  const [[unit, figure] = ['', '0']] = Object.entries(quantity) as [string, unknown][];
  const text = String(figure);
  const number = new Decimal(text);
  const step = lastDigitOf(text);
  const { toCanonical } = units[unit as U];
  // the reciprocal of nothing, or of less, is no figure of any fat
  const least = number.gt(0) && number.lte(step) ? number.div(2) : number.minus(step);
  const [one, other] = [toCanonical(least, unit), toCanonical(number.plus(step), unit)];
  return { low: Decimal.min(one, other), value: toCanonical(number, unit), high: Decimal.max(one, other), text, unit };
}

/** A number without unit, as printed. */
export function printedNumber(figure: unknown): Printed {
  const text = String(figure);
  const [value, step] = [new Decimal(text), lastDigitOf(text)];
  return { low: value.minus(step), value, high: value.plus(step), text, unit: '' };
}

/** A mass as printed, g. */
export function printedMass(mass: MassInput): Printed {
  const printed = printedQuantity(mass, unitsByKind().mass);
  return printed.low.isNeg() ? { ...printed, low: printed.value } : printed;
}
