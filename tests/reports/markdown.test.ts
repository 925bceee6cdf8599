import { fatFromCertificate, readFat, toJson } from 'laurate';
import { planBatch } from 'laurate/recipe';
import { batchSheetOf, workingAsMarkdown } from 'laurate/reports';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escaped } from '../../src/reports/markdown.js';
import { throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { cellsOf, harbour, HARBOUR, linesOf } from './batches.js';

const HOSTILE = [
  'a | b | c',
  '| --- | --- |',
  '<script>alert(1)</script>',
  '<!-- hidden',
  'line\nbreak',
  'line\r\n\n# heading',
  'paragraph\u2029separator',
  '`code` ``more`` ```fence```',
  '![picture](https://example.org/x.png)',
  '[link](javascript:alert)',
  'www.example.org and http://example.org',
  'someone@example.org',
  '**bold** _under_ ~~struck~~ $x$',
  String.raw`back\slash \| pipe`,
  '&lt;b&gt; &#124;',
  '- item',
  'turned \u202Eround\u2066',
  'zero \u0000 byte',
];

/** What a reader of Markdown makes of plain words: marks that are escaped, and entities. */
const read = (markdown: string): string =>
  markdown
    .replaceAll(/\\([!-/:-@[-`{-~])/g, '$1')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');

/** Marks that stand there without an escape. */
const MARKUP = /(?<!\\)(?:\\\\)*[`*_~[\]|$^{}#@]|[<>]|https?:\/\/|www\.|&(?!amp;|lt;|gt;)/;

describe('a name in Markdown', () => {
  it.each(HOSTILE)('stays a name: %j', (name) => {
    const text = escaped(name);
    expect(text).not.toMatch(MARKUP);
    expect(text).not.toMatch(/[\n\r\u2028\u2029\u202A-\u202E\u2066-\u2069\u0000]/);
    expect(read(text)).toBe(
      name
        .replaceAll(/[\n\r\u0000\u2029\u202A-\u202E\u2066-\u2069]+/g, ' ')
        .replaceAll(/ +/g, ' ')
        .trim(),
    );
  });

  it('is as it was where it is plain', () => {
    expect(escaped('Coconut oil (76 °C), lot 3 - a')).toBe('Coconut oil (76 °C), lot 3 - a');
    expect(escaped('Kokosöl, کوکونات\u200cروغن')).toBe('Kokosöl, کوکونات\u200cروغن');
  });

  it('reads back, whatever it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme-ascii' }), (name) => {
        const text = escaped(name);
        expect(text).not.toMatch(MARKUP);
        expect(read(text)).toBe(name.replaceAll(/ +/g, ' ').trim());
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});

describe('hostile names', () => {
  const plain = linesOf(batchSheetOf(planBatch(HARBOUR, { scaleStep: { g: 1 } })));
  const shape = (lines: readonly string[]): readonly unknown[] =>
    lines.map((line) => (line.startsWith('|') ? cellsOf(line).length : line.slice(0, 3)));

  it.each(HOSTILE)('leave a sheet as it is: %j', (name) => {
    // a stored fat brings its own notes, which somebody may have written
    const lot = fatFromCertificate({ name, kind: 'triglyceride', saponificationValue: { mgKohPerG: 256 } });
    const fat = readFat({ ...toJson(lot), notes: [{ code: 'x', text: name }] });
    const batch = planBatch(
      {
        ...HARBOUR,
        title: name,
        fats: [{ fat, mass: { g: 700 } }, HARBOUR.fats[1]],
        additions: [...HARBOUR.additions.slice(0, 3), { name, mass: { g: 12 } }],
      },
      { scaleStep: { g: 1 } },
    );
    const lines = linesOf(batchSheetOf(batch));
    expect(shape(lines.slice(1))).toEqual(shape(plain.slice(1)));
    expect(lines[0]).toBe(`# ${escaped(name)}`);
    expect(lines.join('\n')).not.toMatch(/<|https?:\/\/|\u202E/);
    expect(lines.filter((line) => line.startsWith('| ') && line.includes(escaped(name)))).toHaveLength(2);

    const working = linesOf(workingAsMarkdown(batch)).slice(1);
    expect(new Set(working.map((line) => cellsOf(line).length))).toEqual(new Set([4]));
    expect(working.join('\n')).toContain(escaped(name));
  });

  it('are no title where nothing of them can be seen', () => {
    const batch = planBatch({ ...HARBOUR, title: '\u202E\u0007x\u202E'.replace('x', '\u2066.') });
    expect(batchSheetOf(batch).split('\n')[0]).toBe('# .');
    expect(batchSheetOf(planBatch({ ...HARBOUR, title: '\u0007\u0007' })).split('\n')[0]).toBe('# Batch sheet');
    expect(
      batchSheetOf(planBatch({ version: 1, fats: HARBOUR.fats, lye: HARBOUR.lye, target: HARBOUR.target })).split(
        '\n',
      )[0],
    ).toBe('# Batch sheet');
  });
});

describe('a working as Markdown', () => {
  it('is a row a step, from JSON as well', () => {
    const { soap } = harbour();
    const page = workingAsMarkdown(soap);
    expect(page).toBe(workingAsMarkdown(throughJson(soap) as typeof soap));
    expect(page.split('\n').slice(0, 4)).toEqual([
      '# Working of soapFromLye',
      '',
      '| figure | formula | value | unit |',
      '| --- | --- | ---: | --- |',
    ]);
    const row = linesOf(page).find((line) => line.startsWith('| hydroxide charged'));
    expect(cellsOf(row ?? '')[2]).toBe(soap.charged.likely.mol.toSignificantDigits(6).toString());
  });

  it('has as many digits as are asked for, written as the caller is used to', () => {
    const { soap } = harbour();
    const value = (options: object) =>
      cellsOf(linesOf(workingAsMarkdown(soap, options)).find((line) => line.startsWith('| sodium soap')) ?? '')[2];
    const exact = soap.products.soapSodium.likely.g;
    expect(value({ significantDigits: 10, numbers: { decimalMark: ',' } })).toBe(
      exact.toSignificantDigits(10).toString().replace('.', ','),
    );
    expect(value({ significantDigits: 3 })).toBe(exact.toSignificantDigits(3).toString());
  });

  it.each([
    [{ significantDigits: 1 }, 'out-of-range', 'options.significantDigits'],
    [{ significantDigits: '2.5' }, 'out-of-range', 'options.significantDigits'],
    [{ digits: 3 }, 'unknown-key', 'options.digits'],
  ])('refuses %o', (options, code, path) => {
    const said = refusal(() => workingAsMarkdown(harbour(), options as object));
    expect([said.code, said.path]).toEqual([code, path]);
  });

  it('refuses what is no result', () => {
    expect(refusal(() => workingAsMarkdown({ by: 'x' } as never)).path).toBe('result.by');
  });
});
