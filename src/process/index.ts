export type { ProcessWindowId, ProcessWindowKind } from './data/processWindows.js';
export type { BeyondWindow } from './beyondWindow.js';
export {
  checkTemperatures,
  checkTemperaturesSteps,
  type CheckTemperaturesInput,
  type CheckTemperaturesResult,
  type StageTemperatures,
} from './checkTemperatures.js';
export type { EvaporatingSolvent } from './data/heats.js';
export type { JudgingWindowId } from './data/processWindows.js';
export type { WorkStepId } from './data/workSteps.js';
export {
  heatOfEvaporation,
  heatOfEvaporationSteps,
  type HeatOfEvaporationInput,
  type HeatOfEvaporationResult,
} from './heatOfEvaporation.js';
export {
  heatOfWarming,
  heatOfWarmingSteps,
  type HeatOfWarmingInput,
  type HeatOfWarmingResult,
} from './heatOfWarming.js';
export { orderOfWork, type PrintedHold, type WorkStep } from './orderOfWork.js';
export {
  potHeatFromReaction,
  potHeatFromReactionSteps,
  type PotHeatFromReactionInput,
  type PotHeatFromReactionResult,
} from './potHeatFromReaction.js';
export { readStart, type ReactingHeatGiven, type ReactingHeatInput } from './reactingHeat.js';
export { stagedLye, stagedLyeSteps, type LyePortion, type StagedLyeInput, type StagedLyeResult } from './stagedLye.js';
export type { TemperatureReading, TemperatureReadingGiven } from './readings.js';
export type { StageVerdict } from './stageWindows.js';
export { processWindows, type ProcessWindow } from './processWindows.js';
export { WORK_STAGES, type WorkStage } from './stage.js';
