import { inWords, rangeInWords } from '../audit/figures.js';
import type { AuditRecipeResult } from '../audit/index.js';
import { readShape, readText } from '../numbers/index.js';
import { sources } from '../sources/index.js';
import { escaped } from './markdown.js';
import { readAudit, type ReadAudit, type ReadFinding } from './readAudit.js';

/** What {@link auditAsMarkdown} may be told. */
export interface AuditAsMarkdownOptions {
  /** Title of the recipe: an audit does not hold the recipe it is of. */
  readonly title?: string;
}

/** An audit as `auditRecipe` gives it, or as `toJson` and `JSON.parse` leave it. */
export interface PrintedAudit extends Pick<AuditRecipeResult, 'by' | 'verdict'> {
  readonly findings: readonly unknown[];
}

const VERDICTS: Readonly<Record<ReadAudit['verdict'], string>> = {
  dangerous: 'The likely lots of these fats leave free caustic above the limit: do not use it.',
  wrong: 'Figures of the recipe contradict each other, and no lot, no assay and no last digit explains it.',
  doubtful: 'Nothing is certainly wrong; what is to be cleared up before anything is weighed stands below.',
  'cannot-tell': 'Something that decides cannot be read, is not known, or is not said.',
  sound: 'The figures fit each other. That is arithmetic, not a test of the soap.',
};

const HEADS = { danger: 'Danger', caution: 'To be cleared up', note: 'Good to know' } as const;

/**
 * An audit as a page of Markdown: the verdict, the superfat that the masses imply, every finding by its urgency with the slips
 * that may be behind it and what would tell them apart, cautions, assumptions and sources.
 *
 * The sentences are those of the audit; only verdict and headings are said here. An audit that was read back from JSON gives the same
 * page. Whatever it holds is escaped: none of it can become markup.
 *
 * @param audit - a result of `auditRecipe`, also one read back from JSON
 * @param options - the title of the recipe
 * @returns CommonMark, ending with a line end
 * @throws CalculationError `missing`, `bad-shape` and `not-a-number` for what is no audit; `bad-shape` and `unknown-key` for
 *   options
 *
 * @example
 * ```ts
 * const audit = auditRecipe({
 *   version: 1,
 *   fats: [{ fat: 'coconut-oil', mass: { g: '500' } }],
 *   lye: [{ alkali: 'naoh', mass: { g: '122' }, solid: { hydroxide: { percent: '99' } } }],
 *   claimed: { superfat: { percent: '5' } },
 * });
 * const lines = auditAsMarkdown(audit, { title: 'Plain bar' }).split('\n');
 * lines[0]; // => '# Audit of Plain bar'
 * lines[4]; // => 'Superfat that the masses give: −36.6 to −27.9 %, likely −34.3 % (negative is alkali in excess).'
 * ```
 */
export function auditAsMarkdown(audit: PrintedAudit, options: AuditAsMarkdownOptions = {}): string {
  const { title } = readShape('options', options, ['title']);
  const name = title === undefined ? '' : escaped(readText('options.title', title));
  const read = readAudit('audit', audit);
  return [
    `# Audit of ${name === '' ? 'a recipe' : name}`,
    '',
    `**Verdict: ${read.verdict}.** ${VERDICTS[read.verdict]}`,
    '',
    ...impliedIn(read),
    '',
    ...(['danger', 'caution', 'note'] as const).flatMap((severity) => {
      const found = read.findings.filter((finding) => finding.severity === severity);
      return found.length === 0 ? [] : [`## ${HEADS[severity]}`, '', ...found.flatMap(linesOf), ''];
    }),
    ...listed('Cautions', read.cautions),
    ...listed('Assumed', read.notes),
    ...sourcesOf(read),
  ].join('\n');
}

function impliedIn({ implied, limit }: ReadAudit): readonly string[] {
  if (implied === undefined) return ['Superfat and free caustic cannot be told from what can be read.'];
  const { superfat, freeCausticAlkali } = implied;
  const sign = superfat.low.isNeg() ? ' (negative is alkali in excess)' : '';
  return [
    `Superfat that the masses give: ${rangeInWords(superfat)} %, likely ${inWords(superfat.likely)} %${sign}.`,
    `Free caustic: ${rangeInWords(freeCausticAlkali)} % NaOH of everything in the pot, likely ${inWords(freeCausticAlkali.likely)} %; the limit is ${inWords(limit)} %.`,
  ];
}

function linesOf({ path, explanation, slips }: ReadFinding): readonly string[] {
  return [
    `- **${escaped(path)}**: ${escaped(explanation)}`,
    ...slips.map((slip) => `  - It may be so: ${escaped(slip.explanation)} How to tell: ${escaped(slip.tell)}`),
  ];
}

/** Each text once. */
function listed(head: string, texts: readonly string[]): readonly string[] {
  const lines = [...new Set(texts)].map((text) => `- ${escaped(text)}`);
  return lines.length === 0 ? [] : [`## ${head}`, '', ...lines, ''];
}

function sourcesOf({ basis, edition }: ReadAudit): readonly string[] {
  const titles = [...new Set(sources(basis).map(({ title }) => escaped(title)))];
  const of = titles.length === 0 ? '' : `${titles.join('; ')}. `;
  return [`**Sources:** ${of}Figures of edition ${escaped(edition)}.`, ''];
}
