export {
  readAdditions,
  readAddition,
  type Addition,
  type AdditionInput,
  type GivenAddition,
  type SolventAdditionInput,
} from './additions.js';
export { assayDimension, restOf } from './assays.js';
export { batchVolumeOf, batchVolumeOfSteps, type BatchVolume, type BatchVolumeOfInput } from './batchVolumeOf.js';
export { SPIRIT_CATCHES_FIRE } from './cautions.js';
export { givenOf, type ChargedPot, type GivenComposition, type MadeSoap } from './chargedPot.js';
export {
  COMPONENTS,
  componentOfSolvent,
  isSpirit,
  isSpiritComponent,
  POLYOLS,
  SOAPS,
  SPIRITS,
  SUGARS,
  type ComponentName,
} from './components.js';
export {
  cautionsOfAdditions,
  compositionFrom,
  compositionFromSteps,
  type ComponentAmount,
  type Composition,
  type CompositionFromInput,
  type GlycerolAmount,
} from './compositionFrom.js';
export { SOLVENT_IDS, solvents, type SolventId, type SolventListing } from './data/solventNames.js';
export { readLoss, type GivenLoss } from './loss.js';
export type { MixedSolvent } from './mixtureCurve.js';
export {
  mixtureDensity,
  mixtureDensitySteps,
  type MixtureDensityInput,
  type MixtureDensityResult,
} from './mixtureDensity.js';
export { ratiosOf, ratiosOfSteps, type PotPart, type Ratios } from './ratiosOf.js';
export { composedFrom, readComposition, type ComposedFrom, type MadeComposition } from './readComposition.js';
export { solvent, type Solvent, type SolventGrade } from './solvent.js';
export {
  solventDensity,
  solventDensitySteps,
  type SolventDensityInput,
  type SolventDensityResult,
} from './solventDensity.js';
export {
  spiritStrengthFromVolume,
  spiritStrengthFromVolumeSteps,
  type SpiritStrengthFromVolumeInput,
  type SpiritStrengthFromVolumeResult,
} from './spiritStrengthFromVolume.js';
export { totalFattyMatterOf, totalFattyMatterOfSteps, type TotalFattyMatter } from './totalFattyMatterOf.js';
