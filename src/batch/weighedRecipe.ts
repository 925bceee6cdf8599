import { refuse, ZERO, type Decimal, type Steps } from '../numbers/index.js';
import { readMass, splitToStep } from '../quantities/index.js';
import type { RecipeAddition } from '../recipe/index.js';
import { lyeAsCharged, lyeAsPlanned } from './lyeOfRecipe.js';
import type { ReadRecipeToPlan } from './recipeToPlan.js';
import type { AdditionByMass, WeighedRecipe, WeighedRest, Weighing } from './weighing.js';

/**
 * The recipe in grams to weigh. Fats and additions go to the step of the scale so that their sum keeps, water to the
 * nearest; the lye is planned for the fats as rounded, or stays as charged, and always goes down.
 *
 * @throws CalculationError `infeasible` for a step that leaves nothing of something, `bad-shape` for what is not weighed,
 *   and the faults of a plan
 */
export function weighedRecipe({ recipe }: ReadRecipeToPlan, weighing: Weighing, steps?: Steps): WeighedRecipe {
  const { factor, scaleStep } = weighing;
  const additions = (recipe.additions ?? []).map(byMass);
  const grams = toScale(
    [
      ...recipe.fats.map(({ mass }, at) => ({ path: `fats[${String(at)}].mass`, mass })),
      ...additions.map(({ mass }, at) => ({ path: `additions[${String(at)}].mass`, mass })),
    ].map(({ path, mass }) => ({ path, exact: readMass(path, mass).times(factor) })),
    scaleStep,
  );
  const rest: WeighedRest = {
    fats: recipe.fats.map(({ fat }, at) => ({ fat, grams: grams[at] ?? ZERO })),
    additions: additions.map((row, at) => ({ row, grams: grams[recipe.fats.length + at] ?? ZERO })),
    water: readMass('water', recipe.water ?? { g: 0 }).times(factor),
  };
  const lye =
    recipe.target === undefined
      ? lyeAsCharged(recipe, rest.water, weighing, steps)
      : lyeAsPlanned(recipe, recipe.target, rest, weighing, steps);
  return { ...rest, ...lye };
}

function byMass(row: RecipeAddition, at: number): AdditionByMass {
  if (row.mass !== undefined) return row;
  return refuse('bad-shape', `additions[${String(at)}].volume`, 'a mass: what a plan adds is weighed', 'a volume');
}

function toScale(
  rows: readonly { readonly path: string; readonly exact: Decimal }[],
  step: Decimal | undefined,
): readonly Decimal[] {
  if (step === undefined) return rows.map(({ exact }) => exact);
  const exact = rows.map((row) => ({ g: row.exact }));
  const rounded = splitToStep(exact, { g: step });
  // a row that the scale leaves out is another recipe
  const vanished = rows.find((row, at) => rounded[at]?.g.isZero() === true && !row.exact.isZero());
  if (vanished !== undefined) {
    const { path, exact: wanted } = vanished;
    refuse('infeasible', path, `at least the step of the scale, ${step.toString()} g`, wanted.toPrecision(3));
  }
  return rounded.map(({ g }) => g);
}
