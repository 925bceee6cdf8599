import type { Decimal } from '../../numbers/index.js';
import { canonical, scaled, type OneUnit, type Units } from '../unit.js';

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
