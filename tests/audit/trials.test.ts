/** The trials of `npm run bench:audit`, a few of each, so that what the guide says of the audit stays true. */
import { describe, expect, it } from 'vitest';
import { slipTrials, soundTrials } from '../bench/audit/trials.js';

describe('drawn recipes', () => {
  it('raise no false alarm where they are sound', () => {
    const { alarms, verdicts } = soundTrials(500, 7);
    expect(alarms).toEqual([]);
    expect(Object.keys(verdicts).sort()).toEqual(['doubtful', 'sound']);
  });

  it('with a slip that nothing explains are all found, and nearly all slips are named', () => {
    const trials = slipTrials(8, 7);
    const sum = (of: (trial: (typeof trials)[number]) => number): number =>
      trials.reduce((total, trial) => total + of(trial), 0);
    expect(trials.filter(({ outside, found }) => found < outside)).toEqual([]);
    // the aims: nine of ten first and 98 of 100 among three, where the figures can tell
    expect(sum(({ firstOfSeparable }) => firstOfSeparable)).toBeGreaterThanOrEqual(0.9 * sum(({ found }) => found));
    expect(sum(({ amongThreeOfSeparable }) => amongThreeOfSeparable)).toBeGreaterThanOrEqual(
      0.98 * sum(({ found }) => found),
    );
  });
});
