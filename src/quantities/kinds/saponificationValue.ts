import { molarMass } from '../../chemistry/index.js';
import { refuse, type Decimal, type Limits } from '../../numbers/index.js';
import { readRanged, type RangeOf } from '../estimate.js';
import { canonical, readQuantity, scaled, type OneUnit, type Units } from '../unit.js';

/** Units of the saponification value; the basis is in the name, because mixing bases is the trade's commonest fault. */
export type SaponificationValueUnit = 'mgKohPerG' | 'gKohPerG' | 'gNaohPerG' | 'saponificationEquivalent';
/**
 * A saponification value: mg or g of KOH, or g of NaOH, that split 1 g of fat; or grams of fat to one mole of alkali.
 * A bare number without basis is not accepted.
 */
export type SaponificationValueInput = OneUnit<SaponificationValueUnit>;
/** A saponification or acid value in a result, in mg of KOH per g of fat. */
export interface SaponificationValue {
  readonly mgKohPerG: Decimal;
}

export const saponificationValueUnits: Units<SaponificationValueUnit> = {
  mgKohPerG: /* @__PURE__ */ canonical('iso-3657'),
  gKohPerG: /* @__PURE__ */ scaled('1000', 'iso-3657'),
  gNaohPerG: /* @__PURE__ */ scaled(() => molarMass('KOH').div(molarMass('NaOH')).times(1000), 'iupac-2021'),
  saponificationEquivalent: {
    toCanonical: inverse,
    fromCanonical: inverse,
    isBackward: true,
    source: 'simmons-appleton-1908',
  },
};

/** Value and equivalent are each 1000·M(KOH) over the other. */
function inverse(value: Decimal, path: string): Decimal {
  if (value.lte(0)) refuse('out-of-range', path, 'more than 0', value.toString());
  return molarMass('KOH').times(1000).div(value);
}

/** No fat, acid or wax lies outside; a figure that does is in another unit. */
const ANY_FAT: Limits = { min: 20, max: 700 };

/** Reads a saponification value in mg KOH/g; 20 to 700 unless other limits are given. */
export function readSaponificationValue(path: string, value: unknown, limits: Limits = ANY_FAT): Decimal {
  return readQuantity(path, value, saponificationValueUnits, limits);
}

/** Reads a saponification value or a range of them. A range of equivalents runs the other way; it is turned round. */
export function readSaponificationValueRange(path: string, value: unknown, limits: Limits = ANY_FAT): RangeOf<Decimal> {
  const read = (at: string, part: unknown): Decimal => readSaponificationValue(at, part, limits);
  return readRanged(path, value, read, 'saponificationEquivalent');
}
