import { molarMass } from '../../chemistry/index.js';
import type { Decimal, Limits } from '../../numbers/index.js';
import { canonical, readQuantity, scaled, type OneUnit, type Units } from '../unit.js';

/** Units of the alkali content of a soap or batch; the alkali it is expressed as is in the name. */
export type AlkaliContentUnit = 'percentNaoh' | 'percentKoh' | 'percentNa2o';
/** Alkali content of a soap or batch, percent by mass expressed as NaOH, KOH or Na2O. */
export type AlkaliContentInput = OneUnit<AlkaliContentUnit>;
/** Alkali content in a result, percent by mass expressed as NaOH. */
export interface AlkaliContent {
  readonly percentNaoh: Decimal;
}

export const alkaliContentUnits: Units<AlkaliContentUnit> = {
  percentNaoh: /* @__PURE__ */ canonical('iupac-2021'),
  percentKoh: /* @__PURE__ */ scaled(() => molarMass('NaOH').div(molarMass('KOH')), 'iupac-2021'),
  percentNa2o: /* @__PURE__ */ scaled(() => molarMass('NaOH').times(2).div(molarMass('Na2O')), 'iupac-2021'),
};

/** Reads an alkali content as percent NaOH, within limits in that unit. */
export function readAlkaliContent(path: string, value: unknown, limits: Limits = { min: 0, max: 100 }): Decimal {
  return readQuantity(path, value, alkaliContentUnits, limits);
}
