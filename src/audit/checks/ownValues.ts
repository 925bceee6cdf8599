import { frozen, ONE, ZERO, type Decimal } from '../../numbers/index.js';
import { unitsByKind, type FractionInput } from '../../quantities/index.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { printedQuantity } from '../printed.js';
import type { Slip } from '../slips/slip.js';
import { meet, spanOver } from '../span.js';
import { chargeAsPrinted, shownAsLye } from './chargeDiagnosis.js';
import { takenByAcids } from './counted.js';

/**
 * Whether the lye follows from the saponification values and the superfat that the recipe prints itself, to their last
 * digits: a sum that does not come out, whatever the lots. Only where it prints a value for every fat.
 */
export function ownValuesFinding(pot: Pot, claim: FractionInput, slips: () => readonly Slip[]): Finding | undefined {
  const own = pot.fats.flatMap(({ ownDemand }) => ownDemand ?? []);
  if (!pot.areAllFats || !pot.isAllLye || own.length < pot.fats.length || pot.lye.length === 0) return undefined;
  const superfat = printedQuantity(claim, unitsByKind().fraction);
  const needed = (end: 'low' | 'likely' | 'high', percent: Decimal): Decimal =>
    own.reduce((sum, demand) => sum.plus(demand[end]), ZERO).times(ONE.minus(percent.div(100)));
  const span = spanOver(needed('likely', superfat.value), [needed('low', superfat.high), needed('high', superfat.low)]);
  // acid among the additions may have been given lye of its own
  if (meet({ low: span.low, high: span.high.plus(takenByAcids(pot)) }, pot.charged)) return undefined;
  const shown = shownAsLye(pot);
  const printed = shown(spanOver(chargeAsPrinted(pot).value, []));
  const computed = shown(span);
  return {
    code: 'own-values-contradicted',
    severity: 'caution',
    path: 'lye',
    claimed: printed.value,
    computed: computed.value,
    values: frozen({}),
    explanation: `By the saponification values and the superfat that the recipe prints, its lye should come to ${computed.text}; it prints ${printed.text}. Lots of these fats may differ by as much, but the recipe’s own sum does not come out.`,
    slips: slips(),
    basis: frozen(['iupac-2021']),
  };
}
