import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal, toStep } from '../../src/numbers/index.js';

const at = (value: string, step: string, direction: 'nearest' | 'down' | 'up'): string =>
  toStep(new Decimal(value), new Decimal(step), direction).toString();

describe('toStep: worked by hand', () => {
  it.each([
    ['157.68', '1', 'nearest', '158'],
    ['157.68', '1', 'down', '157'],
    ['157.68', '1', 'up', '158'],
    ['157.68', '0.5', 'nearest', '157.5'], // 315.36 steps
    ['157.68', '5', 'nearest', '160'], // 31.536 steps
    ['157.68', '5', 'down', '155'],
    ['2.5', '1', 'nearest', '2'], // a tie goes to the even number of steps
    ['3.5', '1', 'nearest', '4'],
    ['0.25', '0.1', 'nearest', '0.2'], // 2.5 steps
    ['0.35', '0.1', 'nearest', '0.4'], // 3.5 steps: exact decimals, where binary ones would guess
    ['3', '1', 'down', '3'],
    ['3', '1', 'up', '3'],
    ['0.2', '1', 'down', '0'],
    ['-1.5', '1', 'down', '-2'], // down is towards less, also below nought
    ['-1.5', '1', 'up', '-1'],
    ['28.349523125', '0.01', 'nearest', '28.35'],
  ] as const)('%s to steps of %s, %s, is %s', (value, step, direction, expected) => {
    expect(at(value, step, direction)).toBe(expected);
  });
});

describe('toStep: laws', () => {
  const value = fc.integer({ min: -1e9, max: 1e9 }).map((n) => new Decimal(n).times('1e-4'));
  const step = fc.integer({ min: 1, max: 1e6 }).map((n) => new Decimal(n).times('1e-3'));

  it('gives whole multiples: down below, up above, nearest within half a step', () => {
    fc.assert(
      fc.property(value, step, (v, s) => {
        const [down, nearest, up] = (['down', 'nearest', 'up'] as const).map((way) => toStep(v, s, way));
        for (const rounded of [down, nearest, up]) expect(rounded?.div(s).isInteger()).toBe(true);
        expect(down?.lte(v) === true && down.gt(v.minus(s))).toBe(true);
        expect(up?.gte(v) === true && up.lt(v.plus(s))).toBe(true);
        expect(nearest?.minus(v).abs().times(2).lte(s)).toBe(true);
      }),
    );
  });

  it('leaves what is rounded already', () => {
    fc.assert(
      fc.property(value, step, fc.constantFrom('nearest', 'down', 'up'), (v, s, way) => {
        const once = toStep(v, s, way);
        expect(toStep(once, s, way).eq(once)).toBe(true);
      }),
    );
  });
});
