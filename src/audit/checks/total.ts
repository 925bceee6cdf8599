import { frozen, ZERO, type Decimal } from '../../numbers/index.js';
import { unitsByKind } from '../../quantities/index.js';
import type { RecipeParts } from '../../recipe/readParts.js';
import { inUnit } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { printedMass, type Printed } from '../printed.js';
import { COMMON, inEachRow, LAST, USUAL, type Hypothesis } from '../slips/hypothesis.js';
import { liquidUnitFactors } from '../slips/unitSlips.js';
import { slipsOfThePen } from '../slips/slipsOfThePen.js';
import { contradiction } from './contradiction.js';

/** One mass of the sum, under the name of what it is. */
interface Part {
  readonly name: string;
  readonly grams: Printed;
}

/** At which end of their last digits the masses are. */
type End = 'low' | 'value' | 'high';

/** Whether the printed total is the sum of what goes into the pot. */
export function totalFinding(
  { fats, lye, water, additions, hasAllMasses }: Pot,
  { claimed }: RecipeParts,
): Finding | undefined {
  if (claimed.total === undefined || !hasAllMasses) return undefined;
  const parts: readonly Part[] = [
    ...fats,
    ...lye.map(({ grams }) => ({ name: 'the lye', grams })),
    { name: 'the water', grams: water },
    ...additions,
  ];
  const printed = printedMass(claimed.total);
  const sum = (of: readonly Part[], end: End): Decimal => of.reduce((grams, part) => grams.plus(part.grams[end]), ZERO);
  const leftOut = (name: string, left: readonly Part[], weight: number): Hypothesis<End> => ({
    code: 'part-left-out-of-total',
    words: { part: name },
    weight,
    figure: (end) => sum(parts, end).minus(sum(left, end)),
  });
  return contradiction<End>({
    code: 'total-contradicted',
    path: 'claimed.total',
    what: 'a total',
    printed,
    points: {
      corners: ['low', 'high'],
      likely: 'value',
      own: additions.some(({ isByVolume }) => isByVolume) ? undefined : 'value',
    },
    readings: [(end) => sum(parts, end)],
    hypotheses: () => [
      ...inEachRow(parts, USUAL, (part, weight) => leftOut(part.name, [part], weight)),
      ...(additions.length > 1 ? [leftOut('the additions', additions, USUAL)] : []),
      ...inEachRow(additions, COMMON, (addition, weight) =>
        liquidUnitFactors(addition).map(({ meant, factor }): Hypothesis<End> => ({
          code: 'unit-mistaken',
          path: addition.path,
          words: { printed: addition.grams.unit, meant, of: addition.name },
          weight,
          figure: (end) => {
            const own = addition.grams[end];
            return sum(parts, end)
              .minus(own)
              .plus(own.times(factor[end === 'value' ? 'likely' : end]));
          },
        })),
      ),
      ...slipsOfThePen(printed.text).map(({ code, meant, step }): Hypothesis<End> => {
        const { toCanonical } = unitsByKind().mass[printed.unit as 'g'];
        const within = toCanonical(step, printed.unit);
        return {
          code,
          words: { meant: meant.toString(), unit: printed.unit },
          weight: LAST,
          figure: (end) =>
            end === 'value' && toCanonical(meant, printed.unit).minus(sum(parts, end)).abs().lte(within)
              ? printed.value
              : undefined,
        };
      }),
    ],
    from: 'the rest of the recipe',
    shown: inUnit('mass', printed.unit),
    basis: frozen([]),
  });
}
