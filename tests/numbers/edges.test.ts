/** Values at the edge of what is read or written: as deep as may be, lists that throw, knots of rows of unlike length. */
import { describe, expect, it } from 'vitest';
import { knotsFrom, readList, toJson } from '../../src/numbers/index.js';
import { refusal } from '../laws/refusal.js';

const nested = (levels: number, wrap: (inner: unknown) => unknown): unknown =>
  Array.from({ length: levels }).reduce<unknown>((inner) => wrap(inner), {});

describe('toJson', () => {
  it.each<[string, (inner: unknown) => unknown]>([
    ['fields', (inner) => ({ inner })],
    ['lists', (inner) => [inner]],
  ])('goes fifty %s deep, and no deeper', (_what, wrap) => {
    const deepest = nested(50, wrap);
    expect(toJson(deepest)).toEqual(deepest);
    expect(refusal(() => toJson(nested(51, wrap)))).toMatchObject({ code: 'bad-shape', path: 'result' });
  });

  it('refuses what holds itself', () => {
    const own: Record<string, unknown> = {};
    own['list'] = [own];
    expect(refusal(() => toJson(own))).toMatchObject({ code: 'bad-shape', path: 'result' });
  });
});

describe('readList', () => {
  it('refuses a list whose entries throw', () => {
    const throwing = new Proxy([1], {
      get: (list, key) => {
        if (key === '0') throw new Error('run');
        return Reflect.get(list, key) as unknown;
      },
    });
    expect(refusal(() => readList('list', throwing))).toMatchObject({ code: 'bad-shape', path: 'list' });
  });
});

describe('knotsFrom', () => {
  it('has a knot for each x that has a y', () => {
    const knots = (xs: string[], ys: string[]) => knotsFrom(xs, ys).map(({ x, y }) => [x.toString(), y.toString()]);
    expect(knots(['1', '2'], ['3', '4'])).toEqual([
      ['1', '3'],
      ['2', '4'],
    ]);
    expect(knots(['1', '2', '3'], ['4'])).toEqual([['1', '4']]);
    expect(knots(['1'], ['4', '5'])).toEqual([['1', '4']]);
  });
});
