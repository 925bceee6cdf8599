import { expandedCharges, type FatCharge } from '../fats/index.js';
import type { CautionCode, LyeCharge } from '../lye/index.js';
import type { Balance } from './balance.js';

/** The cautions that fats and alkali about to meet call for. */
export function cautionCodes(
  charges: readonly FatCharge[],
  lye: readonly LyeCharge[],
  balance: Balance,
): readonly CautionCode[] {
  const hasFreeAcid = expandedCharges(charges).some(
    ({ fat }) => fat.kind === 'free-fatty-acid' || fat.kind === 'rosin',
  );
  const hasSolid = lye.some(({ source }) => source.state === 'solid');
  const hasCarbonate = lye.some(({ source }) => source.carbonate?.high.gt(0) ?? false);
  return [
    'caustic-burns',
    ...(hasSolid ? (['solid-into-cold-water'] as const) : []),
    'lye-into-hot-soap',
    ...(hasFreeAcid ? (['free-fatty-acid-reacts-at-once'] as const) : []),
    ...(hasFreeAcid && hasCarbonate ? (['carbonate-foams'] as const) : []),
    balance.freeCausticAlkali.high.percentNaoh.isZero() ? 'none-left-on-paper' : 'free-caustic-possible',
    'no-aluminium-zinc-tin',
    'children-and-animals',
    'sums-not-a-certificate',
  ];
}
