import { frozen } from '../numbers/index.js';
import { readTime, type Time } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';
import type { JudgingWindowId } from './data/processWindows.js';
import { workSteps, type PrintedHoldRow, type WorkStepId } from './data/workSteps.js';
import type { WorkStage } from './stage.js';

/** A time that a publication prints for such a step, of its own route. */
export interface PrintedHold {
  readonly low: Time;
  /** Left out where the text says "at least". */
  readonly high?: Time;
  /** As printed. */
  readonly printed: string;
  /** What it was printed of. */
  readonly of: string;
  readonly source: SourceId;
  readonly where: string;
}

/** A step of the work. */
export interface WorkStep {
  readonly id: WorkStepId;
  readonly stage: WorkStage;
  /** What is done. */
  readonly does: string;
  readonly why: string;
  /** What ends it: no time of this route is published for any step. */
  readonly until: string;
  /** The window its temperature is judged by. */
  readonly window: JudgingWindowId;
  /** Times printed of other routes; none where no publication was seen to give one. */
  readonly holds: readonly PrintedHold[];
  /** Customary without a source, or a rule of this library. */
  readonly obtained: 'common-practice' | 'convention';
  readonly source: SourceId;
}

/**
 * The steps of the alcohol-free route in their order: what is done, why, what ends it, at which temperature, and the times
 * that publications print of other routes.
 *
 * The order is common practice and has no source. No publication was seen to give hold times of this route: a step ends when
 * what `until` says is seen.
 *
 * @returns frozen rows, times in minutes
 *
 * @example
 * ```ts
 * orderOfWork().map(({ id }) => id).slice(3, 6); // => ['add-glycerol', 'add-propylene-glycol', 'add-sorbitol']
 * ```
 */
export function orderOfWork(): readonly WorkStep[] {
  const steps = workSteps();
  return frozen(
    (Object.keys(steps) as WorkStepId[]).map((id): WorkStep => {
      const { holds, ...said } = steps[id];
      const obtained = said.source === 'common-practice' ? 'common-practice' : 'convention';
      return frozen({ id, ...said, obtained, holds: frozen(holds.map(hold)) });
    }),
  );
}

function hold({ low, high, ...said }: PrintedHoldRow): PrintedHold {
  return frozen({
    low: frozen({ minutes: readTime('low', low) }),
    ...(high === undefined ? {} : { high: frozen({ minutes: readTime('high', high) }) }),
    ...said,
  });
}
