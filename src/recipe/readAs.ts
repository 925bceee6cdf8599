import * as v from 'valibot';
import { fieldPath, frozen, readList, refuse } from '../numbers/index.js';
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

function refuseIssue(whole: string, { type, requirement, input, path: keys }: v.BaseIssue<unknown>): never {
  const place = (keys ?? []).reduce(
    (path, { key }) => (typeof key === 'number' ? `${path}[${String(key)}]` : fieldPath(path, String(key))),
    whole,
  );
  const path = place || 'recipe';
  if (type === 'check') (requirement as Leaf).read(path, input);
  if (type === 'array') readList(path, input, 0);
  if (type === 'non_empty') readList(path, input);
  return refuse('missing', path, 'this field', undefined);
}

/** What a schema puts together is new and ours; figures and fats are frozen already. */
function deepFrozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  for (const field of Object.values(value)) deepFrozen(field);
  return frozen(value);
}
