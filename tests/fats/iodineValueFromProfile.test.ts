import fc from 'fast-check';
import { iodineValueFromProfile, type FattyAcidProfileInput, type ProfileKind } from 'laurate';
import { describe, expect, it } from 'vitest';
import { refusal } from '../laws/refusal.js';
import { asRanges, box } from './boxes.js';

const likely = (kind: ProfileKind, profile: FattyAcidProfileInput): string =>
  iodineValueFromProfile({ kind, profile }).iodineValue.likely.gI2Per100g.toFixed(6);

describe('iodineValueFromProfile: worked by hand', () => {
  it('pure acids, bound in each way', () => {
    expect(likely('triglyceride', { 'C18:1': 100 })).toBe('85.989883'); // 76140 / (3 * 282.468 + 38.049)
    expect(likely('free-fatty-acid', { 'C18:1': 100 })).toBe('89.850886'); // 25380 / 282.468
    expect(likely('wax-ester', { 'C20:1': 100 })).toBe('86.173236'); // 2 * 25380 / (2 * 310.522 - 31.998)
    expect(likely('triglyceride', { 'C18:0': 100 })).toBe('0.000000');
  });

  it('mixtures by mass balance, with the published coefficients beside', () => {
    const result = iodineValueFromProfile({ kind: 'triglyceride', profile: { 'C16:0': 4, 'C18:1': 80, 'C18:2': 16 } });
    // 25380 * (0.8/282.468 + 2 * 0.16/280.452) / (1 + 12.683 * (0.04/256.430 + 0.8/282.468 + 0.16/280.452))
    expect(result.iodineValue.likely.gI2Per100g.toFixed(6)).toBe('96.484862');
    // 80 * 0.860 + 16 * 1.732
    expect(result.publishedCoefficients?.iodineValue.gI2Per100g.toString()).toBe('96.512');
    expect(result.basis).toEqual(['iupac-2021', 'aocs-cd-1c-85']);
  });

  it('free acids have coefficients of their own; waxes have none', () => {
    const profile = { 'C16:0': 4, 'C18:1': 80, 'C18:2': 16 } as const;
    const acid = iodineValueFromProfile({ kind: 'free-fatty-acid', profile });
    expect(acid.publishedCoefficients?.iodineValue.gI2Per100g.toString()).toBe('100.848'); // 80 * 0.8986 + 16 * 1.810
    const wax = iodineValueFromProfile({ kind: 'wax-ester', profile });
    expect(wax.publishedCoefficients).toBeUndefined();
    expect(wax.basis).toEqual(['iupac-2021']);
  });

  it('says that conjugated acids read high, only where there are some', () => {
    const notes = (profile: FattyAcidProfileInput): string[] =>
      iodineValueFromProfile({ kind: 'triglyceride', profile }).notes.map(({ code }) => code);
    expect(notes({ 'C18:3-conj': 80, 'C18:1': 20 })).toEqual(['conjugated-acids']);
    expect(notes({ 'C18:3-conj': 0, 'C18:1': 100 })).toEqual([]);
    expect(notes({ 'C18:3-conj': { low: 0, high: 5 }, 'C18:1': { low: 95, high: 100 } })).toEqual(['conjugated-acids']);
  });
});

describe('iodineValueFromProfile: laws', () => {
  it('is zero without double bonds and rises when oleic takes the place of stearic acid', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999 }), (oleic) => {
        const value = (x: number): number =>
          Number(likely('triglyceride', { 'C18:1': `${String(x)}e-1`, 'C18:0': `${String(1000 - x)}e-1` }));
        expect(value(oleic + 1)).toBeGreaterThan(value(oleic));
      }),
    );
  });

  it('of free acid it is at least that of the triglyceride', () => {
    fc.assert(
      fc.property(box, (limits) => {
        const profile = asRanges(limits);
        expect(Number(likely('free-fatty-acid', profile))).toBeGreaterThanOrEqual(
          Number(likely('triglyceride', profile)),
        );
      }),
    );
  });
});

describe('iodineValueFromProfile: refusals', () => {
  const profile = { 'C18:1': 100 };
  it.each([
    [{ profile }, 'missing', 'kind'],
    [{ profile, kind: 'rosin' }, 'bad-shape', 'kind'],
    [{ profile: { 'C18:1': 90 }, kind: 'triglyceride' }, 'profile-does-not-close', 'profile'],
    [{ profile, kind: 'triglyceride', unsaponifiable: { percent: 1 } }, 'unknown-key', 'input.unsaponifiable'],
    [null, 'missing', 'input'],
  ])('%o', (input, code, path) => {
    expect(refusal(() => iodineValueFromProfile(input as never))).toMatchObject({ code, path });
  });
});
