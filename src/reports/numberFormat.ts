import { frozen, readShape, readWord, refuse, type Decimal } from '../numbers/index.js';

/** How figures are written: data rather than a locale, so that a stored sheet is the same everywhere. */
export interface NumberFormat {
  /** Between the whole and its parts; a point unless stated. */
  readonly decimalMark?: '.' | ',';
  /** Between groups of three, from 10 000 on; nothing unless stated. The second blank is the narrow one that does not break. */
  readonly groupMark?: '' | ' ' | '\u202f' | '.' | ',' | "'";
}

const MARKS = { decimal: ['.', ','], group: ['', ' ', '\u202f', '.', ',', "'"] } as const;

/** Writes a decimal text as its reader is used to. */
export type WriteNumber = (plain: string) => string;

/**
 * Reads how figures are to be written.
 *
 * @throws CalculationError `bad-shape` for another mark, or for one mark in both places, and `unknown-key`
 */
export function readNumberFormat(path: string, value: unknown): WriteNumber {
  const fields = readShape(path, value ?? {}, ['decimalMark', 'groupMark']);
  const decimalMark = readWord(`${path}.decimalMark`, fields['decimalMark'] ?? '.', MARKS.decimal);
  const groupMark = readWord(`${path}.groupMark`, fields['groupMark'] ?? '', MARKS.group);
  if (decimalMark === groupMark) refuse('bad-shape', path, 'two different marks', decimalMark);
  return (plain) => written(plain, frozen({ decimalMark, groupMark }));
}

function written(plain: string, { decimalMark, groupMark }: Required<NumberFormat>): string {
  const [whole = '', ...parts] = plain.split('.');
  const digits = whole.replace('-', '');
  const grouped = digits.length < 5 ? digits : digits.replaceAll(/\B(?=(?:\d{3})+$)/g, groupMark);
  return `${whole.startsWith('-') ? '−' : ''}${[grouped, ...parts].join(decimalMark)}`;
}

/** So many decimals; what rounds to nothing has no sign. */
export function fixed(value: Decimal, decimals: number): string {
  const text = value.toFixed(decimals);
  return /[1-9]/.test(text) ? text : text.replace('-', '');
}
