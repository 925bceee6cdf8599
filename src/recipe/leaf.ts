import * as v from 'valibot';
import { frozen } from '../numbers/index.js';

/** Reads one value or refuses it: with the path, the reason, and what was expected. */
export type Reader = (path: string, value: unknown) => unknown;

/** A part of a recipe that a reader of this library judges. The schema asks whether it passes, the error why it does not. */
export interface Leaf {
  (value: unknown): boolean;
  readonly read: Reader;
  /** What the part adds to the JSON Schema. */
  readonly jsonSchema: object;
}

function leafOf(read: Reader, jsonSchema: object): Leaf {
  const passes = (value: unknown): boolean => {
    try {
      read('', value);
      return true;
    } catch {
      return false;
    }
  };
  return Object.assign(passes, { read, jsonSchema });
}

/** A schema of type `T` for just what a reader accepts. */
export function leaf<T>(read: Reader, jsonSchema: object): v.GenericSchema<T> {
  return v.pipe(v.unknown(), v.check(leafOf(read, jsonSchema))) as unknown as v.GenericSchema<T>;
}

/** The same for figures, which come out as text: so a recipe keeps the decimals it was printed with, also as JSON. */
export function figures<T>(read: Reader, jsonSchema: object): v.GenericSchema<T> {
  return v.pipe(leaf(read, jsonSchema), v.transform(inText)) as unknown as v.GenericSchema<T>;
}

/** A schema of type `T` for fields that are right by themselves and must be so together. */
export function together<T>(fields: v.GenericSchema, read: Reader, jsonSchema: object): v.GenericSchema<T> {
  return v.pipe(fields, v.check(leafOf(read, jsonSchema))) as unknown as v.GenericSchema<T>;
}

function inText(value: unknown): unknown {
  if (typeof value === 'number') return String(value);
  if (typeof value !== 'object' || value === null) return value;
  return frozen(Object.fromEntries(Object.entries(value).map(([key, field]) => [key, inText(field)])));
}
