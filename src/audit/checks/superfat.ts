import { frozen, type Decimal } from '../../numbers/index.js';
import { unitsByKind, type FractionInput } from '../../quantities/index.js';
import { asPrinted, inWords, rangeInWords } from '../figures.js';
import type { Finding } from '../finding.js';
import { balanceWith, type Pot } from '../pot.js';
import { printedQuantity } from '../printed.js';
import type { Slip } from '../slips/slip.js';
import { meet } from '../span.js';
import { balanceCounting } from './counted.js';

/** Whether a printed superfat, claimed or aimed at, is one that some lawful lot and some assay give. */
export function superfatFinding(
  pot: Pot,
  path: 'claimed.superfat' | 'target.superfat',
  claim: FractionInput,
  slips: () => readonly Slip[],
): Finding | undefined {
  const { balance } = pot;
  if (balance === undefined) return undefined;
  const printed = printedQuantity(claim, unitsByKind().fraction);
  const { low, likely, high } = balance.superfat;
  const ofLots = { low: low.percent, high: high.percent };
  if (meet(printed, ofLots) || meet(printed, toTheLastDigit(pot) ?? ofLots)) return undefined;
  if (meet(printed, { low: ofLots.low, high: withAcid(pot) ?? ofLots.high })) return undefined;
  const says = path === 'claimed.superfat' ? 'claims' : 'aims at';
  const sign = likely.percent.isNeg() ? ' (negative is alkali in excess)' : '';
  return {
    code: path === 'claimed.superfat' ? 'superfat-contradicted' : 'target-missed',
    severity: 'caution',
    path,
    claimed: asPrinted(printed).value,
    computed: balance.superfat,
    values: frozen({}),
    explanation: `The recipe ${says} a superfat of ${asPrinted(printed).text}. Its lye gives ${rangeInWords(ofLots)} % over the lots within the published ranges of these fats, likely ${inWords(likely.percent)} %${sign}. No lot explains the difference.`,
    slips: slips(),
    basis: balance.basis,
  };
}

/** The same range with the masses of the lye one unit of their last digit less or more, because they were rounded too. */
function toTheLastDigit(pot: Pot): { readonly low: Decimal; readonly high: Decimal } | undefined {
  const most = balanceWith(pot, ({ input, grams }) => ({ ...input, mass: { g: grams.high } }));
  const least = balanceWith(pot, ({ input, grams }) => ({ ...input, mass: { g: grams.low } }));
  if (most === undefined || least === undefined) return undefined;
  return { low: most.superfat.low.percent, high: least.superfat.high.percent };
}

/** The highest superfat if acid among the additions is pure and takes up lye, of which nothing is counted otherwise. */
function withAcid(pot: Pot): Decimal | undefined {
  return balanceCounting(pot, ({ input, grams }) => ({ ...input, mass: { g: grams.low } }))?.superfat.high.percent;
}
