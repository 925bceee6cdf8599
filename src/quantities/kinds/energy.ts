import type { Decimal } from '../../numbers/index.js';
import { canonical, type OneUnit, type Units } from '../unit.js';

/** Unit of energy. */
export type EnergyUnit = 'kJ';
/** An energy, in kilojoules. */
export type EnergyInput = OneUnit<EnergyUnit>;
/** An energy in a result, in kilojoules. */
export interface Energy {
  readonly kJ: Decimal;
}
export const energyUnits: Units<EnergyUnit> = { kJ: /* @__PURE__ */ canonical('si-brochure-2019') };
