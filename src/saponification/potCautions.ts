import { expandedCharges, type FatCharge } from '../fats/index.js';
import {
  alkaliCautions,
  CARBONATE_FOAMS,
  FREE_CAUSTIC_POSSIBLE,
  FREE_FATTY_ACID,
  LYE_INTO_HOT_SOAP,
  NONE_LEFT_ON_PAPER,
  SOLID_INTO_COLD_WATER,
  STRONGER_THAN_DISSOLVES,
  type LyeCharge,
} from '../lye/index.js';
import type { Remark } from '../numbers/index.js';
import type { Estimate, Fraction } from '../quantities/index.js';
import type { Balance } from './balance.js';

/** Where sodium hydroxide stops dissolving in water at 20 °C, percent by mass: 109 g to 100 mL, read. */
const NAOH_DISSOLVES_TO = '52.2';

/** The cautions that fats and alkali about to meet call for; the strength is that of a lye still to be made. */
export function potCautions(
  charges: readonly FatCharge[],
  lye: readonly LyeCharge[],
  { freeCausticAlkali }: Balance,
  strength?: Estimate<Fraction>,
): readonly Remark[] {
  const hasFreeAcid = expandedCharges(charges).some(
    ({ fat }) => fat.kind === 'free-fatty-acid' || fat.kind === 'rosin',
  );
  const hasSolid = lye.some(({ source }) => source.state === 'solid');
  const hasCarbonate = lye.some(({ source }) => source.carbonate?.high.gt(0) ?? false);
  const allSolidSoda = lye.every(({ alkali, source }) => alkali === 'naoh' && source.state === 'solid');
  return alkaliCautions(
    ...(hasSolid ? [SOLID_INTO_COLD_WATER] : []),
    LYE_INTO_HOT_SOAP,
    ...(hasFreeAcid ? [FREE_FATTY_ACID] : []),
    ...(hasFreeAcid && hasCarbonate ? [CARBONATE_FOAMS] : []),
    freeCausticAlkali.high.percentNaoh.isZero() ? NONE_LEFT_ON_PAPER : FREE_CAUSTIC_POSSIBLE,
    ...(allSolidSoda && strength?.likely.percent.gt(NAOH_DISSOLVES_TO) === true ? [STRONGER_THAN_DISSOLVES] : []),
  );
}
