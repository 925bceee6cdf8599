/** The sums of the library as somebody would write them down in a script: decimals, no units, no checks, no sources. */
import { Decimal as Base } from 'decimal.js';

export type Decimal = Base;
export const Decimal: Base.Constructor = Base.clone({
  defaults: true,
  precision: 34,
  rounding: Base.ROUND_HALF_EVEN,
});

const [ZERO, ONE] = [new Decimal(0), new Decimal(1)];
const NAOH = new Decimal('39.997');
const KOH = new Decimal('56.105');
const MG_KOH_PER_MOL = KOH.times(1000);

/** Saponification value of a fat: leanest lot, likely lot, richest lot. */
export type Value<N> = readonly [low: N, likely: N, high: N];

/** Lye for fats of known value: a solution of `stock` percent, brought to `strength` percent, `superfat` percent left out. */
export function decimalPlan(
  masses: readonly (number | string)[],
  values: readonly Value<Decimal>[],
  stock: number | string,
  superfat: number | string,
  strength: number | string,
): Record<string, Decimal> {
  let fats = ZERO;
  let low = ZERO;
  let likely = ZERO;
  let high = ZERO;
  for (let at = 0; at < masses.length; at += 1) {
    const mass = new Decimal(masses[at] ?? 0);
    const value = values[at];
    if (value === undefined) continue;
    fats = fats.plus(mass);
    low = low.plus(mass.times(value[0]));
    likely = likely.plus(mass.times(value[1]));
    high = high.plus(mass.times(value[2]));
  }
  low = low.div(MG_KOH_PER_MOL);
  likely = likely.div(MG_KOH_PER_MOL);
  high = high.div(MG_KOH_PER_MOL);
  const share = new Decimal(stock).div(100);
  const aim = likely.times(ONE.minus(new Decimal(superfat).div(100)));
  const naoh = aim.times(NAOH).div(share);
  const water = naoh.times(share).times(100).div(new Decimal(strength)).minus(naoh);
  const charged = naoh.times(share).div(NAOH);
  const batch = fats.plus(water.plus(naoh));
  return {
    demandLow: low,
    demandLikely: likely,
    demandHigh: high,
    naoh,
    water,
    superfatLow: ONE.minus(charged.div(low)).times(100),
    superfatLikely: ONE.minus(charged.div(likely)).times(100),
    superfatHigh: ONE.minus(charged.div(high)).times(100),
    freeCausticLow: Decimal.max(ZERO, charged.minus(high)).times(NAOH).times(100).div(batch),
    freeCausticLikely: Decimal.max(ZERO, charged.minus(likely)).times(NAOH).times(100).div(batch),
    freeCausticHigh: Decimal.max(ZERO, charged.minus(low)).times(NAOH).times(100).div(batch),
  };
}

/** What remains of three fatty acids and glycerol when three waters have left, for each acid. */
const RESIDUE = new Decimal('92.094').minus(new Decimal('18.015').times(3)).div(3);

/** Limits of an acid's share in percent, and its molar mass. */
export type AcidLimits<N> = readonly [low: number, high: number, molarMass: N];

/** Likely saponification value of a triglyceride, its acids within limits, `unsaponifiable` percent of it no fat. */
export function decimalValue(acids: readonly AcidLimits<Decimal>[], unsaponifiable: number | string): Decimal {
  const lows: Decimal[] = [];
  const widths: Decimal[] = [];
  let low = ZERO;
  let high = ZERO;
  for (const acid of acids) {
    const [least, most] = [new Decimal(acid[0]).div(100), new Decimal(acid[1]).div(100)];
    lows.push(least);
    widths.push(most.minus(least));
    low = low.plus(least);
    high = high.plus(most);
  }
  const place = ONE.minus(low).div(high.minus(low));
  let perGram = ZERO;
  for (let at = 0; at < acids.length; at += 1) {
    const share = (lows[at] ?? ZERO).plus((widths[at] ?? ZERO).times(place));
    perGram = perGram.plus(share.div(acids[at]?.[2] ?? ONE));
  }
  const taken = new Decimal(unsaponifiable).div(100);
  return KOH.times(1000).times(perGram).div(perGram.times(RESIDUE).plus(1)).times(ONE.minus(taken));
}
