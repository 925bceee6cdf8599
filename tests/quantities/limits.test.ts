/** What each reader takes where nothing else is asked: the last figure that is read, and the first that is not. */
import { describe, expect, it } from 'vitest';
import { readAcidity } from '../../src/quantities/kinds/acidity.js';
import { readAlkaliContent } from '../../src/quantities/kinds/alkaliContent.js';
import { readAmount } from '../../src/quantities/kinds/amount.js';
import { readDensity } from '../../src/quantities/kinds/density.js';
import { readIodineValue } from '../../src/quantities/kinds/iodineValue.js';
import { readMass, readOptionalMass } from '../../src/quantities/kinds/mass.js';
import { readSaponificationValueRange } from '../../src/quantities/kinds/saponificationValue.js';
import { readSpiritStrength } from '../../src/quantities/kinds/spiritStrength.js';
import { readTemperature } from '../../src/quantities/kinds/temperature.js';
import { readTime } from '../../src/quantities/kinds/time.js';
import { readTitrant } from '../../src/quantities/kinds/titrant.js';
import { readVolume } from '../../src/quantities/kinds/volume.js';
import { refusal } from '../laws/refusal.js';

type Read = (path: string, value: unknown) => { toString: () => string };

describe('limits', () => {
  it.each<[string, Read, string, readonly string[], readonly string[]]>([
    ['a mass', readMass, 'g', ['0', '1e-24', '1000000000000'], ['-1', '9e-25', '1000000000001']],
    ['a volume', readVolume, 'mL', ['0', '0.000001', '1000000000'], ['-1', '9e-7', '1000000001']],
    ['a temperature', readTemperature, 'celsius', ['-100', '0', '400'], ['-100.1', '400.1']],
    ['a density', readDensity, 'gPerML', ['0.5', '14'], ['0.499', '14.001', '-1']],
    ['a time', readTime, 'minutes', ['0', '525600'], ['-1', '525601']],
    ['a titrant', readTitrant, 'eqPerL', ['0.000001', '20'], ['0', '9e-7', '20.1']],
    ['an acidity', readAcidity, 'pH', ['0', '14'], ['-0.1', '14.1']],
    ['an amount', readAmount, 'mol', ['0', '12'], ['-1']],
    ['an alkali content', readAlkaliContent, 'percentNaoh', ['0', '100'], ['-0.1', '100.1']],
    ['a strength of spirit', readSpiritStrength, 'percentByVolume', ['0', '100'], ['-0.1', '100.1']],
    ['an iodine value', readIodineValue, 'gI2Per100g', ['0', '300'], ['-0.1', '1000']],
  ])('of %s', (_what, read, unit, inside, outside) => {
    for (const value of inside) expect(read('it', { [unit]: value }).toString()).toBe(value);
    for (const value of outside) expect([value, refusal(() => read('it', { [unit]: value })).code]).toEqual([value, 'out-of-range']);
  }); // prettier-ignore

  it('a figure in another unit is told in the one it came in, and so are its limits', () => {
    expect(refusal(() => readTemperature('it', { kelvin: 1 })).message).toBe(
      'it.kelvin: expected 173.15 to 673.15, received 1',
    );
  });

  it('a mass that may be left out is left out only where there is none', () => {
    expect(readOptionalMass('it', undefined)).toBeUndefined();
    expect(String(readOptionalMass('it', { kg: 2 }))).toBe('2000');
    expect(refusal(() => readOptionalMass('it', null)).code).toBe('missing');
  });
});

describe('a range that runs backward', () => {
  const [ten, two] = [{ mgKohPerG: 200 }, { saponificationEquivalent: 295 }];

  it('is turned round only if both ends are in the unit that does', () => {
    for (const range of [{ low: ten, high: two }, { low: { mgKohPerG: 200 }, high: { mgKohPerG: 190 } }]) {
      expect(refusal(() => readSaponificationValueRange('sv', range))).toMatchObject({ code: 'out-of-range', path: 'sv' });
    }
    const mixed = { low: { saponificationEquivalent: 200 }, high: { mgKohPerG: 190 } };
    expect(refusal(() => readSaponificationValueRange('sv', mixed))).toMatchObject({ code: 'out-of-range', path: 'sv' });
  }); // prettier-ignore
});
