/** Measurements as Markdown. */
import { table } from '../pages.js';
import { ratioOf, spreadOf, type Rounds, type Spread } from './harness.js';

/** Three figures that count, without an exponent: `0.0312`, `1.83`, `215`. */
export function short(value: number): string {
  if (value >= 100) return value.toFixed(0);
  return value.toFixed(Math.max(0, 2 - Math.floor(Math.log10(value))));
}

/** A median with its quartiles. */
export function withQuartiles({ low, middle, high }: Spread): string {
  return `${short(middle)} (${short(low)} to ${short(high)})`;
}

/** Times of several ways of one job, and how many times each the first one takes. */
export function comparison(measured: readonly Rounds[], unit: string): string {
  const [first] = measured;
  if (first === undefined) throw new Error('nothing was measured');
  return table(
    ['way', unit, `${first.name} takes times as long`],
    measured.map((way) => [
      way.name,
      withQuartiles(spreadOf(way.figures)),
      way === first ? '1' : withQuartiles(ratioOf(first, way)),
    ]),
  );
}

/** Whether a median keeps to an aim, in words. */
export function verdict({ middle }: Spread, aim: number): string {
  return `aim at most ${String(aim)}, measured ${short(middle)}: ${middle <= aim ? 'met' : '**missed**'}`;
}
