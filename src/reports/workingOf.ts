import { planBatchSteps } from '../batch/planBatch.js';
import { baseFromTargetSteps } from '../base/index.js';
import { placeAmongPublishedSteps } from '../clarity/index.js';
import {
  batchVolumeOfSteps,
  compositionFromSteps,
  mixtureDensitySteps,
  ratiosOfSteps,
  solventDensitySteps,
  spiritStrengthFromVolumeSteps,
  totalFattyMatterOfSteps,
} from '../composition/index.js';
import { iodineValueFromProfileSteps, saponificationValueFromProfileSteps } from '../fats/index.js';
import {
  acidityFromTitrationSteps,
  acidValueFromTitrationSteps,
  alkaliAssayFromBariumChlorideSteps,
  alkaliAssayFromTwoIndicatorsSteps,
  correctFreeAlkaliSteps,
  correctSuperfatSteps,
  esterValueFromTitrationsSteps,
  freeAlkaliBehindPhSteps,
  freeCausticAlkaliFromTitrationSteps,
  judgeFreeAlkaliSteps,
  lyeStrengthFromTitrationSteps,
  saponificationValueFromTitrationSteps,
  soapSolutionPhFromSteps,
  soapStateFromTestSteps,
  titrantFromStandardSteps,
  totalFreeAlkaliFromTitrationSteps,
} from '../freeAlkali/index.js';
import {
  alkaliContentOfSteps,
  dilutedLyeSteps,
  hydroxideFromOxideGradeSteps,
  kohFromNaohSteps,
  kohShareFromMassShareSteps,
  lyeDensitySteps,
  lyeFreezingPointSteps,
  lyeStrengthFromDensitySteps,
  lyeStrengthFromMixingSteps,
  lyeTemperatureFromDissolvingSteps,
  naohFromKohSteps,
} from '../lye/index.js';
import {
  checkTemperaturesSteps,
  heatOfEvaporationSteps,
  heatOfWarmingSteps,
  potHeatFromReactionSteps,
  stagedLyeSteps,
} from '../process/index.js';
import { frozen, readFields, readWord, refuse, type Step, type Steps } from '../numbers/index.js';
import { alkaliDemandOfSteps, planLyeSteps, soapFromLyeSteps, superfatFromLyeSteps } from '../saponification/index.js';

/** Name of a function whose result can be worked through again. */
export type ExplainedBy =
  | 'saponificationValueFromProfile'
  | 'iodineValueFromProfile'
  | 'alkaliContentOf'
  | 'hydroxideFromOxideGrade'
  | 'kohShareFromMassShare'
  | 'naohFromKoh'
  | 'kohFromNaoh'
  | 'lyeStrengthFromMixing'
  | 'lyeDensity'
  | 'lyeStrengthFromDensity'
  | 'dilutedLye'
  | 'lyeFreezingPoint'
  | 'lyeTemperatureFromDissolving'
  | 'alkaliDemandOf'
  | 'planLye'
  | 'soapFromLye'
  | 'superfatFromLye'
  | 'compositionFrom'
  | 'ratiosOf'
  | 'totalFattyMatterOf'
  | 'batchVolumeOf'
  | 'solventDensity'
  | 'mixtureDensity'
  | 'spiritStrengthFromVolume'
  | 'baseFromTarget'
  | 'freeCausticAlkaliFromTitration'
  | 'totalFreeAlkaliFromTitration'
  | 'acidValueFromTitration'
  | 'acidityFromTitration'
  | 'saponificationValueFromTitration'
  | 'esterValueFromTitrations'
  | 'alkaliAssayFromTwoIndicators'
  | 'alkaliAssayFromBariumChloride'
  | 'lyeStrengthFromTitration'
  | 'titrantFromStandard'
  | 'judgeFreeAlkali'
  | 'correctFreeAlkali'
  | 'correctSuperfat'
  | 'soapStateFromTest'
  | 'soapSolutionPhFrom'
  | 'freeAlkaliBehindPh'
  | 'planBatch'
  | 'checkTemperatures'
  | 'potHeatFromReaction'
  | 'stagedLye'
  | 'heatOfWarming'
  | 'heatOfEvaporation'
  | 'placeAmongPublished';

/** Each of these functions by its kernel. */
const KERNELS: Readonly<Record<ExplainedBy, (input: never, steps: Steps) => unknown>> = {
  saponificationValueFromProfile: saponificationValueFromProfileSteps,
  iodineValueFromProfile: iodineValueFromProfileSteps,
  alkaliContentOf: alkaliContentOfSteps,
  hydroxideFromOxideGrade: hydroxideFromOxideGradeSteps,
  kohShareFromMassShare: kohShareFromMassShareSteps,
  naohFromKoh: naohFromKohSteps,
  kohFromNaoh: kohFromNaohSteps,
  lyeStrengthFromMixing: lyeStrengthFromMixingSteps,
  lyeDensity: lyeDensitySteps,
  lyeStrengthFromDensity: lyeStrengthFromDensitySteps,
  dilutedLye: dilutedLyeSteps,
  lyeFreezingPoint: lyeFreezingPointSteps,
  lyeTemperatureFromDissolving: lyeTemperatureFromDissolvingSteps,
  alkaliDemandOf: alkaliDemandOfSteps,
  planLye: planLyeSteps,
  soapFromLye: soapFromLyeSteps,
  superfatFromLye: superfatFromLyeSteps,
  compositionFrom: compositionFromSteps,
  ratiosOf: ratiosOfSteps,
  totalFattyMatterOf: totalFattyMatterOfSteps,
  batchVolumeOf: batchVolumeOfSteps,
  solventDensity: solventDensitySteps,
  mixtureDensity: mixtureDensitySteps,
  spiritStrengthFromVolume: spiritStrengthFromVolumeSteps,
  baseFromTarget: baseFromTargetSteps,
  freeCausticAlkaliFromTitration: freeCausticAlkaliFromTitrationSteps,
  totalFreeAlkaliFromTitration: totalFreeAlkaliFromTitrationSteps,
  acidValueFromTitration: acidValueFromTitrationSteps,
  acidityFromTitration: acidityFromTitrationSteps,
  saponificationValueFromTitration: saponificationValueFromTitrationSteps,
  esterValueFromTitrations: esterValueFromTitrationsSteps,
  alkaliAssayFromTwoIndicators: alkaliAssayFromTwoIndicatorsSteps,
  alkaliAssayFromBariumChloride: alkaliAssayFromBariumChlorideSteps,
  lyeStrengthFromTitration: lyeStrengthFromTitrationSteps,
  titrantFromStandard: titrantFromStandardSteps,
  judgeFreeAlkali: judgeFreeAlkaliSteps,
  correctFreeAlkali: correctFreeAlkaliSteps,
  correctSuperfat: correctSuperfatSteps,
  soapStateFromTest: soapStateFromTestSteps,
  soapSolutionPhFrom: soapSolutionPhFromSteps,
  freeAlkaliBehindPh: freeAlkaliBehindPhSteps,
  planBatch: planBatchSteps,
  checkTemperatures: checkTemperaturesSteps,
  potHeatFromReaction: potHeatFromReactionSteps,
  stagedLye: stagedLyeSteps,
  heatOfWarming: heatOfWarmingSteps,
  heatOfEvaporation: heatOfEvaporationSteps,
  placeAmongPublished: placeAmongPublishedSteps,
};

/** A result that carries who made it and what from; also one read back from JSON. */
export interface Explainable {
  readonly by: ExplainedBy;
  readonly given: unknown;
}

/**
 * The working of a result, step by step: what was worked out, by which formula, and the figure.
 *
 * The result's own inputs go through the same code again, with a list for the steps: a step and the figure used come
 * from one line, so that a working cannot tell another story than the result. Every input is checked again.
 *
 * @param result - a result with `by` and `given`, also one read back from JSON
 * @returns the steps in order; values unrounded, each with its unit
 * @throws CalculationError `missing` or `bad-shape` for what is no such result, and the faults of its inputs
 *
 * @example
 * ```ts
 * const result = naohFromKoh({ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });
 * workingOf(result).map((step) => `${step.figure}: ${step.formula} = ${step.value.toFixed(2)} ${step.unit}`); // => ['hydroxide: n = m·w/M = 1.60 mol', 'naoh with the same hydroxide: m = n·M/w = 65.47 g']
 * ```
 */
export function workingOf(result: Explainable): readonly Step[] {
  const { by, given } = readFields('result', result, 'a result with by and given');
  if (by === 'auditRecipe') {
    refuse('bad-shape', 'result.by', 'a result with a working; an audit is printed by auditAsMarkdown', by);
  }
  const name = readWord('result.by', by, Object.keys(KERNELS) as ExplainedBy[]);
  const steps: Steps = [];
  // the kernel reads what is given as it reads any input, and refuses what it cannot use
  KERNELS[name](given as never, steps);
  return frozen(steps);
}
