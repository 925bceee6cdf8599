import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/numbers/index.js';
import { extremesOf } from '../../src/saponification/extremes.js';
import { valueAt, type Dimension, type Place } from '../../src/saponification/place.js';

const decimal = (value: number | string): Decimal => new Decimal(value);
const estimate = (low: number, likely: number, high: number) => ({
  low: decimal(low),
  likely: decimal(likely),
  high: decimal(high),
});
const at = (dimension: Dimension, share: number | string): Place => new Map([[dimension, decimal(share)]]);
const text = (found: Readonly<Record<string, { low: Decimal; likely: Decimal; high: Decimal }>>): unknown =>
  Object.fromEntries(
    Object.entries(found).map(([key, { low, likely, high }]) => [
      key,
      [low, likely, high].map((one) => one.toString()),
    ]),
  );

describe('valueAt', () => {
  const value = estimate(10, 11, 20);
  it.each<[string, Place, string]>([
    ['likely', 'likely', '11'],
    ['the low corner', new Map(), '10'],
    ['the high end', at('acids', 1), '20'],
    ['three tenths of the way', at('acids', '0.3'), '13'],
    ['the high end of something else', at('waxes', 1), '10'],
  ])('at %s', (_what, place, expected) => {
    expect(valueAt(value, place, 'acids').toString()).toBe(expected);
  });
});

describe('extremesOf: worked by hand', () => {
  const lots = estimate(1, 2, 4);
  const assay = estimate(3, 3, 3);

  it('where nothing varies there is one figure', () => {
    const found = extremesOf([], (place) => ({
      figures: { sum: valueAt(lots, place, 'acids').plus(valueAt(assay, place, 'total alkali 0')) },
      turning: [decimal(1)],
    }));
    // low corner 1 + 3; likely 2 + 3: dimensions that vary must be named
    expect(text(found)).toEqual({ sum: ['4', '5', '4'] });
  });

  it('a figure that rises and then falls is greatest where it turns', () => {
    // as soap does: up to 3 along the lots, down after it
    const found = extremesOf(['acids'], (place) => {
      const value = valueAt(lots, place, 'acids');
      return {
        figures: { peaked: Decimal.min(value, value.times(-1).plus(6)), steady: value },
        turning: [value.minus(3)],
      };
    });
    expect(text(found)).toEqual({ peaked: ['1', '2', '3'], steady: ['1', '2', '4'] });
  });

  it('of two dimensions, at the edges that cross', () => {
    // turning where x + y = 5, with x from 1 to 4, y from 2 to 3; peak 5, reached from (2, 3) to (3, 2)
    const y = estimate(2, 2, 3);
    const found = extremesOf(['acids', 'total alkali 0'], (place) => {
      const [a, b] = [valueAt(lots, place, 'acids'), valueAt(y, place, 'total alkali 0')];
      const sum = a.plus(b);
      return {
        figures: { peaked: Decimal.min(sum, sum.times(-1).plus(10)), first: a, difference: a.minus(b) },
        turning: [sum.minus(5)],
      };
    });
    expect(text(found)).toEqual({
      peaked: ['3', '4', '5'],
      first: ['1', '2', '4'],
      difference: ['-2', '0', '2'],
    });
  });

  it('a turn at a corner itself needs no crossing', () => {
    const found = extremesOf(['acids'], (place) => {
      const value = valueAt(lots, place, 'acids');
      return { figures: { value }, turning: [value.minus(1)] };
    });
    expect(text(found)).toEqual({ value: ['1', '2', '4'] });
  });
});

describe('extremesOf: laws', () => {
  it('looks at every corner once, and at every edge that crosses', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5 }), fc.integer({ min: -1, max: 6 }), (count, limit) => {
        const dimensions = (['triglycerides', 'waxes', 'acids', 'moisture', 'carbonate 1'] as const).slice(0, count);
        let looks = 0;
        extremesOf(dimensions, (place) => {
          looks += 1;
          const high = place === 'likely' ? 0 : dimensions.filter((one) => place.get(one)?.eq(1) === true).length;
          return { figures: { nothing: decimal(0) }, turning: [decimal(high).minus(limit).minus('0.5')] };
        });
        // edges from a corner with `limit` dimensions high to one with one more
        const choose = (n: number, k: number): number =>
          k < 0 || k > n ? 0 : Array.from({ length: k }, (_, i) => (n - i) / (i + 1)).reduce((a, b) => a * b, 1);
        const crossings = limit < count ? choose(count, limit) * (count - limit) : 0;
        expect(looks).toBe(1 + 2 ** count + Math.round(crossings));
      }),
      { numRuns: 50 },
    );
  });
});
