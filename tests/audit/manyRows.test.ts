/** Of more rows than any bench has, no slip is looked for in each; everything else is judged as always. */
import { describe, expect, it } from 'vitest';
import { audited, codesOf, findingIn, naoh, slipsIn } from './recipes.js';

const rows = (count: number, row: (at: number) => object): readonly object[] =>
  Array.from({ length: count }, (_, at) => row(at));
const hundred = (more: object = {}): object => ({ fat: 'Lot', mass: { g: '100' }, ...more });
/** Pure NaOH for so many grams of 250, g. */
const demand = (grams: number): number => (grams * 0.25 * 39.9971) / 56.1056;
const claimed = { superfat: { percent: '5' } };
const slipCodes = (recipe: object): readonly string[] => slipsIn(audited(recipe)).map(({ code }) => code);

describe('with 24 rows and with 25', () => {
  it('a value of one fat with its point moved is contradicted, and the slip is found in the 24', () => {
    const of = (count: number) => {
      const value = (at: number): string => (at === 3 ? '25.0' : '250');
      const fats = rows(count, (at) => hundred({ claimed: { saponificationValue: { mgKohPerG: value(at) } } }));
      return findingIn(audited({ version: 1, fats, lye: [naoh('300')] }), 'saponification-value-contradicted');
    };
    expect([24, 25].map((count) => of(count).path)).toEqual(Array(2).fill('fats[3].claimed.saponificationValue'));
    expect([24, 25].map((count) => of(count).slips.map(({ code }) => code))).toEqual([['decimal-point-moved'], []]);
  });

  it('a fat left out is found in the 24, and a superfat left out in both', () => {
    const of = (count: number, grams: number): object => ({
      version: 1,
      fats: rows(count, (at) => (at === 0 ? { fat: 'Lot', mass: { g: '900' } } : hundred())),
      lye: [naoh(grams.toFixed(1))],
      claimed,
    });
    const others = (count: number): number => (count - 1) * 100;
    const without = [24, 25].map((count) => slipCodes(of(count, demand(others(count)) * 0.95)));
    expect(without.map((codes) => codes.includes('fat-left-out'))).toEqual([true, false]);
    const whole = [24, 25].map((count) => slipCodes(of(count, demand(others(count) + 900))));
    expect(whole.map((codes) => codes.includes('superfat-left-out'))).toEqual([true, true]);
  });

  it('an assay ignored is found in 24 rows of lye, a superfat left out in both', () => {
    const of = (count: number, grams: number, percent: number): object => ({
      version: 1,
      fats: [{ fat: 'Lot', mass: { g: '1000' } }],
      lye: rows(count, () => naoh((grams / count).toFixed(2), percent)),
      claimed,
    });
    const impure = [24, 25].map((count) => slipCodes(of(count, demand(950), 90)));
    expect(impure.map((codes) => codes.includes('assay-ignored'))).toEqual([true, false]);
    const whole = [24, 25].map((count) => slipCodes(of(count, demand(1000), 100)));
    expect(whole.map((codes) => codes.includes('superfat-left-out'))).toEqual([true, true]);
  });

  it('the share of an addition is contradicted, and explained among the 24', () => {
    const of = (count: number) =>
      audited({
        version: 1,
        fats: [{ fat: 'Lot', mass: { g: '1000' } }],
        lye: [naoh('170')],
        water: { g: '330' },
        additions: rows(count, (at) => ({ name: `clay ${String(at)}`, mass: { g: '10' }, ...(at === 0 ? { claimed: { share: { percent: '1.00' } } } : {}) })),
      });
    const found = [24, 25].map((count) => findingIn(of(count), 'addition-share-contradicted').slips);
    expect(found.map((slips) => slips.length > 0)).toEqual([true, false]);
  }); // prettier-ignore

  it('of 25 the worst case is told as of 24', () => {
    const of = (count: number) => audited({ version: 1, fats: rows(count, () => hundred()), lye: [naoh('300')] });
    expect([24, 25].map((count) => codesOf(of(count)).includes('worst-case'))).toEqual([true, true]);
  });
});
