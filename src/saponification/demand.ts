import { molarMass } from '../chemistry/index.js';
import { expandedCharges, isAllAcid, type FatCharge, type SingleFat } from '../fats/index.js';
import { frozen, noted, ONE, ZERO, type Decimal, type Steps } from '../numbers/index.js';
import { mapEnds, type Estimate } from '../quantities/index.js';

/** What a charge of fats asks of the lye, at one end of its lots. */
export interface Demand {
  /** Hydroxide that splits all of it, mol. */
  readonly hydroxide: Decimal;
  /** The part of it that free acid takes, mol. */
  readonly acid: Decimal;
  /** Grams of the charge that are esters. */
  readonly esterGrams: Decimal;
}

/** What one fat asks: mg KOH for all of it, `m·SV`, and for its free acid, `m·AV`; its esters, `m·(1 − AV/SV)`. */
function demandOfOne({ fat, grams }: FatCharge<SingleFat>, end: keyof Estimate<unknown>): Demand {
  const value = fat.saponificationValue[end].mgKohPerG;
  const hydroxide = grams.times(value);
  if (isAllAcid(fat.kind)) return { hydroxide, acid: hydroxide, esterGrams: ZERO };
  const acidValue = fat.acidValue.mgKohPerG;
  if (acidValue.isZero()) return { hydroxide, acid: ZERO, esterGrams: grams };
  return { hydroxide, acid: grams.times(acidValue), esterGrams: grams.times(ONE.minus(acidValue.div(value))) };
}

function demandAt(charges: readonly FatCharge<SingleFat>[], end: keyof Estimate<unknown>): Demand {
  const perMol = molarMass('KOH').times(1000);
  let [hydroxide, acid, esterGrams] = [ZERO, ZERO, ZERO];
  for (const charge of charges) {
    const one = demandOfOne(charge, end);
    hydroxide = hydroxide.plus(one.hydroxide);
    if (one.acid !== ZERO) acid = acid.plus(one.acid);
    if (one.esterGrams !== ZERO) esterGrams = esterGrams.plus(one.esterGrams);
  }
  return { hydroxide: hydroxide.div(perMol), acid: acid.isZero() ? ZERO : acid.div(perMol), esterGrams };
}

/**
 * Hydroxide that a charge of fats takes up, `n = Σ m·SV/(1000·M(KOH))`, for the leanest lots, the likely and the
 * richest. Blends count by their parts.
 */
export function demandOf(charges: readonly FatCharge[], steps?: Steps): Estimate<Demand> {
  const singles = expandedCharges(charges);
  const demand = frozen({
    low: demandAt(singles, 'low'),
    likely: demandAt(singles, 'likely'),
    high: demandAt(singles, 'high'),
  });
  if (steps !== undefined) noteDemand(singles, demand, steps);
  return demand;
}

function noteDemand(singles: readonly FatCharge<SingleFat>[], demand: Estimate<Demand>, steps: Steps): void {
  for (const charge of singles) {
    const { low, likely, high } = charge.fat.saponificationValue;
    const of = `saponification value of ${charge.fat.name}`;
    noted(steps, `${of}, leanest lot`, 'as published or certified', 'mg KOH/g', low.mgKohPerG);
    noted(steps, `${of}, likely`, 'as published or certified', 'mg KOH/g', likely.mgKohPerG);
    noted(steps, `${of}, richest lot`, 'as published or certified', 'mg KOH/g', high.mgKohPerG);
    const { hydroxide } = demandAt([charge], 'likely');
    noted(steps, `hydroxide for ${charge.fat.name}`, 'n = m·SV/(1000·M(KOH))', 'mol', hydroxide);
  }
  const { low, likely, high } = mapEnds(demand, ({ hydroxide }) => hydroxide);
  noted(steps, 'hydroxide for all fats, likely lots', 'n = Σ m·SV/(1000·M(KOH))', 'mol', likely);
  noted(steps, 'hydroxide for all fats, leanest lots', 'the same with the lowest values', 'mol', low);
  noted(steps, 'hydroxide for all fats, richest lots', 'the same with the highest values', 'mol', high);
}
