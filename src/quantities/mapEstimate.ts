import { readShape, refuse } from '../numbers/index.js';
import { mapEnds, type Estimate } from './estimate.js';

/**
 * An estimate with each of its three figures put through the same function.
 *
 * @param estimate - low, likely and high
 * @param change - what to do with each
 * @returns the three answers in the same places
 * @throws CalculationError `missing`, `bad-shape` or `unknown-key` for what is no estimate; what `change` throws goes through
 *
 * @example
 * ```ts
 * const mass = { low: { g: 900 }, likely: { g: 1000 }, high: { g: 1100 } };
 * mapEstimate(mass, (m) => valueIn(m, 'kg')).likely; // => '1'
 * ```
 */
export function mapEstimate<Q, R>(estimate: Estimate<Q>, change: (quantity: Q) => R): Estimate<R> {
  const ends = readShape('estimate', estimate, ['low', 'likely', 'high']);
  for (const end of ['low', 'likely', 'high']) {
    if (ends[end] === undefined) refuse('missing', `estimate.${end}`, 'a figure', undefined);
  }
  if (typeof change !== 'function') refuse('bad-shape', 'change', 'a function', change);
  return mapEnds(estimate, change);
}
