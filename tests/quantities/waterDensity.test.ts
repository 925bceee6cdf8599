import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/numbers/index.js';
import { waterDensity } from '../../src/quantities/waterDensity.js';

describe('waterDensity: worked by hand', () => {
  it('is greatest at 3.983035 °C, where the bend is nothing', () => {
    expect(waterDensity(new Decimal('3.983035')).toString()).toBe('0.99997495');
  });

  it('is 998.2067 kg/m3 at 20 °C', () => {
    // 16.016965² = 256.543168; · 321.797 = 82554.82; / (522528.9 · 89.34881) = 0.00176826; 0.99997495 · 0.99823174
    expect(waterDensity(20).toFixed(7)).toBe('0.9982067');
  });

  it('takes a number or a Decimal', () => {
    expect(waterDensity(15).toString()).toBe(waterDensity(new Decimal(15)).toString());
  });
});

describe('waterDensity: against Kell 1975', () => {
  // Evaluated from the constants of Kell, Journal of Chemical and Engineering Data 20 (1975) 97-105, to five decimals.
  // Tolerance, one unit of the fifth: half of it is the rounding, and Kell's temperatures are of the scale of 1968 and his
  // densities of an older measurement, which comes to 0.0033 kg/m3 (a third of a unit) where the two differ most, at 0 °C.
  it.each([
    [0, '0.99984'],
    [4, '0.99997'],
    [10, '0.99970'],
    [15, '0.99910'],
    [20, '0.99820'],
    [25, '0.99704'],
    [30, '0.99565'],
    [40, '0.99222'],
  ])('at %s °C it is %s g/mL', (celsius, expected) => {
    expect(waterDensity(celsius).minus(expected).abs().lte('0.00001')).toBe(true);
  });

  it('agrees with the polynomial itself within 0.0035 kg/m3, at every tenth of a degree', () => {
    const polynomial = (t: Decimal): Decimal =>
      ['999.83952', '16.945176', '-7.9870401e-3', '-46.170461e-6', '105.56302e-9', '-280.54253e-12']
        .reduce((sum, coefficient, power) => sum.plus(t.pow(power).times(coefficient)), new Decimal(0))
        .div(t.times('16.879850e-3').plus(1));
    for (let tenths = 0; tenths <= 400; tenths += 1) {
      const t = new Decimal(tenths).div(10);
      expect(waterDensity(t).times(1000).minus(polynomial(t)).abs().lte('0.0035')).toBe(true);
    }
  });
});

describe('waterDensity: laws', () => {
  const hundredths = (min: number, max: number): fc.Arbitrary<Decimal> =>
    fc.integer({ min, max }).map((n) => new Decimal(n).div(100));

  it('falls the further the water is from 4 °C, on either side', () => {
    fc.assert(
      fc.property(hundredths(399, 4000), hundredths(1, 100), (t, step) => {
        expect(waterDensity(t.plus(step)).lt(waterDensity(t))).toBe(true);
      }),
    );
    fc.assert(
      fc.property(hundredths(0, 398), hundredths(1, 100), (t, step) => {
        expect(waterDensity(t.minus(step)).lt(waterDensity(t))).toBe(true);
      }),
    );
  });
});
