import { isKnownFat } from '../fats/index.js';
import { fieldPath, frozen, isDecimal, isList, readFields, readList, refuse } from '../numbers/index.js';

/** A recipe is nowhere deeper; a value that holds itself is. */
const DEEPEST = 16;

/**
 * A copy of a value as plain data, in which nothing can run: getters are read once, Decimals become text, a fat that this
 * library made stays itself.
 *
 * @throws CalculationError `bad-shape` where a field cannot be read or data is too deep, `unknown-key` for the names that
 *   every object inherits
 */
export function plainData(path: string, value: unknown, depth = 0): unknown {
  if (typeof value !== 'object' || value === null || isKnownFat(value)) return value;
  if (isDecimal(value)) return value.toString();
  if (depth > DEEPEST) refuse('bad-shape', path, 'the shape of a recipe', 'data that is too deep, or holds itself');
  if (isList(value)) {
    return frozen(
      readList(path || 'recipe', value, 0).map((entry, at) => plainData(`${path}[${String(at)}]`, entry, depth + 1)),
    );
  }
  const copy: Record<string, unknown> = {};
  for (const [key, field] of Object.entries(readFields(path || 'recipe', value))) {
    // a schema looks keys up by `in`, which finds these in every object
    if (key in Object.prototype) refuse('unknown-key', fieldPath(path, key), 'no field of this name', key);
    copy[key] = plainData(fieldPath(path, key), field, depth + 1);
  }
  return frozen(copy);
}
