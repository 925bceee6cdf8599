export {
  acidityFromTitration,
  acidityFromTitrationSteps,
  type AcidityFromTitrationInput,
  type AcidityFromTitrationResult,
} from './acidityFromTitration.js';
export {
  acidValueFromTitration,
  acidValueFromTitrationSteps,
  type AcidValueFromTitrationInput,
  type AcidValueFromTitrationResult,
} from './acidValueFromTitration.js';
export type { AlkaliAssay, AlkaliTitrationGiven, AlkaliTitrationInput } from './alkaliAssay.js';
export {
  alkaliAssayFromBariumChloride,
  alkaliAssayFromBariumChlorideSteps,
  type AlkaliAssayFromBariumChlorideInput,
  type AlkaliAssayFromBariumChlorideResult,
} from './alkaliAssayFromBariumChloride.js';
export {
  alkaliAssayFromTwoIndicators,
  alkaliAssayFromTwoIndicatorsSteps,
  type AlkaliAssayFromTwoIndicatorsInput,
  type AlkaliAssayFromTwoIndicatorsResult,
} from './alkaliAssayFromTwoIndicators.js';
export type { SoapAlkali, SoapAlkaliGiven } from './cation.js';
export type { ComponentChange, CorrectedComponent } from './changes.js';
export {
  correctFreeAlkali,
  correctFreeAlkaliSteps,
  type CorrectFreeAlkaliInput,
  type CorrectFreeAlkaliResult,
} from './correctFreeAlkali.js';
export type { Corrector, CorrectorGiven } from './corrector.js';
export {
  correctSuperfat,
  correctSuperfatSteps,
  type CorrectSuperfatInput,
  type CorrectSuperfatResult,
} from './correctSuperfat.js';
export type { CorrectingAcidId } from './data/correctingAcids.js';
export { freeAlkaliLimits, type FreeAlkaliLimit, type FreeAlkaliLimitId } from './data/limits.js';
export type { AcidityAcid } from './data/titration.js';
export type { CorrectionDecision } from './corrected.js';
export {
  esterValueFromTitrations,
  esterValueFromTitrationsSteps,
  type EsterValueFromTitrationsInput,
  type EsterValueFromTitrationsResult,
} from './esterValueFromTitrations.js';
export {
  freeAlkaliBehindPh,
  freeAlkaliBehindPhSteps,
  type FreeAlkaliBehindPhInput,
  type FreeAlkaliBehindPhResult,
  type PhFinding,
} from './freeAlkaliBehindPh.js';
export {
  freeCausticAlkaliFromTitration,
  freeCausticAlkaliFromTitrationSteps,
  type FreeCausticAlkaliFromTitrationInput,
  type FreeCausticAlkaliFromTitrationResult,
  type FreeCausticMethod,
} from './freeCausticAlkaliFromTitration.js';
export {
  judgeFreeAlkali,
  judgeFreeAlkaliSteps,
  type FreeAlkaliVerdict,
  type JudgeFreeAlkaliInput,
  type JudgeFreeAlkaliResult,
} from './judgeFreeAlkali.js';
export {
  lyeStrengthFromTitration,
  lyeStrengthFromTitrationSteps,
  type LyeStrengthFromTitrationInput,
  type LyeStrengthFromTitrationResult,
} from './lyeStrengthFromTitration.js';
export type { Completion, CompletionGiven, MeasuredFreeCaustic, MeasuredFreeCausticGiven } from './measured.js';
export type { MeasuredSuperfat, MeasuredSuperfatGiven } from './measuredSuperfat.js';
export type {
  TitrationGiven,
  TitrationInput,
  TitrationReading,
  TitrationReadings,
  TitrationUncertainty,
  TitrationUncertaintyGiven,
} from './readTitration.js';
export {
  saponificationValueFromTitration,
  saponificationValueFromTitrationSteps,
  type SaponificationValueFromTitrationInput,
  type SaponificationValueFromTitrationResult,
} from './saponificationValueFromTitration.js';
export type { PhBand, SoapSolutionGiven, SoapSolutionInput } from './soapSolution.js';
export {
  soapSolutionPhFrom,
  soapSolutionPhFromSteps,
  type SoapSolutionPhFromInput,
  type SoapSolutionPhFromResult,
} from './soapSolutionPhFrom.js';
export {
  soapStateFromTest,
  soapStateFromTestSteps,
  type SoapState,
  type SoapStateFromTestInput,
  type SoapStateFromTestResult,
} from './soapStateFromTest.js';
export {
  titrantFromStandard,
  titrantFromStandardSteps,
  type TitrantFromStandardInput,
  type TitrantFromStandardResult,
  type TitrationStandard,
  type TitrationStandardGiven,
} from './titrantFromStandard.js';
export {
  totalFreeAlkaliFromTitration,
  totalFreeAlkaliFromTitrationSteps,
  type AddedAcid,
  type AddedAcidGiven,
  type TotalFreeAlkaliFromTitrationInput,
  type TotalFreeAlkaliFromTitrationResult,
} from './totalFreeAlkaliFromTitration.js';
export { readLimit, type Limit } from './readLimit.js';
