import { frozen } from '../numbers/index.js';
import type { Fat } from './fat.js';

// Fats made here are complete and frozen, so that they need no reading again; it changes no result, only the time.
const made = /* @__PURE__ */ new WeakSet();

/** Freezes a fat and remembers it as one of ours. */
export function knownFat<F extends Fat>(fat: F): F {
  const kept = frozen(fat);
  made.add(kept);
  return kept;
}

/** Whether a value is a fat that this copy of the library made. */
export function isKnownFat(value: unknown): value is Fat {
  return typeof value === 'object' && value !== null && made.has(value);
}
