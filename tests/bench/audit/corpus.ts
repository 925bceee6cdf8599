/** Drawn recipes as a corpus: own lots stand in the recipe itself, so that one call takes all of them. */
import type { Recipe } from 'laurate/recipe';
import { chanceFrom, drawnDraft, OWN_LOT_OF, type Draft } from './draw.js';
import { INJECTIONS } from './slips.js';
import { recipeOf, type Misprint } from './write.js';

function withOwnLots(draft: Draft, misprint?: Misprint): Recipe {
  const { fats, ...rest } = recipeOf(draft, misprint);
  return { ...rest, fats: fats.map((row, at) => ({ ...row, fat: draft.fats[at]?.fat ?? row.fat })) };
}

/** Recipes whose figures all follow from their true lots. */
export function soundCorpus(count: number, seed: number): readonly Recipe[] {
  const chance = chanceFrom(seed);
  return Array.from({ length: count }, () => withOwnLots(drawnDraft(chance)));
}

/** The same recipes, each calling the published fats that its lots are of by their names, as most recipes do. */
export const callingByName = (corpus: readonly Recipe[]): readonly Recipe[] =>
  corpus.map(({ fats, ...rest }) => ({ ...rest, fats: fats.map((row) => ({ ...row, fat: publishedName(row.fat) })) }));

const publishedName = (of: Recipe['fats'][number]['fat']): string =>
  typeof of === 'string' ? of : of.name.replace(OWN_LOT_OF, '');

/** Recipes with one slip each, of every kind in turn. */
export function slipCorpus(count: number, seed: number): readonly Recipe[] {
  const chance = chanceFrom(seed);
  const recipes: Recipe[] = [];
  for (let drawn = 0; recipes.length < count; drawn += 1) {
    const draft = drawnDraft(chance);
    const misprint = INJECTIONS[drawn % INJECTIONS.length]?.(draft, chance).misprint;
    if (misprint !== undefined) recipes.push(withOwnLots(draft, misprint));
  }
  return recipes;
}
