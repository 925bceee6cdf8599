import type { Decimal, Limits } from '../../numbers/index.js';
import { canonical, readQuantity, type OneUnit, type Units } from '../unit.js';

/** Unit of the iodine value: grams of iodine taken up by 100 g of fat. */
export type IodineValueUnit = 'gI2Per100g';
/** An iodine value, in g of iodine per 100 g of fat. */
export type IodineValueInput = OneUnit<IodineValueUnit>;
/** An iodine value in a result, in g of iodine per 100 g of fat. */
export interface IodineValue {
  readonly gI2Per100g: Decimal;
}
export const iodineValueUnits: Units<IodineValueUnit> = { gI2Per100g: /* @__PURE__ */ canonical('iso-3961') };

const ANY_FAT: Limits = { min: 0, max: 500 };

/** Reads an iodine value in g I2 per 100 g; 0 to 500. */
export function readIodineValue(path: string, value: unknown): Decimal {
  return readQuantity(path, value, iodineValueUnits, ANY_FAT);
}
