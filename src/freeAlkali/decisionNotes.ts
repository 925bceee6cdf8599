import { frozen, type Remark } from '../numbers/index.js';
import type { CorrectionDecision } from './dose.js';
import type { ReactionState } from './measured.js';

const NOT_SHOWN: Remark = /* @__PURE__ */ frozen({
  code: 'reaction-not-shown-complete',
  text: 'Two tests an hour of heat apart are wanted before anything is added: what has not yet reacted goes by itself.',
});
const STILL_CHANGING: Remark = /* @__PURE__ */ frozen({
  code: 'reaction-still-changing',
  text: 'The two tests differ by more than their uncertainty: the soap is still reacting, or was not mixed. Heat, mix, wait, test again.',
});
const PART_FIRST: Remark = /* @__PURE__ */ frozen({
  code: 'part-of-the-dose-first',
  text: 'Only as much is added as cannot be too much. Mix, wait, test again; what is left is worked out from the new test.',
});
const TEST_TOO_COARSE: Remark = /* @__PURE__ */ frozen({
  code: 'uncertainty-larger-than-dose',
  text: 'The test is less sure than the dose is large: a larger sample or more readings before anything is added.',
});

/** Why nothing, or not all, is added. */
export function notesOfDecision(decision: CorrectionDecision, state: ReactionState): readonly Remark[] {
  switch (decision) {
    case 'heat-and-test-again':
      return [state === 'not-shown' ? NOT_SHOWN : STILL_CHANGING];
    case 'add-then-test':
      return [PART_FIRST];
    case 'measure-again':
      return [TEST_TOO_COARSE];
    case 'add':
      return [];
  }
}
