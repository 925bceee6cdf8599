import { alkaliCautions } from '../lye/index.js';
import { frozen, noted, ONE, readShape, type Decimal, type Remark, type Steps } from '../numbers/index.js';
import {
  readPercent,
  type AlkaliContent,
  type AlkaliContentInput,
  type Fraction,
  type FractionInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { ABOVE_THE_LIMIT, NOT_SHOWN_BELOW, TEST_BEFORE_SKIN } from './cautions.js';
import type { FreeAlkaliLimitId } from './data/limits.js';
import {
  limitsOf,
  readMeasuredFreeCaustic,
  type MeasuredFreeCaustic,
  type MeasuredFreeCausticGiven,
} from './measured.js';
import { AMINE_READS_AS_ALKALI } from './notes.js';
import { readFlag } from './readFlag.js';
import { readLimit } from './readLimit.js';

/** Input of {@link judgeFreeAlkali}. */
export interface JudgeFreeAlkaliInput {
  /** A result of `freeCausticAlkaliFromTitration`, or content and standard uncertainty. */
  readonly measured: MeasuredFreeCaustic;
  /** One of `freeAlkaliLimits` by its id, or a content of your own. */
  readonly limit: FreeAlkaliLimitId | AlkaliContentInput;
  /** Share of its mass that the soap loses from the test to the sale, as by drying; none unless stated. */
  readonly massLoss?: FractionInput;
  /** Whether the soap holds triethanolamine, which acid takes as well; not unless stated. */
  readonly triethanolamine?: boolean;
}

/** Whether a soap keeps a limit, as far as a test can tell. */
export type FreeAlkaliVerdict = 'below' | 'above' | 'cannot-tell';

/** Result of {@link judgeFreeAlkali}. */
export interface JudgeFreeAlkaliResult {
  readonly by: 'judgeFreeAlkali';
  /** The inputs as read. */
  readonly given: {
    readonly measured: MeasuredFreeCausticGiven;
    readonly limit: FreeAlkaliLimitId | AlkaliContent;
    readonly massLoss: Fraction;
    readonly triethanolamine: boolean;
  };
  readonly verdict: FreeAlkaliVerdict;
  /** Free caustic of the soap as sold: what it is at least and at most with 95 % confidence, each side by itself. */
  readonly freeCausticAlkali: {
    readonly low: AlkaliContent;
    readonly likely: AlkaliContent;
    readonly high: AlkaliContent;
  };
  /** The limit, per soap as sold. */
  readonly limit: AlkaliContent;
  /** Where the limit is from, how sure it is, and why a test could not tell. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const LIMIT_WITHIN_UNCERTAINTY: Remark = /* @__PURE__ */ frozen({
  code: 'limit-within-uncertainty',
  text: 'The limit lies within the uncertainty of the test: a larger sample, more readings or a better titrant can tell.',
});

/**
 * Whether a soap keeps a limit of free caustic: below, above, or cannot tell. Never a certificate.
 *
 * Formula: as sold `w = measured/(1 − loss)`; below where `w + 1.645·u` is at most the limit, above where `w − 1.645·u` exceeds it
 * (95 % on the side that counts), else it cannot be told.
 *
 * Source: limits by `freeAlkaliLimits`, most of them recalled: read the standard that binds.
 *
 * @param input - what was measured, and the limit
 * @returns the verdict, with the content as sold and its limits of 95 %
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const judged = judgeFreeAlkali({
 *   measured: { freeCausticAlkali: { percentNaoh: '0.043' }, standardUncertainty: { percentNaoh: '0.006' } },
 *   limit: 'toilet-soap-is-2888',
 * });
 * judged.verdict; // => 'cannot-tell'
 * judged.freeCausticAlkali.high.percentNaoh.toFixed(3); // => '0.053'
 * ```
 */
export function judgeFreeAlkali(input: JudgeFreeAlkaliInput): JudgeFreeAlkaliResult {
  return judgeFreeAlkaliSteps(input);
}

/** The kernel, with room for the working. */
export function judgeFreeAlkaliSteps(input: JudgeFreeAlkaliInput, steps?: Steps): JudgeFreeAlkaliResult {
  const fields = readShape('input', input, ['measured', 'limit', 'massLoss', 'triethanolamine']);
  const measured = readMeasuredFreeCaustic('measured', fields['measured']);
  const { row, percentNaoh: atMost } = readLimit('limit', fields['limit']);
  const massLoss = readPercent('massLoss', fields['massLoss'] ?? { percent: 0 }, { min: 0, max: 90 });
  const triethanolamine = readFlag('triethanolamine', fields['triethanolamine']);

  const left = ONE.minus(massLoss.div(100));
  const asSold = (content: AlkaliContent, figure: string): Decimal =>
    noted(steps, figure, 'w/(1 − loss)', 'percent NaOH', content.percentNaoh.div(left));
  const { low, likely, high } = limitsOf({
    value: asSold(measured.freeCausticAlkali, 'free caustic as sold'),
    uncertainty: asSold(measured.standardUncertainty, 'its standard uncertainty'),
  });
  noted(steps, 'at most, with 95 %', 'w + 1.645·u', 'percent NaOH', high);
  noted(steps, 'at least, with 95 %', 'w − 1.645·u', 'percent NaOH', low);
  const told = low.gt(atMost) ? 'above' : high.lte(atMost) ? 'below' : 'cannot-tell';
  const verdict = triethanolamine ? 'cannot-tell' : told;
  const content = (percentNaoh: Decimal): AlkaliContent => frozen({ percentNaoh });
  return frozen({
    by: 'judgeFreeAlkali',
    given: frozen({
      measured,
      limit: row?.id ?? content(atMost),
      massLoss: frozen({ percent: massLoss }),
      triethanolamine,
    }),
    verdict,
    freeCausticAlkali: frozen({ low: content(low), likely: content(likely), high: content(high) }),
    limit: content(atMost),
    notes: frozen([
      ...(triethanolamine ? [AMINE_READS_AS_ALKALI] : []),
      ...(verdict === 'cannot-tell' && !triethanolamine ? [LIMIT_WITHIN_UNCERTAINTY] : []),
      ...(row === undefined
        ? []
        : [frozen({ code: `limit-${row.obtained}`, text: `Limit for ${row.soap}: ${row.note}` })]),
    ]),
    cautions: alkaliCautions(
      ...(verdict === 'above' ? [ABOVE_THE_LIMIT] : []),
      ...(verdict === 'cannot-tell' ? [NOT_SHOWN_BELOW] : []),
      TEST_BEFORE_SKIN,
    ),
    basis: frozen<readonly SourceId[]>([
      ...(row === undefined ? [] : [row.source]),
      'iso-456',
      'iupac-2021',
      'ghs-naoh',
    ]),
    edition: EDITION,
  });
}
