import { describe, expect, it } from 'vitest';
import { molarMassOf } from '../../src/chemistry/index.js';
import { EDITION } from '../../src/sources/index.js';
import { valueIn } from '../../src/quantities/index.js';
import { refusal } from '../laws/refusal.js';

describe('molarMassOf: worked by hand', () => {
  it('gives g/mol, source and edition', () => {
    const lauric = molarMassOf('C12H24O2');
    expect(lauric.molarMass.gPerMol.toString()).toBe('200.322'); // 144.132 + 24.192 + 31.998
    expect(lauric.basis).toEqual(['iupac-2021']);
    expect(lauric.edition).toBe(EDITION);
  });

  it('is accepted as a quantity again', () => {
    expect(valueIn(molarMassOf('NaOH').molarMass, 'gPerMol').toString()).toBe('39.997');
  });
});

describe('molarMassOf: laws', () => {
  it('is frozen through and through', () => {
    const result = molarMassOf('KOH');
    expect(Object.isFrozen(result)).toBe(true);
    expect(Object.isFrozen(result.molarMass)).toBe(true);
    expect(Object.isFrozen(result.basis)).toBe(true);
  });
});

describe('molarMassOf: refusals', () => {
  it.each([
    ['', 'an empty text'],
    ['Xx2', 'Xx2'],
    ['C6H12)', 'C6H12)'],
    [5, '5'],
    [{ formula: 'KOH' }, 'an object'],
  ])('%j is no formula', (formula, received) => {
    expect(refusal(() => molarMassOf(formula as string))).toEqual({
      code: 'bad-shape',
      path: 'formula',
      message: `formula: expected a formula such as C3H5(OH)3 or Na2CO3·10H2O of H, C, N, O, Na, S, Cl, K, I, received ${received}`,
    });
  });
});
