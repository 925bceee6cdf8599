import { lettersOf, publishedFat, readFat, type Fat } from '../fats/index.js';
import { frozen, readFields, readShape, refuse, suggestion, type Fields } from '../numbers/index.js';
import { plainData } from './plainData.js';
import { readAs } from './readAs.js';
import type { Recipe, RecipeFat } from './recipe.js';
import { recipeSchema } from './recipeSchema.js';

/** What {@link readRecipe} may be told besides the recipe. */
export interface ReadRecipeOptions {
  /** Fats of one's own, by the names that recipes call them; one of a published name stands before it. */
  readonly fats?: Readonly<Record<string, Fat>>;
}

/** A fat of a recipe as read: the fat itself in the place of its name. */
export interface ReadRecipeFat extends RecipeFat {
  /** The fat that was named. */
  readonly fat: Fat;
}

/** A recipe as read: every name of a fat resolved, every figure a text as printed. It is a recipe again, also as JSON. */
export interface ReadRecipe extends Recipe {
  /** The fats, at least one. */
  readonly fats: readonly ReadRecipeFat[];
}

let whole: ReturnType<typeof recipeSchema> | undefined;

/**
 * Reads a recipe: data of the shape of {@link Recipe}, as `JSON.parse` gives it, from anywhere.
 *
 * Nothing is computed and nothing is guessed: what is not of the shape is refused, with the path of the first fault.
 * Figures keep the decimals they were printed with. A fat is looked up among one's own, then among the published.
 *
 * @param value - any value; it is read once and never changed
 * @param options - `fats`: own fats by name
 * @returns a frozen recipe with its fats resolved; its `fats` and `lye` are input of `superfatFromLye` as they stand
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `unknown-fat`, `out-of-range` and the faults of a fat or
 *   a quantity
 *
 * @example
 * ```ts
 * const recipe = readRecipe({
 *   version: 1,
 *   fats: [{ fat: 'copra oil', mass: { g: '900' } }],
 *   lye: [{ alkali: 'naoh', mass: { g: '322.7' }, solution: { hydroxide: { percent: 49 } } }],
 * });
 * recipe.fats[0]?.fat.name; // => 'Coconut oil'
 * ```
 */
export function readRecipe(value: unknown, options: ReadRecipeOptions = {}): ReadRecipe {
  const own = ownFats(options);
  const recipe = readAs((whole ??= recipeSchema()), '', plainData('', value));
  return frozen({
    ...recipe,
    fats: frozen(recipe.fats.map((row, at) => frozen({ ...row, fat: fatOf(`fats[${String(at)}].fat`, row.fat, own) }))),
  });
}

/** The fats of one's own; each is read when a recipe calls it. */
export interface OwnFats {
  readonly fats: Fields;
  /** Their names by their letters, because capitals and punctuation do not matter. */
  readonly names: ReadonlyMap<string, readonly string[]>;
}

function isMap(value: unknown): boolean {
  try {
    return value instanceof Map;
  } catch {
    return false; // a proxy that does not say
  }
}

/** The fats of one's own among the options. */
export function ownFats(options: unknown): OwnFats {
  const { fats } = readShape('options', options, ['fats']);
  const own: Fields = fats === undefined ? {} : readFields('options.fats', fats);
  // a map has no fields, and would pass for a record of none
  if (isMap(fats)) refuse('bad-shape', 'options.fats', 'an object with fats by their names', fats);
  const names = new Map<string, readonly string[]>();
  for (const name of Object.keys(own)) names.set(lettersOf(name), [...(names.get(lettersOf(name)) ?? []), name]);
  return { fats: own, names };
}

/** The fat that a recipe names or holds: one's own of that name, else the published one. */
export function fatOf(path: string, named: RecipeFat['fat'], own: OwnFats): Fat {
  if (typeof named !== 'string') return readFat(named, path);
  const letters = lettersOf(named);
  const alike = Object.hasOwn(own.fats, named)
    ? [named]
    : ((letters === '' ? undefined : own.names.get(letters)) ?? []);
  const [name, other] = alike;
  if (other !== undefined) {
    refuse('unknown-fat', path, `the exact name of one of ${alike.slice(0, 3).join(', ')}`, named);
  }
  if (name !== undefined) return readFat(own.fats[name], `options.fats.${name}`);
  try {
    return publishedFat(path, named);
  } catch (error) {
    const near = suggestion(named, Object.keys(own.fats));
    if (near === '') throw error;
    return refuse('unknown-fat', path, `the name of a fat of your own, or of a published fat${near}`, named);
  }
}
