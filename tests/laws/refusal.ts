import { isCalculationError, type ErrorCode } from 'laurate';

/** What a refusal says, for comparing. */
export interface Refusal {
  readonly code: ErrorCode;
  readonly path: string;
  readonly message: string;
}

/** The refusal that a call ends in; any other end, a result included, fails the test. */
export function refusal(call: () => unknown): Refusal {
  try {
    call();
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    const { code, path, message } = error;
    return { code, path, message };
  }
  throw new Error('nothing was refused');
}
