import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { unitsByKind, type UnitsByKind } from '../../src/quantities/index.js';
import { Decimal } from '../../src/numbers/index.js';
import { sources } from '../../src/sources/index.js';

type Kind = keyof UnitsByKind;
const kinds = unitsByKind();
const unit = (
  kind: Kind,
  name: string,
): { toCanonical: (value: Decimal) => Decimal; fromCanonical: (value: Decimal) => Decimal } => {
  const found = Object.entries(kinds[kind]).find(([key]) => key === name);
  if (found === undefined) throw new Error(`${kind} has no unit ${name}`);
  const { toCanonical, fromCanonical } = found[1];
  return {
    toCanonical: (value) => toCanonical(value, name),
    fromCanonical: (value) => fromCanonical(value, name),
  };
};

// What so much of a unit is in the canonical one of its kind. Definitions: SI brochure, 9th edition (2019); NIST Special
// Publication 811 (2008), appendix B; M(KOH) 56.105, M(NaOH) 39.997, M(Na2O) 61.979 by the atomic weights.
const FACTORS: readonly (readonly [Kind, string, string, string])[] = [
  ['mass', 'mg', '1', '0.001'],
  ['mass', 'g', '1', '1'],
  ['mass', 'kg', '1', '1000'],
  ['mass', 'oz', '1', '28.349523125'], // 453.59237 / 16
  ['mass', 'lb', '1', '453.59237'],
  ['volume', 'mL', '1', '1'],
  ['volume', 'L', '1', '1000'],
  ['volume', 'usGal', '1', '3785.411784'], // 231 · 2.54³
  ['volume', 'usFlOz', '1', '29.5735295625'], // 3785.411784 / 128
  ['volume', 'impGal', '1', '4546.09'],
  ['volume', 'impFlOz', '1', '28.4130625'], // 4546.09 / 160
  ['temperature', 'celsius', '1', '1'],
  ['temperature', 'fahrenheit', '212', '100'],
  ['temperature', 'fahrenheit', '32', '0'],
  ['temperature', 'fahrenheit', '-40', '-40'],
  ['temperature', 'kelvin', '273.15', '0'],
  ['temperature', 'kelvin', '0', '-273.15'],
  ['temperatureDifference', 'celsiusDegrees', '1', '1'],
  ['temperatureDifference', 'fahrenheitDegrees', '9', '5'],
  ['time', 'minutes', '1', '1'],
  ['time', 'hours', '1.5', '90'],
  ['amount', 'mol', '1', '1'],
  ['energy', 'kJ', '1', '1'],
  ['fraction', 'percent', '1', '1'],
  ['fraction', 'fraction', '0.5', '50'],
  ['fraction', 'ppm', '500', '0.05'],
  ['spiritStrength', 'percentByVolume', '1', '1'],
  ['saponificationValue', 'mgKohPerG', '1', '1'],
  ['saponificationValue', 'gKohPerG', '0.2567', '256.7'],
  ['saponificationValue', 'gNaohPerG', '0.183', '256.6996274720604045303397754831612'], // 0.183 · 56105/39.997
  ['saponificationValue', 'saponificationEquivalent', '218.5', '256.7734553775743707093821510297483'], // 56105/218.5
  ['alkaliContent', 'percentNaoh', '1', '1'],
  ['alkaliContent', 'percentKoh', '1', '0.7128954638624008555387220390339542'], // 39.997/56.105
  ['alkaliContent', 'percentNa2o', '1', '1.290662966488649381242033592023105'], // 2 · 39.997/61.979
  ['titrant', 'eqPerL', '1', '1'],
  ['iodineValue', 'gI2Per100g', '1', '1'],
  ['massRatio', 'partsPerPart', '1', '1'],
  ['molarMass', 'gPerMol', '1', '1'],
  ['density', 'gPerML', '1', '1'],
  ['density', 'kgPerM3', '998.2', '0.9982'],
  ['chainLength', 'carbonsPerAcid', '1', '1'],
  ['unsaturation', 'doubleBondsPerAcid', '1', '1'],
  ['acidity', 'pH', '1', '1'],
];
// Hydrometer scales and specific gravities lean on the density of water: density.test.ts works them out.
const OVER_WATER = [
  'specificGravity20_4',
  'specificGravity20_20',
  'specificGravity15_15',
  'specificGravity60F_60F',
  'twaddell',
  'baume145',
  'baume144_3',
];

describe('units: worked by hand', () => {
  it.each(FACTORS)('%s: %s %s', (kind, name, value, canonical) => {
    // to the last but two of 34 digits: a factor is rounded, then the product
    const to32 = (number: Decimal | string): string => new Decimal(number).toSignificantDigits(32).toString();
    expect(to32(unit(kind, name).toCanonical(new Decimal(value)))).toBe(to32(canonical));
    expect(to32(unit(kind, name).fromCanonical(new Decimal(canonical)))).toBe(value);
  });

  it('works out every unit there is', () => {
    const worked = [
      ...FACTORS.map(([kind, name]) => `${kind}.${name}`),
      ...OVER_WATER.map((name) => `density.${name}`),
    ];
    const there = Object.entries(kinds).flatMap(([kind, units]) => Object.keys(units).map((name) => `${kind}.${name}`));
    expect([...new Set(worked)].sort()).toEqual(there.sort());
  });
});

describe('units: against a units library', () => {
  interface Amount {
    readonly scalar: number;
    readonly to: (unit: string) => Amount;
  }
  // it has no types of its own
  const amount = createRequire(import.meta.url)('js-quantities') as (value: number, unit: string) => Amount;

  // Relative tolerances: half a digit in the last place of the factors that the library keeps, as read in its table;
  // where the factor is exact, a double has 53 bits and the sum a few roundings.
  const DOUBLE = '1e-14';
  const OUNCE = '1.8e-9'; // 0.0283495231 kg: 5e-12 of 0.0283
  const US_GALLON = '1.4e-8'; // 0.0037854118 m3: 5e-11 of 0.00379; its fluid ounce, 1/128 of that, is good for no more

  it.each<[Kind, string, string, string, string]>([
    ['mass', 'mg', 'mg', 'g', DOUBLE],
    ['mass', 'kg', 'kg', 'g', DOUBLE],
    ['mass', 'oz', 'oz', 'g', OUNCE],
    ['mass', 'lb', 'lb', 'g', DOUBLE],
    ['volume', 'L', 'L', 'mL', DOUBLE],
    ['volume', 'usFlOz', 'fluid-ounce', 'mL', US_GALLON],
    ['volume', 'usGal', 'gallon', 'mL', US_GALLON],
    ['volume', 'impFlOz', 'fluid-ounce-imp', 'mL', DOUBLE],
    ['volume', 'impGal', 'gallon-imp', 'mL', DOUBLE],
    ['temperature', 'fahrenheit', 'tempF', 'tempC', DOUBLE],
    ['temperature', 'kelvin', 'tempK', 'tempC', DOUBLE],
    ['temperatureDifference', 'fahrenheitDegrees', 'degF', 'degC', DOUBLE],
    ['time', 'hours', 'hour', 'minute', DOUBLE],
    ['energy', 'kJ', 'kJ', 'kJ', DOUBLE],
    ['amount', 'mol', 'mol', 'mol', DOUBLE],
    ['fraction', 'ppm', 'ppm', 'percent', DOUBLE],
    ['density', 'kgPerM3', 'kg/m3', 'g/mL', DOUBLE],
  ])('%s: %s', (kind, name, theirs, canonical, tolerance) => {
    for (const value of [1, 16, 70, 98.6, 250, 1000]) {
      const expected = amount(value, theirs).to(canonical).scalar;
      const own = unit(kind, name).toCanonical(new Decimal(value));
      // a temperature is told from absolute zero in between, so that its scale is that of kelvins
      const scale = kind === 'temperature' ? own.abs().plus('273.15') : own;
      expect(own.minus(expected).abs().lte(scale.times(tolerance))).toBe(true);
    }
  });
});

describe('units: laws', () => {
  const all = Object.entries(kinds).flatMap(([kind, units]) =>
    Object.entries(units).map(([name, { source }]) => ({ kind, name, source })),
  );

  it('has no unit name that serves two kinds', () => {
    const names = all.map(({ name }) => name);
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });

  it('has no unit named as the ends of a range', () => {
    expect(all.filter(({ name }) => ['low', 'likely', 'high'].includes(name))).toEqual([]);
  });

  it('has a publication behind every unit', () => {
    expect(all.filter(({ source }) => sources([source]).length !== 1)).toEqual([]);
  });

  it('has one canonical unit of every kind, that results are told in', () => {
    const canonical = Object.values(kinds).map((units) =>
      Object.keys(units).filter((name) => CANONICAL.includes(name)),
    );
    expect(canonical.filter((names) => names.length !== 1)).toEqual([]);
    for (const [kind, units] of Object.entries(kinds)) {
      for (const name of Object.keys(units).filter((one) => CANONICAL.includes(one))) {
        expect(
          unit(kind as Kind, name)
            .toCanonical(new Decimal('1.25'))
            .toString(),
        ).toBe('1.25');
        expect(
          unit(kind as Kind, name)
            .fromCanonical(new Decimal('1.25'))
            .toString(),
        ).toBe('1.25');
      }
    }
  });
});

const CANONICAL: readonly string[] = [
  'g',
  'mL',
  'celsius',
  'celsiusDegrees',
  'minutes',
  'mol',
  'kJ',
  'percent',
  'percentByVolume',
  'mgKohPerG',
  'percentNaoh',
  'eqPerL',
  'gI2Per100g',
  'gPerMol',
  'gPerML',
  'partsPerPart',
  'carbonsPerAcid',
  'doubleBondsPerAcid',
  'pH',
];
