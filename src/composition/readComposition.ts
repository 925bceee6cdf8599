import { frozen } from '../numbers/index.js';
import { givenOf, readChargedPot, type ChargedPot, type GivenComposition } from './chargedPot.js';

/** A result of `compositionFrom`, also one read back from JSON: what was charged is worked through again. */
export interface MadeComposition {
  readonly by: 'compositionFrom';
  readonly given: unknown;
}

/** A composition that another result was worked out from. */
export interface ComposedFrom {
  readonly by: 'compositionFrom';
  readonly given: GivenComposition;
}

/**
 * Reads a composition as the pot it was worked out from, so that what is said of it holds over all its lots and assays.
 *
 * @throws CalculationError `missing` or `bad-shape` for what is no composition, and the faults of its inputs
 */
export function readComposition(path: string, value: unknown): ChargedPot {
  return readChargedPot(`${path}.given`, givenOf(path, value, 'compositionFrom'));
}

/** A composition as it stands in `given`. */
export function composedFrom({ given }: ChargedPot): ComposedFrom {
  return frozen({ by: 'compositionFrom', given });
}
