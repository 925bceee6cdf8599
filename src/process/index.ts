export type { ProcessWindowId, ProcessWindowKind } from './data/processWindows.js';
export { processWindows, type ProcessWindow } from './processWindows.js';
export { WORK_STAGES, type WorkStage } from './stage.js';
