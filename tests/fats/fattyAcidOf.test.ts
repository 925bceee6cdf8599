import { fattyAcidOf } from 'laurate';
import { describe, expect, it } from 'vitest';
import { fattyAcidNames } from '../../src/chemistry/data/fattyAcidNames.js';
import { refusal } from '../laws/refusal.js';
import { acidMass, acids } from './boxes.js';

describe('fattyAcidOf: worked by hand', () => {
  it('ricinoleic acid', () => {
    const acid = fattyAcidOf('C18:1-OH');
    expect(acid).toMatchObject({ id: 'C18:1-OH', formula: 'C18H34O3', carbons: 18, doubleBonds: 1 });
    expect(acid.name).toBe('ricinoleic acid');
    expect(acid.molarMass.gPerMol.toString()).toBe('298.467'); // 18 * 12.011 + 34 * 1.008 + 3 * 15.999
    expect(acid.acidValue.mgKohPerG.toFixed(6)).toBe('187.977230'); // 56105 / 298.467
    expect(acid.iodineValue.gI2Per100g.toFixed(6)).toBe('85.034526'); // 25380 / 298.467
  });

  it('lauric acid has no double bond', () => {
    expect(fattyAcidOf('C12:0').iodineValue.gI2Per100g.isZero()).toBe(true);
  });
});

describe('fattyAcidOf: laws', () => {
  // double precision against 34 digits
  it.each(Object.keys(acids))('%s: molar mass, acid value and iodine value hang together', (id) => {
    const acid = fattyAcidOf(id as keyof typeof fattyAcidNames);
    expect(Number(acid.molarMass.gPerMol)).toBeCloseTo(acidMass(id), 9);
    expect(Number(acid.acidValue.mgKohPerG)).toBeCloseTo(56105 / acidMass(id), 9);
    expect(Number(acid.iodineValue.gI2Per100g)).toBeCloseTo((25380 * acid.doubleBonds) / acidMass(id), 9);
  });

  it('every acid on file answers by its own name', () => {
    for (const id of Object.keys(fattyAcidNames) as (keyof typeof fattyAcidNames)[]) {
      expect(fattyAcidOf(id)).toMatchObject({ id, name: fattyAcidNames[id] });
    }
  });
});

describe('fattyAcidOf: refusals', () => {
  it.each(['lauric acid', 'C13:9', '', 'toString', '__proto__', 12, null, undefined])('%o', (id) => {
    expect(refusal(() => fattyAcidOf(id as never))).toMatchObject({ code: 'unknown-acid', path: 'id' });
  });

  it('suggests the acid that was meant', () => {
    expect(refusal(() => fattyAcidOf('C18;1' as never)).message).toContain('did you mean "C18:1"?');
  });
});
