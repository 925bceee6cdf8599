import type { Decimal, Limits } from '../../numbers/index.js';
import { canonical, readQuantity, type OneUnit, type Units } from '../unit.js';

/** Unit of a titrant's concentration: equivalents of alkali or acid per litre. */
export type TitrantUnit = 'eqPerL';
/** Concentration of a titrant, in equivalents per litre. */
export type TitrantInput = OneUnit<TitrantUnit>;
/** A concentration in a result, in equivalents per litre. */
export interface Titrant {
  readonly eqPerL: Decimal;
}
export const titrantUnits: Units<TitrantUnit> = { eqPerL: /* @__PURE__ */ canonical('si-brochure-2019') };

/** No titrant is weaker or stronger than this, in eq/L. */
const ANY_TITRANT: Limits = { above: 0, min: '1e-6', max: 20 };

/** Reads the concentration of a titrant in eq/L; 1e-6 to 20 unless other limits are given. */
export function readTitrant(path: string, value: unknown, limits: Limits = ANY_TITRANT): Decimal {
  return readQuantity(path, value, titrantUnits, limits);
}
