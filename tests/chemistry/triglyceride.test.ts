import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fattyAcidFigures,
  fattyAcidNames,
  glycerylResidueMass,
  molarMass,
  triglycerideMolarMass,
  type FattyAcid,
} from '../../src/chemistry/index.js';
import { Decimal } from '../../src/numbers/index.js';

// 3·M of the acid + 38.049: trilaurin is 3 · 200.322 + 92.094 − 3 · 18.015 = 639.015.
const SIMPLE = [
  ['C4:0', '302.367'],
  ['C6:0', '386.529'],
  ['C8:0', '470.691'],
  ['C10:0', '554.853'],
  ['C12:0', '639.015'],
  ['C14:0', '723.177'],
  ['C16:0', '807.339'],
  ['C17:0', '849.42'],
  ['C18:0', '891.501'],
  ['C20:0', '975.663'],
  ['C22:0', '1059.825'],
  ['C24:0', '1143.987'],
  ['C14:1', '717.129'],
  ['C16:1', '801.291'],
  ['C17:1', '843.372'],
  ['C18:1', '885.453'],
  ['C18:2', '879.405'],
  ['C18:3', '873.357'],
  ['C20:1', '969.615'],
  ['C20:4', '951.471'],
  ['C20:5', '945.423'],
  ['C22:1', '1053.777'],
  ['C22:6', '1023.537'],
  ['C24:1', '1137.939'],
  ['C18:1-OH', '933.45'],
  ['C5:0', '344.448'],
] as const satisfies readonly (readonly [FattyAcid, string])[];

describe('triglycerideMolarMass: worked by hand', () => {
  it('adds 38.049 g/mol for glycerol less three waters, which is C3H2', () => {
    expect(glycerylResidueMass().toString()).toBe('38.049'); // 92.094 − 54.045
    expect(molarMass('C3H2').toString()).toBe('38.049'); // 36.033 + 2.016
  });

  it.each(SIMPLE)('the simple triglyceride of %s is %s g/mol', (id, expected) => {
    expect(triglycerideMolarMass(fattyAcidFigures(id).molarMass).toString()).toBe(expected);
  });

  it('takes the mean of a mixed one: two palmitic and one oleic acid', () => {
    const mean = molarMass('C16H32O2').times(2).plus(molarMass('C18H34O2')).div(3);
    expect(triglycerideMolarMass(mean).toFixed(3)).toBe('833.377'); // C53H100O6: 636.583 + 100.8 + 95.994
  });
});

describe('triglycerideMolarMass: laws', () => {
  it('is the molar mass of its own formula, for every acid on file', () => {
    for (const id of Object.keys(fattyAcidNames) as FattyAcid[]) {
      const { formula, molarMass: acid } = fattyAcidFigures(id);
      const acyl = formula.replace(/^C(\d+)H(\d+)/, (_, c: string, h: string) => `C${c}H${String(Number(h) - 1)}`);
      // glycerol loses three H, each acid its OH; written here as C3H5 and three times the acid less one H
      expect(triglycerideMolarMass(acid).toString()).toBe(molarMass(`C3H5(${acyl})3`).toString());
    }
  });

  it('grows by three times what the mean acid grows by', () => {
    const mass = fc.integer({ min: 88_000, max: 400_000 }).map((m) => new Decimal(m).div(1000));
    fc.assert(
      fc.property(mass, mass, (a, b) => {
        expect(triglycerideMolarMass(a).minus(triglycerideMolarMass(b)).eq(a.minus(b).times(3))).toBe(true);
      }),
    );
  });
});
