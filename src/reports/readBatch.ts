import { planBatchSteps, type Batch } from '../batch/planBatch.js';
import { fieldPath, readShape } from '../numbers/index.js';
import { givenOf } from '../composition/chargedPot.js';

/** A result of `planBatch`, also one read back from JSON: its recipe is planned again. */
export interface PlannedBatch {
  readonly by: 'planBatch';
  readonly given: unknown;
}

/**
 * Reads a batch by what it was planned from, so that no figure is taken from a text that somebody may have changed.
 *
 * @throws CalculationError `missing` or `bad-shape` for what is no batch, and the faults of its recipe and options
 */
export function readBatch(path: string, value: unknown): Batch {
  const { recipe, options } = readShape(fieldPath(path, 'given'), givenOf(path, value, 'planBatch'), [
    'recipe',
    'options',
  ]);
  return planBatchSteps({ recipe, options });
}
