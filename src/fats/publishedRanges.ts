import { Decimal } from '../numbers/index.js';
import { fats } from './data/fatNames.js';
import { publishedFats, type PublishedLimits } from './data/publishedFats.js';

/** Two ends, both of them set. */
export interface ClosedRange {
  readonly low: Decimal;
  readonly high: Decimal;
}

/** Ranges that have both ends. */
const closedOf = (limits: readonly PublishedLimits[]): readonly (readonly [low: number, high: number])[] =>
  limits.flatMap(([low, high]) => (low === null || high === null ? [] : [[low, high] as const]));

const spanOf = (ranges: readonly (readonly [low: number, high: number])[]): ClosedRange => ({
  low: Decimal.min(...ranges.map(([low]) => low)),
  high: Decimal.max(...ranges.map(([, high]) => high)),
});

/** The union of ranges that have both ends. */
export function unionOf(limits: readonly PublishedLimits[]): ClosedRange | undefined {
  const closed = closedOf(limits);
  return closed.length === 0 ? undefined : spanOf(closed);
}

let span: ClosedRange | undefined;

/** From the lowest to the highest saponification value, mg KOH/g, that any standard on file allows a triglyceride. */
export function triglycerideSpan(): ClosedRange {
  if (span !== undefined) return span;
  const rows = publishedFats();
  const ofTriglycerides = fats.filter(({ kind }) => kind === 'triglyceride');
  span = spanOf(ofTriglycerides.flatMap(({ id }) => closedOf(rows[id].saponificationValue ?? [])));
  return span;
}
