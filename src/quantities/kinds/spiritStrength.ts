import type { Decimal, Limits } from '../../numbers/index.js';
import { canonical, readQuantity, type OneUnit, type Units } from '../unit.js';

/** Unit of the strength of spirit, by volume at 20 °C; for ethanol only, and never a share by mass. */
export type SpiritStrengthUnit = 'percentByVolume';
/** Strength of spirit, in percent by volume at 20 °C. */
export type SpiritStrengthInput = OneUnit<SpiritStrengthUnit>;
export const spiritStrengthUnits: Units<SpiritStrengthUnit> = {
  percentByVolume: /* @__PURE__ */ canonical('oiml-r-22'),
};

/** Reads the strength of spirit, in percent by volume at 20 °C. */
export function readSpiritStrength(path: string, value: unknown, limits: Limits = { min: 0, max: 100 }): Decimal {
  return readQuantity(path, value, spiritStrengthUnits, limits);
}
