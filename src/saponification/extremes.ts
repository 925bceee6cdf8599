import { Decimal, frozen, ONE } from '../numbers/index.js';
import type { Estimate } from '../quantities/index.js';
import type { Corner, Dimension, Place } from './place.js';

/** What is looked at in one pot. */
export interface Seen<K extends string> {
  readonly figures: Readonly<Record<K, Decimal>>;
  /** Where the figures may turn: between the zeros of these they are monotone. */
  readonly turning: readonly Decimal[];
}

interface SeenCorner<K extends string> {
  readonly corner: Corner;
  readonly seen: Seen<K>;
}

/**
 * The least, likely and greatest of several figures over all lawful pots.
 *
 * Each figure is monotone in every dimension between turning points, and the turning points are linear along an edge. So
 * the extremes stand at the corners of the box, or where an edge crosses a turning point.
 *
 * @param dimensions - those whose low and high end differ
 */
export function extremesOf<K extends string>(
  dimensions: readonly Dimension[],
  look: (place: Place) => Seen<K>,
): Readonly<Record<K, Estimate<Decimal>>> {
  const likely = look('likely').figures;
  const corners = cornersOf(dimensions).map((corner) => ({ corner, seen: look(corner) }));
  const seen = [
    ...corners.map((one) => one.seen.figures),
    ...crossings(dimensions, corners).map((place) => look(place).figures),
  ];
  const keys = Object.keys(likely) as K[];
  return Object.fromEntries(
    keys.map((key) => {
      const values = seen.map((figures) => figures[key]);
      return [key, frozen({ low: Decimal.min(...values), likely: likely[key], high: Decimal.max(...values) })];
    }),
  ) as Record<K, Estimate<Decimal>>;
}

/** All corners; in the corner of number i a dimension j is high where bit j of i is set. */
function cornersOf(dimensions: readonly Dimension[]): readonly Corner[] {
  return Array.from({ length: 2 ** dimensions.length }, (_, number) => {
    const high = dimensions.flatMap((dimension, bit) => (isSet(number, bit) ? [[dimension, ONE] as const] : []));
    return new Map(high);
  });
}

const isSet = (number: number, bit: number): boolean => Math.floor(number / 2 ** bit) % 2 === 1;

/** Where the edges between two corners cross a turning point. */
function crossings<K extends string>(
  dimensions: readonly Dimension[],
  corners: readonly SeenCorner<K>[],
): readonly Corner[] {
  return dimensions.flatMap((dimension, bit) =>
    corners.flatMap((low, number) => {
      const high = isSet(number, bit) ? undefined : corners[number + 2 ** bit];
      return high === undefined ? [] : crossingsBetween(dimension, low, high);
    }),
  );
}

function crossingsBetween<K extends string>(
  dimension: Dimension,
  { corner, seen: { turning } }: SeenCorner<K>,
  { seen: other }: SeenCorner<K>,
): readonly Corner[] {
  return turning.flatMap((from, at) => {
    const to = other.turning[at];
    if (to === undefined || from.times(to).gte(0)) return [];
    return [new Map([...corner, [dimension, from.div(from.minus(to))]])];
  });
}
