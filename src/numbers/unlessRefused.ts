import { isCalculationError, type CalculationError } from './calculationError.js';

/** What some work gives; undefined where it is refused, which may be asked to be told. Any other error goes on. */
export function unlessRefused<T>(work: () => T, told?: (refusal: CalculationError) => void): T | undefined {
  try {
    return work();
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    told?.(error);
    return undefined;
  }
}
