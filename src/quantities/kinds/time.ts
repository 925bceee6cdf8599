import type { Decimal, Limits } from '../../numbers/index.js';
import { canonical, readQuantity, scaled, type OneUnit, type Units } from '../unit.js';

/** Units of time. */
export type TimeUnit = 'minutes' | 'hours';
/** A time in minutes or hours. */
export type TimeInput = OneUnit<TimeUnit>;
/** A time in a result, in minutes. */
export interface Time {
  readonly minutes: Decimal;
}
export const timeUnits: Units<TimeUnit> = {
  minutes: /* @__PURE__ */ canonical('si-brochure-2019'),
  hours: /* @__PURE__ */ scaled('60', 'si-brochure-2019'),
};

/** Reads a time in minutes; 0 to a year unless other limits are given. */
export function readTime(path: string, value: unknown, limits: Limits = { min: 0, max: 525600 }): Decimal {
  return readQuantity(path, value, timeUnits, limits);
}
