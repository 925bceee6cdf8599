import {
  dilutedLye,
  lyeDensity,
  lyeFreezingPoint,
  lyeStrengthFromDensity,
  lyeTemperatureFromDissolving,
  type Density,
  type Estimate,
  type Fraction,
  type Temperature,
  type Titrant,
} from 'laurate';
import { describe, expectTypeOf, it } from 'vitest';

const alkali = 'naoh';
const strength = { percent: 33 } as const;
const temperature = { celsius: 20 } as const;

describe('the lye bench', () => {
  it('gives quantities that go in again', () => {
    const { density, concentration } = lyeDensity({ alkali, strength, temperature });
    expectTypeOf(density).toEqualTypeOf<Density>();
    expectTypeOf(concentration).toEqualTypeOf<Titrant>();
    expectTypeOf(lyeStrengthFromDensity({ alkali, density, temperature }).strength).toEqualTypeOf<Fraction>();
    const diluted = dilutedLye({ alkali, stock: { strength }, target: { strength, lye: { g: 1 } } });
    expectTypeOf(diluted.lye.strength).toEqualTypeOf<Estimate<Fraction>>();
    expectTypeOf(lyeFreezingPoint({ alkali, strength }).freezingPoint).toEqualTypeOf<Temperature>();
  });

  it('takes exactly one amount of diluted lye', () => {
    const stock = { strength: { percent: 50 } } as const;
    dilutedLye({ alkali, stock: { strength: { low: { percent: 48 }, high: { percent: 50 } } }, target: { strength, stock: { g: 1 } } }); // prettier-ignore
    // @ts-expect-error two amounts
    dilutedLye({ alkali, stock, target: { strength, lye: { g: 1 }, stock: { g: 1 } } });
    // @ts-expect-error no amount at all
    dilutedLye({ alkali, stock, target: { strength } });
    // @ts-expect-error a unit of another kind
    dilutedLye({ alkali, stock, target: { strength, hydroxide: { g: 1 } } });
  });

  it('knows the tables and the scales by name', () => {
    // @ts-expect-error no such table
    lyeDensity({ alkali, strength, temperature, table: 'crc' });
    // @ts-expect-error Baumé without its modulus
    lyeStrengthFromDensity({ alkali, density: { baume: 36 }, temperature });
    // @ts-expect-error the temperature is no option
    lyeStrengthFromDensity({ alkali, density: { baume145: 36 } });
    // @ts-expect-error the start is no option
    lyeTemperatureFromDissolving({ alkali, solid: { g: 1 }, water: { g: 9 } });
  });
});
