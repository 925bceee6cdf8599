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
