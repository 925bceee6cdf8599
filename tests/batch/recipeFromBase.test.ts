import { baseFromTarget, toJson, type BaseFromTargetInput } from 'laurate';
import { planBatch, recipeFromBase, type MadeBase } from 'laurate/recipe';
import { describe, expect, it } from 'vitest';
import { throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { own } from './recipes.js';

const solid = { hydroxide: { percent: 98 } };
const input = {
  fats: [
    { fat: own.oil, share: { percent: 80 } },
    { fat: own.acid, share: { percent: 20 } },
  ],
  alkali: { naoh: { solution: { hydroxide: { percent: 50 } } }, koh: { solid }, kohShare: { percent: 25 } },
  superfat: { percent: 2 },
  batchMass: { kg: 3 },
  target: { soap: { percent: 35 }, glycerol: { percent: 15 }, salts: { percent: 1 }, other: { percent: '0.5' } },
  supplies: {
    glycerol: { assay: { low: { percent: 99 }, high: { percent: 100 } } },
    salts: { salt: 'Sodium chloride' },
    other: { name: 'Colour' },
  },
} as const satisfies BaseFromTargetInput;
const base = baseFromTarget(input);
const recipe = recipeFromBase(base, 'Base of thirty-five');
const plain = (value: unknown): unknown => toJson(value);

describe('recipeFromBase', () => {
  it('has the masses of the base, its alkalis with their assays, and its superfat as the target', () => {
    const { weigh } = base;
    expect(plain(recipe)).toEqual({
      version: 1,
      title: 'Base of thirty-five',
      fats: plain(weigh.fats),
      lye: [
        { alkali: 'naoh', mass: plain(weigh.naoh), solution: { hydroxide: { low: { percent: '50' }, likely: { percent: '50' }, high: { percent: '50' } } } },
        { alkali: 'koh', mass: plain(weigh.koh), solid: { hydroxide: { low: { percent: '98' }, likely: { percent: '98' }, high: { percent: '98' } } } },
      ],
      water: plain(weigh.water),
      additions: [
        // a recipe states one assay: the likely one
        { solvent: 'glycerol', mass: plain(weigh.additions[0]?.mass), assay: { percent: '99.5' } },
        { name: 'Sodium chloride', mass: plain(weigh.additions[1]?.mass) },
        { name: 'Colour', mass: plain(weigh.additions[2]?.mass) },
      ],
      target: { superfat: { percent: '2' } },
    });
  }); // prettier-ignore

  it('plans to the base it was made of', () => {
    const batch = planBatch(recipe);
    expect(batch.superfat.likely.percent.toFixed(10)).toBe('2.0000000000');
    expect(batch.composition.mass.likely.g.toFixed(6)).toBe('3000.000000');
  });

  it('has no title unless it is given one, and no alkali that the base has not', () => {
    const one = baseFromTarget({ ...input, alkali: { koh: { solid } } });
    const { title, lye } = recipeFromBase(one);
    expect([title, 'title' in recipeFromBase(one)]).toEqual([undefined, false]);
    expect(lye.map(({ alkali }) => alkali)).toEqual(['koh']);
  });

  it('is the same of a base from JSON', () => {
    expect(plain(recipeFromBase(throughJson(base) as never, 'Base of thirty-five'))).toEqual(plain(recipe));
  });

  it.each<[string, unknown, string | undefined, string, string]>([
    ['nothing', undefined, undefined, 'missing', 'base'],
    ['a text', 'base', undefined, 'bad-shape', 'base'],
    ['another result', { ...base, by: 'planLye' }, undefined, 'bad-shape', 'base.by'],
    ['a result of no function', { given: base.given }, undefined, 'missing', 'base.by'],
    ['a base of nothing given', { by: 'baseFromTarget' }, undefined, 'missing', 'input'],
    ['an empty title', base, ' ', 'bad-shape', 'title'],
  ])('refuses %s', (_what, value, title, code, path) => {
    expect(refusal(() => recipeFromBase(value as MadeBase, title))).toMatchObject({ code, path });
  });
});
