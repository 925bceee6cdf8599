import type * as v from 'valibot';
import type { Fat } from '../fats/index.js';
import {
  frozen,
  isCalculationError,
  readFields,
  readList,
  readShape,
  type CalculationError,
  type Fields,
} from '../numbers/index.js';
import { plainData } from './plainData.js';
import { readAs } from './readAs.js';
import { fatOf, ownFats } from './readRecipe.js';
import type {
  LyeWithoutAssay,
  Recipe,
  RecipeAddition,
  RecipeClaims,
  RecipeFat,
  RecipeLye,
  RecipeTemperature,
} from './recipe.js';
import { partSchemas, RECIPE_KEYS } from './recipeSchema.js';

/** A row with its place in the recipe. */
export interface Row<T> {
  readonly path: string;
  readonly row: T;
}

/** The rows of a list that can be read. */
export interface Rows<T> {
  readonly rows: readonly Row<T>[];
  /** Whether these are all of them. */
  readonly areAll: boolean;
}

/** A row of the fats; the fat is missing where its name is not known. */
export interface FatRow {
  readonly named: RecipeFat['fat'];
  readonly fat: Fat | undefined;
  readonly mass: RecipeFat['mass'];
  readonly claimed: NonNullable<RecipeFat['claimed']>;
}

/** What can be read of a recipe, and what cannot. */
export interface RecipeParts {
  readonly fats: Rows<FatRow>;
  readonly lye: Rows<RecipeLye | LyeWithoutAssay>;
  readonly water: Recipe['water'];
  readonly additions: Rows<RecipeAddition>;
  readonly target: Recipe['target'];
  readonly claimed: RecipeClaims;
  readonly temperatures: Rows<RecipeTemperature>;
  /** Why the rest cannot be read. */
  readonly faults: readonly CalculationError[];
}

let made: ReturnType<typeof partSchemas> | undefined;

/** Reads of a recipe what can be read: each row and each claim by itself. What cannot be read is a fault, not thrown. */
export function readParts(value: unknown, options: unknown): RecipeParts {
  const faults: CalculationError[] = [];
  const attempt = <T>(read: () => T): T | undefined => {
    try {
      return read();
    } catch (error) {
      if (!isCalculationError(error)) throw error;
      faults.push(error);
      return undefined;
    }
  };
  const schemas = (made ??= partSchemas());
  const own = attempt(() => ownFats(options)) ?? {};
  const fields = attempt(() => readFields('recipe', value)) ?? {};
  attempt(() => readShape('recipe', fields, RECIPE_KEYS));

  const part = <T>(schema: v.GenericSchema<T>, path: string, data: unknown): T | undefined =>
    attempt(() => readAs(schema, path, plainData(path, data)));
  const optional = <T>(schema: v.GenericSchema<T>, key: string): T | undefined =>
    fields[key] === undefined ? undefined : part(schema, key, fields[key]);
  const rows = <T>(key: string, least: 0 | 1, read: (path: string, entry: unknown) => T | undefined): Rows<T> => {
    if (fields[key] === undefined && least === 0) return { rows: [], areAll: true };
    const entries = attempt(() => readList(key, fields[key], least));
    const found = (entries ?? []).flatMap((entry, at) => {
      const path = `${key}[${String(at)}]`;
      const row = read(path, entry);
      return row === undefined ? [] : [{ path, row }];
    });
    return { rows: found, areAll: found.length === entries?.length };
  };
  const fatRow = (path: string, entry: unknown): FatRow | undefined => {
    const all = attempt(() => readFields(path, entry));
    if (all === undefined) return undefined;
    const { claimed, ...rest } = all;
    const row = part(schemas.fat, path, rest);
    if (row === undefined) return undefined;
    return {
      named: row.fat,
      fat: attempt(() => fatOf(`${path}.fat`, row.fat, own)),
      mass: row.mass,
      claimed: claimed === undefined ? {} : (part(schemas.fatClaims, `${path}.claimed`, claimed) ?? {}),
    };
  };

  part(schemas.version, 'version', fields['version']);
  optional(schemas.title, 'title');
  return frozen({
    fats: rows('fats', 1, fatRow),
    lye: rows('lye', 1, (path, entry) => part(schemas.lye, path, entry)),
    water: optional(schemas.water, 'water'),
    additions: rows('additions', 0, (path, entry) => part(schemas.addition, path, entry)),
    target: optional(schemas.target, 'target'),
    claimed: claimsOf(attempt, part, fields['claimed'], schemas.claims),
    temperatures: rows('temperatures', 0, (path, entry) => part(schemas.temperature, path, entry)),
    faults,
  });
}

type Attempt = <T>(read: () => T) => T | undefined;
type Part = <T>(schema: v.GenericSchema<T>, path: string, data: unknown) => T | undefined;

function claimsOf(
  attempt: Attempt,
  part: Part,
  value: unknown,
  schemas: ReturnType<typeof partSchemas>['claims'],
): RecipeClaims {
  if (value === undefined) return {};
  const fields: Fields = attempt(() => readFields('claimed', value)) ?? {};
  attempt(() => readShape('claimed', fields, Object.keys(schemas)));
  const read = Object.entries(schemas).flatMap(([key, schema]) => {
    const claim: unknown =
      fields[key] === undefined ? undefined : part(schema as v.GenericSchema, `claimed.${key}`, fields[key]);
    return claim === undefined ? [] : [[key, claim] as const];
  });
  return Object.fromEntries(read);
}
