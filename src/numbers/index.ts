export { asWritten, isList } from './described.js';
export { CalculationError, isCalculationError, type ErrorCode } from './calculationError.js';
export { Decimal, ONE, ZERO, type DecimalNumber } from './decimal.js';
export { frozen } from './frozen.js';
export { leftOf } from './leftOf.js';
export { checkedNumber, isDecimal, readNumber, type Limits, type Numeric } from './readNumber.js';
export {
  fieldPath,
  readFields,
  readList,
  readShape,
  readText,
  readWord,
  refuseKey,
  suggestion,
  type Fields,
} from './readShape.js';
export { refuse } from './refuse.js';
export type { Remark } from './remark.js';
export { toStep, type RoundingDirection } from './rounding.js';
export { noted, type Step, type Steps } from './step.js';
export { onStraightLines } from './straightLines.js';
export { knotsFrom, monotoneCubic, type Curve, type Knot } from './monotoneCubic.js';
export { toJson, type Json } from './toJson.js';
export { unlessRefused } from './unlessRefused.js';
