import { frozen, noted, type Decimal, type Steps } from '../numbers/index.js';
import type { Temperature, TemperatureDifference, Time } from '../quantities/index.js';
import type { JudgingWindowId } from './data/processWindows.js';
import type { JudgingWindow } from './processWindows.js';
import type { TimedReading } from './readings.js';
import { timeOutside } from './timeOutside.js';

/** How far, and how long, a stage was beyond one of its windows. */
export interface BeyondWindow {
  readonly window: JudgingWindowId;
  readonly side: 'above' | 'below';
  /** The end of the window that was passed. */
  readonly limit: Temperature;
  /** The reading furthest beyond it. */
  readonly furthest: Temperature;
  /** How far that is. */
  readonly by: TemperatureDifference;
  /** How long it was beyond, on straight lines between the readings; left out where the times do not tell. */
  readonly time?: Time;
  /** How far it was beyond on average over that time: the two together are the integral. */
  readonly onAverage?: TemperatureDifference;
}

/** What is asked of the log of a stage. */
export interface StageLog {
  readonly lowest: Decimal;
  readonly highest: Decimal;
  /** In the order of their times; none where the times do not tell. */
  readonly timed: readonly TimedReading[];
}

/** How a log passes the ends of a window. */
export function beyondWindow(window: JudgingWindow, log: StageLog, steps: Steps | undefined): readonly BeyondWindow[] {
  const { id, from, to } = window;
  const found: BeyondWindow[] = [];
  if (to !== undefined && log.highest.gt(to.celsius)) {
    found.push(beyondEnd({ window: id, side: 'above', limit: to, furthest: log.highest }, log, steps));
  }
  if (from !== undefined && log.lowest.lt(from.celsius)) {
    found.push(beyondEnd({ window: id, side: 'below', limit: from, furthest: log.lowest }, log, steps));
  }
  return found;
}

type PassedEnd = Pick<BeyondWindow, 'window' | 'side' | 'limit'> & { readonly furthest: Decimal };

function beyondEnd({ furthest, ...end }: PassedEnd, { timed }: StageLog, steps: Steps | undefined): BeyondWindow {
  const of = `${end.side} ${end.window}`;
  const degreesBeyond = (celsius: Decimal): Decimal =>
    end.side === 'above' ? celsius.minus(end.limit.celsius) : end.limit.celsius.minus(celsius);
  const by = noted(steps, `${of}: furthest`, '|t − limit|', 'Celsius degrees', degreesBeyond(furthest));
  const said = {
    ...end,
    furthest: frozen({ celsius: furthest }),
    by: frozen({ celsiusDegrees: by }),
  };
  if (timed.length === 0) return frozen(said);
  const out = timeOutside(timed, degreesBeyond);
  noted(steps, `${of}: time`, 'from crossing to crossing', 'min', out.minutes);
  noted(steps, `${of}: integral`, '∫|t − limit| dτ beyond it', 'Celsius degrees · min', out.degreeMinutes);
  const mean = noted(
    steps,
    `${of}: on average`,
    'integral / time',
    'Celsius degrees',
    out.degreeMinutes.div(out.minutes),
  );
  return frozen({
    ...said,
    time: frozen({ minutes: out.minutes }),
    onAverage: frozen({ celsiusDegrees: mean }),
  });
}
