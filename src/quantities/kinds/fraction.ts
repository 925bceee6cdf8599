import type { Decimal, Limits } from '../../numbers/index.js';
import { canonical, readQuantity, scaled, type OneUnit, type Units } from '../unit.js';

/** Units of a share by mass. */
export type FractionUnit = 'percent' | 'fraction' | 'ppm';
/** A share by mass, in percent, as a fraction of one, or in parts per million. */
export type FractionInput = OneUnit<FractionUnit>;
/** A share by mass in a result, in percent. */
export interface Fraction {
  readonly percent: Decimal;
}

export const fractionUnits: Units<FractionUnit> = {
  percent: /* @__PURE__ */ canonical('si-brochure-2019'),
  fraction: /* @__PURE__ */ scaled('100', 'si-brochure-2019'),
  ppm: /* @__PURE__ */ scaled('0.0001', 'si-brochure-2019'),
};

const ANY_SHARE: Limits = { min: 0, max: 100 };

/** Reads a share by mass as percent; 0 to 100 unless other limits, in percent, are given. */
export function readPercent(path: string, value: unknown, limits: Limits = ANY_SHARE): Decimal {
  return readQuantity(path, value, fractionUnits, limits);
}
