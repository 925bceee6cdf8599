import { COMPONENTS, type ChargedPot } from '../composition/index.js';
import { frozen, ZERO, type Decimal } from '../numbers/index.js';
import type { Estimate } from '../quantities/index.js';
import { extremesOf, type Place } from '../saponification/index.js';
import type { SourceId } from '../sources/index.js';
import { heatCapacities } from './data/heats.js';

/** Lowest, likely and highest heat capacity of what is in a pot at one place, kJ/K: `Σ m·c`, which leaves mixing out. */
export function heatCapacityAt(pot: ChargedPot, place: Place): Readonly<Record<keyof Estimate<unknown>, Decimal>> {
  const { grams } = pot.at(place);
  const figures = heatCapacities();
  const sum = (end: 0 | 1 | 2): Decimal =>
    COMPONENTS.reduce((total, name) => total.plus(grams[name].times(figures[name].figures[end])), ZERO).div(1000);
  return { low: sum(0), likely: sum(1), high: sum(2) };
}

/** Heat capacity of what is in a pot over all its lots and assays, kJ/K. */
export function heatCapacityOf(pot: ChargedPot): Estimate<Decimal> {
  const { low, likely, high } = extremesOf(pot.dimensions, (place) => {
    const { turning } = pot.at(place);
    return { figures: heatCapacityAt(pot, place), turning };
  });
  return frozen({ low: low.low, likely: likely.likely, high: high.high });
}

/** The publications behind the heat capacities of what is in a pot. */
export function basisOfHeatCapacity(pot: ChargedPot): readonly SourceId[] {
  const { grams } = pot.at('likely');
  const figures = heatCapacities();
  return COMPONENTS.filter((name) => !grams[name].isZero()).map((name) => figures[name].source);
}
