import type { Decimal } from '../../numbers/index.js';
import { canonical, type OneUnit, type Units } from '../unit.js';

/** Unit of a chain length: carbon atoms to one acid. */
export type ChainLengthUnit = 'carbonsPerAcid';
/** A mean chain length, in carbon atoms to one acid. */
export interface ChainLength {
  readonly carbonsPerAcid: Decimal;
}
/** A mean chain length as input, in carbon atoms to one acid. */
export type ChainLengthInput = OneUnit<ChainLengthUnit>;
export const chainLengthUnits: Units<ChainLengthUnit> = {
  carbonsPerAcid: /* @__PURE__ */ canonical('si-brochure-2019'),
};

/** Unit of unsaturation: carbon-carbon double bonds to one acid. */
export type UnsaturationUnit = 'doubleBondsPerAcid';
/** Mean unsaturation, in double bonds to one acid. */
export interface Unsaturation {
  readonly doubleBondsPerAcid: Decimal;
}
/** Mean unsaturation as input, in double bonds to one acid. */
export type UnsaturationInput = OneUnit<UnsaturationUnit>;
export const unsaturationUnits: Units<UnsaturationUnit> = {
  doubleBondsPerAcid: /* @__PURE__ */ canonical('si-brochure-2019'),
};
