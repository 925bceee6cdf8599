import { isCalculationError, isList, readFields, refuse } from '../numbers/index.js';

/** `251-258` as people write a range. */
const TWO_FIGURES = /^\s*(\d[\d.]{0,9})\s*(?:-|–|\.\.|to)\s*(\d[\d.]{0,9})\s*$/;

/** The two ends of what looks like a range written otherwise. */
function endsOf(value: unknown): readonly [unknown, unknown] | undefined {
  if (typeof value === 'string') {
    const found = TWO_FIGURES.exec(value);
    return found === null ? undefined : [found[1], found[2]];
  }
  if (typeof value !== 'object' || value === null) return undefined;
  if (isList(value)) return value.length === 2 ? [value[0], value[1]] : undefined;
  const { low, high, min = low, max = high } = readFields('', value);
  return min === undefined || max === undefined ? undefined : [min, max];
}

/** One figure of an end; what is longer or no figure is left open. */
function figure(value: unknown): string {
  if (typeof value === 'number') return String(value);
  return typeof value === 'string' && value.length <= 12 ? value : '…';
}

/** An end as it would be written; a bare figure lacks its unit. */
function written(end: unknown): string {
  if (typeof end !== 'object' || end === null || isList(end)) return '…';
  const [unit, ...others] = Object.entries(readFields('', end));
  return unit === undefined || others.length > 0 ? '…' : `{ ${unit[0].slice(0, 24)}: ${figure(unit[1])} }`;
}

/** The range that a value may have meant, in the shape that is read. */
function meantRange(value: unknown): string | undefined {
  const ends = endsOf(value);
  if (ends !== undefined) return `{ low: ${written(ends[0])}, high: ${written(ends[1])} }`;
  if (typeof value !== 'object' || value === null || isList(value)) return undefined;
  const [unit, ...others] = Object.entries(readFields('', value));
  const inside = unit === undefined || others.length > 0 ? undefined : endsOf(unit[1]);
  if (unit === undefined || inside === undefined) return undefined;
  const [low, high] = inside.map((end) => `{ ${unit[0].slice(0, 24)}: ${figure(end)} }`);
  return `{ low: ${String(low)}, high: ${String(high)} }`;
}

/**
 * Refuses a value that its reader refused; where it looks like a range written otherwise, with the shape of one.
 *
 * @throws CalculationError that of the reader, or one of the same code that shows a range
 */
export function refuseMeantRange(path: string, value: unknown, error: unknown): never {
  if (!isCalculationError(error)) throw error;
  let meant: string | undefined;
  try {
    meant = meantRange(value);
  } catch {
    throw error; // what cannot be looked at is refused as it was
  }
  if (meant === undefined) throw error;
  const each = meant.includes('…') && error.code === 'bad-shape' ? `, each end ${error.expected}` : '';
  refuse(error.code, path, `one value, or a range as ${meant}${each}`, error.received);
}
