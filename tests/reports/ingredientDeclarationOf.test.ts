import fc from 'fast-check';
import { fatFromBlend, fat, readFat, toJson } from 'laurate';
import { planBatch, type Batch, type PlanBatchOptions, type Recipe, type RecipeToPlan } from 'laurate/recipe';
import { ingredientDeclarationOf, publishedRecordOf, type IngredientDeclarationOptions } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { ownName } from '../../src/reports/ownName.js';
import { BASE, own, recipes, written } from '../batch/recipes.js';
import { deviation, Exact, GLYCERYL, textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { HARBOUR } from './batches.js';

const declared = (recipe: unknown, options: IngredientDeclarationOptions, plan: PlanBatchOptions = { fats: own }) =>
  ingredientDeclarationOf(planBatch(recipe as RecipeToPlan, plan), options);
const shares = ({ entries }: ReturnType<typeof declared>): Readonly<Record<string, string>> =>
  Object.fromEntries(entries.map(({ name, share }) => [name, share.likely.percent.toFixed(3)]));
const codes = ({ notes }: ReturnType<typeof declared>): readonly string[] => notes.map(({ code }) => code);

describe('a declaration, worked by hand', () => {
  // 800 g of oil of 256 mg KOH/g, 200 g of acid of 200, NaOH 172.77169 g in 345.54338 g of lye, additions of 99.5, 99.5 and
  // 70 %; nothing unsaponifiable, so that all of the 2348.54338 g is declared.
  it('as charged: masses over their sum', () => {
    const r = declared(BASE, { as: 'charged', colourants: ['colour'] });
    // water: 172.77169 + 1.5 + 1.5 + 120 = 295.77169
    expect(shares(r)).toEqual({
      'Oil of the sums': '34.064', // 800/2348.54338
      Glycerin: '12.710', // 298.5
      'Propylene Glycol': '12.710',
      Aqua: '12.594',
      Sorbitol: '11.922', // 280
      'Acid of the sums': '8.516',
      'Sodium Hydroxide': '7.357',
      colour: '0.128',
    });
    expect(r.entries.map(({ obtained }) => obtained)).toEqual([
      'unknown',
      'memory',
      'memory',
      'memory',
      'memory',
      'unknown',
      'memory',
      'unknown',
    ]);
    expect(r.text).toMatch(/^Oil of the sums \(INCI name not known\), Glycerin, Propylene Glycol, Aqua, /);
    expect(codes(r).slice(0, 3)).toEqual(['rules-of-the-place-of-sale', 'names-recalled', 'names-unknown']);
  });

  it('as formed: each fat to its own soap, glycerol formed with that added', () => {
    const r = declared(BASE, { as: 'formed' });
    // acid first: 0.7129489 mol from 200 g, soap 200 + 0.7129489 · 21.982 = 215.672 g
    // esters 3.6502985 mol, hydroxide left 4.3196150 − 0.7129489 = 3.6066661: x = 0.98804688
    // acid of the oil 800 − 3.6502985 · 38.049/3 = 753.7031 g; soap x · (753.7031 + 3.6502985 · 21.982) = 823.9749
    // oil left 800 · (1 − x) = 9.5625; glycerol 298.5 + x · 3.6502985 · 92.094/3 = 409.2174; water 295.7717 + 12.8438
    const all = new Exact('2348.54338');
    const percent = (grams: string): string => new Exact(grams).times(100).div(all).toFixed(3);
    expect(shares(r)).toEqual({
      'Sodium soap of Oil of the sums': percent('823.9749'),
      Glycerin: percent('409.2174'),
      Aqua: percent('308.6155'),
      'Propylene Glycol': percent('298.5'),
      Sorbitol: percent('280'),
      'Sodium soap of Acid of the sums': percent('215.672'),
      'Oil of the sums': percent('9.5625'),
      colour: percent('3'),
    });
    expect(codes(r)).toContain('after-complete-reaction');
    expect(GLYCERYL.toString()).toBe('38.049');
  });

  it('gives published fats the names on file, and puts fats of one name together', () => {
    const fats = [
      { fat: 'coconut-oil', mass: { g: 500 } },
      { fat: 'palm-stearin', mass: { g: 200 } },
      { fat: 'palm-oil', mass: { g: 250 } },
    ];
    const lye = [{ alkali: 'koh', solution: { hydroxide: { percent: 45 } } }];
    const charged = declared({ ...BASE, fats, lye, additions: [] }, { as: 'charged' });
    expect(charged.text).toBe('Cocos Nucifera (Coconut) Oil, Elaeis Guineensis (Palm) Oil, Aqua, Potassium Hydroxide');
    expect(charged.entries[1]?.from).toEqual(['Palm stearin', 'Palm oil']);
    const formed = declared({ ...BASE, fats, lye, additions: [] }, { as: 'formed' });
    expect(formed.text).toBe(
      'Potassium Cocoate, Potassium Palmate, Aqua, Glycerin, Cocos Nucifera (Coconut) Oil, Elaeis Guineensis (Palm) Oil',
    );
    const { inciNames } = publishedRecordOf('coconut-oil');
    expect([inciNames?.fat, inciNames?.obtained]).toEqual([charged.entries[0]?.name, 'memory']);
  });

  it('looks through a blend, and takes nobody’s id for a published one', () => {
    const blend = fatFromBlend({
      name: 'house blend',
      parts: [
        { fat: fat('coconut-oil'), mass: { g: 3 } },
        { fat: fat('stearic-acid-50'), mass: { g: 1 } },
      ],
    });
    const r = declared({ ...BASE, fats: [{ fat: blend, mass: { g: 900 } }] }, { as: 'charged' });
    expect(r.text).toContain('Cocos Nucifera (Coconut) Oil');
    expect(r.text).toContain('Stearic Acid');
    const stored = readFat({ ...toJson(own.oil), id: 'constructor' });
    expect(
      declared({ ...BASE, fats: [{ fat: stored, mass: { g: 900 } }] }, { as: 'charged' }).entries[0]?.obtained,
    ).toBe('unknown');
  });

  it('declares both metals, carbonate that is left, and caustic that is left', () => {
    const lye = [
      { alkali: 'naoh', mass: { g: 90 }, solid: { totalAlkali: { percent: 99 }, carbonate: { percent: 1 } } },
      { alkali: 'koh', mass: { g: 150 }, solid: { totalAlkali: { percent: 90 }, carbonate: { percent: 1 } } },
    ];
    const recipe = { ...BASE, fats: [BASE.fats[0]], target: undefined, lye, water: { g: 200 } };
    const r = declared(recipe, { as: 'formed' });
    // hydroxide 90·(0.99 − 0.01·0.75474)/39.997 + 150·(0.9 − 0.01·0.81190)/56.105 = 2.210674 + 2.384454 mol, for 3.650299
    expect(r.text).toMatch(/^Potassium soap of Oil.*Sodium soap of Oil/);
    // caustic left 0.944829 mol, of which 2.210674/4.595128 soda: 18.180 g; potash 27.507 g
    const names = r.entries.map(({ name }) => name);
    expect(names.slice(names.indexOf('Potassium Hydroxide'))).toEqual([
      'Potassium Hydroxide',
      'Sodium Hydroxide',
      'colour',
      'Potassium Carbonate',
      'Sodium Carbonate',
    ]);
    const caustic = r.entries.find(({ name }) => name === 'Sodium Hydroxide')?.share.likely.percent;
    const carbonate = r.entries.find(({ name }) => name === 'Sodium Carbonate')?.share.likely.percent;
    expect(caustic?.div(carbonate ?? 1).toFixed(2)).toBe('20.20'); // 18.180/0.9
  });

  it('takes the names of the caller first', () => {
    const names = {
      'OIL of the sums': { name: 'Sum Oil', sodiumSoap: 'Sodium Sumate' },
      sorbitol: { name: 'Sorbitol Syrup' },
      naoh: { name: 'Lye' },
      colour: { name: 'CI 77007' },
      water: { name: 'Water' },
    };
    const charged = declared(BASE, { as: 'charged', names, colourants: ['colour'] });
    expect(charged.text).toBe(
      'Sum Oil, Glycerin, Propylene Glycol, Water, Sorbitol Syrup, Acid of the sums (INCI name not known), Lye, CI 77007',
    );
    expect(declared(BASE, { as: 'formed', names }).entries[0]).toMatchObject({
      name: 'Sodium Sumate',
      obtained: 'caller',
      from: ['Oil of the sums'],
    });
    const potash = { ...BASE, lye: [{ alkali: 'koh', solution: { hydroxide: { percent: 45 } } }] };
    expect(
      declared(potash, { as: 'formed', names: { 'oil of the sums': names['OIL of the sums'] } }).entries[0]?.name,
    ).toBe('Potassium soap of Oil of the sums');
  });

  it('puts colourants last, heavier things before them or not', () => {
    const additions = [
      { name: 'blue paste', mass: { g: 60 } },
      { name: 'scent', mass: { g: 4 } },
    ];
    const order = (colourants: readonly string[]) =>
      declared({ ...BASE, additions }, { as: 'charged', colourants })
        .entries.map(({ name }) => name)
        .slice(-2);
    expect(order([])).toEqual(['blue paste', 'scent']);
    expect(order(['Blue Paste'])).toEqual(['scent', 'blue paste']);
  });

  it('counts what has evaporated: water, and spirit as it is split', () => {
    const additions = [{ solvent: 'ethanol', mass: { g: 100 }, assay: { percent: 100 } }];
    const plan: PlanBatchOptions = { fats: own, evaporated: { g: 100 }, spiritShareOfLoss: { percent: 40 } };
    const r = declared({ ...BASE, additions }, { as: 'charged' }, plan);
    // 1345.54338 + 100 − 100 g; spirit 60, water 172.77169 − 60
    const all = new Exact('1345.54338');
    expect(shares(r)['Alcohol']).toBe(new Exact(6000).div(all).toFixed(3));
    expect(shares(r)['Aqua']).toBe(new Exact('11277.169').div(all).toFixed(3));
    // more than was charged: what was formed has gone too
    const dry = declared({ ...BASE, additions: [] }, { as: 'charged' }, { fats: own, evaporated: { g: 180 } });
    expect(dry.text).not.toContain('Aqua');
  });

  it('says which neighbours lots could turn round', () => {
    const close = (r: ReturnType<typeof declared>) =>
      r.notes.filter(({ code }) => code === 'order-may-change').map(({ text }) => text);
    expect(close(declared(BASE, { as: 'charged' }))).toEqual([
      'Glycerin and Propylene Glycol are so close that lots could turn their order round.',
      'Propylene Glycol and Aqua are so close that lots could turn their order round.',
    ]);
    // 172.77 g of NaOH in 345.54 g of lye, 165.9 to 179.7 g at 48 to 52 %; glycerol of 176 g leads it by 1.8 %
    const additions = [{ solvent: 'glycerol', mass: { g: 176 }, assay: { percent: 100 } }];
    const vague = [{ alkali: 'naoh', solution: { hydroxide: { low: { percent: 48 }, high: { percent: 52 } } } }];
    const turned = 'Glycerin and Sodium Hydroxide are so close that lots could turn their order round.';
    expect(close(declared({ ...BASE, additions }, { as: 'charged' }))).not.toContain(turned);
    expect(close(declared({ ...BASE, additions, lye: vague }, { as: 'charged' }))).toContain(turned);
    const clear = {
      ...BASE,
      additions: [{ solvent: 'glycerol', mass: { g: 100 }, assay: { percent: 100 } }],
      water: { g: 90 },
    };
    expect(close(declared(clear, { as: 'charged' }))).toEqual([]);
  });

  it('takes neighbours for close from less than a hundredth of the greater, and colourants only among themselves', () => {
    const close = (additions: readonly object[], colourants: readonly string[] = []) =>
      declared({ ...BASE, additions, water: { g: 90 } }, { as: 'charged', colourants })
        .notes.filter(({ code }) => code === 'order-may-change')
        .map(({ text }) => text.split(' are so close')[0]);
    const named = (name: string, g: string) => ({ name, mass: { g } });
    expect(close([named('a', '50'), named('b', '49.5')])).toEqual([]);
    expect(close([named('a', '50'), named('b', '49.50001')])).toEqual(['a and b']);
    expect(close([named('a', '49.50001'), named('b', '50')])).toEqual(['b and a']);
    const three = [named('a', '50'), named('b', '49.9'), named('c', '49.8')];
    expect(close(three)).toEqual(['a and b', 'b and c']);
    expect(close(three, ['b'])).toEqual(['a and c']);
    expect(close(three, ['a', 'b'])).toEqual(['a and b']);
  });

  it('tells of things of one name how the first was named, and each by what it came from', () => {
    const name = 'Elaeis Guineensis (Palm) Oil';
    const fats = ['palm-stearin', 'palm-oil', 'palm-oil'].map((id) => ({ fat: id, mass: { g: 300 } }));
    const first = (order: typeof fats) =>
      declared({ ...BASE, fats: order }, { as: 'charged', names: { 'palm-oil': { name } } }).entries[0];
    expect(first(fats)).toMatchObject({ name, obtained: 'memory', from: ['Palm stearin', 'Palm oil'] });
    expect(first([...fats].reverse())).toMatchObject({ name, obtained: 'caller', from: ['Palm oil', 'Palm stearin'] });
  });

  it('says what triethanolamine and things with names of their own leave open', () => {
    const additions = [{ solvent: 'triethanolamine', mass: { g: 30 }, assay: { percent: 85 } }];
    const r = declared({ ...BASE, additions }, { as: 'charged' });
    expect(codes(r)).toContain('amine-as-charged');
    expect(codes(r)).not.toContain('named-as-in-the-recipe');
    // what it holds besides is no ingredient: 25.5 g of 1371.04338
    expect(shares(r)['Triethanolamine']).toBe(new Exact(2550).div('1371.04338').toFixed(3));
    expect(codes(declared(BASE, { as: 'charged' }))).toContain('named-as-in-the-recipe');
  });

  it('says all that it rests on, and nothing that is not so', () => {
    const known = { ...BASE, fats: [{ fat: 'coconut-oil', mass: { g: 1000 } }] };
    const always = ['rules-of-the-place-of-sale', 'names-recalled'];
    const there = ['water-that-is-there', 'no-ingredients-of-their-own'];
    const said = (recipe: object, as: 'charged' | 'formed' = 'charged') =>
      codes(declared(recipe, { as })).filter((code) => code !== 'order-may-change');
    expect(said({ ...known, additions: [] })).toEqual([...always, ...there]);
    expect(said({ ...known, additions: [] }, 'formed')).toEqual([...always, 'after-complete-reaction', ...there]);
    expect(said(known)).toEqual([...always, 'names-unknown', ...there, 'named-as-in-the-recipe']);
    const amine = { solvent: 'triethanolamine', mass: { g: 30 }, assay: { percent: 85 } };
    expect(said({ ...known, additions: [amine] })).toEqual([...always, ...there, 'amine-as-charged']);
  });

  it('names the publications of the masses after that of the names', () => {
    const batch = planBatch(HARBOUR);
    for (const as of ['charged', 'formed'] as const) {
      const { basis, edition } = ingredientDeclarationOf(batch, { as });
      expect(basis).toEqual(['inci', ...batch.composition.basis.filter((id) => id !== 'inci')]);
      expect(basis).toContain('codex-cxs-210-2024');
      expect(edition).toBe(batch.edition);
    }
  });

  it('counts water that is added as such, and what an addition holds beside its assay', () => {
    const additions = [
      { solvent: 'water', mass: { g: 40 } },
      { solvent: 'sorbitol', mass: { g: 100 }, assay: { percent: 70 } },
      { solvent: 'sorbitol', mass: { g: 50 }, assay: { percent: 70 } },
      { solvent: 'glycerol', mass: { g: 100 }, assay: { percent: 98 } },
    ];
    const r = declared({ ...BASE, additions }, { as: 'charged' });
    // water of the lye 172.77169, 40, 45 beside the sorbitol and 2 beside the glycerol
    const all = new Exact('1635.54338');
    const percent = (grams: string): string => new Exact(grams).times(100).div(all).toFixed(3);
    expect(shares(r)).toMatchObject({ Aqua: percent('259.77169'), Sorbitol: percent('105'), Glycerin: percent('98') });
    expect(r.entries.filter(({ name }) => name === 'Sorbitol').map(({ from }) => from)).toEqual([['sorbitol']]);
  });

  it('knows a fat by its id and by its name, blends by their parts', () => {
    const blend = fatFromBlend({ name: 'house blend', parts: [{ fat: fat('stearic-acid-50'), mass: { g: 1 } }] });
    const own = { name: 'My Acid' };
    for (const of of ['stearic-acid-50', 'stearic acid, type 50'] as const) {
      for (const one of [blend, 'stearic-acid-50']) {
        const recipe = { ...BASE, fats: [{ fat: one, mass: { g: 900 } }] };
        expect(declared(recipe, { as: 'charged', names: { [of]: own } }).text).toContain('My Acid');
      }
    }
    const here = { ...BASE, fats: [{ fat: blend, mass: { g: 900 } }] };
    // told of twice: each name from where it is given
    const names = { 'stearic-acid-50': { sodiumSoap: 'My Soap' }, 'stearic acid, type 50': own };
    expect(declared(here, { as: 'formed', names }).text).toMatch(/^My Soap, .*My Acid/);
    expect(refusal(() => declared(here, { as: 'charged', names: { 'house blend': own } })).code).toBe('unknown-key');
  });

  it('names by each kind of item: lye, water, glycerol, solvent, and a name of its own', () => {
    const items = ['naoh', 'water', 'glycerol', 'propylene-glycol', 'sorbitol', 'colour'];
    for (const item of items) {
      const r = declared(BASE, { as: 'charged', names: { [item]: { name: `my ${item}` } } });
      expect(r.entries.filter(({ obtained }) => obtained === 'caller').map(({ name }) => name)).toEqual([`my ${item}`]);
    }
    // what is not in the pot has no name there
    for (const item of ['koh', 'ethanol', 'house blend']) {
      const said = refusal(() => declared(BASE, { as: 'charged', names: { [item]: { name: 'x' } } }));
      expect([said.code, said.path]).toEqual(['unknown-key', `options.names.${item}`]);
    }
  });

  it('keeps a name on one line', () => {
    const additions = [{ name: 'scent\n, Gold\u202E', mass: { g: 3 } }];
    expect(declared({ ...BASE, additions }, { as: 'charged' }).text).toMatch(/, scent , Gold \(INCI name not known\)$/);
  });
});

describe('every declaration', () => {
  const anyRecipe = fc.oneof<fc.Arbitrary<Recipe | RecipeToPlan>[]>(recipes, written);
  const as = fc.constantFrom('charged' as const, 'formed' as const);
  const runs = { seed: 20263, numRuns: 25 };

  it('descends, adds up to a hundred, and keeps its likely figures inside their bounds', () => {
    fc.assert(
      fc.property(anyRecipe, as, (recipe, how) => {
        const { entries } = ingredientDeclarationOf(planBatch(recipe), { as: how });
        const percents = entries.map(({ share }) => new Exact(share.likely.percent.toString()));
        expect(
          deviation(
            percents.reduce((sum, one) => sum.plus(one)),
            100,
          ).lte('1e-28'),
        ).toBe(true);
        for (const [at, one] of percents.entries()) expect(one.lte(percents[at - 1] ?? 100)).toBe(true);
        for (const { share } of entries) {
          expect(share.low.percent.lte(share.likely.percent.times('1.000000000001'))).toBe(true);
          expect(share.high.percent.times('1.000000000001').gte(share.likely.percent)).toBe(true);
        }
      }),
      runs,
    );
  });

  it('as formed holds the soap, fat, water and glycerol of the composition, no more and no less', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const batch = planBatch(recipe);
        const { entries } = ingredientDeclarationOf(batch, { as: 'formed' });
        const { components: c, mass } = batch.composition;
        const out = c.unsaponifiable.mass.likely.g.plus(batch.soap.products.other.likely.g);
        const declaredGrams = mass.likely.g.minus(out);
        const grams = (is: (name: string) => boolean): Exact =>
          entries
            .filter(({ name }) => is(name))
            .reduce((sum, { share }) => sum.plus(share.likely.percent.toString()), new Exact(0))
            .times(declaredGrams.toString())
            .div(100);
        expect(
          deviation(
            grams((name) => name === 'Glycerin'),
            c.glycerol.mass.likely.g.toString(),
          ).lte('1e-25'),
        ).toBe(true);
        expect(
          deviation(
            grams((name) => name === 'Aqua'),
            c.water.mass.likely.g.toString(),
          ).lte('1e-25'),
        ).toBe(true);
        const soaps = batch.recipe.fats.flatMap((_, at) => {
          const name = batch.soap.given.fats[at]?.fat.name ?? '';
          return entries.filter(({ from }) => from.includes(name));
        });
        const ofFats = [...new Set(soaps)].reduce(
          (sum, { share }) => sum.plus(share.likely.percent.toString()),
          new Exact(0),
        );
        const made = c.soapSodium.mass.likely.g
          .plus(c.soapPotassium.mass.likely.g)
          .plus(c.freeFat.mass.likely.g)
          .plus(c.freeAcid.mass.likely.g);
        expect(deviation(ofFats.times(declaredGrams.toString()).div(100), made.toString()).lte('1e-25')).toBe(true);
      }),
      runs,
    );
  });

  it('comes out the same from JSON', () => {
    const batch = planBatch(HARBOUR, { evaporated: { g: 30 } });
    for (const how of ['charged', 'formed'] as const) {
      expect(textOf(ingredientDeclarationOf(throughJson(batch) as Batch, { as: how }))).toBe(
        textOf(ingredientDeclarationOf(batch, { as: how })),
      );
    }
  });
});

it.each([
  [{}, 'missing', 'options.as'],
  [{ as: 'cured' }, 'bad-shape', 'options.as'],
  [{ as: 'charged', style: 'x' }, 'unknown-key', 'options.style'],
  [{ as: 'charged', names: { tallow: { name: 'Tallow' } } }, 'unknown-key', 'options.names.tallow'],
  [{ as: 'charged', names: { colour: { title: 'x' } } }, 'unknown-key', 'options.names.colour.title'],
  [{ as: 'charged', names: { colour: { name: '' } } }, 'bad-shape', 'options.names.colour.name'],
  [{ as: 'charged', colourants: ['red'] }, 'unknown-key', 'options.colourants[0]'],
  [{ as: 'charged', colourants: 'colour' }, 'bad-shape', 'options.colourants'],
])('refuses %o', (options, code, path) => {
  const said = refusal(() => declared(BASE, options as unknown as IngredientDeclarationOptions));
  expect([said.code, said.path]).toEqual([code, path]);
});

it('suggests what may have been meant', () => {
  expect(refusal(() => declared(BASE, { as: 'charged', colourants: ['color'] })).message).toContain('"colour"');
});

it('knows a salt by the name it was added under', () => {
  const mass = { g: new Exact(5) };
  expect(ownName({ salt: 'sodium chloride', mass })).toBe('sodium chloride');
  expect(ownName({ name: 'scent', mass })).toBe('scent');
  const assay = { low: { percent: mass.g }, likely: { percent: mass.g }, high: { percent: mass.g } };
  expect(ownName({ solvent: 'glycerol', mass, assay })).toBeUndefined();
});
