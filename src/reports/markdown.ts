/*
 * Markdown as it is read by CommonMark with tables. Whatever comes from a recipe goes through `escaped`: a name must stay a
 * name, in its cell and on its line.
 */

/** Line ends, other control characters and marks that turn the reading round: a name is one line, read as it is written. */
const INVISIBLE = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069\uFEFF]/gu;
/** What Markdown could take for markup inside a line, `://` and `www.` among it: they become links by themselves. */
const MARKUP = /[\\`*_~[\]{}#|$^]|:(?=\/\/)|(?<=www)\.|@/gi;
const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

/** A text on one line, without what cannot be seen. */
export function oneLine(text: string): string {
  return text.replaceAll(INVISIBLE, ' ').replaceAll(/ {2,}/g, ' ').trim();
}

/** A text that nobody here has written, as plain words inside a line of Markdown. */
export function escaped(text: string): string {
  return oneLine(text)
    .replaceAll(MARKUP, String.raw`\$&`)
    .replaceAll(/[&<>]/g, (mark) => ENTITIES[mark] ?? mark);
}

/** How the cells of a column stand. */
export type Align = 'left' | 'right';

/** A table; its cells are Markdown already. */
export function table(
  heads: readonly (readonly [head: string, align: Align])[],
  rows: readonly (readonly string[])[],
): readonly string[] {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [
    line(heads.map(([head]) => head)),
    line(heads.map(([, align]) => (align === 'right' ? '---:' : '---'))),
    ...rows.map(line),
  ];
}
