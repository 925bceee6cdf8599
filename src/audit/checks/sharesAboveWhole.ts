import { Decimal, frozen, ZERO } from '../../numbers/index.js';
import { unitsByKind, type FractionInput } from '../../quantities/index.js';
import type { RecipeClaims } from '../../recipe/index.js';
import { inWords } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { printedQuantity } from '../printed.js';

type Shares = NonNullable<RecipeClaims['shares']>;

/** What shares add up to, percent: as printed, and the least that they stand for. */
interface Sum {
  readonly printed: Decimal;
  readonly least: Decimal;
}

/** Printed shares of one whole that add up to more than the whole, down to their last digits. */
export function sharesAboveWholeFindings(
  { fats, additions, unweighed }: Pot,
  { shares = {} }: Pick<RecipeClaims, 'shares'>,
): readonly Finding[] {
  const sharesOf = (rows: readonly { readonly claimed: { readonly share?: FractionInput } }[]): Sum =>
    bothOf((at) => rows.reduce((sum, { claimed: { share } }) => sum.plus(shareAt(at, share)), ZERO));
  return [
    ...found('fats', 'the fats, of all fats,', sharesOf(fats)),
    ...found('additions', 'the additions, of the whole,', sharesOf([...additions, ...unweighed])),
    ...found(
      'claimed.shares',
      'the parts of the whole',
      bothOf((at) => ofParts(shares, at)),
    ),
  ];
}

type At = 'value' | 'low';
const bothOf = (sum: (at: At) => Decimal): Sum => ({ printed: sum('value'), least: sum('low') });

/** A printed share or the least that it stands for, percent; none counts as nothing. */
const shareAt = (at: At, share: FractionInput | undefined): Decimal =>
  share === undefined ? ZERO : Decimal.max(0, printedQuantity(share, unitsByKind().fraction)[at]);

/** Parts that hold no other: glycerol is among the polyols, and they, sugar and spirit are the clearing agents. */
function ofParts({ soap, water, clearingAgents, polyol, glycerol, sugar, spirit }: Shares, at: At): Decimal {
  const of = (share: FractionInput | undefined): Decimal => shareAt(at, share);
  const polyols = Decimal.max(of(polyol), of(glycerol));
  const agents = Decimal.max(of(clearingAgents), polyols.plus(of(sugar)).plus(of(spirit)));
  return of(soap).plus(of(water)).plus(agents);
}

function found(path: string, of: string, { printed, least }: Sum): readonly Finding[] {
  if (least.lte(100)) return [];
  return [
    {
      code: 'shares-above-whole',
      severity: 'caution',
      path,
      values: frozen({ printed: frozen({ percent: printed }), atLeast: frozen({ percent: least }) }),
      explanation: `The printed shares of ${of} add up to ${inWords(printed, 4)} %, more than there is: the rounding of their last digits explains no more than ${inWords(printed.minus(least), 4)} % of it.`,
      slips: frozen([]),
      basis: frozen([]),
    },
  ];
}
