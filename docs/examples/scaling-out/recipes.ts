/** Recipes to audit, all of them invented: each is drawn from its number alone, so that any machine draws the same. */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Some fats with a round figure near the middle of their lots, g NaOH/g; what they are is for the audit to say. */
const FATS = [
  ['coconut-oil', 0.183],
  ['palm-oil', 0.142],
  ['olive-oil', 0.135],
  ['castor-oil', 0.128],
  ['stearic-acid-50', 0.149],
] as const;
/** KOH in place of NaOH: the mass of alkali that a common slip gives, as a factor. */
const KOH_FOR_NAOH = 1.4;

/** The recipe of a number, as a line of JSON; about one in ten has its lye by the value of the other alkali. */
export function recipeLine(index: number): string {
  const random = xoroshiro128plus(index);
  const between = (low: number, high: number): number => uniformInt(random, low, high);
  const fats = FATS.slice(between(0, 2), between(3, FATS.length)).map(([fat, value]) => ({
    fat,
    grams: between(50, 900),
    value,
  }));
  const superfat = between(1, 8);
  const slip = between(1, 10) === 1 ? KOH_FOR_NAOH : 1;
  const demand = fats.reduce((sum, { grams, value }) => sum + grams * value, 0);
  const solid = (demand * (1 - superfat / 100) * slip) / 0.99;
  return JSON.stringify({
    version: 1,
    title: `Invented, number ${String(index)}`,
    fats: fats.map(({ fat, grams }) => ({ fat, mass: { g: String(grams) } })),
    lye: [{ alkali: 'naoh', mass: { g: solid.toFixed(1) }, solid: { hydroxide: { percent: '99' } } }],
    claimed: { superfat: { percent: String(superfat) } },
  });
}
