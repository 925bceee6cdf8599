import fc from 'fast-check';
import { saponificationValueFromProfile, type FattyAcidProfileInput } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { asRanges, box } from './boxes.js';

const kinds = ['triglyceride', 'free-fatty-acid', 'wax-ester'] as const;
const likely = (kind: (typeof kinds)[number], profile: FattyAcidProfileInput, percent: number | string = 0): string =>
  saponificationValueFromProfile({
    kind,
    profile,
    unsaponifiable: { percent },
  }).saponificationValue.likely.mgKohPerG.toFixed(6);

describe('saponificationValueFromProfile: worked by hand', () => {
  it('pure acids, bound in each way', () => {
    expect(likely('triglyceride', { 'C12:0': 100 })).toBe('263.397573'); // 168315 / (3 * 200.322 + 38.049)
    expect(likely('free-fatty-acid', { 'C18:1': 100 })).toBe('198.624269'); // 56105 / 282.468
    expect(likely('wax-ester', { 'C20:1': 100 })).toBe('95.247230'); // 56105 / (2 * 310.522 - 2 * 15.999)
  });

  it('half lauric and half oleic, with and without unsaponifiable matter', () => {
    const half = { 'C12:0': 50, 'C18:1': 50 };
    // M = 1 / (0.5/200.322 + 0.5/282.468) = 234.40649; 168315 / (3 * 234.40649 + 38.049)
    expect(likely('triglyceride', half)).toBe('227.063482');
    expect(likely('triglyceride', half, '1.5')).toBe('223.657530'); // * 0.985
    expect(likely('free-fatty-acid', half, '1.5')).toBe('235.758937'); // 56105 / 234.40649 * 0.985
  });

  it('ranges, with the exact bounds and the means beside', () => {
    const result = saponificationValueFromProfile({
      kind: 'triglyceride',
      profile: { 'C16:0': 10, 'C18:0': { low: 2, high: 4 }, 'C18:1': { low: 80, high: 90 } },
      unsaponifiable: { percent: 0 },
    });
    const { low, likely: middle, high } = result.saponificationValue;
    expect(low.mgKohPerG.toFixed(6)).toBe('191.884043'); // at 10, 4, 86
    expect(middle.mgKohPerG.toFixed(6)).toBe('191.892630'); // at 10, 10/3, 260/3
    expect(high.mgKohPerG.toFixed(6)).toBe('191.909804'); // at 10, 2, 88
    expect(result.meanAcidMolarMass.low.gPerMol.toFixed(6)).toBe('279.667879'); // at 10, 2, 88
    expect(result.meanAcidMolarMass.high.gPerMol.toFixed(6)).toBe('279.707129'); // at 10, 4, 86
    // 0.1 * 256.430 + 0.0333 * 284.484 + 0.8667 * 282.468 = 279.9314
    expect(result.arithmeticMean.saponificationValue.mgKohPerG.toFixed(6)).toBe('191.736975');
    expect(result.notes).toEqual([]);
    expect(result.basis).toContain('iupac-2021');
  });

  it('takes the widest bounds of unsaponifiable matter with those of the profile', () => {
    const {
      low,
      likely: middle,
      high,
    } = saponificationValueFromProfile({
      kind: 'triglyceride',
      profile: { 'C12:0': 100 },
      unsaponifiable: { low: { percent: 1 }, high: { fraction: 0.03 } },
    }).saponificationValue;
    expect(low.mgKohPerG.toFixed(6)).toBe('255.495646'); // 263.397573 * 0.97
    expect(middle.mgKohPerG.toFixed(6)).toBe('258.129621'); // * 0.98
    expect(high.mgKohPerG.toFixed(6)).toBe('260.763597'); // * 0.99
  });

  it('says that no unsaponifiable matter was stated', () => {
    const { notes } = saponificationValueFromProfile({ kind: 'triglyceride', profile: { 'C12:0': 100 } });
    expect(notes.map(({ code }) => code)).toEqual(['no-unsaponifiable-stated']);
  });
});

describe('saponificationValueFromProfile: laws', () => {
  it('falls in proportion to what is unsaponifiable', () => {
    fc.assert(
      fc.property(box, fc.integer({ min: 0, max: 990 }), (limits, tenths) => {
        const profile = asRanges(limits);
        const [all, part] = [0, tenths].map((u) =>
          saponificationValueFromProfile({
            kind: 'triglyceride',
            profile,
            unsaponifiable: { fraction: `${String(u)}e-3` },
          }),
        );
        const expected =
          all?.saponificationValue.likely.mgKohPerG
            .times(1000 - tenths)
            .div(1000)
            .toString() ?? '';
        // two roundings at 34 digits
        expect(deviation(part?.saponificationValue.likely.mgKohPerG.toString() ?? '', expected).lte('1e-32')).toBe(
          true,
        );
      }),
    );
  });

  it('the arithmetic mean never reads higher: it is the greater of the two means', () => {
    fc.assert(
      fc.property(box, fc.constantFrom(...kinds), (limits, kind) => {
        const { saponificationValue, arithmeticMean } = saponificationValueFromProfile({
          kind,
          profile: asRanges(limits),
        });
        const least = arithmeticMean.saponificationValue.mgKohPerG.minus('1e-28');
        expect(saponificationValue.likely.mgKohPerG.gte(least)).toBe(true);
      }),
    );
  });

  it('of free acid it is higher than of triglyceride, of wax it is about half', () => {
    fc.assert(
      fc.property(box, (limits) => {
        const [tag, acid, wax] = kinds.map((kind) =>
          Number(
            saponificationValueFromProfile({ kind, profile: asRanges(limits) }).saponificationValue.likely.mgKohPerG,
          ),
        ) as [number, number, number];
        expect(acid).toBeGreaterThan(tag);
        // M of acid over M of wax is 1/(2 - 32/M), with M from 88 (C4:0) upward: 0.5 to 0.62
        expect(wax / acid).toBeGreaterThan(0.5);
        expect(wax / acid).toBeLessThan(0.62);
      }),
    );
  });
});

describe('saponificationValueFromProfile: refusals', () => {
  const profile = { 'C12:0': 100 };
  it.each([
    [{ profile }, 'missing', 'kind'],
    [{ profile, kind: 'rosin' }, 'bad-shape', 'kind'],
    [{ kind: 'triglyceride' }, 'missing', 'profile'],
    [{ profile, kind: 'triglyceride', unsaponifiable: { percent: 100 } }, 'out-of-range', 'unsaponifiable.percent'],
    [{ profile, kind: 'triglyceride', unsaponifiable: { percent: -1 } }, 'out-of-range', 'unsaponifiable.percent'],
    [{ profile, kind: 'triglyceride', unsaponifiable: { percent: '1,5' } }, 'not-a-number', 'unsaponifiable.percent'],
    [{ profile, kind: 'triglyceride', unsaponifiable: 1 }, 'bad-shape', 'unsaponifiable'],
    [{ profile, kind: 'triglyceride', unsaponifiables: 1 }, 'unknown-key', 'input.unsaponifiables'],
    [undefined, 'missing', 'input'],
  ])('%o', (input, code, path) => {
    expect(refusal(() => saponificationValueFromProfile(input as never))).toMatchObject({ code, path });
  });

  it('suggests the option that was meant', () => {
    expect(
      refusal(() => saponificationValueFromProfile({ profile, kind: 'triglyceride', unsaponifiables: 1 } as never))
        .message,
    ).toContain('did you mean "unsaponifiable"?');
  });
});
