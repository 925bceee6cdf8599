import { frozen, type Decimal } from '../numbers/index.js';
import { readMass, type Mass } from '../quantities/index.js';

/** What "of the batch" is a share of. */
export interface BatchMass {
  readonly mass: Mass;
  /** `fats-lye-and-water` as charged, or the mass that was stated. */
  readonly is: 'fats-lye-and-water' | 'as-stated';
}

/** Reads the mass of the batch, where it is stated; else it is what was charged. */
export function readBatch(value: unknown, charged: Decimal): BatchMass {
  return value === undefined
    ? frozen({ mass: frozen({ g: charged }), is: 'fats-lye-and-water' })
    : frozen({ mass: frozen({ g: readMass('batchMass', value, { above: 0 }) }), is: 'as-stated' });
}
