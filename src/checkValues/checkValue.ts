import type { Quantity, UnitFor } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';
import type { CallInputs, CallName } from './calls.js';

/** What every published check value says of itself. */
export interface RowBase<C extends CallName = CallName> {
  /** Name of the row; used once. */
  readonly id: string;
  /** The public function it tests. */
  readonly call: C;
  /** What that function is given, as plain data. */
  readonly inputs: CallInputs[C];
  /** Where the quantity stands in the result, as `naoh` or `hydroxide.likely`. */
  readonly result: string;
  /** The figure exactly as printed, misprints included. */
  readonly printed: string;
  /** What the row shows, and for a figure the account of its tolerance. */
  readonly why: string;
  /** The publication. */
  readonly source: SourceId;
  /** Table, page or section in it. */
  readonly where: string;
  /** Read in a copy, recalled, or worked out from figures that were read and not itself printed. */
  readonly obtained: 'read' | 'memory' | 'derived';
}

/** What a check of a quantity says besides. */
export interface CheckBase<C extends CallName = CallName> extends RowBase<C> {
  /** What brings the printed figure to `unit` (a coefficient per one per cent: 100); one if left out. */
  readonly times?: string;
  /** The unit the result is read in. */
  readonly unit: UnitFor<Quantity>;
}

/** A printed figure that the result must meet within a tolerance. */
export interface FigureCheck<C extends CallName = CallName> extends CheckBase<C> {
  /** What we hold right: `printed` by `times`, unless there is a misprint. */
  readonly expected: string;
  /** Largest deviation either way, in `unit`. `why` opens with its parts, each with a cause. */
  readonly tolerance: string;
  /** What is wrong in print, and why we hold `expected`. */
  readonly misprint?: string;
}

/** A printed range that the result must lie in; null where it sets no limit. */
export interface RangeCheck<C extends CallName = CallName> extends CheckBase<C> {
  readonly expectedRange: readonly [low: string | null, high: string | null];
}

/** A printed observation that must lie within the low and high of the result. */
export interface InsideCheck<C extends CallName = CallName> extends CheckBase<C> {
  readonly expectedInside: string;
}

/** A range from least to greatest, worked out apart from the library, whose ends the low and high of the result must meet. */
export interface BoundsCheck<C extends CallName = CallName> extends CheckBase<C> {
  readonly expectedBounds: readonly [low: string, high: string];
  /** Largest deviation of either end, in `unit`. `why` opens with its parts, each with a cause. */
  readonly tolerance: string;
}

/** A word in the result, as a verdict, that what is printed leaves open. */
export interface WordsCheck<C extends CallName = CallName> extends RowBase<C> {
  /** The words of which the result must be one. */
  readonly expectedWords: readonly string[];
}

/** A published figure the library is checked against. */
export type CheckValue = {
  [C in CallName]: FigureCheck<C> | RangeCheck<C> | InsideCheck<C> | BoundsCheck<C> | WordsCheck<C>;
}[CallName];
