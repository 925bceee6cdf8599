import * as v from 'valibot';
import { frozen, readFields, readList, refuse, refuseKey } from '../numbers/index.js';
import type { Leaf } from './leaf.js';

/**
 * Reads plain data by a schema.
 *
 * @throws CalculationError the first thing the schema objects to, in the words of our own readers
 */
export function readAs<T>(schema: v.GenericSchema<T>, path: string, data: unknown): T {
  const result = v.safeParse(schema, data, { abortEarly: true });
  return result.success ? deepFrozen(result.output) : refuseIssue(path, result.issues[0]);
}

function refuseIssue(whole: string, issue: v.BaseIssue<unknown>): never {
  const keys = issue.path?.map(({ key }) => key) ?? [];
  const path = pathOf(whole, keys) || 'recipe';
  const { type, requirement } = issue;
  if (type === 'check') (requirement as Leaf).read(path, issue.input);
  if (type === 'array' || type === 'non_empty') readList(path, issue.input);
  if (type === 'strict_object' && issue.expected === 'never') {
    refuseKey('unknown-key', pathOf(whole, keys.slice(0, -1)), String(keys.at(-1)), issue.message.split(','));
  }
  if (type === 'strict_object' && issue.expected === 'Object') readFields(path, issue.input);
  return refuse('missing', path, 'this field', issue.input);
}

function pathOf(whole: string, keys: readonly unknown[]): string {
  return keys.reduce<string>((path, key) => {
    if (typeof key === 'number') return `${path}[${String(key)}]`;
    return path === '' ? String(key) : `${path}.${String(key)}`;
  }, whole);
}

/** What a schema puts together is new and ours; figures and fats are frozen already. */
function deepFrozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  for (const field of Object.values(value)) deepFrozen(field);
  return frozen(value);
}
