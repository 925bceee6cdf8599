import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal, monotoneCubic, onStraightLines, type Knot } from '../../src/numbers/index.js';
import { refusal } from '../laws/refusal.js';

const knots = (...points: readonly (readonly [number, number])[]): Knot[] =>
  points.map(([x, y]) => ({ x: new Decimal(x), y: new Decimal(y) }));
const at = (points: readonly Knot[], x: number | string): Decimal => monotoneCubic(points).at(new Decimal(x));

/** Knots of rising x, whole numbers; y climbs by whole steps of zero or more. */
const rising = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 50 })), { minLength: 2, maxLength: 12 })
  .map((steps) => {
    let [x, y] = [0, 0];
    return knots(...steps.map(([dx, dy]) => [(x += dx), (y += dy)] as const));
  });
const place = fc.integer({ min: 0, max: 1000 }).map((part) => part / 1000);
/** The point so far along the knots. */
const along = (points: readonly Knot[], part: number): Decimal => {
  const [first, last] = [points.reduce((a) => a), points.reduce((_, b) => b)];
  return first.x.plus(last.x.minus(first.x).times(part));
};

describe('monotoneCubic: worked by hand', () => {
  it('a parabola through three knots, which no slope holds back', () => {
    // y = x² + 4x at 1, 2, 4: the slopes of the parabola are its own
    const points = knots([1, 5], [2, 12], [4, 32]);
    expect(at(points, '1.5').toString()).toBe('8.25');
    expect(at(points, 3).toString()).toBe('21');
  });

  it('two knots are a straight line', () => {
    expect(at(knots([0, 1], [4, 3]), 1).toString()).toBe('1.5');
  });

  it('is flat at a turn and stays below it', () => {
    // slopes 0 at 1; from 0 to 1: ends at 1 with slope 0, begins with the end parabola: 1 + (1 + 1)·1/2 = 2
    const points = knots([0, 0], [1, 1], [2, 0]);
    expect(at(points, '0.5').toString()).toBe('0.75'); // 2t − t² at a half
    expect(at(points, 1).toString()).toBe('1');
  });

  it('holds a slope to three times the gentler secant', () => {
    // secants 1 and 20: the parabola would start the second span with 10.5, it starts with 3
    const points = knots([0, 0], [1, 1], [2, 21]);
    const just = at(points, '1.000001').minus(1).div('0.000001');
    expect(just.toFixed(3)).toBe('3.000');
  });

  it('holds an end slope to three times its secant, and to zero where the parabola turns back', () => {
    const steep = at(knots([0, 0], [1, 1], [9, 1]), '0.000001').div('0.000001'); // parabola 1 + 1/9
    expect(steep.toFixed(3)).toBe('1.111');
    const turned = at(knots([0, 0], [1, 1], [2, 10]), '0.000001').div('0.000001'); // parabola −3
    expect(turned.toFixed(3)).toBe('0.000');
    const held = at(knots([0, 0], [4, 4], [5, -20]), '0.000001').div('0.000001'); // parabola 21
    expect(held.toFixed(3)).toBe('3.000');
  });
});

describe('monotoneCubic: laws', () => {
  it('goes through its knots exactly', () => {
    fc.assert(
      fc.property(rising, (points) => {
        for (const { x, y } of points) expect(at(points, x.toString()).eq(y)).toBe(true);
      }),
    );
  });

  it('never falls where the knots rise, and never leaves the box of two neighbours', () => {
    fc.assert(
      fc.property(rising, place, place, (points, one, other) => {
        const curve = monotoneCubic(points);
        const [low, high] = [along(points, Math.min(one, other)), along(points, Math.max(one, other))];
        expect(curve.at(low).minus(curve.at(high)).lte('1e-28')).toBe(true);
        const value = curve.at(low);
        const left = points.filter(({ x }) => x.lte(low)).reduce((_, last) => last);
        const right = points.find(({ x }) => x.gte(low)) ?? left;
        expect(value.gte(left.y.minus('1e-28')) && value.lte(right.y.plus('1e-28'))).toBe(true);
      }),
    );
  });

  it('is exact on straight lines', () => {
    fc.assert(
      fc.property(rising, place, fc.integer({ min: -9, max: 9 }), (points, part, slope) => {
        const line = points.map(({ x }) => ({ x, y: x.times(slope).plus(1) }));
        const x = along(points, part);
        expect(monotoneCubic(line).at(x).minus(x.times(slope).plus(1)).abs().lte('1e-30')).toBe(true);
      }),
    );
  });

  it('turned upside down it gives the same curve upside down', () => {
    fc.assert(
      fc.property(rising, place, (points, part) => {
        const x = along(points, part);
        const down = points.map((knot) => ({ x: knot.x, y: knot.y.neg() }));
        expect(monotoneCubic(down).at(x).plus(monotoneCubic(points).at(x)).abs().lte('1e-30')).toBe(true);
      }),
    );
  });

  it('read backwards it gives the value again, rising or falling, on flat stretches too', () => {
    fc.assert(
      fc.property(rising, place, fc.boolean(), (points, part, falling) => {
        const curve = monotoneCubic(falling ? points.map(({ x, y }) => ({ x, y: y.neg() })) : points);
        const y = curve.at(along(points, part));
        expect(curve.at(curve.inverse(y)).minus(y).abs().lte('1e-27')).toBe(true);
      }),
    );
  });

  it('reads a knot back as the knot', () => {
    const curve = monotoneCubic(knots([0, 0], [1, 1], [3, 7]));
    expect(['0', '1', '7'].map((y) => curve.inverse(new Decimal(y)).toString())).toEqual(['0', '1', '3']);
  });
});

describe('monotoneCubic: refusals', () => {
  it.each([-1, 4])('x = %s lies outside', (x) => {
    expect(refusal(() => at(knots([0, 0], [3, 7]), x))).toMatchObject({ code: 'outside-table', path: 'x' });
  });
  it.each([-1, 8])('y = %s lies outside', (y) => {
    const { inverse } = monotoneCubic(knots([0, 0], [3, 7]));
    expect(refusal(() => inverse(new Decimal(y)))).toMatchObject({ code: 'outside-table', path: 'y' });
  });
});

describe('onStraightLines', () => {
  const points = knots([0, 0], [2, 4], [3, 1]);
  it.each([
    ['0', '0'],
    ['0.5', '1'],
    ['2', '4'],
    ['2.5', '2.5'],
    ['3', '1'],
    ['4', '-2'], // the last line carried on
    ['-1', '-2'], // the first line carried on
  ])('at %s it is %s', (x, y) => {
    expect(onStraightLines(points, new Decimal(x)).toString()).toBe(y);
  });
  it('needs two knots', () => {
    expect(refusal(() => onStraightLines(knots([0, 0]), new Decimal(0)))).toMatchObject({ code: 'bad-shape' });
  });
});
