import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/numbers/index.js';
import { fixed, readNumberFormat, type NumberFormat } from '../../src/reports/numberFormat.js';

const write = (plain: string, format?: NumberFormat): string => readNumberFormat('numbers', format)(plain);

describe('figures as they are written', () => {
  it.each([
    ['0', '0'],
    ['9999.5', '9999,5'],
    ['-9999', '−9999'],
    ['10000', '10.000'],
    ['-10000', '−10.000'],
    ['123456', '123.456'],
    ['1234567.1234567', '1.234.567,1234567'], // groups before the mark only
    ['1234567890123', '1.234.567.890.123'],
  ])('%s is %s', (plain, written) => {
    expect(write(plain, { decimalMark: ',', groupMark: '.' })).toBe(written);
  });

  it('are plain unless stated, but for the minus', () => {
    expect(write('-1234567.25')).toBe('−1234567.25');
    expect(write('1234567.25', { groupMark: "'" })).toBe("1'234'567.25");
    expect(write('1234567.25', { decimalMark: ',' })).toBe('1234567,25');
  });

  it('have their decimals, and no sign where nothing is left', () => {
    const texts = ['-0.004', '-0.006', '0', '12', '-100'].map((figure) => fixed(new Decimal(figure), 2));
    expect(texts).toEqual(['0.00', '-0.01', '0.00', '12.00', '-100.00']);
  });
});
