import { molarMass } from '../chemistry/index.js';
import { expandedCharges, type FatCharge, type SingleFat } from '../fats/index.js';
import { frozen, noted, ONE, ZERO, type Decimal, type Steps } from '../numbers/index.js';
import { mapEstimate, type Estimate } from '../quantities/index.js';

/** What a charge of fats asks of the lye, at one end of its lots. */
export interface Demand {
  /** Hydroxide that splits all of it, mol. */
  readonly hydroxide: Decimal;
  /** The part of it that free acid takes, mol. */
  readonly acid: Decimal;
  /** Grams of the charge that are esters. */
  readonly esterGrams: Decimal;
}

type End = keyof Estimate<unknown>;

/** mg KOH that split all of a charge at one end of its lots: `Σ m·SV`. */
function milligramsOfKoh(charges: readonly FatCharge<SingleFat>[], end: End): Decimal {
  return charges.reduce((sum, { fat, grams }) => sum.plus(grams.times(fat.saponificationValue[end].mgKohPerG)), ZERO);
}

const isAllAcid = ({ kind }: SingleFat): boolean => kind === 'free-fatty-acid' || kind === 'rosin';

/** mg KOH that the free acid of a charge takes, at one end of its lots: `Σ m·AV`. */
function milligramsForAcid(charges: readonly FatCharge<SingleFat>[], end: End): Decimal {
  return charges.reduce((sum, { fat, grams }) => {
    const value = isAllAcid(fat) ? fat.saponificationValue[end].mgKohPerG : fat.acidValue.mgKohPerG;
    return value.isZero() ? sum : sum.plus(grams.times(value));
  }, ZERO);
}

/** Grams of esters: each fat less the share of it that is free acid, taken as `AV/SV` of its mass. */
function gramsOfEsters(charges: readonly FatCharge<SingleFat>[], end: End): Decimal {
  return charges.reduce((sum, { fat, grams }) => {
    if (isAllAcid(fat)) return sum;
    const { mgKohPerG: acid } = fat.acidValue;
    return sum.plus(acid.isZero() ? grams : grams.times(ONE.minus(acid.div(fat.saponificationValue[end].mgKohPerG))));
  }, ZERO);
}

/**
 * Hydroxide that a charge of fats takes up, `n = Σ m·SV/(1000·M(KOH))`, for the leanest lots, the likely and the
 * richest. Blends count by their parts.
 */
export function demandOf(charges: readonly FatCharge[], steps?: Steps): Estimate<Demand> {
  const singles = expandedCharges(charges);
  const perMol = molarMass('KOH').times(1000);
  const at = (end: End): Demand => ({
    hydroxide: milligramsOfKoh(singles, end).div(perMol),
    acid: milligramsForAcid(singles, end).div(perMol),
    esterGrams: gramsOfEsters(singles, end),
  });
  const demand = frozen({ low: at('low'), likely: at('likely'), high: at('high') });
  if (steps !== undefined) noteDemand(singles, demand, perMol, steps);
  return demand;
}

function noteDemand(
  singles: readonly FatCharge<SingleFat>[],
  demand: Estimate<Demand>,
  perMol: Decimal,
  steps: Steps,
): void {
  for (const { fat, grams } of singles) {
    const value = fat.saponificationValue.likely.mgKohPerG;
    noted(steps, `hydroxide for ${fat.name}`, 'n = m·SV/(1000·M(KOH))', 'mol', grams.times(value).div(perMol));
  }
  const { low, likely, high } = mapEstimate(demand, ({ hydroxide }) => hydroxide);
  noted(steps, 'hydroxide for all fats, likely lots', 'n = Σ m·SV/(1000·M(KOH))', 'mol', likely);
  noted(steps, 'hydroxide for all fats, leanest lots', 'the same with the lowest values', 'mol', low);
  noted(steps, 'hydroxide for all fats, richest lots', 'the same with the highest values', 'mol', high);
}
