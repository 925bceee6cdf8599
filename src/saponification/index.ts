export { alkaliDemandOf, alkaliDemandOfSteps, givenFats, type AlkaliDemand, type ChargedFat } from './alkaliDemandOf.js';
export { lyeSumsAt } from './lyeSums.js';
export type {
  AlkaliChoice,
  ChosenAlkali,
  Exact,
  GivenAlkali,
  KohAlone,
  NaohAlone,
  NaohWithKoh,
} from './alkaliChoice.js';
export type { Balance } from './balance.js';
export type { BatchMass } from './batch.js';
export type { Dilution, GivenDilution } from './dilution.js';
export {
  planLye,
  planLyeSteps,
  type LyePlan,
  type PlanFor,
  type PlanLyeBase,
  type PlanLyeInput,
  type PlannedLye,
} from './planLye.js';
export { extremesOf } from './extremes.js';
export { valueAt, type Dimension, type Place } from './place.js';
export { potCautions } from './potCautions.js';
export { readReactingPot, type GivenPot, type ReactingPot } from './reactingPot.js';
export { readTarget, type GivenTarget, type LyeTarget } from './target.js';
export type { Product, Products } from './reaction.js';
export { soapFromLye, soapFromLyeSteps, type SoapFromLyeInput, type SoapFromLyeResult } from './soapFromLye.js';
export {
  superfatFromLye,
  superfatFromLyeSteps,
  type SuperfatFromLyeInput,
  type SuperfatFromLyeResult,
} from './superfatFromLye.js';
export { strengthOf } from './weighedLye.js';
