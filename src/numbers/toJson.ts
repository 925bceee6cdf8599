import type { DecimalNumber } from './decimal.js';
import { isList } from './described.js';
import { isDecimal } from './readNumber.js';
import { refuse } from './refuse.js';

/** A result as it stands in JSON: the same shape, every Decimal a text. */
export type Json<T> = T extends DecimalNumber
  ? string
  : T extends (...args: never) => unknown
    ? never
    : T extends object
      ? { readonly [K in keyof T]: Json<T[K]> }
      : T;

/**
 * A result as plain JSON data: the same shape with every Decimal as its full decimal text.
 *
 * Every quantity in it is accepted as input again, with nothing lost.
 *
 * @param result - any result of this library
 * @returns data that `JSON.stringify` writes and `JSON.parse` gives back unchanged
 * @throws CalculationError `bad-shape` for a value that holds itself
 *
 * @example
 * ```ts
 * const json = toJson(molarMassOf('NaOH'));
 * json.molarMass; // => { gPerMol: '39.997' }
 * ```
 */
export function toJson<T>(result: T): Json<T> {
  return plain(result, 0) as Json<T>;
}

/** No result is deeper; a value that holds itself is. */
const DEEPEST = 50;

function plain(value: unknown, depth: number): unknown {
  if (isDecimal(value)) return value.toString();
  if (typeof value !== 'object' || value === null) return value;
  if (depth > DEEPEST) refuse('bad-shape', 'result', 'a result of this library', 'a value that holds itself');
  if (isList(value)) return value.map((entry) => plain(entry, depth + 1));
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, field]) => field !== undefined)
      .map(([key, field]) => [key, plain(field, depth + 1)]),
  );
}
