import { frozen, type Remark } from '../numbers/index.js';
import type { Fat } from './fatType.js';

/** What was assumed of each fat, under its name. */
export function notesOfFats(parts: readonly { readonly fat: Fat }[]): readonly Remark[] {
  return parts.flatMap(({ fat }) => fat.notes.map(({ code, text }) => frozen({ code, text: `${fat.name}: ${text}` })));
}
