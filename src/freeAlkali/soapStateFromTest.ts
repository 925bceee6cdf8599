import { molarMass } from '../chemistry/index.js';
import { Decimal, frozen, noted, ONE, readFields, refuse, ZERO, type Remark, type Steps } from '../numbers/index.js';
import { mapEnds, type AlkaliContent, type Estimate, type Fraction } from '../quantities/index.js';
import {
  superfatFromLyeSteps,
  type SuperfatFromLyeInput,
  type SuperfatFromLyeResult,
} from '../saponification/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { TEST_BEFORE_SKIN } from './cautions.js';
import {
  limitsOf,
  readMeasuredFreeCaustic,
  type MeasuredFreeCaustic,
  type MeasuredFreeCausticGiven,
} from './measured.js';
import { AMINE_READS_AS_ALKALI } from './notes.js';
import { readFlag } from './readFlag.js';

/** Input of {@link soapStateFromTest}: what was charged, as `superfatFromLye` takes it, and what the test found. */
export interface SoapStateFromTestInput extends SuperfatFromLyeInput {
  /** A result of `freeCausticAlkaliFromTitration`, or content and standard uncertainty. */
  readonly measured: MeasuredFreeCaustic;
  /** Whether the soap holds triethanolamine, which acid takes as well; not unless stated. */
  readonly triethanolamine?: boolean;
}

/**
 * What a test says of the reaction: caustic that no lot leaves, so that it still goes on; caustic within what lots leave,
 * which may be excess or not yet have reacted; less than any lot leaves; or none that the test can tell from nothing.
 */
export type SoapState = 'still-reacting' | 'cannot-tell' | 'less-than-any-lot-leaves' | 'none-found';

/** Result of {@link soapStateFromTest}. */
export interface SoapStateFromTestResult {
  readonly by: 'soapStateFromTest';
  /** The inputs as read. */
  readonly given: SuperfatFromLyeResult['given'] & {
    readonly measured: MeasuredFreeCausticGiven;
    readonly triethanolamine: boolean;
  };
  readonly state: SoapState;
  /** Alkali that has been taken up, share of what would split all of the fats. */
  readonly extent: Estimate<Fraction>;
  /** Free caustic that lots and assays would leave after complete reaction. */
  readonly expected: Estimate<AlkaliContent>;
  /** What was assumed of fats and alkali, and what the test says. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const STILL_REACTING: Remark = /* @__PURE__ */ frozen({
  code: 'still-reacting',
  text: 'No lot and no assay leaves so much caustic: the reaction is not over. Heat, mix, wait an hour, test again.',
});
const LESS_THAN_ANY_LOT: Remark = /* @__PURE__ */ frozen({
  code: 'less-caustic-than-any-lot-leaves',
  text: 'Less caustic than any lot leaves: it has turned to carbonate, a fat or the lye was not as stated or weighed, or the sample was not of the whole.',
});
const EXCESS_OR_UNREACTED: Remark = /* @__PURE__ */ frozen({
  code: 'excess-or-unreacted',
  text: 'So much caustic may be excess, or may not yet have reacted: a second test after an hour of heat tells.',
});
const NONE_TO_TELL: Remark = /* @__PURE__ */ frozen({
  code: 'no-caustic-found',
  text: 'No caustic was found that the test can tell from nothing: it has all been taken up, or it has turned to carbonate. Whether the fats had enough is not told: titrate the free acid with alkali.',
});

/**
 * How far the soap in the pot has come, from its free caustic and what was charged.
 *
 * Formula: alkali taken up is `A − f`, with A the hydroxide charged and `f = w·m/(100·M(NaOH))` the free caustic (mol). Its share of
 * the demand D lies between `(A − f)/D(high)` and `min(1, (A − f)/D(low))`: lots, assays and the test's 95 % limits at the end
 * that counts. Soap with superfat ends below 1. With triethanolamine the test is no more than an upper end of the caustic:
 * the lower end is none, and the state cannot be told.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021; the values' own sources in `basis`.
 *
 * @param input - fats, alkalis and water as charged, the batch as it stands, and what was measured
 * @returns percent of the demand, and what the test can tell
 * @throws CalculationError `infeasible` (more free caustic than was charged), `missing`, `bad-shape`, `out-of-range` and the faults
 * of a fat, source or quantity
 *
 * @example
 * ```ts
 * const { state, extent } = soapStateFromTest({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 900 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 322 }, solution: { hydroxide: { percent: 50 } } }],
 *   measured: { freeCausticAlkali: { percentNaoh: '0.80' }, standardUncertainty: { percentNaoh: '0.02' } },
 * });
 * state; // => 'still-reacting'
 * extent.high.percent.toFixed(1); // => '95.3'
 * ```
 */
export function soapStateFromTest(input: SoapStateFromTestInput): SoapStateFromTestResult {
  return soapStateFromTestSteps(input);
}

/** The kernel, with room for the working. */
export function soapStateFromTestSteps(input: SoapStateFromTestInput, steps?: Steps): SoapStateFromTestResult {
  const { measured: test, triethanolamine: amine, ...charge } = readFields('input', input);
  // the charge is read, and refused, as `superfatFromLye` does
  const charged = superfatFromLyeSteps(charge as unknown as SuperfatFromLyeInput, steps);
  const batch = charged.batch.mass.g;
  const measured = readMeasuredFreeCaustic('measured', test, batch);
  const triethanolamine = readFlag('triethanolamine', amine);
  const found = limitsOf({
    value: measured.freeCausticAlkali.percentNaoh,
    uncertainty: measured.standardUncertainty.percentNaoh,
  });
  const limits = triethanolamine ? { ...found, low: ZERO } : found;
  const perMol = molarMass('NaOH').times(100);
  const free = mapEnds(limits, (percentNaoh) => percentNaoh.times(batch).div(perMol));
  noted(steps, 'free caustic', 'w·m/(100·M(NaOH))', 'mol', free.likely);
  const { charged: alkali, demand, freeCausticAlkali: expected } = charged;
  // a pot in which nothing has reacted must not fail by the last digit
  if (free.low.gt(alkali.high.mol.times('1.000000000000000000000001'))) {
    const most = alkali.high.mol.times(perMol).div(batch).toPrecision(3);
    refuse(
      'infeasible',
      'measured.freeCausticAlkali',
      `at most what was charged, ${most} percent NaOH`,
      limits.likely.toString(),
    );
  }
  const extentOf = (mol: Decimal, unreacted: Decimal, of: Decimal): Fraction => {
    const share = mol.minus(unreacted).div(of);
    return frozen({ percent: Decimal.max(ZERO, Decimal.min(ONE, share)).times(100) });
  };
  const extent = {
    low: extentOf(alkali.low.mol, free.high, demand.high.mol),
    likely: extentOf(alkali.likely.mol, free.likely, demand.likely.mol),
    high: extentOf(alkali.high.mol, free.low, demand.low.mol),
  };
  noted(steps, 'demand met at most', '100·min(1, (A − f)/D(low))', 'percent', extent.high.percent);
  noted(steps, 'demand met at least', '100·(A − f)/D(high)', 'percent', extent.low.percent);
  const [state, note]: Finding = triethanolamine ? ['cannot-tell', AMINE_READS_AS_ALKALI] : stateOf(limits, expected);
  return frozen({
    by: 'soapStateFromTest',
    given: frozen({ ...charged.given, measured, triethanolamine }),
    state,
    extent: frozen(extent),
    expected,
    notes: frozen([note, ...charged.notes]),
    cautions: frozen([...charged.cautions, TEST_BEFORE_SKIN]),
    basis: frozen<readonly SourceId[]>([...new Set<SourceId>([...charged.basis, 'iso-456'])]),
    edition: EDITION,
  });
}

type Finding = readonly [SoapState, Remark];

function stateOf(found: Estimate<Decimal>, expected: Estimate<AlkaliContent>): Finding {
  if (found.low.gt(expected.high.percentNaoh)) return ['still-reacting', STILL_REACTING];
  if (found.high.lt(expected.low.percentNaoh)) return ['less-than-any-lot-leaves', LESS_THAN_ANY_LOT];
  if (found.low.isZero()) return ['none-found', NONE_TO_TELL];
  return ['cannot-tell', EXCESS_OR_UNREACTED];
}
