import { closestMatch } from 'leven';
import { asWritten, isList } from './described.js';
import { refuse } from './refuse.js';
import type { ErrorCode } from './calculationError.js';

/** Longer is no slip of the pen; it also bounds the work. */
const LONGEST_WORD = 40;

/** The own fields of an object, read once: later changes or clever getters cannot reach a calculation. */
export type Fields = Readonly<Record<string, unknown>>;

/** What other tongues of the trade and of programs call our fields and units. */
const CALLED_HERE: Readonly<Record<string, string>> = {
  assay: 'hydroxide', purity: 'hydroxide', min: 'low', max: 'high', gram: 'g', grams: 'g', kilograms: 'kg',
  ounce: 'oz', ounces: 'oz', pound: 'lb', pounds: 'lb', litres: 'L', liters: 'L', pct: 'percent',
}; // prettier-ignore

/**
 * ` (did you mean "…"?)` with the known word that is the same but for capitals; else with those that begin with what was
 * written; else with the closest, where one comes close; else nothing.
 */
export function suggestion(written: string, known: readonly string[]): string {
  if (written.length > LONGEST_WORD) return '';
  const word = written.toLowerCase();
  const longer = known.filter((candidate) => candidate.toLowerCase().startsWith(word));
  const same = longer.filter(({ length }) => length === word.length);
  if (same.length > 0) return didYouMean(same);
  if (longer.length > 0 && word.length > 2) return didYouMean(longer);
  const called = known.filter((candidate) => candidate === CALLED_HERE[word]);
  if (called.length > 0) return didYouMean(called);
  if (word === 'superfat' && known.includes('target')) return didYouMean(['target.superfat']);
  // of three letters any is close to any, and for mL nobody should be offered mg; kgs is kg
  if (word.length < 4) return didYouMean(known.filter((candidate) => word === `${candidate.toLowerCase()}s`));
  const lower = known.map((candidate) => candidate.toLowerCase());
  const best = closestMatch(word, lower, { maxDistance: Math.max(2, Math.floor(written.length / 3)) });
  return best === undefined ? '' : didYouMean([known[lower.indexOf(best)] ?? best]);
}

/** The first few of some words, as a question; nothing of none. */
function didYouMean(words: readonly string[]): string {
  if (words.length === 0) return '';
  const few = words.slice(0, 3).map((word) => `"${word}"`);
  return ` (did you mean ${few.join(' or ')}?)`;
}

/** What is expected, in words; made only to refuse where making them takes work. */
export type Expected = string | (() => string);

const inWords = (expected: Expected): string => (typeof expected === 'string' ? expected : expected());

/**
 * Reads an object as its own enumerable fields.
 *
 * @throws CalculationError `missing` or `bad-shape`, with the path
 */
export function readFields(path: string, value: unknown, expected: Expected = 'an object'): Fields {
  if (value === undefined || value === null) refuse('missing', path, inWords(expected), value);
  if (typeof value !== 'object' || isList(value)) refuse('bad-shape', path, inWords(expected), asWritten(value));
  const fields: Record<string, unknown> = Object.create(null) as Record<string, unknown>;
  try {
    for (const key of Object.keys(value)) fields[key] = (value as Fields)[key];
  } catch {
    // a getter or proxy that throws is not data
    refuse('bad-shape', path, inWords(expected), 'an object whose fields cannot be read');
  }
  return fields;
}

/**
 * Reads an object with known fields only; what a field holds is for its own reader.
 *
 * @throws CalculationError `missing`, `bad-shape` or `unknown-key` (with a suggestion), with the path
 */
export function readShape(path: string, value: unknown, known: readonly string[], expected?: Expected): Fields {
  const fields = readFields(path, value, expected);
  for (const key in fields) {
    if (!known.includes(key)) refuseKey('unknown-key', path, key, known);
  }
  return fields;
}

/** The path of a field; the fields of the input itself stand by their own names. */
export function fieldPath(path: string, key: string): string {
  return path === '' ? key : `${path}.${key}`;
}

/** Refuses a key that is not among the known ones. */
export function refuseKey(code: ErrorCode, path: string, key: string, known: readonly string[]): never {
  const at = key.length > LONGEST_WORD ? `${key.slice(0, LONGEST_WORD - 1)}…` : key;
  const [only, what] = code === 'unknown-key' ? ['only the fields', 'field'] : ['one of', 'unit'];
  refuse(
    code,
    fieldPath(path, at),
    `${only} ${known.join(', ')}${suggestion(key, known)}`,
    `the unknown ${what} ${asWritten(at)}`,
  );
}

/**
 * Reads one of a few literal words.
 *
 * @throws CalculationError `missing` or `bad-shape`, with the path
 */
export function readWord<W extends string>(path: string, value: unknown, words: readonly W[]): W {
  const found = words.find((word) => word === value);
  if (found !== undefined) return found;
  const near = typeof value === 'string' ? suggestion(value, words) : '';
  return refuse(
    value === undefined ? 'missing' : 'bad-shape',
    path,
    `one of ${words.join(', ')}${near}`,
    asWritten(value),
  );
}

/**
 * Reads a name or title: text that is not empty.
 *
 * @throws CalculationError `missing` or `bad-shape`, with the path
 */
export function readText(path: string, value: unknown, longest = 200): string {
  if (typeof value === 'string' && value.trim() !== '' && value.length <= longest) return value;
  return refuse(
    value === undefined ? 'missing' : 'bad-shape',
    path,
    `a text of 1 to ${String(longest)} characters`,
    asWritten(value),
  );
}

/**
 * Reads a list, by default of at least one entry.
 *
 * @throws CalculationError `missing` or `bad-shape`, with the path
 */
export function readList(
  path: string,
  value: unknown,
  least: 0 | 1 = 1,
  expected: string = least === 0 ? 'a list' : 'a list with at least one entry',
): readonly unknown[] {
  if (!isList(value) || value.length < least) {
    return refuse(value === undefined ? 'missing' : 'bad-shape', path, expected, asWritten(value));
  }
  try {
    // read once; holes become missing entries, for the reader of an entry to refuse
    return Array.from(value);
  } catch {
    return refuse('bad-shape', path, expected, 'a list whose entries cannot be read');
  }
}
