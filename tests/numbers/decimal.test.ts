import { Decimal as Base } from 'decimal.js';
import { afterEach, describe, expect, it } from 'vitest';
import { Decimal, ONE, ZERO } from '../../src/numbers/index.js';
import { roundToStep, valueIn } from '../../src/quantities/index.js';

describe('Decimal: worked by hand', () => {
  it('has 34 digits', () => {
    expect(Decimal.div(2, 3).toString()).toBe(`0.${'6'.repeat(33)}7`);
  });

  it.each([
    ['1.00000000000000000000000000000000045', '1'], // 36 digits: the nearest of 34 is 1
    ['1.0000000000000000000000000000000005', '1'], // a tie goes to the even digit, below
    ['1.0000000000000000000000000000000015', '1.000000000000000000000000000000002'], // and here above
    ['1.0000000000000000000000000000000006', '1.000000000000000000000000000000001'],
  ])('rounds %s to %s', (exact, rounded) => {
    expect(new Decimal(exact).times(1).toString()).toBe(rounded);
  });

  it('has nought and one', () => {
    expect([ZERO.toString(), ONE.toString()]).toEqual(['0', '1']);
  });
});

describe('Decimal: laws', () => {
  const before = {
    precision: Base.precision,
    rounding: Base.rounding,
    toExpNeg: Base.toExpNeg,
    toExpPos: Base.toExpPos,
  };
  afterEach(() => {
    Base.set(before);
  });

  it('leaves the global settings as decimal.js sets them', () => {
    expect(before).toEqual({ precision: 20, rounding: 4, toExpNeg: -7, toExpPos: 21 }); // defaults of its documentation
    Decimal.div(1, 3);
    valueIn({ oz: 1 }, 'lb');
    expect(Base.precision).toBe(20);
    expect(Base.rounding).toBe(4);
  });

  it('is not reached by global settings, before or after the first sum', () => {
    const results = (): string[] => [
      Decimal.div(1, 3).toString(),
      valueIn({ g: 1 }, 'lb').toString(),
      valueIn({ g: '1e-9' }, 'kg').toString(),
      valueIn({ gNaohPerG: '0.183' }, 'saponificationEquivalent').toString(),
      roundToStep({ g: '2.5' }, { g: 1 }, 'nearest').g.toString(),
    ];
    const untouched = results();
    Base.set({ precision: 2, rounding: Base.ROUND_UP, toExpNeg: 0, toExpPos: 0 });
    expect(Base.div(1, 3).toString()).toBe('3.4e-1'); // the settings hold, for those who asked for them
    expect(results()).toEqual(untouched);
  });

  it('is not set through a result either, but may be cloned and set', () => {
    const { g } = roundToStep({ g: '2.5' }, { g: 1 }, 'nearest');
    const Ours = g.constructor as typeof Base;
    expect(() => Ours.set({ precision: 5 })).toThrow(TypeError);
    expect(() => Ours.config({ precision: 5 })).toThrow(TypeError);
    const Coarse = Ours.clone({ precision: 5 });
    Coarse.set({ precision: 2 });
    expect(Coarse.div(2, 3).toString()).toBe('0.67');
    expect(Decimal.div(2, 3).toString()).toBe(`0.${'6'.repeat(33)}7`);
  });

  it("is not reached by the settings of a caller's Decimals", () => {
    const Coarse = Base.clone({ precision: 2, rounding: Base.ROUND_UP, toExpNeg: 0, toExpPos: 0 });
    expect(valueIn({ lb: new Coarse(3) }, 'g').toString()).toBe(valueIn({ lb: 3 }, 'g').toString());
    expect(valueIn({ g: new Coarse(3) }, 'g').toString()).toBe('3');
    expect(roundToStep({ g: new Coarse('157.68') }, { g: new Coarse(1) }, 'down').g.toString()).toBe('157');
  });
});
