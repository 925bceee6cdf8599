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
  noted(steps, 'molar mass of KOH', 'atomic weights', 'g/mol', molarMass('KOH'));
  noted(steps, 'molar mass of NaOH', 'atomic weights', 'g/mol', molarMass('NaOH'));
  for (const charge of singles) {
    const { fat, grams } = charge;
    const { low, likely, high } = fat.saponificationValue;
    const [of, from] = [`saponification value of ${fat.name}`, originsOf(fat)];
    noted(steps, `mass of ${fat.name}`, 'as charged', 'g', grams);
    noted(steps, `${of}, leanest lot`, from.low, 'mg KOH/g', low.mgKohPerG);
    noted(steps, `${of}, likely`, from.likely, 'mg KOH/g', likely.mgKohPerG);
    noted(steps, `${of}, richest lot`, from.high, 'mg KOH/g', high.mgKohPerG);
    const { hydroxide } = demandAt([charge], 'likely');
    noted(steps, `hydroxide for ${fat.name}`, 'n = m·SV/(1000·M(KOH))', 'mol', hydroxide);
  }
  const { low, likely, high } = mapEnds(demand, ({ hydroxide }) => hydroxide);
  noted(steps, 'hydroxide for all fats, likely lots', 'n = Σ m·SV/(1000·M(KOH))', 'mol', likely);
  noted(steps, 'hydroxide for all fats, leanest lots', 'the same with the lowest values', 'mol', low);
  noted(steps, 'hydroxide for all fats, richest lots', 'the same with the highest values', 'mol', high);
}

/** What each end of a fat's saponification value rests on, as its origin and its notes tell. */
function originsOf({ from, notes }: SingleFat): Estimate<string> {
  const has = (code: string): boolean => notes.some((note) => note.code === code);
  if (from === 'certificate') return { low: 'as certified', likely: 'as certified', high: 'as certified' };
  if (from === 'standard') {
    const likely = has('middle-of-range')
      ? 'middle of the published range'
      : has('profile-and-range-disagree')
        ? 'the published limit nearest to the likely profile'
        : has('half-the-maximum-unsaponifiable')
          ? 'likely profile less half the maximum unsaponifiable matter; convention'
          : 'likely profile';
    return { low: 'lowest published limit', likely, high: 'highest published limit' };
  }
  const spread = '7 % about the likely value, or the bounds of the profile where wider; convention';
  return { low: spread, likely: from === 'observation' ? 'as observed' : 'likely profile', high: spread };
}
