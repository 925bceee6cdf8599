import { molarMass } from '../../chemistry/index.js';
import type { SingleFat } from '../../fats/index.js';
import { hydroxidePerOxide } from '../../lye/index.js';
import { ONE, ZERO, type Decimal } from '../../numbers/index.js';
import { demandOf, molIn, type Pot, type PotFat, type PotLye } from '../pot.js';
import { unitsByKind } from '../../quantities/index.js';
import { meet } from '../span.js';
import { calledFor, type ChargeValues } from './chargeValues.js';
import { COMMON, inEachRow, LAST, MOST_ROWS, RARE, USUAL, type Hypothesis } from './hypothesis.js';
import type { SlipCode } from './slip.js';
import { slipsOfThePen } from './slipsOfThePen.js';
import { fatUnitFactors, lyeUnitFactors } from './unitSlips.js';
import { commonFats, neighboursOf, valueSlips } from './valueSlips.js';

type Charge = Hypothesis<ChargeValues>;

/** Every way in which the mass of a lye may have come about, as moles of hydroxide in it. */
export function chargeSlips(pot: Pot): readonly Charge[] {
  const slips = [
    ...slipsOfValues(pot.fats),
    ...slipsOfRows(pot.fats),
    ...slipsOfCommonValues(pot.fats),
    ...superfatSlips(),
    ...(pot.lye.length > MOST_ROWS ? [] : [...slipsOfAssay(pot), ...slipsOfUnits(pot)]),
    ...slipsOfPen(pot),
    ...slipsOfPenInFats(pot.fats),
  ];
  return [...claimedValuesUsed(pot.fats), ...slips.map(thatMatters)];
}

/** The values that the recipe prints, where one of them is none of its fat: without that they are not off. */
function claimedValuesUsed(fats: readonly PotFat[]): readonly Charge[] {
  const off = fats.filter(isValueOff).map(({ name }) => name);
  if (off.length === 0) return [];
  return [
    {
      code: 'claimed-values-used',
      words: { fat: off.slice(0, 3).join(', ') },
      weight: COMMON * COMMON,
      figure: (values) => (values.areOwn ? calledFor(values) : undefined),
    },
  ];
}

/** Whether no lot of a fat has the value that is printed for it, to its last digit. */
const isValueOff = ({ demand, ownDemand }: PotFat): boolean =>
  demand !== undefined && ownDemand !== undefined && !meet(demand, ownDemand);

/** A slip that changes nothing, as two fats of one mass changing places, explains nothing. */
function thatMatters(slip: Charge): Charge {
  return {
    ...slip,
    figure: (values) => {
      const right = calledFor(values);
      const figure = slip.figure(values);
      return figure?.minus(right).abs().lte(right.abs().times('1e-20')) === true ? undefined : figure;
    },
  };
}

/** Hydroxide for a fat of which another value was taken, mol. */
function molOf(mol: Decimal, grams: Decimal, taken: (value: Decimal) => Decimal): Decimal {
  if (grams.isZero()) return ZERO;
  const perGram = molarMass('KOH').times(1000);
  return taken(mol.times(perGram).div(grams)).times(grams).div(perGram);
}

/** The demand with that of one fat exchanged for another. */
function withRow({ fats, all }: ChargeValues, at: number, mol: Decimal): Decimal {
  return all.minus(fats[at] ?? ZERO).plus(mol);
}

/** Another value for all fats, where a whole table was mistaken, or for one. */
function slipsOfValues(fats: readonly PotFat[]): readonly Charge[] {
  if (fats.length > MOST_ROWS) return [];
  const slipsOf = ({ fat }: PotFat) => (fat === undefined ? [] : valueSlips(fat));
  const codes = new Set(fats.flatMap((row) => slipsOf(row).map(({ code }) => code)));
  const perFat = fats.map((row) => new Map(slipsOf(row).map((slip) => [slip.code, slip])));
  const inAll = [...codes].map((code): Charge => {
    const weight = Math.max(...perFat.map((slips) => slips.get(code)?.weight ?? 0));
    return {
      code,
      weight,
      figure: ({ fats: mols, kept }) =>
        mols
          .reduce((sum, mol, at) => {
            const taken = perFat[at]?.get(code)?.taken;
            return sum.plus(taken === undefined ? mol : molOf(mol, fats[at]?.grams.value ?? ZERO, taken));
          }, ZERO)
          .times(kept),
    };
  });
  if (fats.length < 2) return inAll;
  const inOne = inEachRow(fats, 1, (row, share, at) =>
    slipsOf(row).map(({ code, weight, taken }): Charge => ({
      code,
      path: row.path,
      words: { fat: row.name },
      weight: weight * share,
      figure: (values) =>
        withRow(values, at, molOf(values.fats[at] ?? ZERO, row.grams.value, taken)).times(values.kept),
    })),
  );
  return [...inAll, ...inOne];
}

/** A fat forgotten, two masses exchanged, or the value of the fat beside it in the list. */
function slipsOfRows(fats: readonly PotFat[]): readonly Charge[] {
  const leftOut = inEachRow(fats, USUAL, ({ path, name }, weight, at): Charge | undefined =>
    fats.length < 2
      ? undefined
      : {
          code: 'fat-left-out',
          path,
          words: { fat: name },
          weight,
          figure: (values) => withRow(values, at, ZERO).times(values.kept),
        },
  );
  const swapped = inEachRow(fats, RARE, (row, weight, at): readonly Charge[] =>
    fats.slice(at + 1).map((other, offset): Charge => ({
      code: 'rows-swapped',
      path: row.path,
      words: { fat: row.name, other: other.name },
      weight: weight / fats.length,
      figure: ({ fats: mols, all, kept }) => {
        const [one, two] = [mols[at], mols[at + 1 + offset]];
        const [m, n] = [row.grams.value, other.grams.value];
        if (one === undefined || two === undefined || m.isZero() || n.isZero()) return undefined;
        return all.minus(one).minus(two).plus(one.times(n).div(m)).plus(two.times(m).div(n)).times(kept);
      },
    })),
  );
  const neighbours = inEachRow(fats, USUAL, (row, weight, at): readonly Charge[] =>
    row.fat === undefined
      ? []
      : neighboursOf(row.fat).map((neighbour) =>
          valueOfAnother('neighbouring-fat-value', row, neighbour, weight / 2, at),
        ),
  );
  return [...leftOut, ...swapped, ...neighbours];
}

/** The value of a fat that everybody has, where the one that is printed is none of its own fat. */
function slipsOfCommonValues(fats: readonly PotFat[]): readonly Charge[] {
  return inEachRow(fats, RARE, (row, weight, at) =>
    isValueOff(row)
      ? commonFats().map((other) => valueOfAnother('value-of-another-fat', row, other, weight, at))
      : undefined,
  );
}

/** The value of another fat for that of a row; the recipe claims none of it. */
function valueOfAnother(code: SlipCode, row: PotFat, other: SingleFat, weight: number, at: number): Charge {
  const demand = demandOf(other, row.grams.value);
  return {
    code,
    path: row.path,
    words: { fat: row.name, other: other.name },
    weight,
    figure: (values) => (values.areOwn ? undefined : withRow(values, at, demand[values.end]).times(values.kept)),
  };
}

const superfatSlip = (code: SlipCode, weight: number, figure: (values: ChargeValues) => Decimal): Charge => ({
  code,
  weight,
  // without a superfat there is nothing to mistake
  figure: (values) => (values.superfat.isZero() ? undefined : figure(values)),
});

const superfatSlips = (): readonly Charge[] => [
  superfatSlip('superfat-left-out', COMMON, ({ all }) => all),
  superfatSlip('superfat-added', USUAL, ({ all, superfat }) => all.times(ONE.plus(superfat))),
  superfatSlip('superfat-as-divisor', RARE, ({ all, superfat }) => all.div(ONE.plus(superfat))),
  superfatSlip('superfat-twice', USUAL, ({ all, kept }) => all.times(kept).times(kept)),
  superfatSlip('superfat-fraction-as-percent', RARE, ({ all, superfat }) => all.times(ONE.minus(superfat.times(100)))),
  superfatSlip('superfat-percent-as-fraction', RARE, ({ all, superfat }) => all.times(ONE.minus(superfat.div(100)))),
];

type Factor = (row: PotLye, end: ChargeValues['end']) => Decimal | undefined;

/**
 * A lye whose every row holds f times the hydroxide it should: of what the rows hold now the shares y are known, so that
 * all of it is `1/Σ(y/f)` of what is called for.
 */
function scaled({ lye, charged }: Pot, factor: Factor): (values: ChargeValues) => Decimal | undefined {
  return (values) => {
    let sum = ZERO;
    for (const row of lye) {
      const of = factor(row, values.end);
      if (of === undefined || of.lte(0) || charged.likely.isZero()) return undefined;
      sum = sum.plus(molIn(row, row.grams.value, 'likely').div(charged.likely).div(of));
    }
    return sum.isZero() ? undefined : calledFor(values).div(sum);
  };
}

/** Strengths that lyes are kept at, percent, where a recipe does not print one; common practice, no source. */
const USUAL_LYES = ['50', '33'] as const;

/** The strength of an alkali as a fraction, where it is worth mistaking. */
const shareOf = (
  { charge: { source } }: PotLye,
  end: ChargeValues['end'],
  state: 'solid' | 'solution',
): Decimal | undefined => (source.state !== state || source.hydroxide[end].eq(1) ? undefined : source.hydroxide[end]);

/** The assay of a solid, or the strength of a solution, taken for another. */
function slipsOfAssay(pot: Pot): readonly Charge[] {
  const slip = (code: SlipCode, weight: number, factor: Factor): Charge => ({
    code,
    weight,
    figure: scaled(pot, factor),
  });
  const { claimedStrength: strength } = pot;
  const oxide = (row: PotLye): Decimal => hydroxidePerOxide(row.alkali);
  return [
    slip('assay-ignored', COMMON, (row, end) => shareOf(row, end, 'solid')),
    slip('assay-twice', USUAL, (row, end) => shareOf(row, end, 'solid')?.pow(-1)),
    slip('assay-upside-down', USUAL, (row, end) => shareOf(row, end, 'solid')?.pow(2)),
    slip('solid-as-solution', COMMON, (row, end) => shareOf(row, end, 'solution')),
    slip('claimed-strength-used', USUAL, ({ charge: { source } }, end) =>
      source.state === 'solution' && strength !== undefined ? source.hydroxide[end].div(strength) : undefined,
    ),
    ...(strength === undefined ? USUAL_LYES : []).map((percent): Charge => ({
      ...slip('solution-as-solid', USUAL, ({ charge: { source } }, end) =>
        source.state === 'solid' ? source.hydroxide[end].times(100).div(percent) : undefined,
      ),
      words: { strength: percent },
    })),
    slip('solution-as-solid', COMMON, ({ charge: { source } }, end) =>
      source.state === 'solid' && strength !== undefined ? source.hydroxide[end].div(strength) : undefined,
    ),
    slip('oxide-percent-as-hydroxide', RARE, (row) => ONE.div(oxide(row))),
    slip('hydroxide-percent-as-oxide', RARE, oxide),
    slip('carbonate-counted', USUAL, ({ charge: { source } }, end) =>
      source.carbonate === undefined ? undefined : source.hydroxide[end].div(source.totalAlkali[end]),
    ),
  ];
}

/** A mass that was meant in another unit: of the lye, of one fat, or of all. */
function slipsOfUnits(pot: Pot): readonly Charge[] {
  // all of the lye in one unit
  const ofLye = pot.lye.slice(0, 1).flatMap((first) =>
    lyeUnitFactors(first).map(({ meant, factor }): Charge => ({
      code: 'unit-mistaken',
      path: first.path,
      words: { printed: first.grams.unit, meant, of: 'the lye' },
      weight: USUAL,
      figure: scaled(pot, (row, end) => (row.grams.unit === first.grams.unit ? ONE.div(factor[end]) : undefined)),
    })),
  );
  const ofFats = inEachRow(pot.fats, USUAL, ({ path, name, grams }, weight, at) =>
    fatUnitFactors(grams.unit).map(({ meant, factor }): Charge => ({
      code: 'unit-mistaken',
      path,
      words: { printed: grams.unit, meant, of: name },
      weight,
      figure: (values) => withRow(values, at, (values.fats[at] ?? ZERO).times(factor[values.end])).times(values.kept),
    })),
  );
  return [...ofLye, ...ofFats];
}

/** The mass of a single lye with its digits exchanged or its decimal point moved. */
function slipsOfPen({ lye }: Pot): readonly Charge[] {
  const [row] = lye;
  if (row === undefined || lye.length > 1) return [];
  const perUnit = molIn(row, unitsByKind().mass[row.grams.unit as 'g'].toCanonical(ONE, row.path), 'likely');
  return slipsOfThePen(row.grams.text).flatMap(({ code, meant, step }) => {
    const slip = { code, path: row.path, words: { meant: meant.toString(), unit: row.grams.unit, of: 'the lye' } };
    const fitsOwn = (values: ChargeValues): boolean =>
      calledFor(values).minus(meant.times(perUnit)).abs().lte(step.times(perUnit));
    const charged = molIn(row, row.grams.value, 'likely');
    return penSlips(slip, {
      own: (values) => (fitsOwn(values) ? charged : undefined),
      lots: (values) => (meant.isZero() ? undefined : calledFor(values).times(row.grams.text).div(meant)),
    });
  });
}

/** The mass of one fat so. */
function slipsOfPenInFats(fats: readonly PotFat[]): readonly Charge[] {
  return inEachRow(fats, 1, ({ path, name, grams }, share, at) =>
    slipsOfThePen(grams.text).flatMap(({ code, meant }): readonly Charge[] => {
      if (grams.value.isZero()) return [];
      const times = meant.div(grams.text);
      const figure = (values: ChargeValues): Decimal =>
        withRow(values, at, (values.fats[at] ?? ZERO).times(times)).times(values.kept);
      return penSlips(
        { code, path, words: { meant: meant.toString(), unit: grams.unit, of: name } },
        { own: figure, lots: figure },
        share,
      );
    }),
  );
}

/**
 * Exchanged digits are looked for only where the recipe's own values are exact, because over the lots they give almost any
 * figure; tenfold is so much that the lots tell it as well.
 */
function penSlips(
  slip: Omit<Charge, 'weight' | 'figure'>,
  { own, lots }: Readonly<Record<'own' | 'lots', Charge['figure']>>,
  share = 1,
): readonly Charge[] {
  const isTenfold = slip.code === 'decimal-point-moved';
  return [
    {
      ...slip,
      weight: (isTenfold ? RARE : LAST) * share,
      figure: (values) => (values.areOwn ? own(values) : isTenfold ? lots(values) : undefined),
    },
  ];
}
