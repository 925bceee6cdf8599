import { frozen, type Decimal } from '../../numbers/index.js';
import { unitsByKind, type FractionInput } from '../../quantities/index.js';
import { inUnit } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import type { PotAddition } from '../potAdditions.js';
import { printedQuantity, type Printed } from '../printed.js';
import type { Points } from '../slips/diagnosis.js';
import { COMMON, MOST_ROWS, USUAL, type Hypothesis } from '../slips/hypothesis.js';
import { liquidUnitFactors } from '../slips/unitSlips.js';
import { contradiction } from './contradiction.js';
import { percentOf } from './lyeValues.js';
import { partPoints, type PartValues } from './partValues.js';

/** An addition and what its share is of, g. */
interface Masses {
  readonly end: 'low' | 'likely' | 'high';
  readonly addition: Decimal;
  readonly all: Decimal;
  readonly fats: Decimal;
  readonly withoutLye: Decimal;
}

/** Whether each printed share of an addition is that of its mass in the pot. */
export function additionShareFindings(pot: Pot): readonly Finding[] {
  if (!pot.hasAllMasses) return [];
  const totals = totalsOf(pot);
  return pot.additions.flatMap((addition) => {
    const { share } = addition.claimed;
    return share === undefined ? [] : (shareFinding(pot, totals, addition, share) ?? []);
  });
}

function shareFinding(pot: Pot, totals: Totals, addition: PotAddition, claim: FractionInput): Finding | undefined {
  const printed = printedQuantity(claim, unitsByKind().fraction);
  return contradiction<Masses>({
    code: 'addition-share-contradicted',
    path: `${addition.path}.claimed.share`,
    what: `for ${addition.name} a share of the whole`,
    printed,
    points: massPoints(pot, totals, addition),
    readings: [(masses) => percentOf(masses.addition, masses.all)],
    hypotheses: () => (pot.additions.length > MOST_ROWS ? [] : [...slipsOfTotals(pot), ...slipsOfMeasure(addition)]),
    from: 'the rest of the recipe',
    shown: inUnit('fraction', printed.unit),
    basis: frozen([]),
  });
}

/** Everything that goes in, g, at the ends of volumes and last digits, and the same without lye and water. */
interface Totals {
  readonly all: Omit<Printed, 'text' | 'unit'>;
  readonly withoutLye: Omit<Printed, 'text' | 'unit'>;
}

function totalsOf({ additions, lye, water, fatGrams }: Pot): Totals {
  const at = (size: 'low' | 'value' | 'high') => {
    const withoutLye = additions.reduce((sum, { grams }) => sum.plus(grams[size]), fatGrams);
    return { withoutLye, all: lye.reduce((sum, { grams }) => sum.plus(grams[size]), withoutLye.plus(water.value)) };
  };
  const [low, value, high] = [at('low'), at('value'), at('high')];
  const ends = (of: keyof Totals) => ({ low: low[of], value: value[of], high: high[of] });
  return { all: ends('all'), withoutLye: ends('withoutLye') };
}

/** The addition at its greatest while all else is at its least, and the reverse. */
function massPoints({ fatGrams }: Pot, { all, withoutLye }: Totals, { grams }: PotAddition): Points<Masses> {
  type Size = 'low' | 'value' | 'high';
  const at = (end: Masses['end'], own: Size, others: Size): Masses => {
    const change = grams[own].minus(grams[others]);
    return {
      end,
      addition: grams[own],
      all: all[others].plus(change),
      fats: fatGrams,
      withoutLye: withoutLye[others].plus(change),
    };
  };
  return {
    corners: [at('low', 'low', 'high'), at('high', 'high', 'low')],
    likely: at('likely', 'value', 'value'),
  };
}

/** Shares of another total than everything in the pot. */
function slipsOfTotals(pot: Pot): readonly Hypothesis<Masses>[] {
  const of = (words: string, total: (masses: Masses) => Decimal | undefined): Hypothesis<Masses> => ({
    code: 'percent-of-another-total',
    words: { of: words },
    weight: USUAL,
    figure: (masses) => {
      const all = total(masses);
      return all === undefined ? undefined : percentOf(masses.addition, all);
    },
  });
  const parts = partsOnce(pot);
  return [
    of('parts to 100 of the fats', ({ fats }) => fats),
    of('parts to 100 of everything but the lye', ({ withoutLye }) => withoutLye),
    of('parts to 100 of everything else', ({ all, addition }) => all.minus(addition)),
    of('parts to 100 of the soap', ({ end }) => {
      const components = parts(end)?.composition.components;
      return components?.soapSodium.mass[end].g.plus(components.soapPotassium.mass[end].g);
    }),
    {
      code: 'weight-by-volume-as-by-weight',
      words: { of: 'the whole' },
      weight: USUAL,
      figure: ({ addition, all, end }) => {
        const gPerML = parts(end)?.density()?.[end];
        return gPerML === undefined ? undefined : percentOf(addition.times(gPerML), all);
      },
    },
  ];
}

/** What the pot is made of, at one end of its lots, worked out when a slip first asks. */
function partsOnce(pot: Pot): (end: Masses['end']) => PartValues | undefined {
  let points: { readonly likely: PartValues } | undefined | false = false;
  return (end) => {
    if (points === false) points = partPoints(pot);
    return points === undefined ? undefined : { ...points.likely, end };
  };
}

/** The dry substance counted for the whole, and a volume taken for a mass. */
function slipsOfMeasure(addition: PotAddition): readonly Hypothesis<Masses>[] {
  const { holds, name } = addition;
  if (holds === undefined) return [];
  const onlyPure: Hypothesis<Masses> = {
    code: 'dry-as-syrup',
    weight: COMMON,
    figure: (masses) =>
      holds.share.low.eq(1) ? undefined : percentOf(masses.addition.times(holds.share[masses.end]), masses.all),
  };
  return [
    onlyPure,
    ...liquidUnitFactors(addition).map(({ meant, factor }): Hypothesis<Masses> => ({
      code: 'unit-mistaken',
      path: addition.path,
      words: { printed: addition.grams.unit, meant, of: name },
      weight: COMMON,
      figure: ({ addition: own, all, end }) => {
        const other = own.times(factor[end]);
        return percentOf(other, all.minus(own).plus(other));
      },
    })),
  ];
}
