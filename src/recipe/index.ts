/**
 * Recipes as data: the one shape, and its reader. The shape as JSON Schema is `laurate/recipe.schema.json`.
 *
 * @module laurate/recipe
 */

export type { SolventId } from '../composition/index.js';
export { readRecipe, type ReadRecipe, type ReadRecipeFat, type ReadRecipeOptions } from './readRecipe.js';
export type {
  AdditionAmount,
  AdditionClaims,
  FatClaims,
  LyeWithoutAssay,
  Recipe,
  RecipeAddition,
  RecipeClaims,
  RecipeFat,
  RecipeLye,
  RecipeStage,
  RecipeTemperature,
  ShareClaims,
} from './recipe.js';
