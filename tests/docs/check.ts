import { Decimal } from 'decimal.js';
import { expect } from 'vitest';

/** A value as a document writes it: every Decimal, however deep, as its text. */
function written(value: unknown): unknown {
  if (Decimal.isDecimal(value)) return value.toString();
  if (Array.isArray(value)) return value.map(written);
  if (typeof value === 'object' && value !== null) {
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, written(each)]));
  }
  return value;
}

/** `got; // => expected` */
export function check(where: string, got: unknown, expected: unknown): void {
  expect(written(got), where).toStrictEqual(expected);
}

/** `attempt; // throws 'code'` */
export function checkRefusal(where: string, attempt: () => unknown, code: string): void {
  expect(attempt, where).toThrow(expect.objectContaining({ name: 'CalculationError', code }));
}
