import { CalculationError, type ErrorCode } from './calculationError.js';
import { described } from './described.js';

/**
 * Throws the one typed error.
 *
 * @throws CalculationError always
 */
export function refuse(code: ErrorCode, path: string, expected: string, received: unknown): never {
  throw new CalculationError(code, path, expected, described(received));
}
