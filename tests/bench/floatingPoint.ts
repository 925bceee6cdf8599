/** The same sums once more in floating point: as fast as they can be, and right to about fifteen digits. */
import type { AcidLimits, Value } from './plainDecimals.js';

const NAOH = 39.997;
const KOH = 56.105;

/** As `decimalPlan`. */
export function floatPlan(
  masses: readonly (number | string)[],
  values: readonly Value<number>[],
  stock: number | string,
  superfat: number | string,
  strength: number | string,
): Record<string, number> {
  let fats = 0;
  let low = 0;
  let likely = 0;
  let high = 0;
  for (let at = 0; at < masses.length; at += 1) {
    const mass = Number(masses[at]);
    const value = values[at];
    if (value === undefined) continue;
    fats += mass;
    low += mass * value[0];
    likely += mass * value[1];
    high += mass * value[2];
  }
  low /= 1000 * KOH;
  likely /= 1000 * KOH;
  high /= 1000 * KOH;
  const share = Number(stock) / 100;
  const naoh = (likely * (1 - Number(superfat) / 100) * NAOH) / share;
  const water = (naoh * share * 100) / Number(strength) - naoh;
  const charged = (naoh * share) / NAOH;
  const batch = fats + water + naoh;
  return {
    demandLow: low,
    demandLikely: likely,
    demandHigh: high,
    naoh,
    water,
    superfatLow: (1 - charged / low) * 100,
    superfatLikely: (1 - charged / likely) * 100,
    superfatHigh: (1 - charged / high) * 100,
    freeCausticLow: (Math.max(0, charged - high) * NAOH * 100) / batch,
    freeCausticLikely: (Math.max(0, charged - likely) * NAOH * 100) / batch,
    freeCausticHigh: (Math.max(0, charged - low) * NAOH * 100) / batch,
  };
}

/** As `decimalValue`. */
export function floatValue(acids: readonly AcidLimits<number>[], unsaponifiable: number | string): number {
  let low = 0;
  let high = 0;
  for (const acid of acids) {
    low += acid[0] / 100;
    high += acid[1] / 100;
  }
  const place = (1 - low) / (high - low);
  let perGram = 0;
  for (const [least, most, molarMass] of acids) perGram += (least + (most - least) * place) / 100 / molarMass;
  const residue = (92.094 - 3 * 18.015) / 3;
  return ((1000 * KOH * perGram) / (1 + residue * perGram)) * (1 - Number(unsaponifiable) / 100);
}
