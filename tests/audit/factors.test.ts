/** What a slip is looked for among: the neighbours in a list of fats, and the units that fats are measured in. */
import { fat, fats } from 'laurate';
import { describe, expect, it } from 'vitest';
import { fatUnitFactors } from '../../src/audit/slips/unitSlips.js';
import { neighboursOf } from '../../src/audit/slips/valueSlips.js';

describe('neighbours in the list of fats', () => {
  const neighbours = (id: string): readonly string[] => neighboursOf(fat(id)).flatMap((one) => one.id ?? []);

  it('stand on both sides, and see each other', () => {
    const counts = fats.map(({ id }) => {
      for (const other of neighbours(id)) expect(neighbours(other)).toContain(id);
      return neighbours(id).length;
    });
    // only the first and the last have but one
    expect(counts.sort()).toEqual([1, 1, ...Array.from({ length: fats.length - 2 }, () => 2)]);
  });
});

describe('a fluid ounce of fat printed as an ounce', () => {
  it.each([
    ['light, hot; recalled', '0.86'],
    ['castor oil, the densest; recalled', '0.961'],
  ])('%s, %s g/mL, lies inside the factor', (_, density) => {
    const { factor } = fatUnitFactors('oz').find(({ meant }) => meant === 'usFlOz') ?? expect.unreachable();
    const ounces = (29.5735 * Number(density)) / 28.3495;
    expect(factor.low.lte(ounces) && factor.high.gte(ounces)).toBe(true);
  });
});
