/** What is written into the guides by code: tables, and parts of a guide between their marks. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';

/** A table in Markdown. */
export function table(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const line = (cells: readonly (string | number)[]): string =>
    `| ${cells.map((cell) => String(cell).replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

const pathOf = (guide: string): string => fileURLToPath(new URL(`../docs/${guide}`, import.meta.url));

/** A guide as it is, and as it would be with another text in one of its parts; the rest of it is written by hand. */
export async function guideWith(
  guide: string,
  part: string,
  text: string,
): Promise<{ readonly now: string; readonly then: string }> {
  const [begin, end] = [`<!-- ${part} begins -->`, `<!-- ${part} ends -->`];
  const now = readFileSync(pathOf(guide), 'utf8');
  const [before, rest = ''] = now.split(begin);
  const after = rest.split(end)[1];
  if (after === undefined) throw new Error(`docs/${guide} has no place for ${part}`);
  const whole = `${before ?? ''}${begin}\n\n${text}\n\n${end}${after}`;
  return { now, then: await format(whole, { ...(await resolveConfig(pathOf(guide))), parser: 'markdown' }) };
}

/** Writes a part of a guide. */
export async function writePart(guide: string, part: string, text: string): Promise<void> {
  writeFileSync(pathOf(guide), (await guideWith(guide, part, text)).then);
}
