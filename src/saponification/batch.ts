import { frozen, type Decimal } from '../numbers/index.js';
import type { Mass } from '../quantities/index.js';

/** What "of the batch" is a share of. */
export interface BatchMass {
  readonly mass: Mass;
  /** `fats-lye-and-water` as charged, or the mass that was stated. */
  readonly is: 'fats-lye-and-water' | 'as-stated';
}

/** The batch: the mass that was stated, or else what was charged. */
export function batchOf(stated: Decimal | undefined, charged: Decimal): BatchMass {
  return frozen(
    stated === undefined
      ? { mass: frozen({ g: charged }), is: 'fats-lye-and-water' }
      : { mass: frozen({ g: stated }), is: 'as-stated' },
  );
}
