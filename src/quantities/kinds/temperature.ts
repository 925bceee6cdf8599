import type { Decimal, Limits } from '../../numbers/index.js';
import { canonical, readQuantity, type OneUnit, type Units } from '../unit.js';

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

/** Nothing at a soap bench is colder or hotter. */
const AT_THE_BENCH: Limits = { min: -100, max: 400 };

/** Reads a temperature in °C; -100 to 400 unless other limits are given. */
export function readTemperature(path: string, value: unknown, limits: Limits = AT_THE_BENCH): Decimal {
  return readQuantity(path, value, temperatureUnits, limits);
}
