/** Drawn recipes as a corpus: own lots stand in the recipe itself, so that one call takes all of them. */
import type { Recipe } from 'laurate/recipe';
import { chanceFrom, drawnDraft, type Draft } from './draw.js';
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
