import { Decimal, frozen, noted, ONE, ZERO, type Remark, type Steps } from '../numbers/index.js';
import type { Mass } from '../quantities/index.js';
import { chiSquare95, ONE_SIDED, student95 } from './data/titration.js';
import type { Titration } from './readTitration.js';

/** What a titration finds, before it is expressed as anything. */
export interface Titrated {
  /** Equivalents in the sample, mmol to one gram. */
  readonly content: Decimal;
  /** Its standard uncertainty, mmol to one gram. */
  readonly uncertainty: Decimal;
  /** All that was weighed for it. */
  readonly sample: Mass;
  readonly notes: readonly Remark[];
}

const NONE_FOUND: Remark = /* @__PURE__ */ frozen({
  code: 'none-found',
  text: 'The readings do not pass the blank: nothing was found, within the uncertainty.',
});
const READINGS_SCATTER: Remark = /* @__PURE__ */ frozen({
  code: 'readings-scatter',
  text: 'The readings differ by more than their stated uncertainty explains: their own scatter is used, by Student’s t. Look for the cause.',
});

const sum = (terms: readonly Decimal[]): Decimal => terms.reduce((total, term) => total.plus(term), ZERO);
const mean = (terms: readonly Decimal[]): Decimal => sum(terms).div(terms.length);
const square = (value: Decimal): Decimal => value.times(value);

/** Sum of the squares of what the readings deviate from their mean. */
const deviations = (values: readonly Decimal[], middle: Decimal): Decimal =>
  sum(values.map((value) => square(value.minus(middle))));

/**
 * Equivalents per gram from a titration, with standard uncertainty.
 *
 * Each reading is `x = c·(V − B)/m`. What varies from reading to reading (burette, end point, balance, sampling) is divided
 * by their number; what they share (strength of the titrant, blank) is not. Where the readings scatter beyond the 95 % point
 * that this budget allows, their own scatter takes its place, widened so that a one-sided 95 % limit at 1.645
 * uncertainties is that of Student's t.
 *
 * @param endPoints - the squares of what the end points count for in the result, where there is more than one
 */
export function titrated(
  { readings, eqPerL, uncertainty }: Omit<Titration, 'given'>,
  steps?: Steps,
  endPoints: Decimal = ONE,
): Titrated {
  const number = readings.length;
  const share = uncertainty.titrant.percent.div(100);
  const sampling = uncertainty.sampling.percent.div(100);
  const perMillilitre = readings.map(({ grams }) => eqPerL.div(grams));
  const values = readings.map(({ grams, net }, at) =>
    noted(steps, `equivalents, reading ${String(at + 1)}`, 'c·(V − B)/m', 'mmol/g', eqPerL.times(net).div(grams)),
  );
  const middle = mean(values);
  const atEndPoint = square(uncertainty.burette.mL).plus(square(uncertainty.endPoint.mL)).times(endPoints);
  const budget = mean(
    readings.map(({ grams, net }) => {
      const [perVolume, value] = [eqPerL.div(grams), eqPerL.times(net).div(grams)];
      const relative = square(sampling).plus(square(uncertainty.balance.g.div(grams)));
      return square(perVolume).times(atEndPoint).plus(square(value).times(relative));
    }),
  );
  const spread = deviations(values, middle);
  const chi = chiSquare95[number - 2];
  const student = student95[number - 2];
  const scatters = chi !== undefined && spread.gt(budget.times(chi));
  const random =
    scatters && student !== undefined
      ? spread.div(number - 1).times(square(new Decimal(student).div(ONE_SIDED)))
      : budget;
  const shared = square(share.times(middle)).plus(square(mean(perMillilitre).times(uncertainty.blank.mL)));
  const found = noted(steps, 'mean of the readings, not below nothing', 'Σx/k', 'mmol/g', Decimal.max(middle, ZERO));
  return {
    content: found,
    uncertainty: noted(
      steps,
      'standard uncertainty',
      '√(u²(single)/k + u²(titrant) + u²(blank))',
      'mmol/g',
      random.div(number).plus(shared).sqrt(),
    ),
    sample: frozen({ g: sum(readings.map(({ grams }) => grams)) }),
    notes: frozen([...(middle.lte(0) ? [NONE_FOUND] : []), ...(scatters ? [READINGS_SCATTER] : [])]),
  };
}

/** A content and its uncertainty in another unit, so many of it to one mmol/g. */
export function expressed(
  { content, uncertainty }: Titrated,
  factor: Decimal,
  [figure, formula, unit]: readonly [figure: string, formula: string, unit: string],
  steps?: Steps,
): { readonly value: Decimal; readonly uncertainty: Decimal } {
  return {
    value: noted(steps, figure, formula, unit, content.times(factor)),
    uncertainty: noted(steps, `standard uncertainty of the ${figure}`, formula, unit, uncertainty.times(factor)),
  };
}
