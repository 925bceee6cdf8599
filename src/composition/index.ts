export type { AdditionInput, GivenAddition, SolventAdditionInput } from './additions.js';
export type { GivenComposition, MadeSoap } from './chargedPot.js';
export type { ComponentName } from './components.js';
export {
  compositionFrom,
  compositionFromSteps,
  type ComponentAmount,
  type Composition,
  type CompositionFromInput,
  type GlycerolAmount,
} from './compositionFrom.js';
export { SOLVENT_IDS, type SolventId } from './data/solventNames.js';
export type { GivenLoss } from './loss.js';
