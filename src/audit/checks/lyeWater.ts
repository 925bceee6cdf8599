import { frozen, type Numeric } from '../../numbers/index.js';
import { unitsByKind, type FractionInput } from '../../quantities/index.js';
import { asNumber, inUnit } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { printedQuantity, printedRatio } from '../printed.js';
import { USUAL } from '../slips/hypothesis.js';
import { contradiction } from './contradiction.js';
import { lyePoints, percentOf, ratio, waterOfLye, wholeLye, type LyeValues } from './lyeValues.js';

/** Whether the printed ratio is one of water to alkali: of the water added or all of it, to alkali as weighed or pure. */
export function waterPerAlkaliFinding(pot: Pot, claim: Numeric): Finding | undefined {
  return contradiction<LyeValues>({
    code: 'water-per-alkali-contradicted',
    path: 'claimed.waterPerAlkali',
    what: 'a ratio of water to alkali',
    printed: printedRatio(claim),
    points: lyePoints(pot),
    readings: [
      (lye) => ratio(waterOfLye(lye), lye.pure),
      (lye) => ratio(lye.added, lye.weighed),
      (lye) => ratio(lye.added, lye.pure),
    ],
    hypotheses: () => [
      { code: 'water-and-alkali-inverted', weight: USUAL, figure: (lye) => ratio(lye.pure, waterOfLye(lye)) },
      { code: 'water-and-alkali-inverted', weight: USUAL, figure: (lye) => ratio(lye.weighed, lye.added) },
      {
        code: 'percent-of-another-total',
        words: { of: 'the whole lye instead of the water' },
        weight: USUAL,
        figure: (lye) => ratio(wholeLye(lye), lye.pure),
      },
    ],
    from: 'the rest of the recipe',
    shown: asNumber,
    basis: frozen(['iupac-2021']),
  });
}

/** Whether the printed share is that of the water, added or all, of the fats. */
export function waterPerFatFinding(pot: Pot, claim: FractionInput): Finding | undefined {
  if (!pot.areAllFats) return undefined;
  const printed = printedQuantity(claim, unitsByKind().fraction);
  return contradiction<LyeValues>({
    code: 'water-per-fat-contradicted',
    path: 'claimed.waterPerFat',
    what: 'water as a share of the fats',
    printed,
    points: lyePoints(pot),
    readings: [(lye) => percentOf(waterOfLye(lye), lye.fats), (lye) => percentOf(lye.added, lye.fats)],
    hypotheses: () => [
      {
        code: 'strength-as-water-per-fat',
        weight: USUAL,
        figure: (lye) => percentOf(lye.pure, wholeLye(lye)),
      },
      {
        code: 'percent-of-another-total',
        words: { of: 'the whole lye, not its water' },
        weight: USUAL,
        figure: (lye) => percentOf(wholeLye(lye), lye.fats),
      },
      {
        code: 'percent-of-another-total',
        words: { of: 'everything in the pot' },
        weight: USUAL,
        figure: (lye) => percentOf(waterOfLye(lye), pot.batchGrams),
      },
    ],
    from: 'the rest of the recipe',
    shown: inUnit('fraction', printed.unit),
    basis: frozen(['iupac-2021']),
  });
}
