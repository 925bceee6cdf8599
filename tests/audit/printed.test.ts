/** What a printed figure may stand for, at the edges where it is easily one digit off. */
import { describe, expect, it } from 'vitest';
import { lastDigitOf, printedMass, printedNumber } from '../../src/audit/printed.js';

const ends = ({ low, value, high }: ReturnType<typeof printedNumber>) => [low, value, high].map(String);

describe('a printed figure', () => {
  it.each([
    ['4.0', '0.1'], ['900', '1'], ['1.50e3', '10'], ['2E-3', '0.001'], ['0e999999', '1'], ['0.00e9', '0.01'],
  ])('%s has a last digit of %s', (text, digit) => {
    expect(lastDigitOf(text).toString()).toBe(digit);
  }); // prettier-ignore

  it.each([
    ['4.0', ['3.9', '4', '4.1']],
    ['1', ['0.5', '1', '2']], // one unit less would be nothing, and it was printed as something
    ['0.1', ['0.05', '0.1', '0.2']],
    ['2', ['1', '2', '3']],
    ['0', ['-1', '0', '1']],
  ])('%s may stand for %j', (text, expected) => {
    expect(ends(printedNumber(text))).toEqual(expected);
  });

  it('a mass of nothing is not less than nothing', () => {
    expect(ends(printedMass({ g: '0' }))).toEqual(['0', '0', '1']);
    expect(ends(printedMass({ kg: '0.5' }))).toEqual(['400', '500', '600']);
  });
});
