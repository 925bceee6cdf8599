import { refuse } from '../numbers/index.js';

/** Reads a yes or no that may be left out; no unless stated. */
export function readFlag(path: string, value: unknown): boolean {
  if (value === undefined) return false;
  return typeof value === 'boolean' ? value : refuse('bad-shape', path, 'true or false', value);
}
