import type { Decimal } from '../../numbers/index.js';
import { canonical, type OneUnit, type Units } from '../unit.js';

/** Unit of a titrant's concentration: equivalents of alkali or acid per litre. */
export type TitrantUnit = 'eqPerL';
/** Concentration of a titrant, in equivalents per litre. */
export type TitrantInput = OneUnit<TitrantUnit>;
/** A concentration in a result, in equivalents per litre. */
export interface Titrant {
  readonly eqPerL: Decimal;
}
export const titrantUnits: Units<TitrantUnit> = { eqPerL: /* @__PURE__ */ canonical('si-brochure-2019') };
