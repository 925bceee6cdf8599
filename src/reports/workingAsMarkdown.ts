import { readNumber, readShape, refuse, type Step } from '../numbers/index.js';
import { escaped, table } from './markdown.js';
import { readNumberFormat, type NumberFormat } from './numberFormat.js';
import { workingOf, type Explainable } from './workingOf.js';

/** What {@link workingAsMarkdown} may be told. */
export interface WorkingAsMarkdownOptions {
  /** Digits that count of each value, 2 to 34; 6 unless stated. */
  readonly significantDigits?: number;
  /** How figures are written; `1234.5` unless stated. */
  readonly numbers?: NumberFormat;
}

/**
 * The working of a result as a page of Markdown: one row a step, with its formula, value and unit.
 *
 * The steps are those of `workingOf`: the result's own inputs go through the same code again. Names from the inputs are
 * escaped. Values are rounded to the digits asked for, half to even, for reading only.
 *
 * @param result - a result with `by` and `given`, also one read back from JSON
 * @param options - digits of each value, and how figures are written
 * @returns CommonMark with a table, ending with a line end
 * @throws CalculationError those of `workingOf`; `out-of-range`, `not-a-number`, `bad-shape` and `unknown-key` for options
 *
 * @example
 * ```ts
 * const result = naohFromKoh({ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });
 * const [title, , , , first] = workingAsMarkdown(result).split('\n');
 * title; // => '# Working of naohFromKoh'
 * first; // => '| hydroxide | n = m·w/M | 1.60414 | mol |'
 * ```
 */
export function workingAsMarkdown(result: Explainable, options: WorkingAsMarkdownOptions = {}): string {
  const { significantDigits, numbers } = readShape('options', options, ['significantDigits', 'numbers']);
  const digits = readNumber('options.significantDigits', significantDigits ?? 6, { min: 2, max: 34 });
  if (!digits.isInteger()) refuse('out-of-range', 'options.significantDigits', 'a whole number', digits.toString());
  const write = readNumberFormat('options.numbers', numbers);
  const row = ({ figure, formula, value, unit }: Step): readonly string[] => [
    escaped(figure),
    escaped(formula),
    // beyond some zeros a power of ten says more
    write(value.toSignificantDigits(digits.toNumber()).toString()),
    escaped(unit),
  ];
  const steps = workingOf(result);
  return [
    `# Working of ${result.by}`,
    '',
    ...table(
      [
        ['figure', 'left'],
        ['formula', 'left'],
        ['value', 'right'],
        ['unit', 'left'],
      ],
      steps.map(row),
    ),
    '',
  ].join('\n');
}
