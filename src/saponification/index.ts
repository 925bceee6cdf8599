export { alkaliDemandOf, alkaliDemandOfSteps, type AlkaliDemand, type ChargedFat } from './alkaliDemandOf.js';
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
export type { GivenTarget, LyeTarget } from './target.js';
export type { Product } from './reaction.js';
export { soapFromLye, soapFromLyeSteps, type SoapFromLyeInput, type SoapFromLyeResult } from './soapFromLye.js';
export {
  superfatFromLye,
  superfatFromLyeSteps,
  type SuperfatFromLyeInput,
  type SuperfatFromLyeResult,
} from './superfatFromLye.js';
