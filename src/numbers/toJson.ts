import { Decimal } from './decimal.js';

/** A result as it stands in JSON: the same shape, every Decimal a text. */
export type Json<T> = T extends Decimal
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
 *
 * @example
 * ```ts
 * const json = toJson(molarMassOf('NaOH'));
 * json.molarMass; // => { gPerMol: '39.997' }
 * ```
 */
export function toJson<T>(result: T): Json<T> {
  return plain(result) as Json<T>;
}

function plain(value: unknown): unknown {
  if (value instanceof Decimal || Decimal.isDecimal(value)) return value.toString();
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, field]) => field !== undefined)
      .map(([key, field]) => [key, plain(field)]),
  );
}
