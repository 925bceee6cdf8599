import type { Severity, Verdict } from '../audit/index.js';
import {
  fieldPath,
  frozen,
  readFields,
  readList,
  readNumber,
  readText,
  readWord,
  type Decimal,
} from '../numbers/index.js';
import type { Estimate } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';

/** A finding as far as it is printed. */
export interface ReadFinding {
  readonly severity: Severity;
  readonly path: string;
  readonly explanation: string;
  readonly slips: readonly { readonly explanation: string; readonly tell: string }[];
}

/** An audit as far as it is printed; percent by mass. */
export interface ReadAudit {
  readonly verdict: Verdict;
  readonly findings: readonly ReadFinding[];
  readonly implied: Readonly<Record<'superfat' | 'freeCausticAlkali', Estimate<Decimal>>> | undefined;
  readonly limit: Decimal;
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
  readonly basis: readonly SourceId[];
  readonly edition: string;
}

const VERDICTS = ['dangerous', 'wrong', 'doubtful', 'cannot-tell', 'sound'] as const;
const SEVERITIES = ['danger', 'caution', 'note'] as const;
/** A finding may name every fat of a blend. */
const LONGEST = 100_000;

/**
 * Reads an audit as it was made, or as JSON leaves it.
 *
 * @throws CalculationError `missing`, `bad-shape` and `not-a-number`, with the path
 */
export function readAudit(path: string, value: unknown): ReadAudit {
  const fields = readFields(path, value, 'an audit');
  const at = (key: string): string => fieldPath(path, key);
  readWord(at('by'), fields['by'], ['auditRecipe']);
  const findings = rows(at('findings'), fields['findings'], readFinding);
  const { basis: own, implied, limit } = fields;
  const basis = [own, ...findings.map((finding) => finding.basis)].flatMap((ids, row) =>
    rows(row === 0 ? at('basis') : `${at('findings')}[${String(row - 1)}].basis`, ids, text),
  );
  return frozen({
    verdict: readWord(at('verdict'), fields['verdict'], VERDICTS),
    findings,
    implied: implied === undefined || implied === null ? undefined : readImplied(at('implied'), implied),
    limit: readPercentNaoh(at('limit'), limit),
    notes: rows(at('notes'), fields['notes'], readRemark),
    cautions: rows(at('cautions'), fields['cautions'], readRemark),
    // whether they are sources is told where they are looked up
    basis: [...new Set(basis)] as SourceId[],
    edition: text(at('edition'), fields['edition']),
  });
}

const text = (path: string, value: unknown): string => readText(path, value, LONGEST);

function rows<T>(path: string, value: unknown, read: (path: string, row: unknown) => T): readonly T[] {
  return readList(path, value, 0).map((row, at) => read(`${path}[${String(at)}]`, row));
}

function readFinding(path: string, value: unknown): ReadFinding & { readonly basis: unknown } {
  const { severity, path: where, explanation, slips, basis } = readFields(path, value, 'a finding');
  return {
    severity: readWord(`${path}.severity`, severity, SEVERITIES),
    path: text(`${path}.path`, where),
    explanation: text(`${path}.explanation`, explanation),
    slips: rows(`${path}.slips`, slips, (at, slip) => {
      const said = readFields(at, slip, 'a slip');
      return { explanation: text(`${at}.explanation`, said['explanation']), tell: text(`${at}.tell`, said['tell']) };
    }),
    basis,
  };
}

const readRemark = (path: string, value: unknown): string =>
  text(`${path}.text`, readFields(path, value, 'a code with its text')['text']);

function readImplied(path: string, value: unknown): NonNullable<ReadAudit['implied']> {
  const { superfat, freeCausticAlkali } = readFields(path, value);
  return {
    superfat: readEnds(`${path}.superfat`, superfat, (at, end) =>
      readNumber(`${at}.percent`, readFields(at, end)['percent']),
    ),
    freeCausticAlkali: readEnds(`${path}.freeCausticAlkali`, freeCausticAlkali, readPercentNaoh),
  };
}

const readPercentNaoh = (path: string, value: unknown): Decimal =>
  readNumber(`${path}.percentNaoh`, readFields(path, value)['percentNaoh']);

function readEnds(path: string, value: unknown, read: (path: string, end: unknown) => Decimal): Estimate<Decimal> {
  const ends = readFields(path, value);
  const at = (end: 'low' | 'likely' | 'high'): Decimal => read(`${path}.${end}`, ends[end]);
  return { low: at('low'), likely: at('likely'), high: at('high') };
}
