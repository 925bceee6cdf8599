/** The tables of mutation testing in docs/reliability.md, from the reports in coverage/mutation. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { table } from '../pages.js';
import { counted, unpadded } from './page.js';
import { reasons } from './survivors.js';

interface Position {
  readonly line: number;
  readonly column: number;
}
interface Mutant {
  readonly id: string;
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly status: string;
  readonly location: { readonly start: Position; readonly end: Position };
}
interface Report {
  readonly files: Readonly<Record<string, { readonly source: string; readonly mutants: readonly Mutant[] }>>;
}

const folder = fileURLToPath(new URL('../../coverage/mutation/', import.meta.url));

const sources = fileURLToPath(new URL('../../src/', import.meta.url));
/** A list of publications, and published figures as data. */
const NOT_MUTATED = ['sources', 'checkValues'];

/** A piece of code in one line of a table. */
const short = (code: string): string => {
  const line = code.replaceAll(/\s+/g, ' ').trim();
  return `\`${(line.length > 70 ? `${line.slice(0, 69)}…` : line).replaceAll('`', "'")}\``;
};

function textAt(source: string, { start, end }: Mutant['location']): string {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const last = (lines.pop() ?? '').slice(0, end.column - 1);
  return [...lines, last].join('\n').slice(start.column - 1);
}

const TRIED: readonly string[] = ['Killed', 'Timeout', 'Survived'];

/** The greatest step that all numbers are multiples of. */
const commonStep = (numbers: readonly number[]): number =>
  numbers.reduce((step, number) => {
    let [a, b] = [step, number];
    while (b !== 0) [a, b] = [b, a % b];
    return a;
  }, 0) || 1;

/** The tables, or nothing where no layer was tried. */
export function mutationTables(): string | undefined {
  const names = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.json')) : [];
  if (names.length === 0) return undefined;
  const layers = names.sort().map((name) => {
    const { files } = JSON.parse(readFileSync(`${folder}${name}`, 'utf8')) as Report;
    const all = Object.entries(files).flatMap(([file, { source, mutants }]) =>
      mutants.map((mutant) => ({ file, mutant, was: textAt(source, mutant.location) })),
    );
    const count = (...statuses: readonly string[]): number =>
      all.filter(({ mutant }) => statuses.includes(mutant.status)).length;
    // where one in so many was tried, one in so many counts of what no test reaches as well
    const oneIn = commonStep(all.filter(({ mutant }) => TRIED.includes(mutant.status)).map(({ mutant }) => Number(mutant.id)));
    const left = all.filter(
      ({ mutant: { status, id } }) => status === 'Survived' || (status === 'NoCoverage' && Number(id) % oneIn === 0),
    );
    return {
      name: name.replace('.json', ''),
      all: all.length - count('Ignored'),
      killed: count('Killed', 'Timeout'),
      endless: count('Timeout'),
      left,
    };
  });
  const rows = layers.map(({ name, all, killed, endless, left }) => ({
    name,
    all,
    killed,
    endless,
    left: left.length,
    explained: left.filter((one) => reasonOf(one) !== undefined).length,
  }));
  const sum = (key: 'all' | 'killed' | 'endless' | 'left' | 'explained'): number => rows.reduce((total, row) => total + row[key], 0);
  const together = { name: 'together', all: sum('all'), killed: sum('killed'), endless: sum('endless'), left: sum('left'), explained: sum('explained') };
  const scores = table(
    ['layer', 'mutants', 'tried', 'killed', 'of them by running on', 'survived', 'of them with a reason', 'score'],
    [...rows, together].map(({ name, all, killed, endless, left, explained }) => [
      name,
      counted(all),
      counted(killed + left),
      counted(killed),
      endless,
      left,
      explained,
      `${((100 * killed) / (killed + left)).toFixed(1)} %`,
    ]),
  );
  const survivors = grouped(layers.flatMap(({ left }) => left.map((one) => ({ ...one, why: reasonOf(one) ?? 'open' }))));
  const untried = readdirSync(sources, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !NOT_MUTATED.includes(entry.name))
    .flatMap(({ name }) => (layers.some((layer) => layer.name === name) ? [] : [`\`${name}\``]));
  const missing = untried.length === 0 ? [] : [`Not tried in this run: ${untried.join(', ')}.`];
  return [scores, ...missing, '### Survivors', unpadded(['file', 'lines', 'what was mutated', 'reason'], survivors)].join('\n\n');
} // prettier-ignore

interface Survivor {
  readonly file: string;
  readonly mutant: Mutant;
  readonly was: string;
  readonly why: string;
}

/** A row for each file and reason: the lines, and what was mutated in them. */
function grouped(survivors: readonly Survivor[]): readonly (readonly string[])[] {
  const groups = new Map<string, Survivor[]>();
  for (const one of survivors) {
    const key = `${one.file} ${one.why}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  const unique = (texts: readonly string[]): string => [...new Set(texts)].join(', ');
  return [...groups.values()].map((group) => [
    unique(group.map(({ file }) => `\`${file.replace('src/', '')}\``)),
    unique(group.map(({ mutant }) => String(mutant.location.start.line))),
    unique(group.map(({ was }) => short(was))),
    unique(group.map(({ why }) => why)),
  ]);
}

function reasonOf({
  file,
  mutant,
  was,
}: {
  readonly file: string;
  readonly mutant: Mutant;
  readonly was: string;
}): string | undefined {
  const becomes = mutant.replacement ?? '';
  return reasons.find((one) => one.file.test(file) && one.was.test(was) && (one.becomes?.test(becomes) ?? true))?.why;
}
