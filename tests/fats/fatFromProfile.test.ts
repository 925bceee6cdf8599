import fc from 'fast-check';
import { fatFromProfile, iodineValueFromProfile, readFat, saponificationValueFromProfile } from 'laurate';
import { describe, expect, it } from 'vitest';
import { textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { asRanges, box } from './boxes.js';

const kinds = ['triglyceride', 'free-fatty-acid', 'wax-ester'] as const;

describe('fatFromProfile: worked by hand', () => {
  it('a point profile: likely by stoichiometry, 7 % either way', () => {
    const made = fatFromProfile({
      name: 'Half and half',
      kind: 'triglyceride',
      profile: { 'C12:0': 50, 'C18:1': 50 },
      unsaponifiable: { percent: '1.5' },
    });
    const { low, likely, high } = made.saponificationValue;
    expect(likely.mgKohPerG.toFixed(6)).toBe('223.657530'); // 168315 / (3 * 234.406490 + 38.049) * 0.985
    expect(low.mgKohPerG.toFixed(6)).toBe('208.001503'); // * 0.93
    expect(high.mgKohPerG.toFixed(6)).toBe('239.313557'); // * 1.07
    // 25380 * 0.5/282.468 / (1 + 12.683 / 234.406490)
    expect(made.iodineValue?.likely.gI2Per100g.toFixed(6)).toBe('42.619439');
    expect(made).toMatchObject({ name: 'Half and half', kind: 'triglyceride', from: 'profile' });
    expect(made.notes.map(({ code }) => code)).toEqual(['bounds-by-convention', 'acid-value-taken-as-zero']);
    expect(made.basis).toEqual(['iupac-2021', 'laurate-convention']);
  });

  it('a wide profile: its own bounds where they are wider than 7 %', () => {
    const { low, high } = fatFromProfile({
      name: 'Anything',
      kind: 'free-fatty-acid',
      profile: { 'C12:0': { low: 0, high: 100 }, 'C18:1': { low: 0, high: 100 } },
    }).saponificationValue;
    expect(low.mgKohPerG.toFixed(4)).toBe('198.6243'); // 56105 / 282.468; likely 239.3 less 7 % is 222.6
    expect(high.mgKohPerG.toFixed(4)).toBe('280.0741'); // 56105 / 200.322; likely and 7 % is 256.1
  });

  it('says everything that was taken for granted', () => {
    const { notes, acidValue } = fatFromProfile({ name: 'x', kind: 'triglyceride', profile: { 'C12:0': 96 } });
    expect(notes.map(({ code }) => code).sort()).toEqual([
      'acid-value-taken-as-zero',
      'bounds-by-convention',
      'no-unsaponifiable-stated',
      'profile-scaled',
    ]);
    expect(acidValue.mgKohPerG.isZero()).toBe(true);
  });
});

describe('fatFromProfile: laws', () => {
  it('agrees with the values worked out from the profile alone, and holds their bounds', () => {
    fc.assert(
      fc.property(box, fc.constantFrom(...kinds), (limits, kind) => {
        const profile = asRanges(limits);
        const made = fatFromProfile({ name: 'x', kind, profile });
        const exact = saponificationValueFromProfile({ kind, profile }).saponificationValue;
        expect(made.saponificationValue.likely.mgKohPerG.eq(exact.likely.mgKohPerG)).toBe(true);
        expect(made.saponificationValue.low.mgKohPerG.lte(exact.low.mgKohPerG)).toBe(true);
        expect(made.saponificationValue.high.mgKohPerG.gte(exact.high.mgKohPerG)).toBe(true);
        expect(textOf(made.iodineValue)).toBe(textOf(iodineValueFromProfile({ kind, profile }).iodineValue));
      }),
    );
  });

  it('whatever profile it takes, the fat survives JSON', () => {
    fc.assert(
      fc.property(box, fc.constantFrom(...kinds), fc.integer({ min: 0, max: 99 }), (limits, kind, percent) => {
        let made;
        try {
          made = fatFromProfile({ name: 'x', kind, profile: asRanges(limits), unsaponifiable: { percent } });
        } catch {
          return; // refused: there is no fat to store
        }
        expect(textOf(readFat(throughJson(made)))).toBe(textOf(made));
      }),
    );
  });

  it('also where a point profile was scaled', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 5000 }), fc.integer({ min: 1, max: 500 }), (a, b) => {
        const rest = 9700 - a - b;
        const profile = { 'C12:0': `${String(a)}e-2`, 'C16:0': `${String(b)}e-2`, 'C18:1': `${String(rest)}e-2` };
        const made = fatFromProfile({ name: 'x', kind: 'triglyceride', profile });
        expect(textOf(readFat(throughJson(made)))).toBe(textOf(made));
      }),
      { numRuns: 500 },
    );
  });
});

describe('fatFromProfile: refusals', () => {
  const good = { name: 'x', kind: 'triglyceride', profile: { 'C12:0': 100 } } as const;
  it.each<[string, object, string, string]>([
    ['no name', { name: undefined }, 'missing', 'name'],
    ['a name of 201 characters', { name: 'x'.repeat(201) }, 'bad-shape', 'name'],
    ['rosin, which no profile describes', { kind: 'rosin' }, 'bad-shape', 'kind'],
    ['an open profile', { profile: { 'C12:0': 94.9 } }, 'profile-does-not-close', 'profile'],
    ['an unknown acid', { profile: { 'C11:5': 100 } }, 'unknown-acid', 'profile.C11:5'],
    ['an unknown basis', { per: 'kg' }, 'bad-shape', 'per'],
    ['an unknown option', { unsaponifable: 1 }, 'unknown-key', 'input.unsaponifable'],
    ['a value that no fat has: 95 % unsaponifiable', { unsaponifiable: { percent: 95 } }, 'out-of-range', 'unsaponifiable'],
  ])('%s', (_what, change, code, path) => {
    expect(refusal(() => fatFromProfile({ ...good, ...change }))).toMatchObject({ code, path });
  }); // prettier-ignore
});
