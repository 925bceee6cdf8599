/** How texts, figures and many findings are shown, so that they are read at a glance. */
import { describe, expect, it } from 'vitest';
import { fewOfEachCode } from '../../src/audit/fewOfEachCode.js';
import { inWords } from '../../src/audit/figures.js';
import { legible } from '../../src/audit/legible.js';
import { Decimal } from '../../src/numbers/index.js';

describe('a text that came', () => {
  it.each([40, 41, 300])('of %i letters is shown whole up to 40, else cut to 40', (length) => {
    const shown = legible('x'.repeat(length));
    expect(shown).toBe(length <= 40 ? 'x'.repeat(length) : `${'x'.repeat(39)}…`);
    expect(legible('x'.repeat(length), 300)).toHaveLength(length);
  });

  it('loses what steers a screen', () => {
    expect(legible('moon\u202E\u0007butter\n')).toBe('moon butter ');
  });
});

describe('a figure in words', () => {
  it.each([
    ['0', '0'], ['0.001', '0.001'], ['0.0009', 'below 0.001'], ['-0.0009', 'above −0.001'], ['-5', '−5'],
    ['12.345', '12.3'], ['999.4', '999'], ['1234.6', '1235'], ['-1234.4', '−1234'],
  ])('of %s is %s', (number, words) => {
    expect(inWords(new Decimal(number))).toBe(words);
  }); // prettier-ignore
});

it('of no findings there are none', () => {
  expect(fewOfEachCode([])).toEqual([]);
});
