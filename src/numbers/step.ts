import type { Decimal } from './decimal.js';
import { frozen } from './frozen.js';

/** One line of a working: what was worked out, how, and what came of it. */
export interface Step {
  /** The figure in words, as `hydroxide charged`. */
  readonly figure: string;
  /** The formula in the symbols of the documentation. */
  readonly formula: string;
  /** Unit of the value. */
  readonly unit: string;
  /** The value, unrounded. */
  readonly value: Decimal;
}

/** Where a kernel notes its steps when somebody asked for the working. */
export type Steps = Step[];

/**
 * Notes a step and hands its value on, so that the figure used and the figure shown come from the same line of code.
 * Without a list of steps it costs one comparison.
 */
export function noted(
  steps: Steps | undefined,
  figure: string,
  formula: string,
  unit: string,
  value: Decimal,
): Decimal {
  steps?.push(frozen({ figure, formula, unit, value }));
  return value;
}
