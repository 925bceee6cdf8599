/** What can be wrong with an input. The list is closed: removing a code is a breaking change. */
export type ErrorCode =
  | 'bad-shape'
  | 'infeasible'
  | 'missing'
  | 'not-a-number'
  | 'out-of-range'
  | 'outside-table'
  | 'profile-does-not-close'
  | 'two-units'
  | 'unknown-acid'
  | 'unknown-fat'
  | 'unknown-key'
  | 'unknown-unit';

const NAME = 'CalculationError';

/**
 * The one error this library throws: which field is wrong, what was expected there and what came.
 *
 * Recognise it by {@link isCalculationError}, not by `instanceof`: an ESM and a CJS copy of the library may meet in one
 * program.
 *
 * @example
 * ```ts
 * const refused = new CalculationError('out-of-range', 'koh.g', 'at least 0', '-1');
 * refused.message; // => 'koh.g: expected at least 0, received -1'
 * ```
 */
export class CalculationError extends Error {
  // set in the constructor: the CommonJS build gives a class with initialised fields another name
  override readonly name: string;
  /** The kind of fault, for programs. */
  readonly code: ErrorCode;
  /** The field that is wrong, as `fats[0].mass.g`. */
  readonly path: string;
  /** What would have been accepted there, in words. */
  readonly expected: string;
  /** What came, as text, cut at 80 characters. */
  readonly received: string;

  constructor(code: ErrorCode, path: string, expected: string, received: string) {
    super(`${path}: expected ${expected}, received ${received}`);
    this.name = NAME;
    this.code = code;
    this.path = path;
    this.expected = expected;
    this.received = received;
  }

  /** The error as plain data, for logs and messages between programs. */
  toJSON(): { name: string; code: ErrorCode; path: string; expected: string; received: string; message: string } {
    const { name, code, path, expected, received, message } = this;
    return { name, code, path, expected, received, message };
  }
}

/**
 * Whether a caught value is a {@link CalculationError}, of this copy of the library or of another.
 *
 * @param error - anything caught
 * @returns true for an error with the name, code and path of ours
 *
 * @example
 * ```ts
 * let code = '';
 * try {
 *   naohFromKoh({ koh: { g: -1 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });
 * } catch (error) {
 *   if (isCalculationError(error)) code = error.code;
 * }
 * code; // => 'out-of-range'
 * ```
 */
export function isCalculationError(error: unknown): error is CalculationError {
  return error instanceof Error && error.name === NAME && 'code' in error && 'path' in error;
}
