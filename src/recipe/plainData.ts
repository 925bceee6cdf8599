import { isKnownFat } from '../fats/index.js';
import {
  Decimal,
  fieldPath,
  frozen,
  isDecimal,
  isList,
  readFields,
  readList,
  readNumber,
  refuse,
} from '../numbers/index.js';

/** A recipe is nowhere deeper; a value that holds itself is. */
const DEEPEST = 16;

/** No field of a recipe has a longer name. It bounds the paths of errors. */
const LONGEST_KEY = 40;

/** Stands for any function, of which no reader takes one: theirs may be a proxy that throws. */
const aFunction = (): undefined => undefined;

/**
 * A copy of a value as JSON would hold it, in which nothing can run: getters are read once, Decimals become text, fields
 * without a value are left out. A fat that this library made stays itself.
 *
 * @throws CalculationError `bad-shape` where a field cannot be read or data is too deep, `unknown-key` for a name longer
 *   than any of ours, `not-a-number` and `out-of-range` for a Decimal that is no figure of a recipe
 */
export function plainData(path: string, value: unknown, depth = 0): unknown {
  const here = path || 'recipe';
  if (typeof value === 'function') return aFunction;
  if (typeof value !== 'object' || value === null || isKnownFat(value)) return value;
  if (isDecimal(value)) return readNumber(here, value).toSignificantDigits(Decimal.precision).toString();
  if (depth > DEEPEST) refuse('bad-shape', here, 'the shape of a recipe', 'data that is too deep, or holds itself');
  if (isList(value)) {
    const entries = readList(here, value, 0);
    return frozen(entries.map((entry, at) => plainData(`${path}[${String(at)}]`, entry, depth + 1)));
  }
  // without a prototype no name is special: `__proto__` is a field like any other, and an unknown one
  const copy = Object.create(null) as Record<string, unknown>;
  for (const [key, field] of Object.entries(readFields(here, value))) {
    if (key.length > LONGEST_KEY)
      refuse('unknown-key', here, `names of at most ${String(LONGEST_KEY)} characters`, key);
    if (field !== undefined) copy[key] = plainData(fieldPath(path, key), field, depth + 1);
  }
  return frozen(copy);
}
