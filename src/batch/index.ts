/**
 * Recipes as data and the batches made of them: the one shape, its reader, and the plan of a whole batch. The shape as
 * JSON Schema is `laurate/recipe.schema.json`.
 *
 * @module laurate/recipe
 */

export type { Cost, CostLine, Money } from './cost.js';
export type { BatchHeat } from './heat.js';
export type { IngredientKind } from './ingredients.js';
export type { Moulds } from './moulds.js';
export { planBatch, type Batch, type WeighedItem } from './planBatch.js';
export type {
  GivenBatchOptions,
  MouldsInput,
  PlanBatchOptions,
  Price,
  PriceInput,
  PricesInput,
  ScaleTo,
  StartInput,
  StockInput,
} from './readBatchOptions.js';
export { recipeFromBase, type MadeBase } from './recipeFromBase.js';
export type { LyeToPlan, RecipeToPlan } from './recipeToPlan.js';
export type { SolventId } from '../composition/index.js';
export {
  readRecipe,
  type AdditionAmount,
  type AdditionClaims,
  type FatClaims,
  type LyeWithoutAssay,
  type ReadRecipe,
  type ReadRecipeFat,
  type ReadRecipeOptions,
  type Recipe,
  type RecipeAddition,
  type RecipeClaims,
  type RecipeFat,
  type RecipeLye,
  type RecipeStage,
  type RecipeTemperature,
  type ShareClaims,
} from '../recipe/index.js';
