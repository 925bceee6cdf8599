import { hydroxideMolarMass, type LyeCharge } from '../lye/index.js';
import type { Decimal } from '../numbers/index.js';
import { frozen, leftOf, noted, ONE, ZERO, type Steps } from '../numbers/index.js';
import { mapEnds, type AlkaliContent, type Amount, type Estimate, type Fraction } from '../quantities/index.js';
import type { Demand } from './demand.js';

/** How alkali and fats stand to each other. Low and high are the extremes over all lots and assays. */
export interface Balance {
  /** Hydroxide charged. */
  readonly charged: Estimate<Amount>;
  /** Alkali demand left unmet, percent of the demand; negative is alkali in excess. */
  readonly superfat: Estimate<Fraction>;
  /** Fat left unsaponified, percent of the fats by mass; zero where alkali is in excess. */
  readonly superfatByMass: Estimate<Fraction>;
  /** Caustic left after complete reaction, percent of the batch by mass. */
  readonly freeCausticAlkali: Estimate<AlkaliContent>;
}

/** A figure at the lowest, likely and highest assay of a set of alkalis; worked out once where no assay is a range. */
export function atAssays<R>(lye: readonly LyeCharge[], figure: (end: keyof Estimate<unknown>) => R): Estimate<R> {
  const likely = figure('likely');
  const isSingle = lye.every(({ source: { hydroxide } }) => hydroxide.low.eq(hydroxide.high));
  return frozen(
    isSingle ? { low: likely, likely, high: likely } : { low: figure('low'), likely, high: figure('high') },
  );
}

/** Hydroxide in a set of alkalis as weighed, mol: lowest, likely and highest assay. */
export function hydroxideCharged(lye: readonly LyeCharge[]): Estimate<Decimal> {
  return atAssays(lye, (end) =>
    lye.reduce(
      (sum, { alkali, grams, source }) => sum.plus(grams.times(source.hydroxide[end]).div(hydroxideMolarMass(alkali))),
      ZERO,
    ),
  );
}

/** What a pot comes to at one corner of lots and assays. */
interface Corner {
  readonly superfat: Fraction;
  readonly superfatByMass: Fraction;
  readonly freeCausticAlkali: AlkaliContent;
}

/**
 * Share of the fats by mass that alkali A leaves unsaponified. Free acid a is taken first, then all esters g, in moles, to
 * one extent `x = (A − a)/g` (a model). Without free acid it is the share of the demand left unmet.
 */
function unsaponified(
  charged: Decimal,
  { hydroxide, acid, esterGrams }: Demand,
  unmet: Decimal,
  grams: Decimal,
): Decimal {
  if (unmet.lte(0)) return ZERO;
  if (acid.isZero()) return unmet;
  if (charged.gte(acid)) return esterGrams.times(hydroxide.minus(charged)).div(hydroxide.minus(acid).times(grams));
  return esterGrams.plus(grams.minus(esterGrams).times(acid.minus(charged)).div(acid)).div(grams);
}

function cornerAt(charged: Decimal, demand: Demand, fatGrams: Decimal, batchGrams: Decimal): Corner {
  const excess = leftOf(charged, demand.hydroxide);
  const unmet = excess.isZero() ? ZERO : ONE.minus(charged.div(demand.hydroxide));
  const caustic = excess.gt(0) ? excess.times(hydroxideMolarMass('naoh')).times(100).div(batchGrams) : ZERO;
  return {
    superfat: frozen({ percent: unmet.times(100) }),
    superfatByMass: frozen({ percent: unsaponified(charged, demand, unmet, fatGrams).times(100) }),
    freeCausticAlkali: frozen({ percentNaoh: caustic }),
  };
}

/**
 * Superfat and free caustic alkali of fats and alkali: `1 − A/n` and `max(0, A − n)·M(NaOH)/m(batch)`. Both are monotone in
 * demand n and alkali A, so that their extremes stand where the leanest lots meet the highest assay and the richest lots
 * the lowest.
 */
export function balanceOf(
  demand: Estimate<Demand>,
  charged: Estimate<Decimal>,
  fatGrams: Decimal,
  batchGrams: Decimal,
  steps?: Steps,
): Balance {
  const lean = cornerAt(charged.high, demand.low, fatGrams, batchGrams);
  const likely = cornerAt(charged.likely, demand.likely, fatGrams, batchGrams);
  const rich = cornerAt(charged.low, demand.high, fatGrams, batchGrams);
  noted(steps, 'hydroxide charged, likely assay', 'A = Σ m·w/M', 'mol', charged.likely);
  noted(steps, 'superfat, likely lots', '100·(1 − A/n)', 'percent', likely.superfat.percent);
  noted(steps, 'superfat, leanest lots and strongest assay', '100·(1 − A/n)', 'percent', lean.superfat.percent);
  noted(steps, 'superfat, richest lots and weakest assay', '100·(1 − A/n)', 'percent', rich.superfat.percent);
  noted(
    steps,
    'free caustic alkali, leanest lots and strongest assay',
    '100·max(0, A − n)·M(NaOH)/m(batch)',
    'percent NaOH',
    lean.freeCausticAlkali.percentNaoh,
  );
  return frozen({
    charged: mapEnds(charged, (mol) => frozen({ mol })),
    superfat: frozen({ low: lean.superfat, likely: likely.superfat, high: rich.superfat }),
    superfatByMass: frozen({ low: lean.superfatByMass, likely: likely.superfatByMass, high: rich.superfatByMass }),
    freeCausticAlkali: frozen({
      low: rich.freeCausticAlkali,
      likely: likely.freeCausticAlkali,
      high: lean.freeCausticAlkali,
    }),
  });
}
