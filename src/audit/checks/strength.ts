import { lyeDensity, lyeStrengthFromDensity } from '../../lye/index.js';
import { frozen, unlessRefused, type Decimal } from '../../numbers/index.js';
import { unitsByKind, valueIn, type FractionInput } from '../../quantities/index.js';
import { inUnit } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { printedQuantity } from '../printed.js';
import { COMMON, RARE, USUAL, type Hypothesis } from '../slips/hypothesis.js';
import { contradiction } from './contradiction.js';
import { lyePoints, percentOf, waterOfLye, wholeLye, type LyeValues } from './lyeValues.js';

const strengthOf = (lye: LyeValues): Decimal | undefined => percentOf(lye.pure, wholeLye(lye));

/** Whether the printed strength is that of the whole lye. */
export function strengthFinding(pot: Pot, claim: FractionInput): Finding | undefined {
  const printed = printedQuantity(claim, unitsByKind().fraction);
  return contradiction<LyeValues>({
    code: 'strength-contradicted',
    path: 'claimed.strength',
    what: 'a strength of the lye',
    printed,
    points: lyePoints(pot),
    readings: [strengthOf],
    hypotheses: () => [
      {
        code: 'parts-per-100-of-water-as-percent',
        weight: USUAL,
        figure: (lye) => percentOf(lye.pure, waterOfLye(lye)),
      },
      { code: 'water-and-alkali-inverted', weight: USUAL, figure: (lye) => percentOf(waterOfLye(lye), wholeLye(lye)) },
      { code: 'strength-as-water-per-fat', weight: COMMON, figure: (lye) => percentOf(lye.added, lye.fats) },
      { code: 'assay-ignored', weight: COMMON, figure: (lye) => percentOf(lye.weighed, wholeLye(lye)) },
      ...slipsOfDensity(pot),
    ],
    from: 'the rest of the recipe',
    shown: inUnit('fraction', printed.unit),
    basis: frozen(['iupac-2021']),
  });
}

/** Slips of the hydrometer, of a lye of one alkali at 20 °C. */
function slipsOfDensity({ lye }: Pot): readonly Hypothesis<LyeValues>[] {
  const [first] = lye;
  if (first === undefined || lye.some(({ alkali }) => alkali !== first.alkali)) return [];
  const { alkali } = first;
  const at = { celsius: 20 };
  /** What the density of the lye is put to; undefined where no table has it. */
  const ofDensity =
    (figure: (density: Decimal, percent: Decimal) => Decimal) =>
    (values: LyeValues): Decimal | undefined => {
      const percent = strengthOf(values);
      if (percent === undefined) return undefined;
      return unlessRefused(() =>
        figure(lyeDensity({ alkali, strength: { percent }, temperature: at }).density.gPerML, percent),
      );
    };
  const degrees = (gPerML: Decimal, modulus: 'baume145' | 'baume144_3'): Decimal => valueIn({ gPerML }, modulus);
  const readBy =
    (read: 'baume145' | 'baume144_3', meant: 'baume145' | 'baume144_3') =>
    (gPerML: Decimal): Decimal =>
      lyeStrengthFromDensity({ alkali, density: { [read]: degrees(gPerML, meant) } as never, temperature: at }).strength
        .percent;
  return [
    {
      code: 'weight-by-volume-as-by-weight',
      weight: COMMON,
      figure: ofDensity((gPerML, percent) => percent.times(gPerML)),
    },
    { code: 'baume-degrees-as-percent', weight: USUAL, figure: ofDensity((gPerML) => degrees(gPerML, 'baume145')) },
    { code: 'baume-degrees-as-percent', weight: USUAL, figure: ofDensity((gPerML) => degrees(gPerML, 'baume144_3')) },
    { code: 'baume-modulus-mistaken', weight: RARE, figure: ofDensity(readBy('baume145', 'baume144_3')) },
    { code: 'baume-modulus-mistaken', weight: RARE, figure: ofDensity(readBy('baume144_3', 'baume145')) },
  ];
}
