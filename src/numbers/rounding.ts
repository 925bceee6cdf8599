import type { Decimal } from './decimal.js';

/** Which way a figure goes to the scale's step: to the nearest (ties to even), always down, or always up. */
export type RoundingDirection = 'nearest' | 'down' | 'up';

/** The modes of decimal.js by our words: half-even, floor, ceiling. */
const MODES = { nearest: 6, down: 3, up: 2 } as const;

/**
 * A number rounded to a whole multiple of a step greater than zero. What is a whole multiple but for the last digits of a
 * division stays that, so that rounding down loses no step.
 */
export function toStep(value: Decimal, step: Decimal, direction: RoundingDirection): Decimal {
  const steps = value.div(step);
  const nearest = steps.toDecimalPlaces(0, MODES.nearest);
  const isWhole = steps.minus(nearest).abs().lte(steps.abs().times('1e-30'));
  return (isWhole ? nearest : steps.toDecimalPlaces(0, MODES[direction])).times(step);
}
