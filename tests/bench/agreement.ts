/** Before anything is timed, the ways of doing a job must give the same figures. */
import type { Decimal } from 'decimal.js';

/** A few dozen operations, each right to half of the 34th digit. */
const DECIMALS = 1e-32;
/** A few dozen operations, each right to 1.1e-16, and a hundredfold of it where shares become percent. */
const FLOATING_POINT = 1e-13;

/**
 * Compares every figure of a plain way with the library's.
 *
 * @throws Error naming the first figure that differs
 */
export function mustAgree(
  way: string,
  library: Readonly<Record<string, Decimal>>,
  plain: Readonly<Record<string, Decimal | number>>,
): void {
  const names = Object.keys(plain);
  if (names.length === 0) throw new Error(`${way} gives no figures`);
  for (const name of names) {
    const [ours, theirs] = [library[name], plain[name]];
    if (ours === undefined || theirs === undefined) throw new Error(`${way}: ${name} is not worked out by both`);
    const room = ours.abs().times(typeof theirs === 'number' ? FLOATING_POINT : DECIMALS);
    const most = room.plus(typeof theirs === 'number' ? FLOATING_POINT : DECIMALS);
    if (!ours.minus(theirs).abs().lte(most)) {
      throw new Error(`${way}: ${name} is ${theirs.toString()}, by the library ${ours.toString()}`);
    }
  }
}
