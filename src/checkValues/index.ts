/**
 * The published figures the library is checked against, as data, and the check itself.
 *
 * @module laurate/check-values
 */

export type { CallInputs, CallName, CheckCharge, CheckFat, CheckPot, CheckSoap } from './calls.js';
export type { BoundsCheck, CheckBase, CheckValue, FigureCheck, InsideCheck, RangeCheck } from './checkValue.js';
export { checkValues } from './checkValues.js';
export { knownDisagreements } from './knownDisagreements.js';
export { outcomeOf, selfCheck, type CheckOutcome, type SelfCheck } from './selfCheck.js';
