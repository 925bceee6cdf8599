import fc from 'fast-check';
import { fats, fat, profileSummaryOf, type FattyAcidProfileInput } from 'laurate';
import { describe, expect, it } from 'vitest';
import { Exact } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { asRanges, box } from './boxes.js';

const groups = [
  'saturatedC4ToC10',
  'saturatedC12ToC15',
  'saturatedC16ToC24',
  'monounsaturated',
  'polyunsaturated',
  'hydroxy',
] as const;

const sumOfGroups = (profile: FattyAcidProfileInput): Exact => {
  const summary = profileSummaryOf(profile);
  return groups.reduce((sum, group) => sum.plus(summary[group].likely.percent.toString()), new Exact(0));
};

describe('profileSummaryOf: worked by hand', () => {
  const summary = profileSummaryOf({ 'C12:0': 50, 'C14:0': 20, 'C18:1': 30 });

  it('means by mole: 0.5/200.322, 0.2/228.376 and 0.3/282.468 mol to the gram', () => {
    expect(summary.meanMolarMass.likely.gPerMol.toFixed(6)).toBe('225.540299'); // 1 / 0.00443380
    expect(summary.meanChainLength.likely.carbonsPerAcid.toFixed(6)).toBe('13.832267');
    expect(summary.meanUnsaturation.likely.doubleBondsPerAcid.toFixed(6)).toBe('0.239539');
  });

  it('groups by mass', () => {
    expect(groups.map((group) => summary[group].likely.percent.toString())).toEqual(['0', '70', '0', '30', '0', '0']);
  });

  it('every kind of acid has one group', () => {
    const of = (profile: FattyAcidProfileInput): string | undefined => {
      const one = profileSummaryOf(profile);
      return groups.find((group) => one[group].likely.percent.eq(100));
    };
    expect(of({ 'C10:0': 100 })).toBe('saturatedC4ToC10');
    expect(of({ 'C15:0-iso': 100 })).toBe('saturatedC12ToC15');
    expect(of({ 'C18:0-oxo': 100 })).toBe('saturatedC16ToC24');
    expect(of({ 'C18:0-OH': 100 })).toBe('hydroxy');
    expect(of({ 'C18:1-OH': 100 })).toBe('hydroxy');
    expect(of({ 'C18:3-conj': 100 })).toBe('polyunsaturated');
    expect(of({ 'C24:1': 100 })).toBe('monounsaturated');
  });

  it('bounds of a group: the rest may go into it or out of it', () => {
    const { saturatedC12ToC15 } = profileSummaryOf({
      'C12:0': { low: 40, high: 60 },
      'C14:0': { low: 0, high: 20 },
      'C18:1': { low: 30, high: 50 },
    });
    expect(saturatedC12ToC15.low.percent.toString()).toBe('50'); // oleic at its highest, 50
    expect(saturatedC12ToC15.high.percent.toString()).toBe('70'); // oleic at its lowest, 30
  });
});

describe('profileSummaryOf: laws', () => {
  // six groups of up to a score of acids, each rounded at the 34th digit
  it('the groups of the likely profile add up to 100', () => {
    fc.assert(
      fc.property(box, (limits) => {
        expect(sumOfGroups(asRanges(limits)).minus(100).abs().lte('1e-29')).toBe(true);
      }),
    );
  });

  it('also for every published profile', () => {
    for (const { id } of fats) {
      const { profile } = fat(id);
      if (profile === undefined) continue;
      expect([id, sumOfGroups(profile).minus(100).abs().lte('1e-29')]).toEqual([id, true]);
    }
  });
});

describe('profileSummaryOf: refusals', () => {
  it.each([
    [{ 'C12:0': 90 }, 'profile-does-not-close', 'profile'],
    [{ lauric: 100 }, 'unknown-acid', 'profile.lauric'],
    ['coconut-oil', 'bad-shape', 'profile'],
    [undefined, 'missing', 'profile'],
  ])('%o', (profile, code, path) => {
    expect(refusal(() => profileSummaryOf(profile as never))).toMatchObject({ code, path });
  });
});
