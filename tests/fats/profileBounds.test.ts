/**
 * The bounds of everything that is worked out from a profile with ranges, against brute force over all corners.
 *
 * Two tolerances: 1e-12 relative where our side is double precision (some hundred operations of 1e-16 each), and 1e-30
 * where both sides are the library's 34 digits.
 */
import fc from 'fast-check';
import { iodineValueFromProfile, profileSummaryOf, saponificationValueFromProfile, type Estimate } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation } from '../laws/exact.js';
import { acidMass, asPoint, asRanges, between, box, corners, doubleBonds, weights, type Limits } from './boxes.js';

type Profile = ReturnType<typeof asRanges> | ReturnType<typeof asPoint>;
const sumOver = (limits: readonly Limits[], shares: readonly number[], of: (acid: string) => number): number =>
  limits.reduce((sum, { acid }, at) => sum + (shares[at] ?? 0) * of(acid), 0);

const moles = (limits: readonly Limits[], shares: readonly number[]): number =>
  sumOver(limits, shares, (acid) => 1 / acidMass(acid));
/** Double bonds in mol, to one gram of acids. */
const bonds = (limits: readonly Limits[], shares: readonly number[]): number =>
  sumOver(limits, shares, (acid) => doubleBonds(acid) / acidMass(acid));
const carbons = (limits: readonly Limits[], shares: readonly number[]): number =>
  sumOver(limits, shares, (acid) => Number(/^C(\d+)/.exec(acid)?.[1]) / acidMass(acid));
const share = (limits: readonly Limits[], shares: readonly number[], belongs: (acid: string) => boolean): number =>
  100 * sumOver(limits, shares, (acid) => (belongs(acid) ? 1 : 0));
const saturated = (from: number, to: number) => (acid: string) => {
  const [, chain, double, rest] = /^C(\d+):(\d+)(.*)$/.exec(acid) ?? [];
  return double === '0' && rest !== '-OH' && Number(chain) >= from && Number(chain) <= to;
};

const inNumbers = <Q extends object>(estimate: Estimate<Q>): [low: string, likely: string, high: string] => {
  const text = (quantity: Q): string => String(Object.values(quantity)[0]);
  return [text(estimate.low), text(estimate.likely), text(estimate.high)];
};

const sv = (kind: 'triglyceride' | 'free-fatty-acid' | 'wax-ester') => (profile: Profile) =>
  inNumbers(saponificationValueFromProfile({ profile, kind }).saponificationValue);
const iv = (kind: 'triglyceride' | 'free-fatty-acid' | 'wax-ester') => (profile: Profile) =>
  inNumbers(iodineValueFromProfile({ profile, kind }).iodineValue);

type Model = (limits: readonly Limits[], shares: readonly number[]) => number;
const figures: [name: string, ours: (profile: Profile) => [string, string, string], model: Model][] = [
  ['SV of a triglyceride', sv('triglyceride'), (l, w) => 3000 * 56.105 / (3 / moles(l, w) + 38.049)],
  ['SV of free acid', sv('free-fatty-acid'), (l, w) => 1000 * 56.105 * moles(l, w)],
  ['SV of a wax', sv('wax-ester'), (l, w) => 1000 * 56.105 / (2 / moles(l, w) - 2 * 15.999)],
  ['IV of a triglyceride', iv('triglyceride'), (l, w) => 100 * 253.8 * bonds(l, w) / (1 + (38.049 / 3) * moles(l, w))],
  ['IV of free acid', iv('free-fatty-acid'), (l, w) => 100 * 253.8 * bonds(l, w)],
  ['IV of a wax', iv('wax-ester'), (l, w) => 100 * 253.8 * 2 * bonds(l, w) / (2 - 2 * 15.999 * moles(l, w))],
  ['mean molar mass', (p) => inNumbers(profileSummaryOf(p).meanMolarMass), (l, w) => 1 / moles(l, w)],
  ['mean chain length', (p) => inNumbers(profileSummaryOf(p).meanChainLength), (l, w) => carbons(l, w) / moles(l, w)],
  ['mean unsaturation', (p) => inNumbers(profileSummaryOf(p).meanUnsaturation), (l, w) => bonds(l, w) / moles(l, w)],
  ['C4 to C10', (p) => inNumbers(profileSummaryOf(p).saturatedC4ToC10), (l, w) => share(l, w, saturated(4, 10))],
  ['C12 to C15', (p) => inNumbers(profileSummaryOf(p).saturatedC12ToC15), (l, w) => share(l, w, saturated(12, 15))],
  ['C16 to C24', (p) => inNumbers(profileSummaryOf(p).saturatedC16ToC24), (l, w) => share(l, w, saturated(16, 24))],
  ['monounsaturated', (p) => inNumbers(profileSummaryOf(p).monounsaturated), (l, w) => share(l, w, (acid) => acid.endsWith(':1'))],
  ['polyunsaturated', (p) => inNumbers(profileSummaryOf(p).polyunsaturated), (l, w) => share(l, w, (acid) => doubleBonds(acid) > 1)],
  ['hydroxy', (p) => inNumbers(profileSummaryOf(p).hydroxy), (l, w) => share(l, w, (acid) => acid.endsWith('-OH'))],
]; // prettier-ignore

describe.each(figures)('bounds of the %s', (_name, ours, model) => {
  it('are the least and the greatest over all corners', () => {
    fc.assert(
      fc.property(box, (limits) => {
        const values = corners(limits).map((corner) =>
          model(
            limits,
            corner.map((part) => part / 1000),
          ),
        );
        const [low, , high] = ours(asRanges(limits));
        expect(deviation(low, Math.min(...values)).lte(1e-12)).toBe(true);
        expect(deviation(high, Math.max(...values)).lte(1e-12)).toBe(true);
      }),
    );
  });

  it('are reached by a corner that is a profile itself', () => {
    fc.assert(
      fc.property(box, (limits) => {
        const found = corners(limits).map((corner) => ours(asPoint(limits, corner))[1]);
        const [low, , high] = ours(asRanges(limits));
        expect(found.some((value) => deviation(value, low).lte('1e-30'))).toBe(true);
        expect(found.some((value) => deviation(value, high).lte('1e-30'))).toBe(true);
      }),
      { numRuns: 30 },
    );
  });

  it('hold every profile between the corners, the likely one among them', () => {
    fc.assert(
      fc.property(box, weights, (limits, some) => {
        const [low, likely, high] = ours(asRanges(limits)).map(Number) as [number, number, number];
        const room = 1e-12 * Math.max(1, high);
        for (const value of [likely, model(limits, between(corners(limits), some))]) {
          expect(value).toBeGreaterThanOrEqual(low - room);
          expect(value).toBeLessThanOrEqual(high + room);
        }
      }),
    );
  });
});
