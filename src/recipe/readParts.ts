import type * as v from 'valibot';
import type { Fat } from '../fats/index.js';
import {
  frozen,
  unlessRefused,
  readFields,
  readList,
  readShape,
  type CalculationError,
  type Fields,
} from '../numbers/index.js';
import {
  additionClaimsSchema,
  additionSchema,
  claimSchemas,
  fatClaimsSchema,
  fatSchema,
  lyeToAuditSchema,
  targetSchema,
  temperatureSchema,
} from './partSchemas.js';
import { plainData } from './plainData.js';
import { mass, text } from './quantitySchemas.js';
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
import { recipeKeys, versionSchema } from './recipeSchema.js';

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

/** The parts of a recipe by themselves. */
const partSchemas = () => ({
  version: versionSchema(),
  title: text(),
  fat: fatSchema(),
  fatClaims: fatClaimsSchema(),
  lye: lyeToAuditSchema(),
  water: mass(),
  addition: additionSchema(),
  additionClaims: additionClaimsSchema(),
  target: targetSchema(),
  claims: claimSchemas(),
  temperature: temperatureSchema(),
});

let made: ReturnType<typeof partSchemas> | undefined;

/** Reads of a recipe what can be read: each row and each claim by itself. What cannot be read is a fault, not thrown. */
export function readParts(value: unknown, options: unknown): RecipeParts {
  const schemas = (made ??= partSchemas());
  const faults: CalculationError[] = [];
  const attempt = <T>(read: () => T): T | undefined => unlessRefused(read, (refusal) => faults.push(refusal));
  const part = <T>(schema: v.GenericSchema<T>, path: string, data: unknown): T | undefined =>
    attempt(() => readAs(schema, path, plainData(path, data)));
  const optional = <T>(schema: v.GenericSchema<T>, path: string, data: unknown): T | undefined =>
    data === undefined ? undefined : part(schema, path, data);
  /** The fields of an object; each that is not known is a fault. */
  const fieldsOf = (path: string, data: unknown, known: readonly string[]): Fields | undefined => {
    const fields = attempt(() => readFields(path, data));
    for (const [key, field] of Object.entries(fields ?? {})) {
      if (field !== undefined) attempt(() => readShape(path, { [key]: field }, known));
    }
    return fields;
  };

  const own = attempt(() => ownFats(options)) ?? ownFats({});
  const fields = fieldsOf('recipe', value, recipeKeys());
  const field = (key: keyof Recipe): unknown => fields?.[key];
  const rows = <T>(key: keyof Recipe, least: 0 | 1, read: (path: string, entry: unknown) => T | undefined): Rows<T> => {
    if (fields === undefined) return { rows: [], areAll: false };
    if (field(key) === undefined && least === 0) return { rows: [], areAll: true };
    const entries = attempt(() => readList(key, field(key), least));
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
    const { claimed: printed, ...rest } = all;
    const row = part(schemas.fat, path, rest);
    const claimed = optional(schemas.fatClaims, `${path}.claimed`, printed) ?? {};
    if (row === undefined) return undefined;
    return { named: row.fat, fat: attempt(() => fatOf(`${path}.fat`, row.fat, own)), mass: row.mass, claimed };
  };
  const additionRow = (path: string, entry: unknown): RecipeAddition | undefined => {
    const all = attempt(() => readFields(path, entry));
    if (all === undefined) return undefined;
    const { claimed: printed, ...rest } = all;
    const row = part(schemas.addition, path, rest);
    const claimed = optional(schemas.additionClaims, `${path}.claimed`, printed);
    return row === undefined || claimed === undefined ? row : frozen({ ...row, claimed });
  };
  const claims = (printed: unknown): RecipeClaims => {
    if (printed === undefined) return {};
    const each = fieldsOf('claimed', printed, Object.keys(schemas.claims));
    return Object.fromEntries(
      Object.entries(schemas.claims).flatMap(([key, schema]) => {
        const claim: unknown = optional(schema as v.GenericSchema, `claimed.${key}`, each?.[key]);
        return claim === undefined ? [] : [[key, claim] as const];
      }),
    );
  };

  if (fields !== undefined) part(schemas.version, 'version', field('version'));
  optional(schemas.title, 'title', field('title'));
  return frozen({
    fats: rows('fats', 1, fatRow),
    lye: rows('lye', 1, (path, entry) => part(schemas.lye, path, entry)),
    water: optional(schemas.water, 'water', field('water')),
    additions: rows('additions', 0, additionRow),
    target: optional(schemas.target, 'target', field('target')),
    claimed: claims(field('claimed')),
    temperatures: rows('temperatures', 0, (path, entry) => part(schemas.temperature, path, entry)),
    faults,
  });
}
