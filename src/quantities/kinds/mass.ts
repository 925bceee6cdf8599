import { refuse, type Decimal, type Limits } from '../../numbers/index.js';
import { canonical, readQuantity, scaled, type OneUnit, type Units } from '../unit.js';

/** Units of mass; `oz` and `lb` are avoirdupois. */
export type MassUnit = 'mg' | 'g' | 'kg' | 'oz' | 'lb';
/** A mass in one of milligrams, grams, kilograms, avoirdupois ounces or pounds. */
export type MassInput = OneUnit<MassUnit>;
/** A mass in a result, in grams. */
export interface Mass {
  readonly g: Decimal;
}

export const massUnits: Units<MassUnit> = {
  mg: /* @__PURE__ */ scaled('0.001', 'si-brochure-2019'),
  g: /* @__PURE__ */ canonical('si-brochure-2019'),
  kg: /* @__PURE__ */ scaled('1000', 'si-brochure-2019'),
  oz: /* @__PURE__ */ scaled('28.349523125', 'nist-sp-811-2008'),
  lb: /* @__PURE__ */ scaled('453.59237', 'nist-sp-811-2008'),
};

/**
 * Reads a mass in grams; zero or more unless other limits are given. Beyond a million tonnes, and below 1e-24 g, there is
 * no batch; so everything worked out from a mass is a number that can be read again.
 */
export function readMass(path: string, value: unknown, limits: Limits = { min: 0 }): Decimal {
  const grams = readQuantity(path, value, massUnits, limits);
  // the exponent tells the magnitude without arithmetic
  const isWeighable = grams.isZero() || (grams.e >= -24 && (grams.e < 12 || grams.abs().eq('1e12')));
  return isWeighable ? grams : refuse('out-of-range', path, '0, or 1e-24 to 1e12 g', grams.toString());
}

/** Reads a mass that may be left out. */
export function readOptionalMass(path: string, value: unknown, limits?: Limits): Decimal | undefined {
  return value === undefined ? undefined : readMass(path, value, limits);
}
