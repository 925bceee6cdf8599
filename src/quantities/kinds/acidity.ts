import type { Decimal, Limits } from '../../numbers/index.js';
import { canonical, readQuantity, type OneUnit, type Units } from '../unit.js';

/** Unit of acidity: pH, or a difference of two. */
export type AcidityUnit = 'pH';
/** A pH as input, or a difference of two. */
export type AcidityInput = OneUnit<AcidityUnit>;
/** A pH in a result. */
export interface Acidity {
  readonly pH: Decimal;
}
export const acidityUnits: Units<AcidityUnit> = { pH: /* @__PURE__ */ canonical('si-brochure-2019') };

/** Reads a pH; 0 to 14 unless other limits are given. */
export function readAcidity(path: string, value: unknown, limits: Limits = { min: 0, max: 14 }): Decimal {
  return readQuantity(path, value, acidityUnits, limits);
}
