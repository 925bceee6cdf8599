import { Decimal, frozen } from '../numbers/index.js';
import { valueIn, type Quantity } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';
import { resultOf } from './calls.js';
import type { BoundsCheck, CheckBase, CheckValue } from './checkValue.js';
import { checkValues } from './checkValues.js';
import { knownDisagreements } from './data/knownDisagreements.js';

/** One published figure against the library. */
export interface CheckOutcome {
  /** Name of the row in `checkValues()`. */
  readonly id: string;
  /** The public function tested. */
  readonly call: string;
  /** The publication. */
  readonly source: SourceId;
  /** What the library says, unrounded; `low to high` where bounds were asked for, or a word. */
  readonly got: string;
  /** What the publication says, misprints put right; `low to high` where it gives a range, or words. */
  readonly expected: string;
  /**
   * How far the library lies above it, or an observation above the bounds (negative: below), in the unit of the row; of
   * bounds against bounds the end that is further off; of a word 0 where it is among the expected, else 1.
   */
  readonly deviation: string;
  /** The largest deviation that meets the row; zero for ranges, bounds and words. */
  readonly tolerance: string;
  readonly met: boolean;
  /** Why it is not met, where that is known. */
  readonly known?: string;
}

/** Result of {@link selfCheck}. */
export interface SelfCheck {
  readonly rows: readonly CheckOutcome[];
  /** Rows that agree. */
  readonly met: number;
  /** Rows that do not, with a reason on file. */
  readonly known: number;
  /** All rows; `total − met − known` is the number of faults. */
  readonly total: number;
}

/**
 * Runs the library against every published figure on file.
 *
 * @returns one row a figure, with what was got, what is printed, and whether they agree
 *
 * @example
 * ```ts
 * const { met, known, total } = selfCheck();
 * total - met - known; // => 0
 * ```
 */
export function selfCheck(): SelfCheck {
  const rows = frozen(checkValues().map(outcomeOf));
  return frozen({
    rows,
    met: rows.filter((row) => row.met).length,
    known: rows.filter((row) => row.known !== undefined).length,
    total: rows.length,
  });
}

/**
 * Runs one published figure.
 *
 * @param row - a row of `checkValues()`, or one of your own
 * @returns what was got beside what is printed
 */
export function outcomeOf(row: CheckValue): CheckOutcome {
  const found = compared(row);
  const met = found.deviation.abs().lte(found.tolerance);
  const known = knownDisagreements[row.id];
  return frozen({
    id: row.id,
    call: row.call,
    source: row.source,
    got: found.got,
    expected: found.expected,
    deviation: found.deviation.toString(),
    tolerance: found.tolerance,
    met,
    ...(known === undefined || met ? {} : { known }),
  });
}

interface Comparison {
  readonly got: string;
  readonly expected: string;
  readonly deviation: Decimal;
  readonly tolerance: string;
}

function compared(row: CheckValue): Comparison {
  const result = resultOf(row.call, row.inputs);
  if ('expectedWords' in row) {
    const got = String(fieldAt(result, row.result));
    const isAmong = row.expectedWords.includes(got);
    return { got, expected: row.expectedWords.join(' or '), deviation: new Decimal(isAmong ? 0 : 1), tolerance: '0' };
  }
  const at = (path: string): Decimal => quantityAt(result, path, row.unit);
  if ('expectedInside' in row) {
    // An equivalent runs against the saponification value: the low end of one is the high end of the other.
    const [low, high] = inOrder(at(`${row.result}.low`), at(`${row.result}.high`));
    const deviation = beyond(new Decimal(row.expectedInside), low, high);
    return { got: `${low.toString()} to ${high.toString()}`, expected: row.expectedInside, deviation, tolerance: '0' };
  }
  if ('expectedBounds' in row) return boundsCompared(row, at(`${row.result}.low`), at(`${row.result}.high`));
  const got = at(row.result);
  if ('expectedRange' in row) {
    const [low, high] = row.expectedRange;
    const deviation = beyond(got, new Decimal(low ?? -Infinity), new Decimal(high ?? Infinity));
    return { got: got.toString(), expected: rangeInWords(low, high), deviation, tolerance: '0' };
  }
  return { got: got.toString(), expected: row.expected, deviation: got.minus(row.expected), tolerance: row.tolerance };
}

/** Bounds against bounds: the deviation is that of the end further off. */
function boundsCompared(
  { expectedBounds: [low, high], tolerance }: BoundsCheck,
  least: Decimal,
  most: Decimal,
): Comparison {
  const [atLow, atHigh] = [least.minus(low), most.minus(high)];
  return {
    got: `${least.toString()} to ${most.toString()}`,
    expected: rangeInWords(low, high),
    deviation: atLow.abs().gt(atHigh.abs()) ? atLow : atHigh,
    tolerance,
  };
}

function rangeInWords(low: string | null, high: string | null): string {
  if (low === null) return `at most ${String(high)}`;
  return high === null ? `at least ${low}` : `${low} to ${high}`;
}

/** How far a value lies above a range, negative below it, zero within. */
function beyond(value: Decimal, low: Decimal, high: Decimal): Decimal {
  if (value.lt(low)) return value.minus(low);
  return value.gt(high) ? value.minus(high) : new Decimal(0);
}

function inOrder(one: Decimal, other: Decimal): readonly [Decimal, Decimal] {
  return one.lte(other) ? [one, other] : [other, one];
}

/** The quantity at a path of a result, in the unit asked for. */
function quantityAt(result: unknown, path: string, unit: CheckBase['unit']): Decimal {
  return valueIn(fieldAt(result, path) as Quantity, unit);
}

function fieldAt(result: unknown, path: string): unknown {
  let found = result;
  for (const key of path.split('.')) found = (found as Readonly<Record<string, unknown>>)[key];
  return found;
}
