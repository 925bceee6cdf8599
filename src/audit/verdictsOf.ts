import { hydroxideMolarMass } from '../lye/index.js';
import type { Fat } from '../fats/index.js';
import { frozen, refuse } from '../numbers/index.js';
import { ownFats, type OwnFats } from '../recipe/readRecipe.js';
import { auditRecipe, readAuditOptions, type AuditRecipeOptions } from './auditRecipe.js';
import { clearVerdict } from './clear/clearVerdict.js';
import type { Verdict } from './verdict.js';

/** One yield of {@link verdictsOf}. */
export interface IndexedVerdict {
  /** Place of the recipe among those that came, from 0. */
  readonly index: number;
  readonly verdict: Verdict;
}

/**
 * The verdicts of many recipes, one after another: what `auditRecipe` says of each, without its findings and much faster.
 *
 * Where a verdict is clear it is told in floating point, with an error bound that is proved; all else is audited. Every
 * verdict is that of `auditRecipe(recipe, options)`, always. Nothing is kept of a recipe, so that memory does not grow with
 * their number, and nothing is read ahead.
 *
 * A record that is no recipe has a verdict as well and stops nothing. What the iterable itself throws, its reader gets: then
 * there is no next record. A record may be read several times, so one whose getters answer differently each time has no one
 * verdict. Options are read when the first verdict is asked for.
 *
 * Source: as `auditRecipe`.
 *
 * @param recipes - any iterable of recipes as JSON has them; of a text of lines, parse each line first
 * @param options - own fats by name; the limit of free caustic, a share of everything in the pot by mass
 * @returns a generator of verdicts in the order of the recipes
 * @throws CalculationError `missing` or `bad-shape` where `recipes` cannot be iterated over
 *
 * @example
 * ```ts
 * const recipe = (naoh: string) => ({
 *   version: 1,
 *   fats: [{ fat: 'coconut-oil', mass: { g: '500' } }],
 *   lye: [{ alkali: 'naoh', mass: { g: naoh }, solid: { hydroxide: { percent: '99' } } }],
 * });
 * const verdicts = [...verdictsOf([recipe('122'), 'no recipe', recipe('86')])];
 * verdicts.map(({ index, verdict }) => `${index} ${verdict}`); // => ['0 dangerous', '1 cannot-tell', '2 sound']
 * ```
 */
export function verdictsOf(
  recipes: Iterable<unknown>,
  options: AuditRecipeOptions = {},
): Generator<IndexedVerdict, void, undefined> {
  const came: unknown = recipes;
  if (typeof came !== 'object' || came === null || !(Symbol.iterator in came)) {
    return refuse(came === undefined ? 'missing' : 'bad-shape', 'recipes', 'an iterable of recipes', came);
  }
  return verdictsIn(recipes, options);
}

function* verdictsIn(
  recipes: Iterable<unknown>,
  options: AuditRecipeOptions,
): Generator<IndexedVerdict, void, undefined> {
  const verdictOf = verdictsUnder(options);
  let index = 0;
  for (const recipe of recipes) {
    yield frozen({ index, verdict: verdictOf(recipe) });
    index += 1;
  }
}

/** The verdict of any recipe under some options, which are read once; where they cannot be, each audit says so. */
function verdictsUnder(options: AuditRecipeOptions): (recipe: unknown) => Verdict {
  const { fats, limit, faults } = readAuditOptions(options);
  const own = faults.length > 0 ? undefined : readOwnFats(fats);
  if (own === undefined) return (recipe) => auditRecipe(recipe, options).verdict;
  const kept = { fats: own.fats as Readonly<Record<string, Fat>>, limit };
  const molPerGram = Number(limit.percentNaoh.div(hydroxideMolarMass('naoh').times(100)));
  return (recipe) => clearVerdict(recipe, own, molPerGram) ?? auditRecipe(recipe, kept).verdict;
}

function readOwnFats(fats: unknown): OwnFats | undefined {
  try {
    return ownFats({ fats });
  } catch {
    return undefined;
  }
}
