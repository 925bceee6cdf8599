import type { Fat, SingleFat } from '../../fats/index.js';
import type { Decimal } from '../../numbers/index.js';
import { unitsByKind, type Estimate, type SaponificationValueInput } from '../../quantities/index.js';
import { inUnit } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot, PotFat } from '../pot.js';
import { printedQuantity, type Printed } from '../printed.js';
import { legible } from '../legible.js';
import { inEachRow, LAST, MOST_ROWS, RARE, USUAL, type Hypothesis } from '../slips/hypothesis.js';
import { slipsOfThePen } from '../slips/slipsOfThePen.js';
import { commonFats, idOf, isCommonFat, neighboursOf, valueSlips } from '../slips/valueSlips.js';
import { meet } from '../span.js';
import { contradiction } from './contradiction.js';

/** Which lot of a fat: the leanest, the likely, the richest. */
type Lot = keyof Estimate<unknown>;

const valueOf = ({ saponificationValue }: Fat, lot: Lot): Decimal => saponificationValue[lot].mgKohPerG;

/** Whether each printed saponification value is one that a lawful lot of its fat has. */
export function saponificationValueFindings({ fats }: Pot): readonly Finding[] {
  return fats.flatMap((row) => {
    const { claimed, fat, isKnown } = row;
    if (claimed.saponificationValue === undefined || fat === undefined || !isKnown) return [];
    return valueFinding(row, fat, claimed.saponificationValue, fats) ?? [];
  });
}

function valueFinding(
  row: PotFat,
  fat: Fat,
  claim: SaponificationValueInput,
  fats: readonly PotFat[],
): Finding | undefined {
  const printed = printedQuantity(claim, unitsByKind().saponificationValue);
  return contradiction<Lot>({
    code: 'saponification-value-contradicted',
    path: `${row.path}.claimed.saponificationValue`,
    what: `for ${row.name} a saponification value`,
    printed,
    points: { corners: ['low', 'high'], likely: 'likely' },
    readings: [(lot) => valueOf(fat, lot)],
    hypotheses: () =>
      fats.length > MOST_ROWS
        ? []
        : [
            ...valueSlips(fat).map(({ code, weight, taken }) => ({
              code,
              weight,
              figure: (lot: Lot) => taken(valueOf(fat, lot)),
            })),
            ...valuesOfOthers(row, fat, fats, printed),
            ...slipsOfPen(printed, fat),
          ],
    from: 'lots within the published range',
    shown: inUnit('saponificationValue', printed.unit),
    basis: fat.basis,
  });
}

/** Whether the printed value is the one that is used for a fat, and not only one that it may have. */
const isToTheDigit = ({ low, high }: Printed, of: Fat): boolean =>
  valueOf(of, 'likely').gte(low) && valueOf(of, 'likely').lte(high);

/** A fat that few have stands behind one that everybody has of the same value. */
const BEHIND = 0.1;

const endsOf = (of: Fat) => ({ low: valueOf(of, 'low'), high: valueOf(of, 'high') });

/** The value of another fat of the recipe, of a neighbour in a list, or of a fat that everybody has. */
function valuesOfOthers(row: PotFat, fat: Fat, fats: readonly PotFat[], printed: Printed): readonly Hypothesis<Lot>[] {
  const taken = (code: Hypothesis<Lot>['code'], other: Fat, weight: number): Hypothesis<Lot> => ({
    code,
    words: { fat: row.name, other: legible(other.name) },
    weight,
    figure: (lot) => valueOf(other, lot),
  });
  const others = fats.flatMap((other) => (other === row || other.fat === undefined ? [] : [other.fat]));
  const neighbours = neighboursOf(fat);
  const common = nearestCommon(printed, new Set([fat, ...others, ...neighbours].map(idOf)));
  const isOfCommon = [...common, ...neighbours.filter(isCommonFat)].some((other) => meet(printed, endsOf(other)));
  return [
    ...inEachRow(others, USUAL, (other, weight) => taken('rows-swapped', other, weight)),
    ...inEachRow(neighbours, USUAL, (other, weight) =>
      taken('neighbouring-fat-value', other, isCommonFat(other) ? USUAL : isOfCommon ? weight * BEHIND : weight),
    ),
    ...common.map((other) => taken('value-of-another-fat', other, isToTheDigit(printed, other) ? USUAL : RARE)),
  ];
}

/**
 * The fat that everybody has whose likely value is nearest: it is mistaken for another before a fat that few have, and several
 * of nearly one value would say nothing more.
 */
function nearestCommon({ value }: Printed, but: ReadonlySet<string | undefined>): readonly SingleFat[] {
  const off = (of: Fat): Decimal => valueOf(of, 'likely').minus(value).abs();
  return commonFats()
    .filter(({ id }) => !but.has(id))
    .sort((one, other) => off(one).cmp(off(other)))
    .slice(0, 1);
}

/** What was meant must be the value of a lawful lot; the figure is then the one that is printed. */
function slipsOfPen({ text, unit, value }: Printed, fat: Fat): readonly Hypothesis<Lot>[] {
  const { toCanonical } = unitsByKind().saponificationValue[unit as 'mgKohPerG'];
  return slipsOfThePen(text).flatMap(({ code, meant }) => {
    const canonical = toCanonical(meant, unit);
    const isLawful = canonical.gte(valueOf(fat, 'low')) && canonical.lte(valueOf(fat, 'high'));
    return isLawful ? [{ code, words: { meant: meant.toString(), unit }, weight: LAST, figure: () => value }] : [];
  });
}
