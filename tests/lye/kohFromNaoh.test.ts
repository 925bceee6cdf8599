import fc from 'fast-check';
import { kohFromNaoh } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact, KOH, NAOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

describe('kohFromNaoh: worked by hand', () => {
  it('takes both assays into account and does not round', () => {
    const r = kohFromNaoh({ naoh: { g: 100 }, naohAssay: { percent: 98 }, kohAssay: { percent: 90 } });
    expect(r.hydroxide.mol.toFixed(9)).toBe('2.450183764'); // 98 / 39.997
    expect(r.koh.g.toFixed(9)).toBe('152.741733408'); // 98 / 39.997 * 56.105 / 0.9
    expect(r.by).toBe('kohFromNaoh');
  });

  it('pure for pure: 40 g for 56.1 g', () => {
    const r = kohFromNaoh({ naoh: { g: '39.997' }, naohAssay: { percent: 100 }, kohAssay: { percent: 100 } });
    expect(r.koh.g.toString()).toBe('56.105');
    expect(r.hydroxide.mol.toString()).toBe('1');
  });
});

describe('kohFromNaoh: laws', () => {
  const grams = fc.integer({ min: 1, max: 10_000_000 });
  it('is m·w/M(NaOH)·M(KOH)/w, in another arithmetic', () => {
    fc.assert(
      fc.property(grams, fc.integer({ min: 1, max: 110 }), fc.integer({ min: 1, max: 110 }), (g, naoh, koh) => {
        const got = kohFromNaoh({ naoh: { mg: g }, naohAssay: { percent: naoh }, kohAssay: { percent: koh } }).koh.g;
        const expected = new Exact(g).div(1000).times(naoh).times(KOH).div(NAOH).div(koh);
        expect(deviation(got.toString(), expected).lte('1e-32')).toBe(true); // four roundings at 34 digits
      }),
    );
  });

  it('scales with the mass', () => {
    fc.assert(
      fc.property(grams, fc.integer({ min: 2, max: 1000 }), (g, times) => {
        const koh = (mass: number): Exact =>
          new Exact(
            kohFromNaoh({ naoh: { g: mass }, naohAssay: { percent: 98 }, kohAssay: { percent: 85 } }).koh.g.toString(),
          );
        expect(deviation(koh(g * times), koh(g).times(times)).lte('1e-32')).toBe(true);
      }),
    );
  });
});

describe('kohFromNaoh: refusals', () => {
  const good = { naoh: { g: 1 }, naohAssay: { percent: 98 }, kohAssay: { percent: 90 } };
  it.each<[object, string, string]>([
    [{ naoh: { g: -1 } }, 'out-of-range', 'naoh.g'],
    [{ naohAssay: { percent: 0 } }, 'out-of-range', 'naohAssay.percent'],
    [{ kohAssay: { percent: 111 } }, 'out-of-range', 'kohAssay.percent'],
    [{ kohAssay: undefined }, 'missing', 'kohAssay'],
    [{ naoh: { g: Number.NaN } }, 'not-a-number', 'naoh.g'],
    [{ koh: { g: 1 } }, 'unknown-key', 'input.koh'],
  ])('%o', (change, code, path) => {
    expect(refusal(() => kohFromNaoh({ ...good, ...change }))).toMatchObject({ code, path });
  });
});
