import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundToStep, splitToStep, type Mass, type MassInput } from '../../src/quantities/index.js';
import { Decimal } from '../../src/numbers/index.js';
import { refusal } from '../laws/refusal.js';

const grams = (masses: readonly Mass[]): string[] => masses.map(({ g }) => g.toString());

describe('roundToStep: worked by hand', () => {
  it.each([
    [{ g: '157.68' }, { g: 1 }, 'down', '157'],
    [{ g: '157.68' }, { g: 1 }, 'nearest', '158'],
    [{ g: '157.12' }, { g: 1 }, 'up', '158'],
    [{ g: '2.5' }, { g: 1 }, 'nearest', '2'],
    [{ lb: 1 }, { g: 5 }, 'nearest', '455'], // 90.718 steps
    [{ lb: 1 }, { g: 5 }, 'down', '450'],
    [{ g: 100 }, { oz: '0.1' }, 'down', '99.2233309375'], // 35.27 steps of 2.8349523125 g
    [{ kg: '0.0004' }, { g: 1 }, 'down', '0'],
  ] as const)('%o to steps of %o, %s, is %s g', (mass, step, direction, expected) => {
    expect(roundToStep(mass, step, direction).g.toString()).toBe(expected);
  });
});

describe('roundToStep: laws', () => {
  it('is frozen, and leaves mass and step untouched', () => {
    const [mass, step] = [{ g: '1.6' }, { g: 1 }];
    expect(Object.isFrozen(roundToStep(mass, step, 'nearest'))).toBe(true);
    expect([mass, step]).toEqual([{ g: '1.6' }, { g: 1 }]);
  });

  it('never weighs more alkali than was planned, by rounding down', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), fc.integer({ min: 1, max: 1e5 }), (milligrams, step) => {
        const { g } = roundToStep({ mg: milligrams }, { mg: step }, 'down');
        expect(g.times(1000).lte(milligrams) && g.times(1000).plus(step).gt(milligrams)).toBe(true);
      }),
    );
  });
});

describe('roundToStep: refusals', () => {
  it.each<[unknown, unknown, string, string]>([
    [{ g: 1 }, { g: 0 }, 'out-of-range', 'step.g'],
    [{ g: 1 }, { g: -1 }, 'out-of-range', 'step.g'],
    [{ g: 1 }, 1, 'bad-shape', 'step'],
    [{ g: 1 }, undefined, 'missing', 'step'],
    [{ g: 1 }, { percent: 1 }, 'unknown-unit', 'step.percent'],
    [{ g: 'x' }, { g: 1 }, 'not-a-number', 'mass.g'],
    [1, { g: 1 }, 'bad-shape', 'mass'],
    [{ g: 1, kg: 1 }, { g: 1 }, 'two-units', 'mass'],
  ])('%o to steps of %o is refused with %s', (mass, step, code, path) => {
    expect(refusal(() => roundToStep(mass as MassInput, step as MassInput, 'down'))).toMatchObject({ code, path });
  });

  // A word that is none of the three must not quietly round alkali up.
  it.each(['floor', 'Down', '', undefined, null, 'constructor', '__proto__', 3])(
    'direction %o is refused',
    (direction) => {
      const refused = refusal(() => roundToStep({ g: '157.68' }, { g: 1 }, direction as 'down'));
      expect(refused).toMatchObject({ code: direction === undefined ? 'missing' : 'bad-shape', path: 'direction' });
    },
  );
});

describe('splitToStep: worked by hand', () => {
  it.each<[MassInput[], MassInput, string[]]>([
    [[{ g: '33.4' }, { g: '33.4' }, { g: '33.2' }], { g: 1 }, ['34', '33', '33']], // 100 in all; the first tie goes up
    [[{ g: '0.5' }, { g: '0.5' }], { g: 1 }, ['1', '0']],
    [[{ g: '1.2' }, { g: '2.7' }, { g: '3.1' }], { g: 1 }, ['1', '3', '3']], // 7 in all; .7 is the largest remainder
    [[{ g: '1.9' }, { g: '1.9' }, { g: '1.9' }], { g: 1 }, ['2', '2', '2']], // 5.7, 6 in all
    [[{ g: '0.4' }, { g: '0.4' }, { g: '0.4' }], { g: 1 }, ['1', '0', '0']], // 1.2, 1 in all
    [[{ lb: 1 }, { oz: 7 }], { g: '0.1' }, ['453.6', '198.4']], // 453.59237 + 198.446661875 = 652.04 → 652.0
    [[{ g: 0 }, { g: 5 }], { g: 1 }, ['0', '5']],
    [[{ g: '2.5' }], { g: 1 }, ['2']], // a total is rounded to the nearest, a tie to even
  ])('%j to steps of %j is %j', (masses, step, expected) => {
    expect(grams(splitToStep(masses, step))).toEqual(expected);
  });
});

describe('splitToStep: laws', () => {
  const tenths = fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 1, maxLength: 20 });
  const step = fc.integer({ min: 1, max: 500 });
  const split = (masses: readonly number[], by: number): Decimal[] =>
    splitToStep(
      masses.map((mg) => ({ mg })),
      { mg: by },
    ).map(({ g }) => g.times(1000));
  const sum = (all: readonly (Decimal | number)[]): Decimal =>
    all.reduce<Decimal>((total, one) => total.plus(one), new Decimal(0));

  it('keeps the rounded total, in whole steps, each within one step of its mass', () => {
    fc.assert(
      fc.property(tenths, step, (masses, by) => {
        const parts = split(masses, by);
        expect(parts).toHaveLength(masses.length);
        expect(sum(parts).eq(roundToStep({ mg: sum(masses) }, { mg: by }, 'nearest').g.times(1000))).toBe(true);
        for (const [at, mass] of masses.entries()) {
          expect(parts[at]?.div(by).isInteger()).toBe(true);
          expect(parts[at]?.minus(mass).abs().lt(by)).toBe(true);
          expect(parts[at]?.gte(0)).toBe(true);
        }
      }),
    );
  });

  it('never turns the order of two masses, and of equal ones raises the earlier', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 2, maxLength: 10 }), step, (masses, by) => {
        const parts = split(masses, by);
        for (const [a, first] of masses.entries()) {
          for (const [b, second] of masses.entries()) {
            if (first > second || (first === second && a < b)) expect(parts[a]?.gte(parts[b] ?? NaN)).toBe(true);
          }
        }
      }),
    );
  });

  it('gives the same answer twice, leaves its input untouched, and can be split again', () => {
    fc.assert(
      fc.property(tenths, step, (masses, by) => {
        const given = masses.map((mg) => Object.freeze({ mg }));
        const once = splitToStep(Object.freeze(given), { mg: by });
        expect(grams(splitToStep(given, { mg: by }))).toEqual(grams(once));
        expect(grams(splitToStep(once, { mg: by }))).toEqual(grams(once));
      }),
    );
  });

  it('is frozen through and through', () => {
    const parts = splitToStep([{ g: 1 }, { g: 2 }], { g: 1 });
    expect(Object.isFrozen(parts)).toBe(true);
    expect(parts.every((part) => Object.isFrozen(part))).toBe(true);
  });
});

describe('splitToStep: refusals', () => {
  it.each<[unknown, unknown, string, string]>([
    [[], { g: 1 }, 'bad-shape', 'masses'],
    [undefined, { g: 1 }, 'missing', 'masses'],
    [{ g: 1 }, { g: 1 }, 'bad-shape', 'masses'],
    [[{ g: 1 }, { g: -1 }], { g: 1 }, 'out-of-range', 'masses[1].g'],
    [[{ g: 1 }, 2], { g: 1 }, 'bad-shape', 'masses[1]'],
    [[{ g: 1 }, undefined], { g: 1 }, 'missing', 'masses[1]'],
    [[{ g: 1 }, { gs: 1 }], { g: 1 }, 'unknown-unit', 'masses[1].gs'],
    [[{ g: 1 }], { g: 0 }, 'out-of-range', 'step.g'],
    [[{ g: 1 }], { mg: '-1' }, 'out-of-range', 'step.mg'],
    [[{ g: 1 }], undefined, 'missing', 'step'],
    [new Array(2), { g: 1 }, 'missing', 'masses[0]'], // a list of holes
  ])('%o to steps of %o is refused with %s', (masses, step, code, path) => {
    expect(refusal(() => splitToStep(masses as MassInput[], step as MassInput))).toMatchObject({ code, path });
  });
});
