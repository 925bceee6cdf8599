import type { Decimal } from '../../numbers/index.js';
import { canonical, type OneUnit, type Units } from '../unit.js';

/** Units of a rise, a fall or a distance of temperature: degrees of a scale, not a place on it. */
export type TemperatureDifferenceUnit = 'celsiusDegrees' | 'fahrenheitDegrees';
/** A difference of two temperatures; one Celsius degree is one kelvin. */
export type TemperatureDifferenceInput = OneUnit<TemperatureDifferenceUnit>;
/** A difference of two temperatures in a result, in Celsius degrees. */
export interface TemperatureDifference {
  readonly celsiusDegrees: Decimal;
}

export const temperatureDifferenceUnits: Units<TemperatureDifferenceUnit> = {
  celsiusDegrees: /* @__PURE__ */ canonical('si-brochure-2019'),
  fahrenheitDegrees: {
    toCanonical: (value) => value.times(5).div(9),
    fromCanonical: (value) => value.times(9).div(5),
    source: 'nist-sp-811-2008',
  },
};
