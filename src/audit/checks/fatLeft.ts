import { frozen } from '../../numbers/index.js';
import { inWords } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import type { Slip } from '../slips/slip.js';

/** More fat than this is left only where it is meant, percent: a convention. */
export const MUCH = 20;

/** Whether a lye that no superfat is printed for leaves much of the fat, whatever the lot. */
export function fatLeftFinding({ balance }: Pot, slips: () => readonly Slip[]): Finding | undefined {
  if (balance === undefined || balance.superfat.low.percent.lte(MUCH)) return undefined;
  const { low, likely } = balance.superfat;
  return {
    code: 'much-fat-left',
    severity: 'caution',
    path: 'lye',
    computed: balance.superfat,
    values: frozen({ most: frozen({ percent: String(MUCH) }) }),
    explanation: `The lye leaves ${inWords(likely.percent)} % of these fats without alkali, at least ${inWords(low.percent)} % with the leanest lots, and the recipe does not say that it should. If it is not meant so, the lye is printed too small, or the fats too large.`,
    slips: slips(),
    basis: balance.basis,
  };
}
