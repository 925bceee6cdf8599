import type { Decimal } from '../numbers/index.js';
import type { Estimate, Quantity } from '../quantities/index.js';

/** A figure that has no unit, as a pH or water to alkali. */
export interface PlainNumber {
  readonly number: Decimal;
}

/** A figure of a finding. */
export type FindingValue = Quantity | Estimate<Quantity> | PlainNumber | Estimate<PlainNumber>;
