import { baseFromTargetSteps, type BaseFromTargetInput } from '../base/index.js';
import { givenOf, type GivenAddition } from '../composition/index.js';
import { ALKALIS, type Alkali, type LyeChargeInput } from '../lye/index.js';
import { frozen, readText } from '../numbers/index.js';
import type { Mass } from '../quantities/index.js';
import type { ReadRecipe, RecipeAddition } from '../recipe/index.js';

/** A result of `baseFromTarget`, also one read back from JSON: it is worked through again. */
export interface MadeBase {
  readonly by: 'baseFromTarget';
  readonly given: unknown;
}

/**
 * The recipe of a base that was worked out from its target: what it weighs, with its superfat as the target of the lye.
 *
 * Every mass is that of `weigh`. A recipe has one figure for an assay: of a range the likely one stands in it. A salt stands
 * in it by its name, and so counts as other. What is to evaporate is not part of a recipe: give it to `planBatch`.
 *
 * @param base - a result of `baseFromTarget`
 * @param title - what the recipe is to be called
 * @returns a recipe, for `planBatch`, `auditRecipe` and the shelf; grams, assays by mass
 * @throws CalculationError `missing` or `bad-shape` for what is no such result, and the faults of its inputs
 *
 * @example
 * ```ts
 * const base = baseFromTarget({
 *   fats: [{ fat: fat('coconut-oil'), share: { percent: 100 } }],
 *   alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
 *   superfat: { percent: 1 },
 *   batchMass: { kg: 3 },
 *   target: { soap: { percent: 40 }, glycerol: { percent: 20 }, sorbitol: { percent: 15 } },
 *   supplies: { glycerol: { assay: { percent: '99.5' } }, sorbitol: { assay: { percent: 70 } } },
 * });
 * const { weigh } = planBatch(recipeFromBase(base, 'Base of forty'), { scaleStep: { g: 1 } });
 * weigh.map(({ item, mass }) => `${item} ${mass.g.toString()}`); // => ['Coconut oil 1172', 'naoh 417', 'water 326', 'glycerol 442', 'sorbitol 643']
 * ```
 */
export function recipeFromBase(base: MadeBase, title?: string): ReadRecipe {
  const given = givenOf('base', base, 'baseFromTarget');
  // its own inputs go through the same readers again, which refuse what they cannot use
  const { weigh, given: read } = baseFromTargetSteps(given as BaseFromTargetInput);
  const alkalis: { readonly [K in Alkali | 'water']?: Mass } = weigh;
  return frozen({
    version: 1,
    ...(title === undefined ? {} : { title: readText('title', title) }),
    fats: weigh.fats,
    lye: frozen(
      ALKALIS.flatMap((alkali): readonly LyeChargeInput[] => {
        const [mass, source] = [alkalis[alkali], read.alkali[alkali]];
        return mass === undefined || source === undefined ? [] : [frozen({ alkali, mass, ...source })];
      }),
    ),
    water: weigh.water,
    additions: frozen(weigh.additions.map(rowOf)),
    target: frozen({ superfat: read.superfat }),
  });
}

function rowOf(addition: GivenAddition): RecipeAddition {
  if ('solvent' in addition) return frozen({ ...addition, assay: addition.assay.likely });
  const { mass } = addition;
  return frozen({ name: 'salt' in addition ? addition.salt : addition.name, mass });
}
