import { isCalculationError, isList, readFields, refuse, type Fields } from '../numbers/index.js';

/** `251-258` as people write a range. */
const TWO_FIGURES = /^\s*(\d[\d.]{0,9})\s*(?:-|–|\.\.|to)\s*(\d[\d.]{0,9})\s*$/;

/** The fields of what comes, a list of two being from one to the other; none of what cannot be looked at. */
function fieldsOf(value: unknown): Fields {
  try {
    if (!isList(value)) return readFields('', value);
    return value.length === 2 ? { low: value[0], high: value[1] } : {};
  } catch {
    return {};
  }
}

/** The only field that there is. */
function loneField(value: unknown): readonly [string, unknown] | undefined {
  const [field, ...others] = Object.entries(fieldsOf(value));
  return others.length > 0 ? undefined : field;
}

/** The two ends of what looks like a range written otherwise. */
function endsOf(value: unknown): readonly [unknown, unknown] | undefined {
  if (typeof value === 'string') {
    const found = TWO_FIGURES.exec(value);
    return found === null ? undefined : [found[1], found[2]];
  }
  const { low, high, min = low, max = high } = fieldsOf(value);
  return min === undefined || max === undefined ? undefined : [min, max];
}

/** One figure of an end; what is longer or no figure is left open. */
function figure(value: unknown): string {
  if (typeof value === 'number') return String(value);
  return typeof value === 'string' && value.length <= 12 ? value : '…';
}

const inUnit = (unit: string, value: unknown): string => `{ ${unit.slice(0, 24)}: ${figure(value)} }`;

/** An end as it would be written; a bare figure lacks its unit. */
function written(end: unknown): string {
  const field = loneField(end);
  return field === undefined ? '…' : inUnit(...field);
}

/** The range that a value may have meant, in the shape that is read. */
function meantRange(value: unknown): string | undefined {
  const ends = endsOf(value);
  if (ends !== undefined) return `{ low: ${written(ends[0])}, high: ${written(ends[1])} }`;
  const field = loneField(value);
  if (field === undefined) return undefined;
  const [unit, held] = field;
  const inside = endsOf(held);
  return inside && `{ low: ${inUnit(unit, inside[0])}, high: ${inUnit(unit, inside[1])} }`;
}

/**
 * Refuses a value that its reader refused; where it looks like a range written otherwise, with the shape of one.
 *
 * @throws CalculationError that of the reader, or one of the same code that shows a range
 */
export function refuseMeantRange(path: string, value: unknown, error: unknown): never {
  if (!isCalculationError(error)) throw error;
  const meant = meantRange(value);
  if (meant === undefined) throw error;
  const each = meant.includes('…') && error.code === 'bad-shape' ? `, each end ${error.expected}` : '';
  refuse(error.code, path, `one value, or a range as ${meant}${each}`, error.received);
}
