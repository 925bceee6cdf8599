import { Decimal, frozen, ZERO } from '../../numbers/index.js';
import { unitsByKind, type FractionInput } from '../../quantities/index.js';
import type { RecipeClaims } from '../../recipe/index.js';
import { inWords } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { printedQuantity } from '../printed.js';

type Shares = NonNullable<RecipeClaims['shares']>;

/** Printed shares of one whole that add up to more than the whole, down to their last digits. */
export function sharesAboveWholeFindings(
  { fats, additions, unweighed }: Pot,
  { shares = {} }: Pick<RecipeClaims, 'shares'>,
): readonly Finding[] {
  const sharesOf = (rows: readonly { readonly claimed: { readonly share?: FractionInput } }[]): Decimal =>
    rows.reduce((sum, { claimed: { share } }) => sum.plus(least(share)), ZERO);
  return [
    ...found('fats', 'the fats, of all fats,', sharesOf(fats)),
    ...found('additions', 'the additions, of the whole,', sharesOf([...additions, ...unweighed])),
    ...found('claimed.shares', 'the parts of the whole', ofParts(shares)),
  ];
}

/** The least that a printed share stands for, percent; none counts as nothing. */
const least = (share: FractionInput | undefined): Decimal =>
  share === undefined ? ZERO : Decimal.max(0, printedQuantity(share, unitsByKind().fraction).low);

/** Parts that hold no other: glycerol is among the polyols, and they, sugar and spirit are the clearing agents. */
function ofParts({ soap, water, clearingAgents, polyol, glycerol, sugar, spirit }: Shares): Decimal {
  const polyols = Decimal.max(least(polyol), least(glycerol));
  const agents = Decimal.max(least(clearingAgents), polyols.plus(least(sugar)).plus(least(spirit)));
  return least(soap).plus(least(water)).plus(agents);
}

function found(path: string, of: string, percent: Decimal): readonly Finding[] {
  if (percent.lte(100)) return [];
  return [
    {
      code: 'shares-above-whole',
      severity: 'caution',
      path,
      values: frozen({ atLeast: frozen({ percent }) }),
      explanation: `The printed shares of ${of} add up to ${inWords(percent, 4)} % at the least, more than there is.`,
      slips: frozen([]),
      basis: frozen([]),
    },
  ];
}
