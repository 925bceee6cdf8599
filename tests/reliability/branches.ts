/** The branches that no test takes, with the reason of each, from the report of coverage of the last `npm test`. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { branchReasons, type BranchReason } from './branchReasons.js';
import { counted, unpadded } from './page.js';

interface Place {
  readonly line: number;
  readonly column: number;
}
interface Range {
  readonly start: Partial<Place>;
  readonly end: Partial<Place>;
}
/** Coverage of one file, as Istanbul writes it. */
interface Covered {
  readonly path: string;
  readonly branchMap: Readonly<Record<string, { readonly loc: Range; readonly locations: readonly Range[] }>>;
  readonly b: Readonly<Record<string, readonly number[]>>;
}

const report = fileURLToPath(new URL('../../coverage/coverage-final.json', import.meta.url));
const sources = fileURLToPath(new URL('../../src/', import.meta.url));

interface Missed {
  readonly file: string;
  readonly line: number;
  /** The line of code that it stands in, and the part of it that nothing runs. */
  readonly code: string;
  readonly part: string;
}

function missedIn({ path, branchMap, b }: Covered): readonly Missed[] {
  const lines = readFileSync(path, 'utf8').split('\n');
  return Object.entries(branchMap).flatMap(([id, { loc, locations }]) =>
    locations.flatMap((own, at) => {
      if (b[id]?.[at] !== 0) return [];
      // of an `if` without `else` only the whole has a place
      const { start, end } = own.start.line === undefined ? loc : own;
      const line = start.line ?? 1;
      const code = lines[line - 1] ?? '';
      const part = end.line === line ? code.slice(start.column ?? 0, end.column) : code.slice(start.column ?? 0);
      return [{ file: path.replace(sources, ''), line, code: code.trim(), part: part.trim() }];
    }),
  );
}

const reasonOf = ({ file, code }: Missed): BranchReason | undefined =>
  branchReasons.find((one) => one.file.test(file) && one.code.test(code));

const inCode = (text: string): string => `\`${text.replaceAll('`', "'").slice(0, 90)}\``;

/** The table, or nothing where the tests have not been run with coverage. */
export function branchesTable(): string | undefined {
  if (!existsSync(report)) return undefined;
  const files = Object.values(JSON.parse(readFileSync(report, 'utf8')) as Readonly<Record<string, Covered>>);
  const all = files.flatMap(({ b }) => Object.values(b)).reduce((sum, counts) => sum + counts.length, 0);
  const missed = files.flatMap(missedIn);
  const rows = missed.map((one) => [
    `\`${one.file}:${String(one.line)}\``,
    inCode(one.part),
    inCode(one.code),
    reasonOf(one)?.why ?? 'open',
  ]);
  // a reason for what is taken, or is no more, would one day excuse something else
  const used = new Set(missed.map(reasonOf));
  for (const idle of branchReasons.filter((one) => !used.has(one))) {
    process.stderr.write(`no branch has this reason: ${String(idle.file)} ${String(idle.code)}\n`);
  }
  const says = `Of ${counted(all)} branches the tests take all but ${String(missed.length)}.`;
  return [says, unpadded(['where', 'not taken', 'in the line', 'reason'], rows)].join('\n\n');
}
