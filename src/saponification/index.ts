export { alkaliDemandOf, alkaliDemandOfSteps, type AlkaliDemand } from './alkaliDemandOf.js';
export { givenFats, type ChargedFat } from './assumptions.js';
export { acidOfSoap, esterMass, fatSumsAt, type FatSums } from './fatSums.js';
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
export { readReactingPot, type ReactingPot } from './reactingPot.js';
export type { GivenPot } from './readCharge.js';
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
