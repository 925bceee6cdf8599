import * as v from 'valibot';
import { refuse } from '../numbers/index.js';
import { leaf } from './leaf.js';
import {
  additionSchema,
  claimsSchema,
  fatSchema,
  lyeSchema,
  optional,
  shape,
  targetSchema,
  temperatureSchema,
} from './partSchemas.js';
import { mass, text } from './quantitySchemas.js';
import type { Recipe } from './recipe.js';

export const versionSchema = (): v.GenericSchema<1> => leaf(readVersion, { const: 1 });

function readVersion(path: string, value: unknown): unknown {
  if (value === 1) return value;
  return refuse(value === undefined ? 'missing' : 'out-of-range', path, '1, the version of this shape', value);
}

/** Every field of a recipe. */
const recipeFields = () =>
  ({
    version: versionSchema(),
    title: optional(text()),
    fats: v.pipe(v.array(fatSchema()), v.nonEmpty()),
    lye: v.pipe(v.array(lyeSchema()), v.nonEmpty()),
    water: optional(mass()),
    additions: optional(v.array(additionSchema())),
    target: optional(targetSchema()),
    claimed: optional(claimsSchema()),
    temperatures: optional(v.array(temperatureSchema())),
  }) satisfies Record<keyof Recipe, v.GenericSchema | v.ExactOptionalSchema<v.GenericSchema, undefined>>;

/** A recipe as a whole; the JSON Schema is made of it. */
export const recipeSchema = (): v.GenericSchema<Recipe> => shape(recipeFields());

/** The names of the fields of a recipe. */
export const recipeKeys = (): readonly string[] => Object.keys(recipeFields());
