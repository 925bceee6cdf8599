/** Exact rationals, and estimates of them. */
import Fraction from 'fraction.js';

export { Fraction };
export type Three<T = Fraction> = Readonly<Record<'low' | 'likely' | 'high', T>>;

/** A figure as drawn: exact, or a range with its likely value or without. */
export type Range = string | { readonly low: string; readonly likely?: string; readonly high: string };

export const ZERO = new Fraction(0);
export const ONE = new Fraction(1);
export const of = (text: string | number): Fraction => new Fraction(text);
export const percent = (text: string): Fraction => of(text).div(100);
export const sum = (terms: readonly Fraction[]): Fraction => terms.reduce((total, term) => total.add(term), ZERO);
export const least = (a: Fraction, b: Fraction): Fraction => (a.lt(b) ? a : b);
export const most = (a: Fraction, b: Fraction): Fraction => (a.gt(b) ? a : b);
/** The part of a whole; none of nothing. */
export const part = (of: Fraction, whole: Fraction): Fraction => (whole.equals(0) ? ZERO : of.div(whole));

/** Low, likely and high of a figure as drawn; where no likely value is given, it is the middle. */
export function three(range: Range, read: (text: string) => Fraction): Three {
  if (typeof range === 'string') return { low: read(range), likely: read(range), high: read(range) };
  const [low, high] = [read(range.low), read(range.high)];
  return { low, likely: range.likely === undefined ? low.add(high).div(2) : read(range.likely), high };
}

export const threeOf = (make: (at: keyof Three) => Fraction): Three => ({
  low: make('low'),
  likely: make('likely'),
  high: make('high'),
});
