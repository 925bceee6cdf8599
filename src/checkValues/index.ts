/**
 * The published figures the library is checked against, as data, and the check itself.
 *
 * @module laurate/check-values
 */

export type { CallInputs, CallName, CheckCharge, CheckFat, CheckPot, CheckRecipe, CheckSoap } from './calls.js';
export type {
  BoundsCheck,
  CheckBase,
  CheckValue,
  FigureCheck,
  InsideCheck,
  RangeCheck,
  RowBase,
  WordsCheck,
} from './checkValue.js';
export { checkValues } from './checkValues.js';
export { knownDisagreements } from './data/knownDisagreements.js';
export { outcomeOf, selfCheck, type CheckOutcome, type SelfCheck } from './selfCheck.js';
