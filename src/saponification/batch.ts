import { frozen, type Decimal } from '../numbers/index.js';
import { readMass, type Mass } from '../quantities/index.js';

/** What "of the batch" is a share of. */
export interface BatchMass {
  readonly mass: Mass;
  /** `fats-lye-and-water` as charged, or the mass that was stated. */
  readonly is: 'fats-lye-and-water' | 'as-stated';
}

/** Reads the mass of the batch, where it is stated: no less than its fats; else it is what was charged. */
export function readBatch(value: unknown, charged: Decimal, fats: Decimal): BatchMass {
  return value === undefined
    ? frozen({ mass: frozen({ g: charged }), is: 'fats-lye-and-water' })
    : frozen({ mass: frozen({ g: readMass('batchMass', value, { min: fats.toString() }) }), is: 'as-stated' });
}
