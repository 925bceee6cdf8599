/** Writes a part of docs/reliability.md, between its marks; the rest of the page is written by hand. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';

const page = fileURLToPath(new URL('../../docs/reliability.md', import.meta.url));

/** The page with another text in one of its parts. */
function withPart(whole: string, part: string, text: string): string {
  const [begin, end] = [`<!-- ${part} begins -->`, `<!-- ${part} ends -->`];
  const [before, rest = ''] = whole.split(begin);
  const after = rest.split(end)[1];
  if (after === undefined) throw new Error(`docs/reliability.md has no place for ${part}`);
  return `${before ?? ''}${begin}\n\n${text}\n\n${end}${after}`;
}

/** The page as it is, and as it would be with a part written anew. */
export async function pageWith(part: string, text: string): Promise<{ readonly now: string; readonly then: string }> {
  const now = readFileSync(page, 'utf8');
  return { now, then: await format(withPart(now, part, text), { ...(await resolveConfig(page)), parser: 'markdown' }) };
}

export async function writePart(part: string, text: string): Promise<void> {
  writeFileSync(page, (await pageWith(part, text)).then);
}

/** A table in Markdown. */
export function table(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const line = (cells: readonly (string | number)[]): string =>
    `| ${cells.map((cell) => String(cell).replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** A count as it is read: groups of three. */
export const counted = (count: number): string => String(count).replaceAll(/\B(?=(?:\d{3})+$)/g, ' ');

/** A table with wide cells, which padding would blow up. */
export const unpadded = (...cells: Parameters<typeof table>): string =>
  `<!-- prettier-ignore-start -->\n\n${table(...cells)}\n\n<!-- prettier-ignore-end -->`;
