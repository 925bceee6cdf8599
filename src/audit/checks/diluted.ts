import { Decimal, frozen } from '../../numbers/index.js';
import { inWords } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';

/**
 * Everything in the pot to one part of fats, above which it is much diluted: a convention. Published clear soaps hold no less
 * than about a fifth of soap, and soap weighs nearly what its fats do.
 */
export const MOST_TO_FATS = 6;

/** Whether so much else is in the pot that a share of the whole tells little of the soap. */
export function dilutedFinding({ areAllFats, batchGrams, fatGrams, balance }: Pot): Finding | undefined {
  if (!areAllFats || fatGrams.isZero() || batchGrams.lte(fatGrams.times(MOST_TO_FATS))) return undefined;
  const times = batchGrams.div(fatGrams);
  return {
    code: 'pot-much-diluted',
    severity: 'caution',
    path: 'recipe',
    computed: frozen({ number: times }),
    values: frozen({
      pot: frozen({ g: batchGrams }),
      fats: frozen({ g: fatGrams }),
      most: frozen({ number: new Decimal(MOST_TO_FATS) }),
    }),
    explanation: `Everything in the pot weighs ${inWords(times)} times its fats. Free caustic is told as a share of all that water and filler${shareWithout(balance?.freeCausticAlkali.high.percentNaoh, times)}: once it has gone, what is left is stronger. Ask whether kg and g, or oz and lb, are mixed up.`,
    slips: frozen([]),
    basis: frozen([]),
  };
}

/** The same free caustic as a share of the fats alone. */
function shareWithout(worst: Decimal | undefined, times: Decimal): string {
  if (worst === undefined || worst.isZero()) return '';
  return ` (at worst ${inWords(worst)} % NaOH, which is ${inWords(worst.times(times))} % of the fats)`;
}
