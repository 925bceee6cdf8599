/** A pot that cannot be parted, what is left out where it was not asked for, and the limits of the options. */
import { planBatch, type PlanBatchOptions, type Recipe } from 'laurate/recipe';
import { describe, expect, it } from 'vitest';
import { ingredientsOf } from '../../src/batch/ingredients.js';
import { ZERO } from '../../src/numbers/index.js';
import { refusal } from '../laws/refusal.js';
import { BASE, own } from './recipes.js';

const plan = (options: object = {}, recipe: unknown = BASE) =>
  planBatch(recipe as Recipe, { fats: own, ...(options as PlanBatchOptions) });
const codes = (remarks: readonly { readonly code: string }[]): string[] => remarks.map(({ code }) => code);

describe('the heat of a batch', () => {
  const cool = { start: { pot: { celsius: 40 }, lye: { celsius: 20 } } };

  it('is reckoned from what the thermometer showed, else from an assumption that is told', () => {
    const { heat } = plan(cool);
    expect([heat.reaction.given.start.pot.celsius, heat.reaction.given.start.lye.celsius].map(String)).toEqual([
      '40',
      '20',
    ]);
    expect(codes(heat.notes)).toEqual([]);
    const assumed = plan().heat;
    expect([assumed.reaction.given.start.pot.celsius, assumed.reaction.given.start.lye.celsius].map(String)).toEqual([
      '50',
      '25',
    ]);
    expect(codes(assumed.notes)).toEqual(['start-temperatures-assumed']);
  });

  it('of a pot that starts above its ceiling is told, and that the lye cannot be parted', () => {
    const hot = plan({ start: { pot: { celsius: 66 }, lye: { celsius: 20 } } });
    expect(hot.heat.portions).toBeUndefined();
    expect(codes(hot.heat.notes)).toEqual(['lye-cannot-be-parted']);
    expect(hot.heat.notes[0]?.text).toContain('the pot would have to start below the ceiling of 65 °C');
    expect(codes(hot.notes)).toContain('lye-cannot-be-parted');
    // what is not worked out is no part of the rest
    expect(hot.basis.every((id) => typeof id === 'string')).toBe(true);
    expect(hot.basis).toContain('crc-thermodynamic-properties');
  });

  it('of a lye that a coarse scale cannot part says so too', () => {
    const small = { ...BASE, additions: [], fats: [{ fat: 'oil', mass: { g: 1000 } }] };
    const { heat } = plan({ start: { pot: { celsius: 60 }, lye: { celsius: 20 } }, scaleStep: { g: 200 } }, small);
    expect([heat.portions, ...codes(heat.notes)]).toEqual([undefined, 'lye-cannot-be-parted']);
    expect(heat.notes[0]?.text).toContain('the scale needs a step fine enough');
  });

  it('parts the lye to the step of the scale', () => {
    const { portions } = plan({ ...cool, scaleStep: { g: 5 } }).heat;
    expect(portions?.portions.map(({ mass }) => mass.g.mod(5).toString())).toEqual(portions?.portions.map(() => '0'));
    expect(plan(cool).heat.portions?.given.scaleStep).toBeUndefined();
  });
});

describe('what was not asked for', () => {
  it('is no step of the scale: then a batch fills its moulds with nothing over', () => {
    const { volume, moulds } = plan({ scaleTo: 'moulds', moulds: { volume: { mL: 90 }, count: 30 } });
    expect([volume.volume.low.mL.toFixed(10), moulds?.filled.toString()]).toEqual(['2700.0000000000', '30']);
    const { composition } = plan({ scaleTo: { batchMass: { kg: 3 } } });
    expect(composition.mass.likely.g.toFixed(10)).toBe('3000.0000000000');
  });

  it('is not told: moulds without a number have none too few', () => {
    const { moulds } = plan({ moulds: { volume: { mL: 500 } } });
    expect(Object.keys(moulds ?? {})).toEqual(['each', 'filled', 'setOut']);
  });

  it('an alkali of no mass is not read off a scale', () => {
    const solution = { hydroxide: { percent: 50 } };
    const lye = [{ alkali: 'naoh', mass: { g: 300 }, solution }, { alkali: 'koh', mass: { g: 0 }, solution }];
    const written = { ...BASE, target: undefined, lye };
    expect(plan({ scaleStep: { g: 1 } }, written).notes).toEqual(plan({}, written).notes);
  }); // prettier-ignore

  it('a mass that followed from the target was not given', () => {
    const { lye } = plan().given.recipe as { readonly lye: readonly object[] };
    expect(lye.map((row) => Object.keys(row))).toEqual([['alkali', 'solution']]);
  });

  it('a fat of one’s own has one name only', () => {
    const fats = [{ fat: own.oil, grams: ZERO }];
    expect(ingredientsOf({ fats, lye: [], water: ZERO, additions: [] }).map(({ names }) => names)).toEqual([
      ['Oil of the sums'],
    ]);
  });
});

describe('limits of the options', () => {
  const price = (change: object) => ({
    prices: { currency: 'x', of: { naoh: { amount: 1, per: { kg: 1 }, ...change } } },
  });
  const start = (pot: number | string, lye: number | string) => ({
    start: { pot: { celsius: pot }, lye: { celsius: lye } },
  });

  it.each<[outside: object, path: string]>([
    [{ scaleStep: { g: 0 } }, 'scaleStep.g'],
    [{ scaleTo: { batchMass: { g: 0 } } }, 'scaleTo.batchMass.g'],
    [{ scaleTo: { inStock: { item: 'sorbitol', mass: { g: 0 } } } }, 'scaleTo.inStock.mass.g'],
    [{ evaporated: { g: -1 } }, 'evaporated.g'],
    [{ evaporated: { g: 1 }, spiritShareOfLoss: { percent: '100.1' } }, 'spiritShareOfLoss.percent'],
    [start('-0.1', 20), 'start.pot.celsius'],
    [start('100.1', 20), 'start.pot.celsius'],
    [start(50, '-0.1'), 'start.lye.celsius'],
    [start(50, '100.1'), 'start.lye.celsius'],
    [{ moulds: { volume: { mL: 0 } } }, 'moulds.volume.mL'],
    [{ moulds: { volume: { mL: 90 }, count: 0 } }, 'moulds.count'],
    [{ moulds: { volume: { mL: 90 }, count: 1_000_001 } }, 'moulds.count'],
    [price({ amount: '-0.01' }), 'prices.of.naoh.amount'],
    [price({ amount: '1000000001' }), 'prices.of.naoh.amount'],
    [price({ per: { g: 0 } }), 'prices.of.naoh.per.g'],
  ])('%j', (outside, path) => {
    expect(refusal(() => plan(outside))).toMatchObject({ code: 'out-of-range', path: `options.${path}` });
  });

  it.each<[inside: object]>([[start(0, 0)], [start(100, 100)], [{ moulds: { volume: { mL: 90 }, count: 1_000_000 } }]])(
    '%j is read',
    (inside) => {
      expect(plan(inside)).toHaveProperty('basis');
    },
  );

  it.each<[what: string, options: object, recipe: unknown, code: string, path: string]>([
    ['a start of one part', { start: { pot: { celsius: 50 } } }, BASE, 'missing', 'options.start.lye'],
    ['a start of another part', { start: { oil: { celsius: 50 } } }, BASE, 'unknown-key', 'options.start.oil'],
    ['moulds that are not there', { scaleTo: 'moulds' }, BASE, 'missing', 'options.moulds.count'],
    ['no lye at all', {}, { ...BASE, lye: [] }, 'bad-shape', 'lye'],
    [
      'one alkali with its mass and one without',
      {},
      {
        ...BASE,
        lye: [
          { ...BASE.lye[0], mass: { g: 100 } },
          { ...BASE.lye[0], alkali: 'koh' },
        ],
      },
      'missing',
      'lye[1].mass',
    ],
    ['a lye that is a number', {}, { ...BASE, lye: [5] }, 'bad-shape', 'lye[0]'],
    ['a lye that is nothing', {}, { ...BASE, lye: [null] }, 'missing', 'lye[0]'],
  ])('%s is refused', (_what, options, recipe, code, path) => {
    expect(refusal(() => plan(options, recipe))).toMatchObject({ code, path });
  });
});
