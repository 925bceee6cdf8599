export { fattyAcidFigures, isFattyAcid, readFattyAcid, type FattyAcid, type FattyAcidFigures } from './fattyAcid.js';
export { fattyAcidNames } from './data/fattyAcidNames.js';
export { molarMass } from './molarMass.js';
export { molarMassOf, type MolarMass, type MolarMassResult } from './molarMassOf.js';
export { glycerylResidueMass, triglycerideMolarMass } from './triglyceride.js';
