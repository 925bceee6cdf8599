import { frozen, refuse, ZERO, type Decimal, type Fields, type Remark, type Steps } from '../numbers/index.js';
import { mapEnds, type Estimate, type Time } from '../quantities/index.js';
import { HEAT_FIRST } from './cautions.js';
import { doseOf, type Dose } from './dose.js';
import { limitsOf, reactionState, type Measurement } from './measured.js';

/** What to do next: add all, add a part and test, measure better, or let the reaction end first. */
export type CorrectionDecision = 'add' | 'add-then-test' | 'measure-again' | 'heat-and-test-again';

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
const TEST_TOO_COARSE: Remark = /* @__PURE__ */ note(
  'uncertainty-larger-than-dose',
  'The test is less sure than the dose is large: a larger sample or more readings before anything is added.',
);

/** Reads the aims of a correction: a bound, at most the target, at most what was measured. */
export function readAims(fields: Fields, found: Decimal, read: (path: string, value: unknown) => Decimal): Aims {
  const target = read('target', fields['target']);
  if (target.gt(found)) {
    refuse('out-of-range', 'target', `at most what was measured, ${found.toString()}`, target.toString());
  }
  const notBelow = fields['notBelow'] === undefined ? ZERO : read('notBelow', fields['notBelow']);
  if (notBelow.gt(target)) {
    refuse('out-of-range', 'notBelow', `at most the target, ${target.toString()}`, notBelow.toString());
  }
  return { target, notBelow };
}

/** The dose to add now, once the reaction is shown to be over; else nothing. */
export function corrected(
  { batch, measured, earlier, target, notBelow, perMol, perGram }: CorrectionTask,
  steps?: Steps,
): Corrected {
  const found = limitsOf(measured);
  const state = reactionState(measured, earlier?.measured, earlier?.apart);
  if (state !== 'complete') {
    return {
      decision: 'heat-and-test-again',
      add: ZERO,
      left: ZERO,
      leaves: found,
      notes: [state === 'not-shown' ? NOT_SHOWN : STILL_CHANGING],
      cautions: [HEAT_FIRST],
    };
  }
  const taken = mapEnds(perGram, (mol) => mol.times(perMol));
  const { add, left, leaves } = doseOf({ batch, found, target, bound: notBelow, perGram: taken }, steps);
  const [decision, notes] = decided(add, left);
  return { decision, add, left, leaves, notes, cautions: [] };
}

function decided(add: Decimal, left: Decimal): readonly [CorrectionDecision, readonly Remark[]] {
  if (left.isZero()) return ['add', []];
  return add.isZero() ? ['measure-again', [TEST_TOO_COARSE]] : ['add-then-test', [PART_FIRST]];
}
