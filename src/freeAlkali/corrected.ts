import { frozen, refuse, ZERO, type Decimal, type Fields, type Remark, type Steps } from '../numbers/index.js';
import { mapEnds, type Estimate, type Time } from '../quantities/index.js';
import { HEAT_FIRST, LARGE_DOSE } from './cautions.js';
import { largeDose } from './data/largeDose.js';
import { doseOf, type Dose } from './dose.js';
import { limitsOf, reactionState, type Measurement, type ReactionState } from './measured.js';

/**
 * What to do next: add all; add a part and test; nothing, for the target is met; measure better; let the reaction end first;
 * blend off or discard what no dose mends; or go by another test, for this one cannot tell.
 */
export type CorrectionDecision =
  | 'add'
  | 'add-then-test'
  | 'nothing-to-add'
  | 'measure-again'
  | 'heat-and-test-again'
  | 'too-much-to-correct'
  | 'cannot-tell';

/** Where a content is to end, and what no dose may fall below. */
export interface Aims {
  readonly target: Decimal;
  readonly notBelow: Decimal;
}

/** What was measured, twice where it was, and what is to come of it; contents in one unit. */
export interface CorrectionTask extends Aims {
  /** Batch as it stands, g. */
  readonly batch: Decimal;
  readonly measured: Measurement;
  readonly earlier: { readonly measured: Measurement; readonly apart: Time } | undefined;
  /** So much of the unit is one mole to a gram. */
  readonly perMol: Decimal;
  /** What one gram of the corrector takes, mol. */
  readonly perGram: Estimate<Decimal>;
  /** Salts that one gram of the corrector leaves, g. */
  readonly saltsPerGram: Decimal;
  /** Why the test tells nothing, where it does not. */
  readonly blind: Remark | undefined;
}

/** What is to be done, and why. */
export interface Corrected extends Pick<Dose, 'add' | 'left'> {
  readonly decision: CorrectionDecision;
  /** Content afterwards, in the unit of the task. */
  readonly leaves: Estimate<Decimal>;
  readonly notes: readonly Remark[];
  readonly cautions: readonly Remark[];
}

const note = (code: string, text: string): Remark => frozen({ code, text });
const NOT_SHOWN: Remark = /* @__PURE__ */ note(
  'reaction-not-shown-complete',
  'Two tests an hour of heat apart are wanted before anything is added: what has not yet reacted goes by itself.',
);
const STILL_CHANGING: Remark = /* @__PURE__ */ note(
  'reaction-still-changing',
  'The two tests differ by more than their uncertainty: the soap is still reacting, or was not mixed. Heat, mix, wait, test again.',
);
const PART_FIRST: Remark = /* @__PURE__ */ note(
  'part-of-the-dose-first',
  'Only as much is added as cannot be too much. Mix, wait, test again; what is left is worked out from the new test.',
);
const AGREEMENT_TOO_COARSE: Remark = /* @__PURE__ */ note(
  'tests-too-coarse-to-agree',
  'The two tests could differ by more than a quarter of what is there and still seem to agree: they do not show that the reaction is over. A larger sample or more readings, both times.',
);
const NOTHING_TO_ADD: Remark = /* @__PURE__ */ note(
  'nothing-to-add',
  'What was measured is no more than the target: nothing is added.',
);
const TOO_MUCH: Remark = /* @__PURE__ */ note(
  'too-much-to-correct',
  'What is left would take more than a tenth of the batch, or leave more than 3 % of salts in it (conventions): that mends no base. Look for the slip, and blend the batch off by small parts, or discard it.',
);
const TEST_TOO_COARSE: Remark = /* @__PURE__ */ note(
  'uncertainty-larger-than-dose',
  'The test is less sure than the dose is large: a larger sample or more readings before anything is added.',
);

/** Reads the aims of a correction: a bound, at most the target, at most what may have been measured. */
export function readAims(fields: Fields, measured: Measurement, read: (path: string, value: unknown) => Decimal): Aims {
  const target = read('target', fields['target']);
  const { high } = limitsOf(measured);
  if (target.gt(high)) {
    const expected = `at most what was measured, with its uncertainty ${high.toSignificantDigits(6).toString()}`;
    refuse('out-of-range', 'target', expected, target.toString());
  }
  const notBelow = fields['notBelow'] === undefined ? ZERO : read('notBelow', fields['notBelow']);
  if (notBelow.gt(target)) {
    refuse('out-of-range', 'notBelow', `at most the target, ${target.toString()}`, notBelow.toString());
  }
  return { target, notBelow };
}

/** The dose to add now, once the reaction is shown to be over; else nothing. */
export function corrected(
  { batch, measured, earlier, target, notBelow, perMol, perGram, saltsPerGram, blind }: CorrectionTask,
  steps?: Steps,
): Corrected {
  const found = limitsOf(measured);
  const nothing = (
    decision: CorrectionDecision,
    why: Remark,
    left = ZERO,
    cautions: readonly Remark[] = [],
  ): Corrected => ({
    decision,
    add: ZERO,
    left,
    leaves: found,
    notes: [why],
    cautions,
  });
  if (blind !== undefined) return nothing('cannot-tell', blind);
  if (found.likely.lte(target)) return nothing('nothing-to-add', NOTHING_TO_ADD);
  const state = reactionState(measured, earlier?.measured, earlier?.apart);
  if (state !== 'complete') return nothing(...UNFINISHED[state], ZERO, [HEAT_FIRST]);

  const taken = mapEnds(perGram, (mol) => mol.times(perMol));
  const { add, left, leaves } = doseOf({ batch, found, target, bound: notBelow, perGram: taken }, steps);
  const whole = add.plus(left);
  const size = sizeOf(whole.times(100).div(batch), saltsPerGram);
  if (size === 'tooMuch') return nothing('too-much-to-correct', TOO_MUCH, whole);
  if (add.isZero()) return nothing('measure-again', TEST_TOO_COARSE, left);
  return {
    ...(left.isZero() ? { decision: 'add', notes: [] } : { decision: 'add-then-test', notes: [PART_FIRST] }),
    add,
    left,
    leaves,
    cautions: size === 'large' ? [LARGE_DOSE] : [],
  };
}

/** What is to be done while two tests do not show that a reaction is over. */
const UNFINISHED: Readonly<Record<Exclude<ReactionState, 'complete'>, readonly [CorrectionDecision, Remark]>> = {
  'not-shown': ['heat-and-test-again', NOT_SHOWN],
  'still-changing': ['heat-and-test-again', STILL_CHANGING],
  'too-coarse': ['measure-again', AGREEMENT_TOO_COARSE],
};

/** Whether a dose, in percent of the batch, is large or too much, by itself or by the salts it leaves. */
function sizeOf(percent: Decimal, saltsPerGram: Decimal): 'usual' | 'large' | 'tooMuch' {
  const passes = (size: 'large' | 'tooMuch'): boolean =>
    percent.gt(largeDose.dose[size]) || percent.times(saltsPerGram).gt(largeDose.salts[size]);
  return passes('tooMuch') ? 'tooMuch' : passes('large') ? 'large' : 'usual';
}
