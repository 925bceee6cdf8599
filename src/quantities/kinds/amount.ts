import type { Decimal, Limits } from '../../numbers/index.js';
import { canonical, readQuantity, type OneUnit, type Units } from '../unit.js';

/** Unit of an amount of substance. */
export type AmountUnit = 'mol';
/** An amount of substance, in moles. */
export type AmountInput = OneUnit<AmountUnit>;
/** An amount of substance in a result, in moles. */
export interface Amount {
  readonly mol: Decimal;
}
export const amountUnits: Units<AmountUnit> = { mol: /* @__PURE__ */ canonical('si-brochure-2019') };

/** Reads an amount of substance in moles; zero or more unless other limits are given. */
export function readAmount(path: string, value: unknown, limits: Limits = { min: 0 }): Decimal {
  return readQuantity(path, value, amountUnits, limits);
}
