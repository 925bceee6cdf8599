import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/numbers/index.js';
import { unitsByKind, valueIn, type Quantity } from '../../src/quantities/index.js';
import { refusal } from '../laws/refusal.js';

/** For units picked while the test runs: the compiler cannot know that they are of one kind. */
const told = (quantity: object, unit: string): Decimal => valueIn(quantity as { g: number }, unit as 'g');

describe('valueIn: worked by hand', () => {
  it('turns pounds into grams', () => {
    expect(valueIn({ lb: 2 }, 'g').toString()).toBe('907.18474'); // 2 · 453.59237
    expect(valueIn({ oz: '8' }, 'lb').toString()).toBe('0.5');
    expect(valueIn({ usGal: 1 }, 'usFlOz').toString()).toBe('128');
    expect(valueIn({ impGal: 1 }, 'impFlOz').toString()).toBe('160');
    expect(valueIn({ fahrenheit: 140 }, 'celsius').toString()).toBe('60');
    expect(valueIn({ celsius: 60 }, 'kelvin').toString()).toBe('333.15');
    expect(valueIn({ ppm: 500 }, 'fraction').toString()).toBe('0.0005');
  });

  it('turns saponification values from one basis into another', () => {
    expect(valueIn({ gNaohPerG: '0.183' }, 'mgKohPerG').toFixed(2)).toBe('256.70'); // 0.183 · 56105/39.997
    expect(valueIn({ gNaohPerG: '0.183' }, 'saponificationEquivalent').toFixed(2)).toBe('218.56'); // 39.997/0.183
    expect(valueIn({ mgKohPerG: '256.7' }, 'gNaohPerG').toFixed(4)).toBe('0.1830'); // 0.2567 · 39.997/56.105
    expect(valueIn({ mgKohPerG: '256.7' }, 'gKohPerG').toString()).toBe('0.2567');
    expect(valueIn({ saponificationEquivalent: '256.43' }, 'mgKohPerG').toFixed(2)).toBe('218.79'); // palmitic acid
  });

  it('turns alkali contents from one alkali into another', () => {
    expect(valueIn({ percentNaoh: '0.05' }, 'percentKoh').toFixed(4)).toBe('0.0701'); // 0.05 · 56.105/39.997
    expect(valueIn({ percentNaoh: '0.05' }, 'percentNa2o').toFixed(4)).toBe('0.0387'); // 0.05 · 61.979/79.994
    expect(valueIn({ percentNa2o: '77.5' }, 'percentNaoh').toFixed(2)).toBe('100.03'); // 77.5 · 79.994/61.979
  });

  it('leaves a figure in its own unit to the last digit', () => {
    expect(valueIn({ g: '0.1234567890123456789012345678901234' }, 'g').toString()).toBe(
      '0.1234567890123456789012345678901234',
    );
  });
});

describe('valueIn: laws', () => {
  // A canonical value that means something in every unit of its kind; the rest of the kinds take 0.001 to 10 000.
  const SENSIBLE: Readonly<Record<string, readonly [number, number]>> = {
    temperature: [-40_000, 200_000],
    density: [500, 3_000],
    saponificationValue: [20_000, 700_000],
  };
  const anyOf = fc.constantFrom(...Object.entries(unitsByKind())).chain(([kind, units]) => {
    const names = Object.keys(units);
    const [min, max] = SENSIBLE[kind] ?? [1, 10_000_000];
    return fc.record({
      kind: fc.constant(kind),
      canonical: fc.constant(names.find((name) => told({ [name]: 7 }, name).eq(7) && isCanonical(units, name)) ?? ''),
      from: fc.constantFrom(...names),
      to: fc.constantFrom(...names),
      value: fc.integer({ min, max }).map((thousandths) => new Decimal(thousandths).div(1000)),
    });
  });
  const isCanonical = (units: object, name: string): boolean =>
    Object.entries(units).some(
      ([key, unit]) =>
        key === name && (unit as { toCanonical: (v: Decimal) => Decimal }).toCanonical(new Decimal(7)).eq(7),
    );

  it('comes back from every unit of its kind', () => {
    fc.assert(
      fc.property(anyOf, ({ canonical, from, to, value }) => {
        const start = told({ [canonical]: value }, from);
        const back = told({ [to]: told({ [from]: start }, to) }, from);
        // 34 digits, a handful of roundings, and offsets and hydrometer scales that lose up to three digits
        const scale = Decimal.max(start.abs(), 1);
        expect(back.minus(start).abs().lte(scale.times('1e-28'))).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('goes straight as it goes by way of a third unit', () => {
    fc.assert(
      fc.property(anyOf, ({ canonical, from, to, value }) => {
        const straight = told({ [canonical]: value }, to);
        const roundabout = told({ [from]: told({ [canonical]: value }, from) }, to);
        expect(roundabout.minus(straight).abs().lte(Decimal.max(straight.abs(), 1).times('1e-28'))).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('grows with the quantity, the equivalent alone the other way', () => {
    fc.assert(
      fc.property(anyOf, ({ canonical, to, value }) => {
        const [less, more] = [
          told({ [canonical]: value }, to),
          told({ [canonical]: value.times('1.01').plus('0.001') }, to),
        ];
        fc.pre(value.gt(0));
        expect(to === 'saponificationEquivalent' ? less.gt(more) : less.lt(more)).toBe(true);
      }),
    );
  });

  it('leaves the quantity untouched', () => {
    const quantity: Quantity = Object.freeze({ lb: 2 });
    expect(told(quantity, 'oz').toString()).toBe('32');
    expect(quantity).toEqual({ lb: 2 });
  });
});

describe('valueIn: refusals', () => {
  it.each<[unknown, string, string, string, string]>([
    [undefined, 'g', 'missing', 'quantity', 'a quantity such as { g: … }, received nothing'],
    [null, 'g', 'missing', 'quantity', 'a quantity such as { g: … }, received null'],
    [{}, 'g', 'missing', 'quantity', 'one unit key with a number, received an empty object'],
    [2, 'g', 'bad-shape', 'quantity', 'a quantity such as { g: … }, received 2'],
    [new Decimal(2), 'g', 'bad-shape', 'quantity', 'a quantity such as { g: … }, received 2'],
    ['2 lb', 'g', 'bad-shape', 'quantity', "a quantity such as { g: … }, received '2 lb'"],
    [[{ lb: 2 }], 'g', 'bad-shape', 'quantity', 'a quantity such as { g: … }, received a list of 1'],
    [{ lb: 2, oz: 3 }, 'g', 'two-units', 'quantity', 'exactly one unit, received lb and oz'],
    [{ lb: '2,5' }, 'g', 'not-a-number', 'quantity.lb', "a decimal point: '2.5', received '2,5'"],
    [
      { lb: 2 },
      'gram',
      'unknown-unit',
      'unit.gram',
      `one of mg, g, kg, oz, lb (did you mean "g"?), received the unknown unit 'gram'`,
    ],
    [
      { lb: 2 },
      'kgs',
      'unknown-unit',
      'unit.kgs',
      `one of mg, g, kg, oz, lb (did you mean "kg"?), received the unknown unit 'kgs'`,
    ],
    [
      { lb: 2 },
      'percent',
      'unknown-unit',
      'unit.percent',
      `one of mg, g, kg, oz, lb, received the unknown unit 'percent'`,
    ],
    [
      { lb: 2 },
      'constructor',
      'unknown-unit',
      'unit.constructor',
      `one of mg, g, kg, oz, lb, received the unknown unit 'constructor'`,
    ],
    [
      { lb: 2, percent: 3 },
      'g',
      'unknown-unit',
      'quantity.percent',
      `one of mg, g, kg, oz, lb, received the unknown unit 'percent'`,
    ],
  ])('%o in %s is refused with %s', (quantity, unit, code, path, said) => {
    expect(refusal(() => told(quantity as object, unit))).toEqual({ code, path, message: `${path}: expected ${said}` });
  });

  it('suggests a unit of any kind for one that is none', () => {
    const { code, path, message } = refusal(() => told({ celcius: 20 }, 'fahrenheit'));
    expect({ code, path }).toEqual({ code: 'unknown-unit', path: 'quantity.celcius' });
    expect(message).toContain('(did you mean "celsius"?)');
  });

  it.each([undefined, null, 5, {}])('a unit that is no text, %o, is refused by our own error', (unit) => {
    expect(['missing', 'bad-shape', 'unknown-unit']).toContain(refusal(() => told({ lb: 2 }, unit as string)).code);
  });

  it.each([0, -190])('a saponification value of %s has no equivalent', (mgKohPerG) => {
    expect(refusal(() => valueIn({ mgKohPerG }, 'saponificationEquivalent')).code).toBe('out-of-range');
  });
});
