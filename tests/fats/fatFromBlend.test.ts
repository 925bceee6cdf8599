import fc from 'fast-check';
import { fat, fatFromBlend, fatFromCertificate, fats, readFat, type Fat } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact, textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const certified = (name: string, mgKohPerG: number, half = 0): Fat =>
  fatFromCertificate({
    name,
    kind: 'triglyceride',
    saponificationValue: { mgKohPerG },
    uncertainty: { mgKohPerG: half },
  });
const part = (one: Fat, g: number | string) => ({ fat: one, mass: { g } });
const parts = fc.array(fc.tuple(fc.constantFrom(...fats.map(({ id }) => id)), fc.integer({ min: 1, max: 100000 })), {
  minLength: 1,
  maxLength: 6,
});

describe('fatFromBlend: worked by hand', () => {
  it('means by mass, each bound from the bounds', () => {
    const blend = fatFromBlend({
      name: 'Stock',
      parts: [part(certified('A', 250, 2), 700), part(certified('B', 180, 4), 300)],
    });
    const { low, likely, high } = blend.saponificationValue;
    expect(likely.mgKohPerG.toString()).toBe('229'); // 0.7 * 250 + 0.3 * 180
    expect(low.mgKohPerG.toString()).toBe('226.4'); // 0.7 * 248 + 0.3 * 176
    expect(high.mgKohPerG.toString()).toBe('231.6'); // 0.7 * 252 + 0.3 * 184
    expect(blend.parts.map(({ share }) => share.percent.toString())).toEqual(['70', '30']);
    expect(blend).toMatchObject({ kind: 'blend', from: 'blend', name: 'Stock' });
  });

  it('reads masses in any unit', () => {
    const blend = fatFromBlend({
      name: 'Stock',
      parts: [
        { fat: certified('A', 250), mass: { kg: 1 } },
        { fat: certified('B', 180), mass: { lb: 1 } }, // 453.59237 g
      ],
    });
    expect(blend.parts[1]?.share.percent.toFixed(6)).toBe('31.204922'); // 453.59237 / 1453.59237
  });

  it('a blend in a blend counts by its parts', () => {
    const inner = fatFromBlend({ name: 'Inner', parts: [part(certified('A', 250), 1), part(certified('B', 180), 3)] });
    const outer = fatFromBlend({ name: 'Outer', parts: [part(inner, 400), part(certified('C', 200), 600)] });
    expect(outer.parts.map(({ fat: { name }, share }) => [name, share.percent.toString()])).toEqual([
      ['A', '10'], // 25 % of 40 %
      ['B', '30'],
      ['C', '60'],
    ]);
    expect(outer.saponificationValue.likely.mgKohPerG.toString()).toBe('199'); // 25 + 54 + 120
  });

  it('keeps notes and sources of its parts, each note under the name of its fat', () => {
    const blend = fatFromBlend({ name: 'Stock', parts: [part(fat('babassu-oil'), 1), part(fat('tallow'), 1)] });
    expect(blend.notes.some(({ text }) => text.startsWith('Babassu oil: '))).toBe(true);
    expect(blend.basis).toEqual(expect.arrayContaining([...fat('babassu-oil').basis, ...fat('tallow').basis]));
    expect(new Set(blend.basis).size).toBe(blend.basis.length);
  });
});

describe('fatFromBlend: laws', () => {
  const made = (list: readonly (readonly [string, number])[]) =>
    fatFromBlend({ name: 'Stock', parts: list.map(([id, g]) => part(fat(id), g)) });

  it('shares add up to 100, and the value is their mean', () => {
    fc.assert(
      fc.property(parts, (list) => {
        const blend = made(list);
        const total = blend.parts.reduce((sum, { share }) => sum.plus(share.percent.toString()), new Exact(0));
        expect(total.minus(100).abs().lte('1e-30')).toBe(true); // six roundings at 34 digits
        for (const end of ['low', 'likely', 'high'] as const) {
          const mass = list.reduce((sum, [, g]) => sum + g, 0);
          const mean = list
            .reduce(
              (sum, [id, g]) => sum.plus(new Exact(fat(id).saponificationValue[end].mgKohPerG.toString()).times(g)),
              new Exact(0),
            )
            .div(mass);
          expect(deviation(blend.saponificationValue[end].mgKohPerG.toString(), mean).lte('1e-31')).toBe(true);
        }
      }),
    );
  });

  it('does not depend on the order or the size of the batch', () => {
    fc.assert(
      fc.property(parts, fc.integer({ min: 2, max: 9 }), (list, times) => {
        const value = made(list).saponificationValue.likely.mgKohPerG.toString();
        const turned = made([...list].reverse().map(([id, g]) => [id, g * times] as const)).saponificationValue;
        expect(deviation(turned.likely.mgKohPerG.toString(), value).lte('1e-31')).toBe(true);
      }),
    );
  });

  it('survives JSON, also as a blend of blends', () => {
    fc.assert(
      fc.property(parts, parts, (one, two) => {
        const blend = fatFromBlend({ name: 'Outer', parts: [part(made(one), 3), part(made(two), 7)] });
        expect(textOf(readFat(throughJson(blend)))).toBe(textOf(blend));
      }),
    );
  });

  it('of a single fat has the values of that fat', () => {
    const blend = fatFromBlend({ name: 'Alone', parts: [part(fat('coconut-oil'), '123.45')] });
    expect(textOf(blend.saponificationValue)).toBe(textOf(fat('coconut-oil').saponificationValue));
  });
});

describe('fatFromBlend: refusals', () => {
  const tallow = part(fat('tallow'), 1);
  it.each<[string, unknown, string, string]>([
    ['no parts', { name: 'x', parts: [] }, 'bad-shape', 'parts'],
    ['parts left out', { name: 'x' }, 'missing', 'parts'],
    ['no name', { parts: [tallow] }, 'missing', 'name'],
    ['parts that weigh nothing', { name: 'x', parts: [part(fat('tallow'), 0), part(fat('lard'), 0)] }, 'out-of-range', 'parts'],
    ['a negative mass', { name: 'x', parts: [tallow, part(fat('lard'), -1)] }, 'out-of-range', 'parts[1].mass.g'],
    ['a fat by name', { name: 'x', parts: [{ fat: 'tallow', mass: { g: 1 } }] }, 'bad-shape', 'parts[0].fat'],
    ['a part without mass', { name: 'x', parts: [{ fat: fat('tallow') }] }, 'missing', 'parts[0].mass'],
    ['a part without fat', { name: 'x', parts: [{ mass: { g: 1 } }] }, 'missing', 'parts[0].fat'],
    ['an unknown key in a part', { name: 'x', parts: [{ ...tallow, share: 1 }] }, 'unknown-key', 'parts[0].share'],
    ['a hole in the list', { name: 'x', parts: Object.assign(new Array(2), { 1: tallow }) }, 'missing', 'parts[0]'],
  ])('%s', (_what, input, code, path) => {
    expect(refusal(() => fatFromBlend(input as never))).toMatchObject({ code, path });
  }); // prettier-ignore
});
