/** Every place in a value, and copies with another value at one of them: what fuzz tries is one place at a time. */
import { isDecimal } from './examples.js';

/** The keys that lead to a place. */
type Path = readonly string[];

/** Every place in a value, the value itself among them. */
export function placesIn(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null || isDecimal(value)) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...path, key]))];
}

/** A copy with another value at one place. */
export function replaced(value: unknown, [key, ...rest]: Path, by: unknown): unknown {
  if (key === undefined) return by;
  if (Array.isArray(value))
    return value.map((inner, at) => (String(at) === key ? replaced(inner, rest, by) : (inner as unknown)));
  const fields = { ...(value as Record<string, unknown>) };
  fields[key] = replaced(fields[key], rest, by);
  return fields;
}
