import type { LyeCharge } from '../lye/index.js';
import type { Decimal, Remark } from '../numbers/index.js';
import { frozen } from '../numbers/index.js';

/** Share of the alkali that half a step of the scale may be without a word, percent; a convention. */
const SMALL_BESIDE_SUPERFAT = '0.5';

export const COARSE_SCALE = 'scale-coarse-for-alkali';

/** Alkalis that the scale weighs too coarsely: its reading may be off by half a step, which no bound holds. */
export function coarseScaleNotes(lye: readonly LyeCharge[], scaleStep: Decimal | undefined): readonly Remark[] {
  if (scaleStep === undefined) return [];
  return lye.flatMap(({ alkali, grams }) => {
    if (grams.isZero()) return [];
    const percent = scaleStep.times(50).div(grams);
    if (percent.lte(SMALL_BESIDE_SUPERFAT)) return [];
    const text = `Half a step of the scale is ${percent.toPrecision(2)} % of the ${alkali} weighed: by so much its reading may be off, which is not small beside superfat and is in no bound here. Weigh it on a finer scale, or make a larger batch.`;
    return [frozen({ code: COARSE_SCALE, text })];
  });
}
