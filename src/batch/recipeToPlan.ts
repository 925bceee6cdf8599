import type { AlkaliSource, Alkali } from '../lye/index.js';
import { frozen, isList, refuse } from '../numbers/index.js';
import { readRecipe, type ReadRecipe, type ReadRecipeOptions, type Recipe } from '../recipe/index.js';
import { plainData } from '../recipe/plainData.js';
import type { LyeTarget } from '../saponification/index.js';

/** An alkali of which the plan tells how much. */
export type LyeToPlan = {
  /** Which alkali. */
  readonly alkali: Alkali;
  readonly mass?: never;
} & AlkaliSource;

/** A recipe whose lye is still to be worked out: its one alkali has an assay or strength and no mass. */
export interface RecipeToPlan extends Omit<Recipe, 'lye' | 'target'> {
  /** The alkali, as it stands in the store. */
  readonly lye: readonly [LyeToPlan];
  /** What the lye is to lead to. */
  readonly target: LyeTarget;
}

/** A recipe as read, and whether it says how much lye. */
export interface ReadRecipeToPlan {
  readonly recipe: ReadRecipe;
  readonly hasLyeMass: boolean;
}

/**
 * Reads a recipe as `readRecipe` does. Where it has a target, an alkali may go without its mass.
 *
 * @throws CalculationError those of `readRecipe`, and `missing` for two alkalis whose proportion nothing tells
 */
export function readRecipeToPlan(value: unknown, options: ReadRecipeOptions): ReadRecipeToPlan {
  const data = plainData('', value);
  const { target, lye } = isFields(data) ? data : {};
  const isOpen =
    target !== undefined && isList(lye) && lye.length > 0 && lye.every((row) => isFields(row) && !('mass' in row));
  const without = target === undefined && isList(lye) ? lye.findIndex((row) => isFields(row) && !('mass' in row)) : -1;
  if (without !== -1) {
    refuse(
      'missing',
      `lye[${String(without)}].mass`,
      'the mass of the alkali, or a target that it follows from',
      undefined,
    );
  }
  if (!isOpen) return { recipe: readRecipe(data, options), hasLyeMass: true };
  if (lye.length > 1) refuse('missing', 'lye[0].mass', 'masses of two alkalis, which set their proportion', undefined);
  // the mass of a lone alkali is worked out; any will do to read the rest of its row
  const [row] = lye as readonly [object];
  const filled = { ...(data as object), lye: [{ ...row, mass: { g: 1 } }] };
  return { recipe: readRecipe(filled, options), hasLyeMass: false };
}

function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !isList(value);
}

/** A recipe in `given`: as read, without the mass of a lye that is to be worked out. */
export function givenRecipe({ recipe, hasLyeMass }: ReadRecipeToPlan): unknown {
  if (hasLyeMass) return recipe;
  const lye = recipe.lye.map((row) =>
    frozen(Object.fromEntries(Object.entries(row).filter(([key]) => key !== 'mass'))),
  );
  return frozen({ ...recipe, lye: frozen(lye) });
}
