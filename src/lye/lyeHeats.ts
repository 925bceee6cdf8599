import { Decimal, knotsFrom, monotoneCubic, onStraightLines, ZERO, type Curve, type Knot } from '../numbers/index.js';
import { molarMass } from '../chemistry/index.js';
import type { Alkali } from './alkali.js';
import {
  kohHeatCapacity,
  naohBoiling,
  naohHeatCapacity,
  naohHeatOfSolution,
  naohHeatOfSolutionBetween,
  type HeatCapacityGrid,
} from './data/lyeHeats.js';

/** The strongest lye whose heat of solution is known, moles of water to one of NaOH. */
export const LEAST_WATER = 3;

/** The temperature of the heats of solution, °C. */
export const HEATS_AT = 25;
/** The temperatures of the heat capacities, °C; what lies outside them is carried on and marked. */
export const HEAT_CAPACITIES = { from: 20, to: 80 } as const;

let naohHeats: Curve | undefined;

/**
 * Heat that one mole of solid NaOH gives out in so many moles of water, kJ/mol at 25 °C: a monotone cubic by the share of
 * hydroxide, which is nought in no end of water.
 */
export function naohHeatAt(waterPerHydroxide: Decimal): Decimal {
  naohHeats ??= monotoneCubic(
    [...naohHeatOfSolution.rows, ...naohHeatOfSolutionBetween.rows]
      .map(([water, kJ]): Knot => ({ x: hydroxideShare(new Decimal(water)), y: new Decimal(kJ) }))
      .sort((weaker, stronger) => weaker.x.cmp(stronger.x)),
  );
  return naohHeats.at(hydroxideShare(waterPerHydroxide));
}

/** Share by mass of hydroxide in NaOH·n H2O. */
function hydroxideShare(waterPerHydroxide: Decimal): Decimal {
  if (!waterPerHydroxide.isFinite()) return ZERO;
  const hydroxide = molarMass('NaOH');
  return hydroxide.div(hydroxide.plus(waterPerHydroxide.times(molarMass('H2O'))));
}

const grids: Readonly<Record<Alkali, HeatCapacityGrid>> = { naoh: naohHeatCapacity, koh: kohHeatCapacity };

/** The strongest lye whose heat capacity is tabulated, percent. */
export const HEAT_CAPACITIES_TO: Readonly<Record<Alkali, number>> = { naoh: 50, koh: 40 };

/**
 * Heat of warming a lye from 25 °C, kJ/g, against the temperature: knots from 20 to 80 °C. The heat capacity goes by
 * straight lines in strength, past the last row too, and within a stretch of temperature is taken as the mean of its ends.
 */
export function warmingOf(alkali: Alkali, percent: Decimal): readonly Knot[] {
  const { celsius, rows } = grids[alkali];
  const capacities = celsius.map((degrees, at) => ({
    celsius: new Decimal(degrees),
    kJPerGK: onStraightLines(
      knotsFrom(
        rows.map(([strength]) => strength),
        rows.flatMap(([, ...figures]) => figures.slice(at, at + 1)),
      ),
      percent,
    ).div(1000),
  }));
  let heat = ZERO;
  const fromColdest = capacities.map((here, at) => {
    const before = capacities[at - 1] ?? here;
    heat = heat.plus(here.celsius.minus(before.celsius).times(here.kJPerGK.plus(before.kJPerGK)).div(2));
    return { x: here.celsius, y: heat };
  });
  const at25 = onStraightLines(fromColdest, new Decimal(HEATS_AT));
  return fromColdest.map(({ x, y }) => ({ x, y: y.minus(at25) }));
}

/** Heat capacity of a lye, kJ/(kg·K): mean from 20 to 80 °C at this strength; carried on beyond the last row. */
export function lyeHeatCapacity(alkali: Alkali, percent: Decimal): Decimal {
  const [coldest, ...warmer] = warmingOf(alkali, percent) as [Knot, ...Knot[]];
  const hottest = warmer.at(-1) ?? coldest;
  return hottest.y.minus(coldest.y).div(hottest.x.minus(coldest.x)).times(1000);
}

/** Boiling point of NaOH lye at the pressure of the sea, °C, on straight lines; 0 to 50 percent. */
export function naohBoilingPoint(percent: Decimal): Decimal {
  return onStraightLines(
    naohBoiling.rows.map(([x, y]) => ({ x: new Decimal(x), y: new Decimal(y) })),
    percent,
  );
}
