import { Decimal } from '../../numbers/index.js';
import { lastDigitOf } from '../printed.js';

/** A number that slips of the pen may have made into the one that is printed, and the slip. */
export interface SlipOfThePen {
  readonly code: 'digits-exchanged' | 'decimal-point-moved';
  readonly meant: Decimal;
  /** One unit of the last digit of what was meant. */
  readonly step: Decimal;
}

/** The numbers that were meant if two neighbouring digits of a text changed places, or its decimal point moved. */
export function slipsOfThePen(text: string): readonly SlipOfThePen[] {
  if (/e/i.test(text) || text.length > 20) return [];
  const step = lastDigitOf(text);
  const exchanged = Array.from(text).flatMap((digit, at) => {
    // over the decimal point as well
    const next = text[at + 1] === '.' ? at + 2 : at + 1;
    const other = text[next];
    if (other === undefined || digit === other || !isDigit(digit) || !isDigit(other)) return [];
    const chars = Array.from(text);
    [chars[at], chars[next]] = [other, digit];
    return [{ code: 'digits-exchanged' as const, meant: new Decimal(chars.join('')), step }];
  });
  const moved = [-3, -2, -1, 1, 2, 3].map((places) => {
    const meant = new Decimal(text).times(new Decimal(10).pow(places));
    // noughts that filled up the number are no digits of what was meant
    return { code: 'decimal-point-moved' as const, meant, step: lastDigitOf(meant.toString()) };
  });
  return [...exchanged, ...moved];
}

const isDigit = (char: string): boolean => char >= '0' && char <= '9';
