import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal, leftOf } from '../../src/numbers/index.js';

const left = (a: string, b: string): string => leftOf(new Decimal(a), new Decimal(b)).toString();

describe('leftOf: worked by hand', () => {
  it.each([
    ['5', '3', '2'],
    ['3', '5', '-2'],
    ['0', '0', '0'],
    ['0', '1e-40', '-1e-40'], // of nothing nothing is rounding
    // a share of 1e-28 is rounding, a digit more is not
    ['1', '0.9999999999999999999999999999', '0'],
    ['0.9999999999999999999999999999', '1', '0'],
    ['1', '0.9999999999999999999999999998', '2e-28'],
    ['1e-9', '0.9999999999999999999999999999e-9', '0'],
    ['1e9', '0.9999999999999999999999999998e9', '2e-19'],
  ])('%s less %s leaves %s', (a, b, expected) => {
    expect(left(a, b)).toBe(expected);
  });

  it('takes negative figures by their size', () => {
    expect(left('-1', '-0.9999999999999999999999999999')).toBe('0');
    expect(left('-1', '-0.9999999999999999999999999998')).toBe('-2e-28');
  });
});

describe('leftOf: laws', () => {
  const figure = fc.integer({ min: 1, max: 1e9 }).map((n) => new Decimal(n));

  it('a quotient multiplied again leaves nothing, and what differs leaves its difference', () => {
    fc.assert(
      fc.property(figure, figure, (a, b) => {
        expect(leftOf(a.div(b).times(b), a).isZero()).toBe(true);
        expect(leftOf(a, b).eq(a.minus(b))).toBe(true);
      }),
    );
  });
});
