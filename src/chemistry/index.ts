export { fattyAcidFigures, readFattyAcid, type FattyAcidFigures } from './fattyAcid.js';
export { fattyAcidNames } from './data/fattyAcidNames.js';
export type { FattyAcid } from './data/fattyAcids.js';
export { molarMass } from './molarMass.js';
export { molarMassOf, type MolarMass, type MolarMassResult } from './molarMassOf.js';
export { glycerylResidueMass, triglycerideMolarMass } from './triglyceride.js';
