import {
  assayDimension,
  componentOfSolvent,
  restOf,
  type ChargedPot,
  type SolventId,
} from '../../composition/index.js';
import { isSameName } from '../../fats/index.js';
import { frozen, ONE, ZERO, type Decimal } from '../../numbers/index.js';
import { valueAt, type Place } from '../../saponification/index.js';
import { ownName } from '../ownName.js';
import type { DeclaredPart } from './declared.js';
import type { IngredientName, IngredientNames } from './ingredientNames.js';

/** One thing to declare. */
export function part(name: IngredientName, from: string, isColourant = false): DeclaredPart {
  return frozen({ ...name, from, isColourant });
}

/** Water and glycerol are declared with what else there is of them. */
const APART: readonly SolventId[] = ['water', 'glycerol'];

/** Solvents that were added, each once. */
function solventsOf({ additions }: ChargedPot): readonly SolventId[] {
  const all = additions.flatMap(({ holds }) => (typeof holds === 'object' ? [holds.solvent] : []));
  return [...new Set(all)].filter((id) => !APART.includes(id));
}

/** What was added without being a solvent, by its own name. */
function namedOf({ additions }: ChargedPot): readonly { readonly name: string; readonly grams: Decimal }[] {
  return additions.flatMap(({ grams, given }) => {
    const name = ownName(given);
    return name === undefined ? [] : [{ grams, name }];
  });
}

/** What was added besides water and glycerol. */
export function addedParts(
  pot: ChargedPot,
  names: IngredientNames,
  colourants: readonly string[],
): readonly DeclaredPart[] {
  return [
    ...solventsOf(pot).map((id) => part(names.solvent(id), id)),
    ...namedOf(pot).map(({ name }) =>
      part(
        names.named(name),
        name,
        colourants.some((one) => isSameName(name, one)),
      ),
    ),
  ];
}

/** Grams of it that are there, in the same order: solvents as pure substance, spirit less what is gone. */
export function addedAt(pot: ChargedPot, place: Place): readonly Decimal[] {
  const { grams } = pot.at(place);
  return [...solventsOf(pot).map((id) => grams[componentOfSolvent[id]]), ...namedOf(pot).map((one) => one.grams)];
}

/** Water that the additions bring, grams: what they hold beside their assay, and what is water. */
export function restOfAdditionsAt({ additions }: ChargedPot, place: Place): Decimal {
  return additions.reduce((sum, { grams, holds }) => {
    if (typeof holds !== 'object' || restOf(holds.solvent) !== 'water') return sum;
    if (holds.solvent === 'water') return sum.plus(grams);
    return sum.plus(grams.times(ONE.minus(valueAt(holds.share, place, assayDimension(holds.solvent)))));
  }, ZERO);
}
