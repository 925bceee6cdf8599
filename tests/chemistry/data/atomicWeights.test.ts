import { describe, expect, it } from 'vitest';
import { atomicWeights } from '../../../src/chemistry/data/atomicWeights.js';
import { Decimal } from '../../../src/numbers/index.js';
import { sources } from '../../../src/sources/index.js';

// Standard atomic weights 2021 in full (Prohaska et al., Pure and Applied Chemistry 94 (2022) 573-600): an interval where
// terrestrial material varies, else value and uncertainty, written here as the interval they span. Read; iodine recalled.
const INTERVALS = {
  H: ['1.00784', '1.00811'],
  C: ['12.0096', '12.0116'],
  N: ['14.00643', '14.00728'],
  O: ['15.99903', '15.99977'],
  Na: ['22.98976926', '22.98976930'], // 22.98976928(2)
  S: ['32.059', '32.076'],
  Cl: ['35.446', '35.457'],
  K: ['39.0982', '39.0984'], // 39.0983(1)
  I: ['126.90444', '126.90450'], // 126.90447(3)
} as const satisfies Record<keyof typeof atomicWeights, readonly [string, string]>;

// Of oxygen's interval the lower end is 15.99903; rounded to the three decimals of the abridged table that is 15.999.
const BELOW_BY_ROUNDING: Readonly<Record<string, string>> = { O: '0.00003' };

describe('atomic weights', () => {
  it('has the elements of soap making and no other', () => {
    expect(Object.keys(atomicWeights).sort()).toEqual(Object.keys(INTERVALS).sort());
  });

  describe.each(Object.entries(atomicWeights))('%s', (symbol, { value, uncertainty, source, obtained }) => {
    const weight = new Decimal(value);
    const [low, high] = INTERVALS[symbol as keyof typeof INTERVALS];

    it('covers the whole standard interval by its printed uncertainty', () => {
      expect(weight.minus(uncertainty).lte(low)).toBe(true);
      expect(weight.plus(uncertainty).gte(high)).toBe(true);
    });

    it('lies in the standard interval, as far as its decimals can tell', () => {
      const halfDigit = new Decimal(10).pow(-weight.decimalPlaces() - (/0+$/.exec(value)?.[0].length ?? 0)).div(2);
      expect(weight.gte(new Decimal(low).minus(halfDigit))).toBe(true);
      expect(weight.lte(new Decimal(high).plus(halfDigit))).toBe(true);
    });

    it('lies in an interval of isotopic variation itself, oxygen apart', () => {
      const below = new Decimal(low).minus(weight);
      if (['H', 'C', 'N', 'S', 'Cl'].includes(symbol)) {
        expect(below.lte(0)).toBe(true);
        expect(weight.lte(high)).toBe(true);
      } else if (symbol in BELOW_BY_ROUNDING) {
        expect(below.toString()).toBe(new Decimal(BELOW_BY_ROUNDING[symbol] ?? NaN).toString());
      } else {
        // sodium, potassium and iodine hardly vary: the abridged value is the standard one, rounded
        const middle = new Decimal(low).plus(high).div(2);
        expect(middle.toFixed(value.split('.')[1]?.length ?? 0)).toBe(value);
      }
    });

    it('says where it is from', () => {
      expect(sources([source])).toHaveLength(1);
      expect(['read', 'memory']).toContain(obtained);
    });
  });
});
