import fc from 'fast-check';
import { MF } from 'mf-parser';
import { describe, expect, it } from 'vitest';
import { fattyAcidFigures, fattyAcidNames, molarMass, type FattyAcid } from '../../src/chemistry/index.js';
import { atomicWeights } from '../../src/chemistry/data/atomicWeights.js';
import { Decimal } from '../../src/numbers/index.js';
import { refusal } from '../laws/refusal.js';

// Added up from the abridged weights H 1.0080, C 12.011, N 14.007, O 15.999, Na 22.990, S 32.06, Cl 35.45, K 39.098.
const COMPOUNDS = [
  ['NaOH', '39.997'], // sodium hydroxide
  ['KOH', '56.105'], // potassium hydroxide
  ['H2O', '18.015'], // water
  ['C3H8O3', '92.094'], // glycerol
  ['Na2O', '61.979'], // sodium oxide
  ['K2O', '94.195'], // potassium oxide
  ['Na2CO3', '105.988'], // sodium carbonate
  ['K2CO3', '138.204'], // potassium carbonate
  ['NaHCO3', '84.006'], // sodium hydrogen carbonate
  ['KHCO3', '100.114'], // potassium hydrogen carbonate
  ['CO2', '44.009'], // carbon dioxide
  ['C6H8O7', '192.123'], // citric acid, anhydrous
  ['C6H10O8', '210.138'], // citric acid monohydrate
  ['Na3C6H5O7', '258.069'], // trisodium citrate, anhydrous
  ['Na3C6H9O9', '294.099'], // trisodium citrate dihydrate
  ['C3H6O3', '90.078'], // lactic acid
  ['NaC3H5O3', '112.06'], // sodium lactate
  ['C6H14O6', '182.172'], // sorbitol
  ['C3H8O2', '76.095'], // propylene glycol
  ['C6H14O3', '134.175'], // dipropylene glycol
  ['C4H10O2', '90.122'], // 1,3-butanediol
  ['C6H15NO3', '149.19'], // triethanolamine
  ['C2H6O', '46.069'], // ethanol
  ['C3H8O', '60.096'], // 2-propanol
  ['C12H22O11', '342.297'], // sucrose
  ['NaCl', '58.44'], // sodium chloride
  ['HCl', '36.458'], // hydrogen chloride
  ['H2SO4', '98.072'], // sulfuric acid
  ['C3H2', '38.049'], // glyceryl residue C3H2
] as const;

// The same substances as they are written with brackets and water of crystallisation.
const WRITTEN_OUT = [
  ['C3H5(OH)3', 'C3H8O3'],
  ['(CH3)2CHOH', 'C3H8O'],
  ['N(CH2CH2OH)3', 'C6H15NO3'],
  ['HOCH2(CHOH)4CH2OH', 'C6H14O6'],
  ['C6H8O7·H2O', 'C6H10O8'],
  ['Na3C6H5O7·2H2O', 'Na3C6H9O9'],
  ['C3H5(CO2(CH2)10CH3)3', 'C39H74O6'],
] as const;

describe('molarMass: worked by hand', () => {
  it.each(COMPOUNDS)('%s is %s g/mol', (formula, expected) => {
    expect(molarMass(formula).toString()).toBe(expected);
  });

  it.each([
    ['I2', '253.8'], // 2 · 126.90
    ['Na2CO3·10H2O', '286.138'], // 105.988 + 10 · 18.015
    ['C57H104O6', '885.453'], // triolein: 684.627 + 104.832 + 95.994
  ])('%s is %s g/mol', (formula, expected) => {
    expect(molarMass(formula).toString()).toBe(expected);
  });

  it.each(WRITTEN_OUT)('%s is %s', (written, formula) => {
    expect(molarMass(written).toString()).toBe(molarMass(formula).toString());
  });
});

describe('molarMass: against a formula library with atomic weights of its own', () => {
  const formulas = [
    ...COMPOUNDS.map(([formula]) => formula),
    ...(Object.keys(fattyAcidNames) as FattyAcid[]).map((id) => fattyAcidFigures(id).formula),
    ...WRITTEN_OUT.map(([formula]) => formula).filter((formula) => !formula.includes('·')),
    'I2',
    'Na2CO3(H2O)10',
    '(CH3(CH2)16CO2)3C3H5',
  ];

  it.each([...new Set(formulas)])('%s', (formula) => {
    const { mass, atoms } = new MF(formula).getInfo();
    // Each weight is abridged, and may differ by its printed uncertainty, once for every atom.
    const tolerance = Object.entries(atoms).reduce(
      (sum, [symbol, n]) =>
        sum.plus(new Decimal(atomicWeights[symbol as keyof typeof atomicWeights].uncertainty).times(n)),
      new Decimal(0),
    );
    expect(molarMass(formula).minus(mass).abs().lte(tolerance)).toBe(true);
    // That leaves less than three parts in ten thousand: an atom too many or too few would show.
    expect(tolerance.div(molarMass(formula)).lt('0.0004')).toBe(true);
  });
});

describe('molarMass: laws', () => {
  const formula = fc
    .array(fc.tuple(fc.constantFrom(...Object.keys(atomicWeights)), fc.integer({ min: 1, max: 99 })), {
      minLength: 1,
      maxLength: 6,
    })
    .map((atoms) => atoms.map(([symbol, n]) => `${symbol}${String(n)}`).join(''));

  it('adds up over the parts of a formula and multiplies over brackets', () => {
    fc.assert(
      fc.property(formula, formula, fc.integer({ min: 2, max: 99 }), (a, b, n) => {
        expect(molarMass(a + b).eq(molarMass(a).plus(molarMass(b)))).toBe(true);
        expect(molarMass(`(${a})${String(n)}`).eq(molarMass(a).times(n))).toBe(true);
        expect(molarMass(`${a}·${String(n)}${b}`).eq(molarMass(a).plus(molarMass(b).times(n)))).toBe(true);
      }),
    );
  });

  it('gives the same answer for many formulas as for the first', () => {
    const first = molarMass('C12H24O2').toString();
    for (let n = 1; n <= 1000; n += 1)
      expect(molarMass(`C${String(n)}`).toString()).toBe(new Decimal('12.011').times(n).toString());
    expect(molarMass('C12H24O2').toString()).toBe(first);
  });
});

describe('molarMass: refusals', () => {
  it.each(['H0', 'C0H0', '(NaOH)0'])('%s has no atoms', (formula) => {
    const { code, path, message } = refusal(() => molarMass(formula, 'salt'));
    expect({ code, path }).toEqual({ code: 'bad-shape', path: 'salt' });
    expect(message.endsWith(`received ${formula}`)).toBe(true);
  });

  it('refuses what is no formula, under the path it was given, the second time as well', () => {
    for (const path of ['salt', 'formula']) {
      expect(refusal(() => molarMass('NaOX', path))).toMatchObject({ code: 'bad-shape', path });
    }
  });
});
