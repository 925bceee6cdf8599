import fc from 'fast-check';
import type { FattyAcid } from 'laurate';

/** One acid with its limits in thousandths of the whole. */
export interface Limits {
  readonly acid: FattyAcid;
  readonly low: number;
  readonly high: number;
}

/** Shares in thousandths, one an acid. */
export type Corner = readonly number[];

/** Carbons, double bonds and oxygens, of which the test reckons its own molar masses. */
export const acids: Readonly<Record<string, readonly [carbons: number, doubleBonds: number, oxygens: number]>> = {
  'C4:0': [4, 0, 2],
  'C8:0': [8, 0, 2],
  'C12:0': [12, 0, 2],
  'C16:0': [16, 0, 2],
  'C16:1': [16, 1, 2],
  'C18:0': [18, 0, 2],
  'C18:1': [18, 1, 2],
  'C18:1-OH': [18, 1, 3],
  'C18:3': [18, 3, 2],
  'C22:1': [22, 1, 2],
  'C22:6': [22, 6, 2],
  'C24:0': [24, 0, 2],
};

/** Molar mass in g/mol, in double precision and from atomic weights written here again. */
export function acidMass(acid: string): number {
  const [carbons, bonds, oxygens] = acids[acid] ?? [0, 0, 0];
  return carbons * 12.011 + (2 * carbons - 2 * bonds) * 1.008 + oxygens * 15.999;
}

export const doubleBonds = (acid: string): number => acids[acid]?.[1] ?? 0;

/** Limits around some point that sums to the whole, so that each box has a profile in it. */
export const box = fc
  .record({
    names: fc.uniqueArray(fc.constantFrom(...(Object.keys(acids) as FattyAcid[])), { minLength: 2, maxLength: 5 }),
    weights: fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 5, maxLength: 5 }),
    below: fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 5, maxLength: 5 }),
    above: fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 5, maxLength: 5 }),
  })
  .map(({ names, weights, below, above }) => {
    const used = names.map((_, at) => (weights[at] ?? 0) + 1);
    const total = used.reduce((sum, weight) => sum + weight, 0);
    const point = used.map((weight) => Math.floor((weight * 1000) / total));
    point[0] = (point[0] ?? 0) + 1000 - point.reduce((sum, share) => sum + share, 0);
    return names.map((acid, at): Limits => {
      const share = point[at] ?? 0;
      return { acid, low: Math.max(0, share - (below[at] ?? 0)), high: Math.min(1000, share + (above[at] ?? 0)) };
    });
  });

/**
 * Every corner of a box cut by the plane `sum = whole`: all shares but one at a limit, the last takes the rest. Brute
 * force on purpose, so that it shares nothing with the way the library finds its extremes.
 */
export function corners(limits: readonly Limits[]): Corner[] {
  return limits.flatMap((free, freeAt) => {
    const others = limits.filter((_, at) => at !== freeAt);
    return Array.from({ length: 2 ** others.length }, (_, pattern) => {
      const ends = others.map(({ low, high }, at) => ((pattern >> at) & 1 ? high : low));
      const rest = 1000 - ends.reduce((sum, end) => sum + end, 0);
      return { ends, rest };
    })
      .filter(({ rest }) => rest >= free.low && rest <= free.high)
      .map(({ ends, rest }) => [...ends.slice(0, freeAt), rest, ...ends.slice(freeAt)]);
  });
}

/** A profile between corners, in fractions of one: their weighted mean. */
export function between(points: readonly Corner[], weights: readonly number[]): number[] {
  const used = points.map((_, at) => weights[at % weights.length] ?? 1);
  const total = used.reduce((sum, weight) => sum + weight, 0);
  const [first = []] = points;
  return first.map((_, acid) =>
    points.reduce((sum, point, at) => sum + ((used[at] ?? 0) / total) * ((point[acid] ?? 0) / 1000), 0),
  );
}

/** Weights for {@link between}: never all nothing. */
export const weights = fc.array(fc.double({ min: 0.001, max: 1, noNaN: true }), { minLength: 1, maxLength: 80 });

const percent = (thousandths: number): string => (thousandths / 10).toFixed(1);

/** A box as input. */
export function asRanges(limits: readonly Limits[]): Partial<Record<FattyAcid, { low: string; high: string }>> {
  return Object.fromEntries(limits.map(({ acid, low, high }) => [acid, { low: percent(low), high: percent(high) }]));
}

/** A corner as input. */
export function asPoint(limits: readonly Limits[], corner: Corner): Partial<Record<FattyAcid, string>> {
  return Object.fromEntries(limits.map(({ acid }, at) => [acid, percent(corner[at] ?? 0)]));
}
