import { ZERO, type Decimal } from '../numbers/index.js';
import type { TimedReading } from './readings.js';

/** How long a log is beyond a limit, and by how much in sum. */
export interface TimeOutside {
  readonly minutes: Decimal;
  /** The integral of the degrees beyond over time, Celsius degrees times minutes. */
  readonly degreeMinutes: Decimal;
}

/**
 * How long a log is beyond a limit, on straight lines from reading to reading, exactly: where a line crosses the limit the
 * time is shared out, and what is beyond is a triangle or a trapezium.
 *
 * @param readings - in the order of their times
 * @param beyond - degrees beyond the limit, below zero inside
 */
export function timeOutside(readings: readonly TimedReading[], beyond: (celsius: Decimal) => Decimal): TimeOutside {
  let [minutes, degreeMinutes] = [ZERO, ZERO];
  for (const [at, to] of readings.slice(1).entries()) {
    const from = readings[at] ?? to;
    const span = to.minutes.minus(from.minutes);
    const [start, end] = [beyond(from.celsius), beyond(to.celsius)];
    const [more, less] = start.gt(end) ? [start, end] : [end, start];
    if (more.lte(0)) continue;
    const isWhole = less.gte(0);
    const out = isWhole ? span : span.times(more).div(more.minus(less));
    minutes = minutes.plus(out);
    degreeMinutes = degreeMinutes.plus(out.times(isWhole ? more.plus(less) : more).div(2));
  }
  return { minutes, degreeMinutes };
}
