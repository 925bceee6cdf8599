/** What is refused is nothing; what breaks in another way is not hidden. */
import { describe, expect, it } from 'vitest';
import { refuse, unlessRefused, type CalculationError } from '../../src/numbers/index.js';

/** What comes of some work, and what was told of it. */
function outcomeOf(work: () => number): readonly [result: number | undefined, told: readonly string[]] {
  const told: string[] = [];
  const tell = ({ code, path }: CalculationError): number => told.push(`${code} ${path}`);
  return [unlessRefused(work, tell), told];
}
const refused = (): number => refuse('missing', 'x', 'a figure', undefined);

describe('work that may be refused', () => {
  it('gives what it gives, and tells nothing', () => {
    expect(outcomeOf(() => 5)).toEqual([5, []]);
  });

  it('gives nothing where it is refused, and tells why if that is asked for', () => {
    expect(outcomeOf(refused)).toEqual([undefined, ['missing x']]);
    expect(unlessRefused(refused)).toBeUndefined();
  });

  it('passes on what is no refusal', () => {
    const broken = new RangeError('not ours');
    const work = (): number => {
      throw broken;
    };
    expect(() => outcomeOf(work)).toThrow(broken);
  });
});
