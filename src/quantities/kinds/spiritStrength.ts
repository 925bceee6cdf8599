import { canonical, type OneUnit, type Units } from '../unit.js';

/** Unit of the strength of spirit, by volume at 20 °C; for ethanol only, and never a share by mass. */
export type SpiritStrengthUnit = 'percentByVolume';
/** Strength of spirit, in percent by volume at 20 °C. */
export type SpiritStrengthInput = OneUnit<SpiritStrengthUnit>;
export const spiritStrengthUnits: Units<SpiritStrengthUnit> = {
  percentByVolume: /* @__PURE__ */ canonical('oiml-r-22'),
};
