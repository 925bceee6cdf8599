import { isSameName } from '../fats/index.js';
import { refuse, suggestion, type Decimal } from '../numbers/index.js';
import type { WeighedRecipe } from './weighing.js';

/** What an item of a weigh-out list is. */
export type IngredientKind = 'fat' | 'alkali' | 'water' | 'addition';

/** One item of a weigh-out list. */
export interface Ingredient {
  readonly kind: IngredientKind;
  /** What it may be called in options; the first is what it is called in results. */
  readonly names: readonly [string, ...string[]];
  readonly grams: Decimal;
}

/** What is weighed, in the order of the recipe: fats, alkalis, water where there is any, additions. */
export function ingredientsOf({ fats, lye, water, additions }: WeighedRecipe): readonly Ingredient[] {
  return [
    ...fats.map(({ fat, grams }): Ingredient => ({
      kind: 'fat',
      names: [fat.name, ...(fat.id === undefined ? [] : [fat.id])],
      grams,
    })),
    ...lye.map(({ alkali, grams }): Ingredient => ({ kind: 'alkali', names: [alkali], grams })),
    ...(water.isZero() ? [] : [{ kind: 'water' as const, names: ['water'] as const, grams: water }]),
    ...additions.map(({ row, grams }): Ingredient => ({ kind: 'addition', names: [row.solvent ?? row.name], grams })),
  ];
}

/** Whether an ingredient is called so, by any of its names. */
export const isCalled = ({ names }: Ingredient, called: string): boolean =>
  names.some((name) => isSameName(name, called));

/**
 * The ingredients that are called so, at least one.
 *
 * @throws CalculationError `unknown-key` with a suggestion
 */
export function ingredientsCalled(path: string, called: string, all: readonly Ingredient[]): readonly Ingredient[] {
  const found = all.filter((one) => isCalled(one, called));
  if (found.length > 0) return found;
  const known = all.flatMap(({ names }) => names);
  return refuse('unknown-key', path, `something that is weighed${suggestion(called, known)}`, called);
}
