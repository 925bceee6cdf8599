export { readRecipe, type ReadRecipe, type ReadRecipeFat, type ReadRecipeOptions } from './readRecipe.js';
export type {
  AdditionAmount,
  FatClaims,
  LyeWithoutAssay,
  Recipe,
  RecipeAddition,
  RecipeClaims,
  RecipeFat,
  RecipeLye,
  RecipeStage,
  RecipeTemperature,
} from './recipe.js';
