import type { ChargedPot } from '../../composition/index.js';
import { expandedCharges } from '../../fats/index.js';
import { carbonateMolarMass, hydroxideMolarMass } from '../../lye/index.js';
import { Decimal, ZERO } from '../../numbers/index.js';
import { lyeSumsAt, type Place } from '../../saponification/index.js';
import { addedAt, part, restOfAdditionsAt } from './added.js';
import { besidesFats } from './besidesFats.js';
import type { Declared } from './declared.js';
import type { IngredientNames } from './ingredientNames.js';

/** Oils, alkali, water and additions as they were charged; what has evaporated is no longer there. */
export function asCharged(pot: ChargedPot, names: IngredientNames, colourants: readonly string[]): Declared {
  const fats = expandedCharges(pot.soap.fats);
  const gramsAt = (place: Place): readonly Decimal[] => {
    const lye = lyeSumsAt(pot.soap.lye, pot.soap.given.water.g, place);
    const { glycerol, gone } = pot.at(place);
    const water = lye.water.plus(restOfAdditionsAt(pot, place)).minus(gone.water);
    return [
      ...fats.map(({ grams }) => grams),
      lye.naoh.hydroxide.times(hydroxideMolarMass('naoh')),
      lye.koh.hydroxide.times(hydroxideMolarMass('koh')),
      lye.naoh.carbonate.times(carbonateMolarMass('naoh')),
      lye.koh.carbonate.times(carbonateMolarMass('koh')),
      // what the reaction formed may have evaporated too
      Decimal.max(water, ZERO),
      glycerol.added,
      ...addedAt(pot, place),
    ];
  };
  return {
    parts: [...fats.map(({ fat }) => part(names.fat(fat), fat.name)), ...besidesFats(pot, names, colourants)],
    gramsAt,
  };
}
