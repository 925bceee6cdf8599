import type { Fat } from '../fats/index.js';
import type { LyeCharge } from '../lye/index.js';
import type { Decimal } from '../numbers/index.js';
import type { MassInput } from '../quantities/index.js';
import type { RecipeAddition } from '../recipe/index.js';

/** An addition that is weighed; plans take no volumes. */
export type AdditionByMass = RecipeAddition & { readonly mass: MassInput };

/** Everything that is weighed but alkali, in grams; the water still unrounded. */
export interface WeighedRest {
  readonly fats: readonly { readonly fat: Fat; readonly grams: Decimal }[];
  readonly water: Decimal;
  readonly additions: readonly { readonly row: AdditionByMass; readonly grams: Decimal }[];
}

/** What a batch weighs, in grams. */
export interface WeighedRecipe extends WeighedRest {
  readonly lye: readonly LyeCharge[];
}

/** How a recipe is brought to the bench. */
export interface Weighing {
  /** What every mass of the recipe is multiplied by. */
  readonly factor: Decimal;
  /** What the scale shows, g; unrounded without one. */
  readonly scaleStep: Decimal | undefined;
  /** What has gone when the batch is finished, of the recipe as it is written, g. */
  readonly evaporated: Decimal;
}
