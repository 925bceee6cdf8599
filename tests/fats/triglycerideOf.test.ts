import fc from 'fast-check';
import { fattyAcidOf, iodineValueFromProfile, saponificationValueFromProfile, triglycerideOf } from 'laurate';
import { describe, expect, it } from 'vitest';
import { fattyAcidNames } from '../../src/chemistry/data/fattyAcidNames.js';
import { deviation, Exact, GLYCERYL } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const ids = Object.keys(fattyAcidNames) as (keyof typeof fattyAcidNames)[];

describe('triglycerideOf: worked by hand', () => {
  it('tristearin', () => {
    const tristearin = triglycerideOf('C18:0');
    expect(tristearin.molarMass.gPerMol.toString()).toBe('891.501'); // 3 * 284.484 + 92.094 - 3 * 18.015
    expect(tristearin.saponificationValue.mgKohPerG.toFixed(6)).toBe('188.799564'); // 168315 / 891.501
    expect(tristearin.glycerolYield.percent.toFixed(6)).toBe('10.330218'); // 9209.4 / 891.501
    expect(tristearin.fattyAcidYield.percent.toFixed(6)).toBe('95.732029'); // 85345.2 / 891.501
    expect(tristearin.iodineValue.gI2Per100g.toString()).toBe('0');
  });

  it('triolein takes up three iodine molecules', () => {
    expect(triglycerideOf('C18:1').iodineValue.gI2Per100g.toFixed(6)).toBe('85.989883'); // 76140 / 885.453
  });
});

describe('triglycerideOf: laws', () => {
  const each = fc.constantFrom(...ids);

  it('glycerol and fatty acid outweigh the triglyceride by the water of splitting, 3 H2O', () => {
    fc.assert(
      fc.property(each, (id) => {
        const { glycerolYield, fattyAcidYield, molarMass } = triglycerideOf(id);
        const surplus = new Exact('54.045').times(100).div(molarMass.gPerMol.toString());
        const sum = glycerolYield.percent.plus(fattyAcidYield.percent).minus(100);
        expect(deviation(sum.toString(), surplus).lte('1e-30')).toBe(true);
      }),
    );
  });

  it('is three acids and the glyceryl residue', () => {
    fc.assert(
      fc.property(each, (id) => {
        const expected = new Exact(fattyAcidOf(id).molarMass.gPerMol.toString()).times(3).plus(GLYCERYL);
        expect(triglycerideOf(id).molarMass.gPerMol.toString()).toBe(expected.toString());
      }),
    );
  });

  it('agrees with a profile of that acid alone', () => {
    fc.assert(
      fc.property(each, (id) => {
        const input = { profile: { [id]: 100 }, kind: 'triglyceride' } as const;
        const { saponificationValue, iodineValue } = triglycerideOf(id);
        const sv = saponificationValueFromProfile(input).saponificationValue.likely.mgKohPerG.toString();
        const iv = iodineValueFromProfile(input).iodineValue.likely.gI2Per100g.toString();
        // a few roundings at 34 digits on the two ways
        expect(deviation(sv, saponificationValue.mgKohPerG.toString()).lte('1e-31')).toBe(true);
        expect(deviation(iv, iodineValue.gI2Per100g.toString()).lte('1e-31')).toBe(true);
      }),
    );
  });
});

describe('triglycerideOf: refusals', () => {
  it.each(['trilaurin', 'C18:9', '', 18, null])('%o', (id) => {
    expect(refusal(() => triglycerideOf(id as never))).toMatchObject({ code: 'unknown-acid', path: 'acid' });
  });
});
