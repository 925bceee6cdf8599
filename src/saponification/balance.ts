import { hydroxideMolarMass, type LyeCharge } from '../lye/index.js';
import { Decimal, frozen, noted, ONE, ZERO, type Steps } from '../numbers/index.js';
import type { AlkaliContent, Amount, Estimate, Fraction } from '../quantities/index.js';
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

/** Hydroxide in a set of alkalis as weighed, mol: lowest, likely and highest assay. */
export function hydroxideCharged(lye: readonly LyeCharge[]): Estimate<Decimal> {
  const at = (end: keyof Estimate<unknown>): Decimal =>
    lye.reduce(
      (sum, { alkali, grams, source }) => sum.plus(grams.times(source.hydroxide[end]).div(hydroxideMolarMass(alkali))),
      ZERO,
    );
  return { low: at('low'), likely: at('likely'), high: at('high') };
}

/** `1 − A/n`: alkali A charged to a demand n. */
const unmet = (charged: Decimal, { hydroxide }: Demand): Decimal => ONE.minus(charged.div(hydroxide));

/**
 * Grams of fat that alkali A leaves unsaponified. Free acid is taken first, then all esters to one extent x:
 * `x = (A − a)/g`, a: free acid, g: esters, in moles (a model).
 */
function unsaponifiedGrams(charged: Decimal, { hydroxide, acid, esterGrams }: Demand, grams: Decimal): Decimal {
  if (charged.gte(hydroxide)) return ZERO;
  if (charged.gte(acid)) return esterGrams.times(hydroxide.minus(charged)).div(hydroxide.minus(acid));
  return esterGrams.plus(grams.minus(esterGrams).times(acid.minus(charged)).div(acid));
}

/** Caustic left after complete reaction, as NaOH in percent of the batch: `100·max(0, A − n)·M(NaOH)/m(batch)`. */
const freeCaustic = (charged: Decimal, { hydroxide }: Demand, batchGrams: Decimal): Decimal =>
  Decimal.max(ZERO, charged.minus(hydroxide)).times(hydroxideMolarMass('naoh')).times(100).div(batchGrams);

/**
 * Superfat and free caustic alkali of fats and alkali. Both are monotone in demand and alkali, so that their extremes
 * stand where the leanest lots meet the highest assay and the richest lots the lowest.
 */
export function balanceOf(
  demand: Estimate<Demand>,
  charged: Estimate<Decimal>,
  fatGrams: Decimal,
  batchGrams: Decimal,
  steps?: Steps,
): Balance {
  const percent = (share: Decimal): Fraction => frozen({ percent: share.times(100) });
  const byMass = (alkali: Decimal, at: Demand): Fraction =>
    percent(unsaponifiedGrams(alkali, at, fatGrams).div(fatGrams));
  const content = (alkali: Decimal, at: Demand): AlkaliContent =>
    frozen({ percentNaoh: freeCaustic(alkali, at, batchGrams) });
  const amount = (mol: Decimal): Amount => frozen({ mol });
  const balance = frozen({
    charged: frozen({ low: amount(charged.low), likely: amount(charged.likely), high: amount(charged.high) }),
    superfat: frozen({
      low: percent(unmet(charged.high, demand.low)),
      likely: percent(unmet(charged.likely, demand.likely)),
      high: percent(unmet(charged.low, demand.high)),
    }),
    superfatByMass: frozen({
      low: byMass(charged.high, demand.low),
      likely: byMass(charged.likely, demand.likely),
      high: byMass(charged.low, demand.high),
    }),
    freeCausticAlkali: frozen({
      low: content(charged.low, demand.high),
      likely: content(charged.likely, demand.likely),
      high: content(charged.high, demand.low),
    }),
  });
  noted(steps, 'hydroxide charged, likely assay', 'A = Σ m·w/M', 'mol', charged.likely);
  noted(steps, 'superfat, likely lots', '100·(1 − A/n)', 'percent', balance.superfat.likely.percent);
  noted(steps, 'superfat, leanest lots and strongest assay', '100·(1 − A/n)', 'percent', balance.superfat.low.percent);
  noted(steps, 'superfat, richest lots and weakest assay', '100·(1 − A/n)', 'percent', balance.superfat.high.percent);
  noted(
    steps,
    'free caustic alkali, leanest lots and strongest assay',
    '100·max(0, A − n)·M(NaOH)/m(batch)',
    'percent NaOH',
    balance.freeCausticAlkali.high.percentNaoh,
  );
  return balance;
}
