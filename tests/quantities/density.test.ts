import { describe, expect, it } from 'vitest';
import { densityUnits } from '../../src/quantities/kinds/density.js';
import { readQuantity, valueIn } from '../../src/quantities/index.js';
import { refusal } from '../laws/refusal.js';

// Density of water, g/mL: 0.99997495 at 4 °C, 0.99910257 at 15 °C, 0.99901699 at 60 °F (15.5556 °C), 0.99820675 at 20 °C.

describe('density: worked by hand', () => {
  it.each([
    [{ specificGravity20_4: '1.5' }, '1.4999624'], // 1.5 · 0.99997495
    [{ specificGravity20_20: '1.5' }, '1.4973101'], // 1.5 · 0.99820675
    [{ specificGravity15_15: '1.5' }, '1.4986539'], // 1.5 · 0.99910257
    [{ specificGravity60F_60F: '1.5' }, '1.4985255'], // 1.5 · 0.99901699
    [{ twaddell: '100' }, '1.4985255'], // 1 + 100/200 = 1.5
    [{ twaddell: '0' }, '0.9990170'], // water itself
    [{ baume145: '36' }, '1.3289676'], // 145/109 = 1.33027523
    [{ baume145: '0' }, '0.9990170'],
    [{ baume144_3: '36' }, '1.3312142'], // 144.3/108.3 = 1.33240997
    [{ baume144_3: '0' }, '0.9991026'],
    [{ kgPerM3: '1329' }, '1.3290000'],
  ] as const)('%o is %s g/mL', (density, expected) => {
    expect(valueIn(density, 'gPerML').toFixed(7)).toBe(expected);
  });

  it.each([
    ['specificGravity20_4', '1.33003'], // 1.33 / 0.99997495
    ['specificGravity20_20', '1.33239'], // 1.33 / 0.99820675
    ['specificGravity15_15', '1.33119'], // 1.33 / 0.99910257
    ['specificGravity60F_60F', '1.33131'], // 1.33 / 0.99901699
    ['twaddell', '66.26174'], // 200 · (1.3313087 − 1)
    ['baume145', '36.08461'], // 145 − 145 · 0.99901699/1.33 = 145 − 108.91539
    ['baume144_3', '35.90113'], // 144.3 − 144.3 · 0.99910257/1.33 = 144.3 − 108.39887
  ] as const)('1.33 g/mL in %s is %s', (unit, expected) => {
    expect(valueIn({ gPerML: '1.33' }, unit).toFixed(5)).toBe(expected);
  });
});

describe('density: laws', () => {
  const units = Object.keys(densityUnits) as (keyof typeof densityUnits)[];

  it('rises with the degrees of every scale', () => {
    for (const unit of units) {
      const figures = ['0.8', '0.99', '1', '1.1', '1.5', '2'].map((gPerML) => valueIn({ gPerML }, unit));
      for (const [at, figure] of figures.entries()) expect(figures[at - 1]?.lt(figure) ?? true).toBe(true);
    }
  });

  it('gives a finite figure or refuses, however thin the liquid', () => {
    for (const gPerML of ['0', '1e-40', '-1']) {
      for (const unit of units) {
        let finite = true;
        try {
          finite = valueIn({ gPerML }, unit).isFinite();
        } catch {
          expect(refusal(() => valueIn({ gPerML }, unit)).code).toBe('out-of-range');
        }
        expect(`${gPerML} g/mL in ${unit} is finite: ${String(finite)}`).toBe(
          `${gPerML} g/mL in ${unit} is finite: true`,
        );
      }
    }
  });
});

describe('density: refusals', () => {
  it.each([
    [{ baume145: '145' }, 'stock.density.baume145', 'less than the modulus, 145', '145'],
    [{ baume145: 200 }, 'stock.density.baume145', 'less than the modulus, 145', '200'],
    [{ baume144_3: '144.3' }, 'stock.density.baume144_3', 'less than the modulus, 144.3', '144.3'],
  ])('%o is out of range, with the whole path', (density, path, expected, received) => {
    expect(refusal(() => readQuantity('stock.density', density, densityUnits))).toEqual({
      code: 'out-of-range',
      path,
      message: `${path}: expected ${expected}, received ${received}`,
    });
  });
});
