/** How a profile is read: what closes, what is scaled, what is refused; seen through the functions that take one. */
import fc from 'fast-check';
import {
  iodineValueFromProfile,
  profileSummaryOf,
  saponificationValueFromProfile,
  type FattyAcid,
  type FattyAcidProfileInput,
  type ProfileBasis,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { Exact, textOf } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { asRanges, box } from './boxes.js';

const reckoned = (profile: unknown, per?: ProfileBasis) =>
  saponificationValueFromProfile({
    kind: 'triglyceride',
    profile: profile as FattyAcidProfileInput,
    unsaponifiable: { percent: 0 },
    ...(per === undefined ? {} : { per }),
  });
/** The profile as used, and what was said of it. */
const read = (profile: unknown, per?: ProfileBasis) => {
  const used = reckoned(profile, per);
  return { profile: used.profile, notes: used.notes };
};
const likely = (profile: unknown, acid: FattyAcid): string =>
  read(profile).profile[acid]?.likely.percent.toFixed(6) ?? 'none';

describe('a profile: worked by hand', () => {
  it('takes a point profile of 100 as it is', () => {
    const { profile, notes } = read({ 'C12:0': 50, 'C18:1': '50' });
    expect(profile['C12:0']?.low.percent.toString()).toBe('50');
    expect(notes).toEqual([]);
  });

  it.each([
    ['95', 'C12:0', '47.368421'], // 45/95
    ['100.5', 'C12:0', '50.248756'], // 50.5/100.5
  ])('scales a point profile that sums to %s and says so', (sum, acid, share) => {
    const { profile, notes } = read({ 'C12:0': new Exact(sum).minus(50).toString(), 'C18:1': 50 });
    expect(profile[acid as FattyAcid]?.likely.percent.toFixed(6)).toBe(share);
    expect(notes.map(({ code }) => code)).toEqual(['profile-scaled']);
    expect(notes[0]?.text).toContain(sum);
  });

  it('takes shares per 100 g of oil: 95.2 g of acids, the rest glycerol', () => {
    const { profile, notes } = read({ 'C16:0': 45.2, 'C18:1': 50 }, '100 g of oil');
    expect(profile['C16:0']?.likely.percent.toFixed(6)).toBe('47.478992'); // 45.2/95.2
    expect(notes.map(({ code }) => code)).toEqual(['profile-scaled']);
    expect(refusal(() => read({ 'C16:0': 34, 'C18:1': 45 })).code).toBe('profile-does-not-close');
    expect(read({ 'C16:0': 34, 'C18:1': 45 }, '100 g of oil').profile['C16:0']?.likely.percent.toFixed(6)).toBe(
      '43.037975',
    );
  });

  it('gives ranges the likely shares that stand equally far up in all of them', () => {
    // lows 10 + 2 + 80 = 92, room 0 + 2 + 10 = 12, so that t = 8/12
    const profile = { 'C16:0': 10, 'C18:0': { low: 2, high: 4 }, 'C18:1': { low: 80, high: 90 } };
    expect(likely(profile, 'C16:0')).toBe('10.000000');
    expect(likely(profile, 'C18:0')).toBe('3.333333');
    expect(likely(profile, 'C18:1')).toBe('86.666667');
  });

  it('keeps a likely share that is given and lets the others close the sum', () => {
    // 3 given; lows 10 + 80 = 90, room 0 + 10, left 7, so that t = 0.7
    const profile = { 'C16:0': 10, 'C18:0': { low: 2, likely: 3, high: 4 }, 'C18:1': { low: 80, high: 90 } };
    expect(likely(profile, 'C18:0')).toBe('3.000000');
    expect(likely(profile, 'C18:1')).toBe('87.000000');
  });

  it('reads shares as quantities too: 50 percent, 0.3 as a fraction, 200000 ppm', () => {
    const plain = textOf(read({ 'C12:0': 50, 'C16:0': 30, 'C18:1': { low: 10, high: 20 } }));
    const asQuantities = {
      'C12:0': { percent: 50 },
      'C16:0': { fraction: '0.3' },
      'C18:1': { low: { ppm: 100000 }, high: { fraction: 0.2 } },
    };
    expect(textOf(read(asQuantities))).toBe(plain);
  });

  it('closes at the very limits: lows of 100, highs of 100', () => {
    expect(likely({ 'C12:0': { low: 60, high: 70 }, 'C18:1': { low: 40, high: 50 } }, 'C12:0')).toBe('60.000000');
    expect(likely({ 'C12:0': { low: 50, high: 60 }, 'C18:1': { low: 30, high: 40 } }, 'C12:0')).toBe('60.000000');
  });
});

describe('a profile: laws', () => {
  it('the likely one sums to 100 and stays in its box', () => {
    fc.assert(
      fc.property(box, (limits) => {
        const shares = Object.values(read(asRanges(limits)).profile);
        const total = shares.reduce((sum, { likely: { percent } }) => sum.plus(percent.toString()), new Exact(0));
        // each of up to five shares is rounded once, at the 34th digit
        expect(total.minus(100).abs().lte('1e-30')).toBe(true);
        for (const { low, likely: middle, high } of shares) {
          expect(middle.percent.gte(low.percent) && middle.percent.lte(high.percent)).toBe(true);
        }
      }),
    );
  });

  it('a scaled one is the same profile as one that summed to 100', () => {
    fc.assert(
      fc.property(fc.integer({ min: 4000, max: 5500 }), fc.integer({ min: 4500, max: 4550 }), (a, b) => {
        fc.pre(a + b >= 9500 && a + b <= 10050);
        const scaled = read({ 'C12:0': `${String(a)}e-2`, 'C18:1': `${String(b)}e-2` }).profile['C12:0']?.likely
          .percent;
        const share = new Exact(a).times(100).div(a + b);
        expect(new Exact(String(scaled)).minus(share).abs().lte('1e-31')).toBe(true); // one rounding at 34 digits
      }),
    );
  });

  it('does not depend on the order of the acids', () => {
    fc.assert(
      fc.property(box, (limits) => {
        const there = asRanges(limits);
        const back = asRanges([...limits].reverse());
        const figures = (profile: FattyAcidProfileInput): string[] => {
          const { low, likely: middle, high } = reckoned(profile).saponificationValue;
          const iodine = iodineValueFromProfile({ profile, kind: 'triglyceride' }).iodineValue;
          const { meanMolarMass } = profileSummaryOf(profile);
          // sums in another order may differ in the last of 34 digits
          return [low, middle, high]
            .map((v) => v.mgKohPerG.toPrecision(30))
            .concat([iodine.low, iodine.likely, iodine.high].map((v) => v.gI2Per100g.toFixed(28)))
            .concat(meanMolarMass.likely.gPerMol.toPrecision(30));
        };
        expect(figures(back)).toEqual(figures(there));
      }),
    );
  });
});

describe('a profile: refusals', () => {
  it.each<[string, unknown, string, string]>([
    ['94.9', { 'C12:0': 44.9, 'C18:1': 50 }, 'profile-does-not-close', 'profile'],
    ['100.6', { 'C12:0': 50.6, 'C18:1': 50 }, 'profile-does-not-close', 'profile'],
    ['nothing', {}, 'profile-does-not-close', 'profile'],
    ['lows over 100', { 'C12:0': { low: 60, high: 70 }, 'C18:1': { low: 41, high: 50 } }, 'profile-does-not-close', 'profile'],
    ['highs under 100', { 'C12:0': { low: 40, high: 50 }, 'C18:1': { low: 41, high: 49 } }, 'profile-does-not-close', 'profile'],
    ['likely shares over 100', { 'C12:0': { low: 40, likely: 55, high: 60 }, 'C18:1': { low: 40, likely: 55, high: 60 } }, 'profile-does-not-close', 'profile'],
    ['likely shares under 100', { 'C12:0': { low: 40, likely: 45, high: 60 }, 'C18:1': { low: 40, likely: 45, high: 60 } }, 'profile-does-not-close', 'profile'],
    ['an unknown acid', { 'C12:0': 50, 'C18:7': 50 }, 'unknown-acid', 'profile.C18:7'],
    ['a negative share', { 'C12:0': -1, 'C18:1': 101 }, 'out-of-range', 'profile.C12:0'],
    ['a share over 100', { 'C12:0': 101 }, 'out-of-range', 'profile.C12:0'],
    ['NaN', { 'C12:0': Number.NaN }, 'not-a-number', 'profile.C12:0'],
    ['a decimal comma', { 'C12:0': '99,5' }, 'not-a-number', 'profile.C12:0'],
    ['null', { 'C12:0': null }, 'not-a-number', 'profile.C12:0'],
    ['low above high', { 'C12:0': { low: 60, high: 50 }, 'C18:1': { low: 0, high: 100 } }, 'out-of-range', 'profile.C12:0'],
    ['likely outside', { 'C12:0': { low: 40, likely: 70, high: 60 }, 'C18:1': { low: 0, high: 100 } }, 'out-of-range', 'profile.C12:0.likely'],
    ['half a range', { 'C12:0': { low: 40 }, 'C18:1': { low: 0, high: 100 } }, 'missing', 'profile.C12:0.high'],
    ['a range with a unit beside', { 'C12:0': { low: 40, high: 60, percent: 50 } }, 'unknown-key', 'profile.C12:0.percent'],
    ['two units', { 'C12:0': { percent: 100, fraction: 1 } }, 'two-units', 'profile.C12:0'],
    ['a list', [100], 'bad-shape', 'profile'],
    ['no profile', undefined, 'missing', 'profile'],
  ])('%s', (_what, profile, code, path) => {
    expect(refusal(() => read(profile))).toMatchObject({ code, path });
  }); // prettier-ignore

  it('suggests the acid that was meant', () => {
    expect(refusal(() => read({ 'c18:1': 100 })).message).toContain('did you mean "C18:1"?');
  });

  it('per 100 g of oil: sums under 75 or over 100.5, and ranges', () => {
    const ofOil = (profile: FattyAcidProfileInput) => refusal(() => read(profile, '100 g of oil'));
    expect(ofOil({ 'C12:0': 74.9 })).toMatchObject({ code: 'profile-does-not-close', path: 'profile' });
    expect(ofOil({ 'C12:0': 50.6, 'C18:1': 50 })).toMatchObject({ code: 'profile-does-not-close', path: 'profile' });
    expect(ofOil({ 'C12:0': { low: 90, high: 100 } })).toMatchObject({ code: 'bad-shape', path: 'profile' });
    expect(refusal(() => read({ 'C12:0': 100 }, '100 g of soap' as ProfileBasis))).toMatchObject({
      code: 'bad-shape',
      path: 'per',
    });
  });
});
