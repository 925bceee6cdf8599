/**
 * Verdicts as a plain script reckons them in floating point: the lye sums of a recipe that is taken to be right in shape,
 * with no thought of rounding. It leaves out what is not of the lye: pH, temperatures, parts of the whole and densities (a
 * millilitre weighs a gram).
 */
import { fat, type Fat } from 'laurate';
import type { Recipe } from 'laurate/recipe';

const M = { naoh: 39.997, koh: 56.105 } as const;
const CARBONATE = { naoh: 105.988, koh: 138.204 } as const;
const UNITS: Readonly<Record<string, number>> = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237, mL: 1, usFlOz: 29.5735295625, percent: 1, fraction: 100, mgKohPerG: 1, gNaohPerG: (1000 * M.koh) / M.naoh, '': 1 }; // prettier-ignore
const LIMIT = 0.05;

type Span = readonly [low: number, value: number, high: number];

function printed(quantity: unknown): Span {
  const [[unit, figure] = ['', '0']] = typeof quantity === 'object' && quantity !== null ? Object.entries(quantity) : [['', quantity]];
  const text = String(figure);
  const step = 10 ** -(text.split('.')[1]?.length ?? 0);
  const factor = UNITS[unit] ?? Number.NaN;
  return [(Number(text) - step) * factor, Number(text) * factor, (Number(text) + step) * factor];
} // prettier-ignore

const values = new Map<unknown, Span>();
function valuesOf(named: string | Fat): Span {
  const known = values.get(named);
  if (known !== undefined) return known;
  const { low, likely, high } = (typeof named === 'string' ? fat(named) : named).saponificationValue;
  const made: Span = [Number(low.mgKohPerG), Number(likely.mgKohPerG), Number(high.mgKohPerG)];
  values.set(named, made);
  return made;
}

function strengthOf({ alkali, solid, solution }: Recipe['lye'][number]): number {
  if (solution !== undefined) return printed(solution.hydroxide)[1] / 100;
  if (solid.hydroxide !== undefined) return printed(solid.hydroxide)[1] / 100;
  return (printed(solid.totalAlkali)[1] - (printed(solid.carbonate)[1] * 2 * M[alkali]) / CARBONATE[alkali]) / 100;
}

export function floatVerdict({ fats, lye, water, additions = [], claimed = {} }: Recipe): string {
  const [low, value, high] = [0, 1, 2] as const;
  let [fatGrams, isWrong] = [0, false];
  const demand = [0, 0, 0] as [number, number, number];
  const own = [0, 0, 0] as [number, number, number];
  for (const row of fats) {
    const grams = printed(row.mass)[value];
    const lots = valuesOf(row.fat);
    const claim = row.claimed?.saponificationValue === undefined ? undefined : printed(row.claimed.saponificationValue);
    fatGrams += grams;
    for (const end of [low, value, high] as const) {
      demand[end] += (grams * lots[end]) / 1000 / M.koh;
      own[end] += (grams * (claim?.[end] ?? Number.NaN)) / 1000 / M.koh;
    }
    if (claim !== undefined && (claim[high] < lots[low] || claim[low] > lots[high])) isWrong = true;
  }
  const [weighed, pure, mol, koh] = [0, 1, 2, 3].map(() => [0, 0, 0] as [number, number, number]) as [[number, number, number], [number, number, number], [number, number, number], [number, number, number]]; // prettier-ignore
  for (const row of lye) {
    const grams = printed(row.mass);
    const strength = strengthOf(row);
    for (const end of [low, value, high] as const) {
      weighed[end] += grams[end];
      pure[end] += grams[end] * strength;
      mol[end] += (grams[end] * strength) / M[row.alkali];
      if (row.alkali === 'koh') koh[end] += (grams[end] * strength) / M.koh;
    }
  }
  const added = water === undefined ? 0 : printed(water)[value];
  const others = additions.map((one) => printed(one.mass ?? one.volume)[value]);
  const total = fatGrams + weighed[value] + added + others.reduce((sum, grams) => sum + grams, 0);
  const caustic = (end: 0 | 1): number => (100 * Math.max(0, mol[value] - demand[end]) * M.naoh) / total;
  if (caustic(value) > LIMIT) return 'dangerous';

  const misses = (claim: unknown, ...readings: readonly (readonly number[])[]): boolean => {
    if (claim === undefined) return false;
    const [least, , most] = printed(claim);
    return readings.every((figures) => least > Math.max(...figures) || most < Math.min(...figures));
  };
  const ends = [low, value, high] as const;
  if (claimed.superfat !== undefined) {
    const [least, , most] = printed(claimed.superfat);
    const lots = [100 * (1 - mol[high] / demand[low]), 100 * (1 - mol[low] / demand[high])];
    isWrong ||= misses(claimed.superfat, lots);
    isWrong ||= mol[high] < own[low] * (1 - most / 100) || mol[low] > own[high] * (1 - least / 100);
  }
  const share = (part: number, all: number): number => (100 * part) / all;
  isWrong ||= misses(claimed.strength, ends.map((end) => share(pure[end], weighed[end] + added)));
  isWrong ||= misses(claimed.waterPerAlkali, ends.map((end) => (weighed[end] + added - pure[end]) / pure[end]), ends.map((end) => added / weighed[end]), ends.map((end) => added / pure[end]));
  isWrong ||= misses(claimed.waterPerFat, ends.map((end) => share(weighed[end] + added - pure[end], fatGrams)), [share(added, fatGrams)]);
  isWrong ||= misses(claimed.kohShare, [share(koh[low], koh[low] + mol[high] - koh[high]), share(koh[high], koh[high] + mol[low] - koh[low])]);
  isWrong ||= misses(claimed.total, ends.map((end) => total - weighed[value] + weighed[end]));
  isWrong ||= additions.some((one, at) => misses(one.claimed?.share, ends.map((end) => share(others[at] ?? 0, total - weighed[value] + weighed[end]))));
  if (isWrong) return 'wrong';
  return caustic(low) > LIMIT || mol[value] > demand[value] ? 'doubtful' : 'sound';
} // prettier-ignore
