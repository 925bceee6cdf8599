import { refuse, type Decimal } from '../numbers/index.js';
import { readAlkaliContent } from '../quantities/index.js';
import { freeAlkaliLimits, type FreeAlkaliLimit } from './data/limits.js';

/** A limit of free caustic as read. */
export interface Limit {
  /** Where it is from; none for a content of the caller's own. */
  readonly row: FreeAlkaliLimit | undefined;
  readonly percentNaoh: Decimal;
}

/**
 * Reads a limit: the id of one on file, or a content.
 *
 * @throws CalculationError `missing`, `bad-shape` for an id that is none, `out-of-range` and the faults of a quantity
 */
export function readLimit(path: string, value: unknown): Limit {
  const row = typeof value === 'string' ? limitRow(path, value) : undefined;
  return { row, percentNaoh: readAlkaliContent(path, row?.atMost ?? value, { above: 0, max: 10 }) };
}

function limitRow(path: string, value: string): FreeAlkaliLimit {
  const ids = freeAlkaliLimits.map(({ id }) => id);
  return (
    freeAlkaliLimits.find(({ id }) => id === value) ??
    refuse('bad-shape', path, `a content as { percentNaoh }, or one of ${ids.join(', ')}`, value)
  );
}
