import type { Decimal } from '../../numbers/index.js';
import { canonical, type OneUnit, type Units } from '../unit.js';

/** Units of temperature. */
export type TemperatureUnit = 'celsius' | 'fahrenheit' | 'kelvin';
/** A temperature in one of its units. */
export type TemperatureInput = OneUnit<TemperatureUnit>;
/** A temperature in a result, in degrees Celsius. */
export interface Temperature {
  readonly celsius: Decimal;
}

export const temperatureUnits: Units<TemperatureUnit> = {
  celsius: /* @__PURE__ */ canonical('si-brochure-2019'),
  fahrenheit: {
    toCanonical: (value) => value.minus(32).times(5).div(9),
    fromCanonical: (value) => value.times(9).div(5).plus(32),
    source: 'nist-sp-811-2008',
  },
  kelvin: {
    toCanonical: (value) => value.minus('273.15'),
    fromCanonical: (value) => value.plus('273.15'),
    source: 'si-brochure-2019',
  },
};
