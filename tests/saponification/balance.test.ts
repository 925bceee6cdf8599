/**
 * The balance of fats and alkali against a model of the tests' own, over all lots and assays at once.
 *
 * Tolerance 1e-28 relative: the library's 34 digits less what a few score operations and one difference of near numbers
 * can cost; the model carries 60.
 */
import fc from 'fast-check';
import { superfatFromLye } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact } from '../laws/exact.js';
import { asFat, asLye, charges, lots, reckoned, type Charge, type Lot, type Reckoned } from './model.js';

const FIGURES = ['superfat', 'superfatByMass', 'freeCausticAlkali'] as const;
const END_OF_DIGITS = '1e-28';

const batchOf = (some: readonly Lot[], lye: readonly Charge[]): number =>
  [...some, ...lye].reduce((total, { grams }) => total + grams, 0);

const ours = (some: readonly Lot[], lye: readonly Charge[]) => {
  const { superfat, superfatByMass, freeCausticAlkali } = superfatFromLye({
    fats: some.map((one) => asFat(one)),
    lye: lye.map(asLye),
  });
  const figures = { superfat, superfatByMass, freeCausticAlkali };
  return (figure: (typeof FIGURES)[number], end: 'low' | 'likely' | 'high'): string =>
    String(Object.values(figures[figure][end])[0]);
};

/** A model point: each range at its own place between its ends. */
function pointAt(some: readonly Lot[], lye: readonly Charge[], place: (at: number, low: number, high: number) => number): Reckoned {
  return reckoned({
    fats: some.map((one, at) => ({ lot: one, value: place(at, one.low, one.high) })),
    alkalis: lye.map((one, at) => ({ charge: one, assay: place(some.length + at, one.low, one.high) })),
    batch: batchOf(some, lye),
  });
} // prettier-ignore

describe('the balance of fats and alkali', () => {
  it('at the likely lots and assays is that of the model', () => {
    fc.assert(
      fc.property(lots, charges, (some, lye) => {
        const figure = ours(some, lye);
        const model = pointAt(some, lye, (_at, low, high) => (low + high) / 2);
        for (const name of FIGURES) expect(deviation(figure(name, 'likely'), model[name]).lte(END_OF_DIGITS)).toBe(true);
      }),
      { numRuns: 500 },
    );
  }); // prettier-ignore

  it('never leaves its bounds, whatever lot comes and whatever the assay', () => {
    const places = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(lots, charges, places, (some, lye, where) => {
        const figure = ours(some, lye);
        const inside = pointAt(some, lye, (at, low, high) => low + (high - low) * (where[at] ?? 0));
        for (const name of FIGURES) {
          // the place between the ends is in double precision, but inside them all the same; the last digits are those of
          // the figure, which is huge where much alkali meets little fat
          const lastDigits = Exact.max(1, inside[name].abs()).times(END_OF_DIGITS);
          expect(inside[name].gte(new Exact(figure(name, 'low')).minus(lastDigits))).toBe(true);
          expect(inside[name].lte(new Exact(figure(name, 'high')).plus(lastDigits))).toBe(true);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('reaches its bounds: they are the least and the greatest over every corner of lots and assays', () => {
    fc.assert(
      fc.property(lots, charges, (some, lye) => {
        const figure = ours(some, lye);
        const corners = Array.from({ length: 2 ** (some.length + lye.length) }, (_, pattern) =>
          pointAt(some, lye, (at, low, high) => ((pattern >> at) & 1 ? high : low)),
        );
        for (const name of FIGURES) {
          const values = corners.map((corner) => corner[name]);
          expect(deviation(figure(name, 'low'), Exact.min(...values)).lte(END_OF_DIGITS)).toBe(true);
          expect(deviation(figure(name, 'high'), Exact.max(...values)).lte(END_OF_DIGITS)).toBe(true);
        }
      }),
    );
  });

  it('low is at most likely, likely at most high', () => {
    fc.assert(
      fc.property(lots, charges, (some, lye) => {
        const figure = ours(some, lye);
        for (const name of FIGURES) {
          const [low, likely, high] = (['low', 'likely', 'high'] as const).map((end) => new Exact(figure(name, end)));
          expect(low?.minus(END_OF_DIGITS).lte(likely ?? 0)).toBe(true);
          expect(likely?.minus(END_OF_DIGITS).lte(high ?? 0)).toBe(true);
        }
      }),
    );
  });

  it('has superfat by mass from 0 to 100 and free caustic only where superfat is negative', () => {
    fc.assert(
      fc.property(lots, charges, (some, lye) => {
        const figure = ours(some, lye);
        for (const end of ['low', 'likely', 'high'] as const) {
          const byMass = new Exact(figure('superfatByMass', end));
          expect(byMass.gte(0) && byMass.lte(new Exact(100).plus(END_OF_DIGITS))).toBe(true);
        }
        const excess = new Exact(figure('superfat', 'likely')).lt('-1e-28');
        expect(new Exact(figure('freeCausticAlkali', 'likely')).gt(0)).toBe(excess);
      }),
    );
  });
});
