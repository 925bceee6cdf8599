import { refuse, type Decimal, type Limits } from '../../numbers/index.js';
import { canonical, readQuantity, scaled, type OneUnit, type Units } from '../unit.js';

/** Units of volume; fluid ounces and gallons say whose. */
export type VolumeUnit = 'mL' | 'L' | 'usFlOz' | 'usGal' | 'impFlOz' | 'impGal';
/** A volume in one of its units. */
export type VolumeInput = OneUnit<VolumeUnit>;
/** A volume in a result, in millilitres. */
export interface Volume {
  readonly mL: Decimal;
}

export const volumeUnits: Units<VolumeUnit> = {
  mL: /* @__PURE__ */ canonical('si-brochure-2019'),
  L: /* @__PURE__ */ scaled('1000', 'si-brochure-2019'),
  usFlOz: /* @__PURE__ */ scaled('29.5735295625', 'nist-sp-811-2008'), // 231 cubic inches / 128
  usGal: /* @__PURE__ */ scaled('3785.411784', 'nist-sp-811-2008'), // 231 cubic inches
  impFlOz: /* @__PURE__ */ scaled('28.4130625', 'nist-sp-811-2008'), // 4.54609 L / 160
  impGal: /* @__PURE__ */ scaled('4546.09', 'nist-sp-811-2008'),
};

/**
 * Reads a volume in millilitres; zero or more unless other limits are given. Beyond a thousand cubic metres, and below a
 * millionth of a millilitre, there is no vessel; so everything worked out from a volume is a number that can be read again.
 */
export function readVolume(path: string, value: unknown, limits: Limits = { min: 0 }): Decimal {
  const millilitres = readQuantity(path, value, volumeUnits, limits);
  const size = millilitres.abs();
  return size.isZero() || (size.gte('1e-6') && size.lte('1e9'))
    ? millilitres
    : refuse('out-of-range', path, '0, or 1e-6 to 1e9 mL', millilitres.toString());
}
