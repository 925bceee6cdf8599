import type { Decimal } from '../../numbers/index.js';
import type { SlipCode } from './slip.js';

/** A way in which a figure may have come about, worked out from the values `V` of a recipe. */
export interface Hypothesis<V> {
  readonly code: SlipCode;
  /** The row it happened in, where it is one row. */
  readonly path?: string;
  /** Words that belong to it, as the unit that was meant. */
  readonly words?: Readonly<Record<string, string>>;
  /** How common it is against others: a convention, which orders what the figures cannot tell apart. */
  readonly weight: number;
  /** What it makes of the figure; undefined where these values do not say. */
  readonly figure: (values: V) => Decimal | undefined;
}

/** How common a slip is. */
export const COMMON = 9;
export const USUAL = 3;
export const RARE = 1;
/** Slips of the pen give almost any figure: they stand behind all others. */
export const LAST = 1e-9;

/** More rows than this are no recipe of a bench, and no slip is looked for in each of them. */
export const MOST_ROWS = 24;

/** The same slip in each row of a recipe, its weight shared out among them. */
export function inEachRow<R, V>(
  rows: readonly R[],
  weight: number,
  hypothesis: (row: R, weight: number, at: number) => Hypothesis<V> | readonly Hypothesis<V>[] | undefined,
): readonly Hypothesis<V>[] {
  if (rows.length > MOST_ROWS) return [];
  return rows.flatMap((row, at) => hypothesis(row, weight / rows.length, at) ?? []);
}
