import type * as v from 'valibot';
import { readNumber, readText, readWord, type Limits, type Numeric } from '../numbers/index.js';
import {
  readPercent,
  readQuantity,
  readRanged,
  unitsByKind,
  type FractionInput,
  type Ranged,
  type UnitsByKind,
} from '../quantities/index.js';
import { figures, leaf, type Reader } from './leaf.js';

const NUMERIC = { $ref: '#/$defs/numeric' };

/** One unit key and nothing else. */
const oneUnit = (units: readonly string[]): object => ({
  type: 'object',
  properties: Object.fromEntries(units.map((unit) => [unit, NUMERIC])),
  minProperties: 1,
  maxProperties: 1,
  additionalProperties: false,
});

const unitsOf = (...kinds: readonly (keyof UnitsByKind)[]): readonly string[] =>
  kinds.flatMap((kind) => Object.keys(unitsByKind()[kind]));

/** A quantity of one kind, in any of its units, within what its reader allows. */
export function quantity<T>(kind: keyof UnitsByKind, read: Reader): v.GenericSchema<T> {
  return figures<T>(read, oneUnit(unitsOf(kind)));
}

/** A share by mass or, of spirit, by volume. */
export function assay<T>(): v.GenericSchema<T> {
  const { fraction, spiritStrength } = unitsByKind();
  const read: Reader = (path, value) =>
    readQuantity(path, value, { ...fraction, ...spiritStrength }, { above: 0, max: 100 });
  return figures<T>(read, oneUnit(unitsOf('fraction', 'spiritStrength')));
}

/** A share by mass, as one figure or as a range. */
export function rangedShare(limits: Limits): v.GenericSchema<Ranged<FractionInput>> {
  const read: Reader = (path, value) => readRanged(path, value, (at, part) => readPercent(at, part, limits));
  const one = oneUnit(unitsOf('fraction'));
  const range = {
    type: 'object',
    properties: { low: one, likely: one, high: one },
    required: ['low', 'high'],
    additionalProperties: false,
  };
  return figures(read, { anyOf: [one, range] });
}

/** A number without unit. */
export function number(limits: Limits): v.GenericSchema<Numeric> {
  return figures((path, value) => readNumber(path, value, limits), NUMERIC);
}

/** One of a few literal words. */
export function word<W extends string>(words: readonly W[]): v.GenericSchema<W> {
  return leaf((path, value) => readWord(path, value, words), { enum: words });
}

/** A name or title. */
export function text(): v.GenericSchema<string> {
  return leaf(readText, { type: 'string', pattern: '\\S', maxLength: 200 });
}
