import { canonical, type OneUnit, type Units } from '../unit.js';

/** Unit of molar mass. */
export type MolarMassUnit = 'gPerMol';
/** A molar mass, in g/mol. */
export type MolarMassInput = OneUnit<MolarMassUnit>;
export const molarMassUnits: Units<MolarMassUnit> = { gPerMol: /* @__PURE__ */ canonical('si-brochure-2019') };
