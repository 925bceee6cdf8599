import { frozen } from '../numbers/index.js';
import type { ReadRecipe, RecipeAddition } from '../recipe/index.js';
import type { BatchPot } from './pot.js';
import type { AdditionByMass, WeighedRecipe } from './weighing.js';

/** The recipe as it is made: what is weighed in the place of what was written, and nothing that was printed of it. */
export function madeRecipe(written: ReadRecipe, { input }: BatchPot, { additions }: WeighedRecipe): ReadRecipe {
  const { title, target, temperatures } = written;
  return frozen({
    version: 1,
    ...(title === undefined ? {} : { title }),
    ...input,
    additions: frozen(additions.map(({ row, grams }) => made(row, { g: grams }))),
    ...(target === undefined ? {} : { target }),
    ...(temperatures === undefined ? {} : { temperatures }),
  });
}

function made(row: AdditionByMass, mass: AdditionByMass['mass']): RecipeAddition {
  if (row.solvent === undefined) return frozen({ name: row.name, mass: frozen(mass) });
  // the assay is one that the schema passed for this solvent
  const held = { solvent: row.solvent, ...(row.assay === undefined ? {} : { assay: row.assay }) };
  return frozen({ ...held, mass: frozen(mass) }) as RecipeAddition;
}
