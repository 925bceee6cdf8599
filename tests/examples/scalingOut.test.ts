/** The example of scaling out, on fewer recipes: what the pool gives is what one thread gives, in the same order. */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { verdictLineOf } from '../../docs/examples/scaling-out/job.js';
import { pooled } from '../../docs/examples/scaling-out/pooled.js';
import { recipeLine } from '../../docs/examples/scaling-out/recipes.js';

const COUNT = 400;

describe('scaling out', () => {
  it('gives in a pool of two what it gives in one thread, the workers by the built package', async () => {
    expect(existsSync(fileURLToPath(new URL('../../dist/audit.js', import.meta.url))), 'npm run build first').toBe(
      true,
    );
    const lines: string[] = [];
    const progress: number[] = [];
    await pooled({
      count: COUNT,
      workers: 2,
      parcel: 30,
      onParcel: (parcel, done) => {
        lines.push(...parcel);
        progress.push(done);
      },
    });
    const alone = Array.from({ length: COUNT }, (_, index) => verdictLineOf(recipeLine(index)));
    expect(lines).toStrictEqual(alone);
    expect(progress).toHaveLength(Math.ceil(COUNT / 30));
    expect(progress.at(-1)).toBe(COUNT);
    // the recipes are worth auditing: some are sound, some are not
    const verdicts = new Set(alone.map((line) => (JSON.parse(line) as { verdict: string }).verdict));
    expect(verdicts.has('dangerous')).toBe(true);
    expect(verdicts.size).toBeGreaterThan(1);
  });

  it('draws a recipe from its number alone', () => {
    expect(recipeLine(7)).toBe(recipeLine(7));
    expect(recipeLine(7)).not.toBe(recipeLine(8));
  });

  it.each(['', '{"version":1', 'null', '[]', '{"version":2}'])('never stops at a bad line: %j', (line) => {
    expect(JSON.parse(verdictLineOf(line))).toMatchObject({ verdict: 'cannot-tell' });
  });

  it('ends with the fault of who takes the results, whatever is under way', async () => {
    const failing = pooled({
      count: 100,
      workers: 1,
      parcel: 10,
      onParcel: () => {
        throw new Error('disk full');
      },
    });
    await expect(failing).rejects.toThrow('disk full');
  });
});
