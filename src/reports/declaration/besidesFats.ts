import type { ChargedPot } from '../../composition/index.js';
import { addedParts, part } from './added.js';
import type { DeclaredPart } from './declared.js';
import type { IngredientNames } from './ingredientNames.js';

/** What is declared besides fats and what they become: hydroxides, carbonates, water, glycerol and the additions. */
export function besidesFats(
  pot: ChargedPot,
  names: IngredientNames,
  colourants: readonly string[],
): readonly DeclaredPart[] {
  return [
    part(names.hydroxide('sodium'), 'naoh'),
    part(names.hydroxide('potassium'), 'koh'),
    part(names.carbonate('sodium'), 'naoh'),
    part(names.carbonate('potassium'), 'koh'),
    part(names.solvent('water'), 'water'),
    part(names.solvent('glycerol'), 'glycerol'),
    ...addedParts(pot, names, colourants),
  ];
}
