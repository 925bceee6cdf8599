import { Decimal as Base } from 'decimal.js';
import { toJson } from 'laurate';

/** Arithmetic of the tests, of 60 digits, so that what is compared is the library's last digit and not ours. */
export const Exact = Base.clone({ defaults: true, precision: 60 });
export type Exact = Base;

// Molar masses in g/mol, added up by hand from H 1.008, C 12.011, O 15.999, Na 22.990, K 39.098, I 126.90.
export const KOH = new Exact('56.105');
export const NAOH = new Exact('39.997');
export const GLYCERYL = new Exact('38.049'); // C3H8O3 92.094 less three H2O 18.015

type Numberlike = string | number | Base;

/** Difference of two numbers over the greater of 1 and the second. */
export function deviation(a: Numberlike, b: Numberlike): Base {
  const to = new Exact(b.toString());
  return new Exact(a.toString()).minus(to).abs().div(Exact.max(1, to.abs()));
}

const sorted = (_key: string, value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
    : value;

/** A result as text, every Decimal to its last digit and keys in order: two results are the same if their texts are. */
export const textOf = (result: unknown): string => JSON.stringify(toJson(result), sorted);

/** What a program gets that stored a result and read it again. */
export const throughJson = (result: unknown): unknown => JSON.parse(JSON.stringify(result));

/** What notes or cautions say, by code. */
export const codes = (remarks: readonly { readonly code: string }[]): string[] => remarks.map(({ code }) => code);
