import type { Decimal } from '../../numbers/index.js';
import { canonical, type OneUnit, type Units } from '../unit.js';

/** Unit of a ratio of two masses: parts of the one to one part of the other. */
export type MassRatioUnit = 'partsPerPart';
/** A ratio of two masses, in parts of the one to one part of the other. */
export type MassRatioInput = OneUnit<MassRatioUnit>;
/** A ratio of two masses in a result. */
export interface MassRatio {
  readonly partsPerPart: Decimal;
}

export const massRatioUnits: Units<MassRatioUnit> = {
  partsPerPart: /* @__PURE__ */ canonical('si-brochure-2019'),
};
