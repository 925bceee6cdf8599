import { frozen } from '../numbers/index.js';
import type { ReadRecipe, RecipeAddition } from '../recipe/index.js';
import type { BatchPot } from './pot.js';

/** The recipe as it is made: what is weighed in the place of what was written, and nothing that was printed of it. */
export function madeRecipe(written: ReadRecipe, { input, additions }: BatchPot): ReadRecipe {
  const { title, target, temperatures } = written;
  return frozen({
    version: 1,
    ...(title === undefined ? {} : { title }),
    ...input,
    // those of the recipe as weighed: a solvent with the one assay it has there, and no salt
    additions: additions as readonly RecipeAddition[],
    ...(target === undefined ? {} : { target }),
    ...(temperatures === undefined ? {} : { temperatures }),
  });
}
