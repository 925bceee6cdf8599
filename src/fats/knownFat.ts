import { frozen, refuse } from '../numbers/index.js';
import type { Fat } from './fatType.js';

// Fats made here are complete and frozen, so that they need no reading again; it changes no result, only the time.
const made = /* @__PURE__ */ new WeakSet();

/**
 * Freezes a fat and remembers it as one of ours.
 *
 * @param path - the field that its saponification value came of
 * @throws CalculationError `out-of-range` for bounds that no fat, acid or wax has
 */
export function knownFat<F extends Fat>(fat: F, path = 'saponificationValue'): F {
  const { low, high } = fat.saponificationValue;
  if (low.mgKohPerG.lt(20) || high.mgKohPerG.gt(700)) {
    const came = `${low.mgKohPerG.toPrecision(5)} to ${high.mgKohPerG.toPrecision(5)}`;
    refuse('out-of-range', path, 'a saponification value within 20 to 700 mgKohPerG', came);
  }
  const kept = frozen(fat);
  made.add(kept);
  return kept;
}

/** Whether a value is a fat that this copy of the library made. */
export function isKnownFat(value: unknown): value is Fat {
  return typeof value === 'object' && value !== null && made.has(value);
}
