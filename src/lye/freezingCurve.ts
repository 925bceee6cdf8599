import { Decimal, onStraightLines, ZERO, type Knot } from '../numbers/index.js';
import type { SourceId } from '../sources/index.js';
import type { Alkali } from './alkali.js';
import { kohFreezing, kohFreezingPoints, naohFreezing } from './data/lyeFreezing.js';

/** Where a lye begins to freeze, °C. */
export interface Freezing {
  readonly celsius: Decimal;
  /** Lowest and highest that the reading of the curve allows; left out where the figure was recalled bare. */
  readonly bounds?: { readonly low: Decimal; readonly high: Decimal };
  readonly basis: readonly SourceId[];
}

/** Strengths for which a freezing point is known, in words. */
export const KNOWN_FREEZING: Readonly<Record<Alkali, string>> = {
  naoh: '0 to 73.37 percent of naoh',
  koh: '0 to 7 percent of koh, or 30.8, 45 or 50 percent exactly',
};

/** How well the digitised points are known: °C, and percent of strength. */
const OF_TEMPERATURE = '0.5';
const OF_STRENGTH = '0.3';
/** What straight lines between the printed rows of KOH leave out, °C: the rows are met by their neighbours within this. */
const BETWEEN_ROWS = '0.05';

const lines = new Map<Alkali, readonly Knot[]>();

/** The points of the curve from pure water on, parsed when first used. */
function knotsOf(alkali: Alkali): readonly Knot[] {
  let knots = lines.get(alkali);
  if (knots === undefined) {
    const { rows } = alkali === 'naoh' ? naohFreezing : kohFreezing;
    knots = [{ x: ZERO, y: ZERO }, ...rows.map(([x, y]) => ({ x: new Decimal(x), y: new Decimal(y) }))];
    lines.set(alkali, knots);
  }
  return knots;
}

/** The freezing point of a lye by its strength in percent, on straight lines between the points; or nothing where none is known. */
export function freezingOf(alkali: Alkali, percent: Decimal): Freezing | undefined {
  const knots = knotsOf(alkali);
  const last = knots.reduce((_, stronger) => stronger);
  if (percent.gt(last.x)) return alkali === 'koh' ? singlePoint(percent) : undefined;
  const celsius = onStraightLines(knots, percent);
  return alkali === 'naoh'
    ? { celsius, bounds: naohBounds(knots, percent), basis: [naohFreezing.source] }
    : {
        celsius,
        bounds: { low: celsius.minus(BETWEEN_ROWS), high: celsius.plus(BETWEEN_ROWS) },
        basis: [kohFreezing.source],
      };
}

/** The lowest and highest of the curve within its error of strength, and its error of temperature on top. */
function naohBounds(knots: readonly Knot[], percent: Decimal): { readonly low: Decimal; readonly high: Decimal } {
  const from = Decimal.max(ZERO, percent.minus(OF_STRENGTH));
  const to = percent.plus(OF_STRENGTH);
  const inside = knots.filter(({ x }) => x.gt(from) && x.lt(to)).map(({ y }) => y);
  const all = [onStraightLines(knots, from), ...inside, onStraightLines(knots, to)];
  return { low: Decimal.min(...all).minus(OF_TEMPERATURE), high: Decimal.max(...all).plus(OF_TEMPERATURE) };
}

function singlePoint(percent: Decimal): Freezing | undefined {
  const row = kohFreezingPoints.rows.find(([strength]) => percent.eq(strength));
  return row === undefined ? undefined : { celsius: new Decimal(row[1]), basis: [kohFreezingPoints.source] };
}

/** Whether a lye of this strength may hold crystals at this temperature, so far as is known. */
export function mayHoldCrystals(alkali: Alkali, percent: Decimal, celsius: Decimal): boolean {
  const known = freezingOf(alkali, percent);
  return known !== undefined && celsius.lt(known.bounds?.high ?? known.celsius);
}
