import { frozen, ZERO, type Decimal } from '../../numbers/index.js';
import { unitsByKind } from '../../quantities/index.js';
import { inUnit } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { printedQuantity } from '../printed.js';
import { USUAL } from '../slips/hypothesis.js';
import { contradiction } from './contradiction.js';
import { percentOf } from './lyeValues.js';

/** A fat and what its share is of, g. */
interface Masses {
  readonly fat: Decimal;
  readonly fats: Decimal;
  readonly batch: Decimal;
}

/** Whether each printed share of a fat is that of its mass among the fats. */
export function shareFindings({ fats, fatGrams, batchGrams, areAllFats }: Pot): readonly Finding[] {
  if (!areAllFats) return [];
  const sumAt = (end: 'low' | 'high'): Decimal => fats.reduce((sum, { grams }) => sum.plus(grams[end]), ZERO);
  const [least, most] = [sumAt('low'), sumAt('high')];
  return fats.flatMap(({ path, name, grams, claimed: { share } }) => {
    if (share === undefined) return [];
    const printed = printedQuantity(share, unitsByKind().fraction);
    const found = contradiction<Masses>({
      code: 'share-contradicted',
      path: `${path}.claimed.share`,
      what: `for ${name} a share of the fats`,
      printed,
      points: {
        corners: [
          { fat: grams.low, fats: most.minus(grams.high).plus(grams.low), batch: batchGrams },
          { fat: grams.high, fats: least.minus(grams.low).plus(grams.high), batch: batchGrams },
        ],
        likely: { fat: grams.value, fats: fatGrams, batch: batchGrams },
      },
      readings: [(masses) => percentOf(masses.fat, masses.fats)],
      hypotheses: () => [
        {
          code: 'percent-of-another-total',
          words: { of: 'everything in the pot' },
          weight: USUAL,
          figure: (masses) => percentOf(masses.fat, masses.batch),
        },
      ],
      from: 'the rest of the recipe',
      shown: inUnit('fraction', printed.unit),
      basis: frozen([]),
    });
    return found ?? [];
  });
}
