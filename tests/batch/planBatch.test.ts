import { processWindows, toJson } from 'laurate';
import { planBatch, type PlanBatchOptions, type Recipe, type RecipeToPlan } from 'laurate/recipe';
import { describe, expect, it } from 'vitest';
import { Exact } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { BASE, own } from './recipes.js';

const grams = (batch: ReturnType<typeof planBatch>): Readonly<Record<string, string>> =>
  Object.fromEntries(batch.weigh.map(({ item, mass }) => [item, mass.g.toString()]));

describe('a coconut and stearic base, worked by hand', () => {
  // Demand: (800 g · 256 mg/g + 200 g · 200 mg/g)/56105 mg/mol = 244800/56105 = 4.3632475 mol.
  // 1 % left out: 4.3196150 mol · 39.997 g/mol = 172.77164 g NaOH, 345.54338 g of a lye of 50 %.
  const batch = planBatch(BASE, { fats: own });

  it('weighs the lye that the target asks for', () => {
    expect(batch.hydroxide.mol.toFixed(6)).toBe('4.319615');
    expect(batch.weigh.map(({ kind, item, mass }) => [kind, item, mass.g.toFixed(4)])).toEqual([
      ['fat', 'Oil of the sums', '800.0000'],
      ['fat', 'Acid of the sums', '200.0000'],
      ['alkali', 'naoh', '345.5433'],
      ['addition', 'glycerol', '300.0000'],
      ['addition', 'propylene-glycol', '300.0000'],
      ['addition', 'sorbitol', '400.0000'],
      ['addition', 'colour', '3.0000'],
    ]);
    expect(batch.superfat.likely.percent.toFixed(20)).toBe('1.00000000000000000000');
    expect(batch.lye.strength.likely.percent.toFixed(20)).toBe('50.00000000000000000000');
  });

  it('rounds alkali down, and tells what comes of the masses as rounded', () => {
    const rounded = planBatch(BASE, { fats: own, scaleStep: { g: 5 } });
    // 345.5433 g down to 345 g; the colour, 3 g, is nearer to 5 than to nothing
    expect(grams(rounded)).toMatchObject({ naoh: '345', colour: '5', 'Oil of the sums': '800' });
    // 345 · 0.5/39.997 = 4.3128235 mol; 1 − 4.3128235/4.3632475 = 1.1557 %
    expect(rounded.superfat.likely.percent.toFixed(4)).toBe('1.1557');
  });

  it('says where the reading of the scale is not small beside superfat', () => {
    const coarse = (g: string) =>
      planBatch(BASE, { fats: own, scaleStep: { g } }).notes.filter(({ code }) => code === 'scale-coarse-for-alkali');
    // 345 g: half of 3 g is 0.43 %, half of 5 g 0.72 %
    expect(coarse('3')).toEqual([]);
    expect(coarse('5').map(({ text }) => text.slice(0, 47))).toEqual([
      'Half a step of the scale is 0.72 % of the naoh ',
    ]);
    expect(batch.notes.map(({ code }) => code)).not.toContain('scale-coarse-for-alkali');
  });

  it('never weighs more of a stock than there is, though the scale shows none of its last grams', () => {
    const batch = (g: string) => planBatch(BASE, { fats: own, scaleTo: { inStock: { item: 'sorbitol', mass: { g } } }, scaleStep: { g: 5 } });
    expect(['996', '998.9', '1000'].map((g) => grams(batch(g))['sorbitol'])).toEqual(['995', '995', '1000']);
  }); // prettier-ignore

  it('hands on the windows that judge, and no others', () => {
    expect(batch.windows.every(({ judges }) => judges)).toBe(true);
    expect(batch.windows.length).toBeLessThan(processWindows().length);
    expect(batch.windows.map(({ id }) => id)).toContain('pouring-usual');
  });

  it('stands beside soft soaps where all alkali is potash, else beside bars', () => {
    const lye = (...alkalis: readonly ('naoh' | 'koh')[]) =>
      alkalis.map((alkali) => ({ alkali, mass: { g: 100 }, solution: { hydroxide: { percent: 45 } } }));
    const formOf = (...alkalis: readonly ('naoh' | 'koh')[]) =>
      planBatch({ ...BASE, lye: lye(...alkalis) }, { fats: own }).place.given.form;
    expect([formOf('koh'), formOf('naoh'), formOf('naoh', 'koh')]).toEqual(['soft', 'bar', 'bar']);
  });

  it('accounts for the pot: all that is weighed, less what evaporates', () => {
    // 800 + 200 + 345.5433 + 300 + 300 + 400 + 3 = 2348.5433 g
    const { composition } = planBatch(BASE, { fats: own, evaporated: { g: 48 } });
    expect(composition.charge.g.toFixed(4)).toBe('2348.5433');
    expect(composition.mass.likely.g.toFixed(4)).toBe('2300.5433');
    // Water: half of the lye 172.7716 g, of the canisters 1.5 + 1.5 + 120, of neutralised acid 200·200/56105 = 0.712949 mol
    // · 18.015 g/mol = 12.8438, less 48.
    expect(composition.components.water.mass.likely.g.toFixed(3)).toBe('260.615');
  });

  it('scales to a mass of finished base', () => {
    const scaled = planBatch(BASE, { fats: own, evaporated: { g: 48 }, scaleTo: { batchMass: { kg: 5 } } });
    expect(scaled.composition.mass.likely.g.toFixed(20)).toBe('5000.00000000000000000000');
    // 5000/2300.5433
    expect(scaled.scale.partsPerPart.toFixed(5)).toBe('2.17340');
    expect(scaled.composition.gone.water.likely.g.toFixed(3)).toBe('104.323');
  });

  it('scales to what is in stock of one ingredient, by any of its names', () => {
    const stock = (item: string, g: number) =>
      planBatch(BASE, { fats: own, scaleTo: { inStock: { item, mass: { g } } } }).scale.partsPerPart.toFixed(6);
    expect(stock('oil of the sums', 1000)).toBe('1.250000');
    expect(stock('sorbitol', 100)).toBe('0.250000');
    expect(stock('naoh', 345)).toBe('0.998428'); // 345/345.5433
    const coarse = planBatch(BASE, {
      fats: own,
      scaleStep: { g: 10 },
      scaleTo: { inStock: { item: 'sorbitol', mass: { g: 996 } } },
    });
    expect(grams(coarse)['sorbitol']).toBe('990'); // never more than there is
  });

  it('fills all moulds with the densest lot, and says how many to set out for the lightest', () => {
    const moulds = { volume: { mL: 90 }, count: 30 };
    const batch = planBatch(BASE, { fats: own, scaleTo: 'moulds', moulds, scaleStep: { g: 1 } });
    expect(batch.moulds?.filled.toString()).toBe('30');
    expect(batch.volume.volume.low.mL.gte(2700)).toBe(true);
    // not far more than is asked for: the step of the scale only
    expect(batch.volume.volume.low.mL.lt(2705)).toBe(true);
    expect(batch.moulds?.setOut.toString()).toBe(batch.volume.volume.high.mL.div(90).ceil().toString());
    const each = batch.moulds?.each.mass.likely.g.div(batch.volume.density.likely.gPerML);
    expect(each?.toFixed(20)).toBe('90.00000000000000000000');
  });

  it('tells what too few moulds cannot hold', () => {
    const { moulds, volume } = planBatch(BASE, { fats: own, moulds: { volume: { mL: 500 }, count: 4 } });
    expect(moulds?.filled.toString()).toBe(volume.volume.low.mL.div(500).floor().toString());
    expect(moulds?.tooMuch?.high.mL.toFixed(10)).toBe(volume.volume.high.mL.minus(2000).toFixed(10));
    const few = planBatch(BASE, { fats: own, moulds: { volume: { mL: 500 }, count: 1 } });
    expect(few.moulds?.filled.toString()).toBe('1');
    const roomy = planBatch(BASE, { fats: own, moulds: { volume: { L: 9 }, count: 4 } });
    expect([roomy.moulds?.filled, roomy.moulds?.tooMuch?.high.mL].map(String)).toEqual(['0', '0']);
  });

  it('costs the batch, the kilogram and the mould', () => {
    const per = { kg: 1 };
    const of = {
      oil: { amount: '3.20', per },
      'acid of the sums': { amount: '2.50', per },
      NaOH: { amount: '24', per: { kg: 25 } },
      glycerol: { amount: '1.80', per },
      'propylene-glycol': { amount: '2', per },
      sorbitol: { amount: '1.10', per },
      colour: { amount: '0.05', per: { g: 1 } },
    };
    const recipe = { ...BASE, fats: [{ ...BASE.fats[0], fat: { ...own.oil, id: 'oil' } }, BASE.fats[1]] };
    const options: PlanBatchOptions = {
      fats: own,
      scaleStep: { g: 1 },
      evaporated: { g: 148 },
      moulds: { volume: { mL: 100 } },
      prices: { currency: 'crowns', of },
    };
    const { cost, moulds } = planBatch(recipe, options);
    // 800 g · 3.20 + 200 g · 2.50 + 345 g · 0.96 + 300 g · 1.80 + 300 g · 2 + 400 g · 1.10 per kg + 3 g · 0.05
    // = 2.56 + 0.50 + 0.3312 + 0.54 + 0.60 + 0.44 + 0.15
    expect(cost?.lines.map(({ cost }) => cost.amount.toString())).toEqual([
      '2.56',
      '0.5',
      '0.3312',
      '0.54',
      '0.6',
      '0.44',
      '0.15',
    ]);
    expect(cost?.batch.amount.toString()).toBe('5.1212');
    expect(cost?.perKilogram.likely.amount.toFixed(4)).toBe('2.3278'); // 5.1212/2.2
    expect(moulds).toBeDefined();
    expect(cost?.perMould?.amount.times(moulds?.filled ?? 0).toFixed(20)).toBe('5.12120000000000000000');
    expect(cost?.currency).toBe('crowns');
    expect(planBatch(recipe, { ...options, moulds: { volume: { L: 50 } } }).cost).not.toHaveProperty('perMould');
  });

  it('takes water as free unless it has a price', () => {
    const recipe = { ...BASE, water: { g: 50 } };
    const added = { ...BASE, additions: [...BASE.additions, { solvent: 'water', mass: { g: 50 } } as const] };
    const of = Object.fromEntries(
      ['oil of the sums', 'acid of the sums', 'naoh', 'glycerol', 'propylene-glycol', 'sorbitol', 'colour'].map(
        (item) => [item, { amount: 0, per: { kg: 1 } }],
      ),
    );
    const cost = (more: object, planned: RecipeToPlan = recipe) =>
      planBatch(planned, {
        fats: own,
        prices: { currency: 'x', of: { ...of, ...more } },
      }).cost?.batch.amount.toString();
    expect(cost({})).toBe('0');
    expect(cost({ water: { amount: 2, per: { kg: 1 } } })).toBe('0.1');
    expect(cost({}, added)).toBe('0');
    expect(cost({ water: { amount: 2, per: { kg: 1 } } }, added)).toBe('0.1');
  });

  it('says each caution once, also that of a lye which stays partly solid, which pot and lye both have', () => {
    const { cautions } = planBatch({
      version: 1,
      fats: [{ fat: 'tallow', mass: { g: 1000 } }],
      lye: [{ alkali: 'naoh', mass: { g: 135 }, solid: { hydroxide: { percent: 99 } } }],
      water: { g: 60 },
    });
    const codes = cautions.map(({ code }) => code);
    expect(codes).toContain('stronger-than-dissolves');
    expect(codes).toEqual([...new Set(codes)]);
  });

  it('carries the cautions of lye, pot and hot base, most urgent first', () => {
    const codes = batch.cautions.map(({ code }) => code);
    expect(codes[0]).toBe('caustic-burns');
    expect(codes).toEqual(
      expect.arrayContaining(['lye-into-hot-soap', 'hot-soap-scalds', 'free-fatty-acid-reacts-at-once']),
    );
    expect(new Set(codes).size).toBe(codes.length);
  });
});

describe('without a target', () => {
  const recipe: Recipe = {
    version: 1,
    fats: [{ fat: 'oil', mass: { g: 500 } }],
    lye: [{ alkali: 'naoh', mass: { g: '92.7' }, solid: { hydroxide: { percent: 98 } } }],
    water: { g: '180.5' },
  };
  it('the lye stays as charged, scaled and rounded down; water goes to the nearest', () => {
    const batch = planBatch(recipe, {
      fats: own,
      scaleStep: { g: 1 },
      scaleTo: { inStock: { item: 'oil of the sums', mass: { g: 1000 } } },
    });
    expect(grams(batch)).toEqual({ 'Oil of the sums': '1000', naoh: '185', water: '361' });
    // demand 1000·256/56105 = 4.562873 mol; charged 185·0.98/39.997 = 4.532840 mol
    expect(batch.superfat.likely.percent.toFixed(4)).toBe('0.6582');
  });

  it('too much lye is said to be too much', () => {
    const { cautions, freeCausticAlkali } = planBatch(
      { ...recipe, lye: [{ ...recipe.lye[0], mass: { g: 110 } }] } as Recipe,
      { fats: own },
    );
    expect(freeCausticAlkali.low.percentNaoh.gt(0)).toBe(true);
    expect(cautions.map(({ code }) => code)).toContain('free-caustic-certain');
  });
});

describe('two alkalis', () => {
  it('keep the proportion of hydroxide that they are written in', () => {
    const batch = planBatch(
      {
        ...BASE,
        lye: [
          { alkali: 'naoh', mass: { g: '39.997' }, solution: { hydroxide: { percent: 50 } } },
          { alkali: 'koh', mass: { g: '56.105' }, solution: { hydroxide: { percent: 50 } } },
        ],
      },
      { fats: own },
    );
    const [soda, potash] = [grams(batch)['naoh'] ?? 0, grams(batch)['koh'] ?? 0];
    // as many moles of each: half of 4.3196150 mol
    expect(new Exact(soda).div(2).div('39.997').toFixed(6)).toBe('2.159808');
    expect(new Exact(potash).div(2).div('56.105').toFixed(6)).toBe('2.159808');
  });
});

it('keeps a limit of free caustic in the finished batch with the leanest lot, and comes close to it', () => {
  const recipe = {
    ...BASE,
    fats: [{ fat: 'coconut-oil', mass: { g: 900 } }],
    target: { freeCausticAlkaliAtMost: { percentNaoh: '0.05' } },
  } as const;
  for (const scaleStep of [undefined, { g: '0.1' }, { g: 2 }]) {
    const { freeCausticAlkali } = planBatch(recipe, {
      evaporated: { g: 30 },
      ...(scaleStep === undefined ? {} : { scaleStep }),
    });
    expect(freeCausticAlkali.high.percentNaoh.lte('0.05')).toBe(true);
    if (scaleStep === undefined) expect(freeCausticAlkali.high.percentNaoh.gt('0.0499')).toBe(true);
  }
});

it('the recipe as made holds the masses that are weighed, the target, and no claims', () => {
  const recipe = {
    ...BASE,
    claimed: { superfat: { percent: 7 } },
    temperatures: [{ stage: 'pouring', temperature: { celsius: 62 } }],
  } as const;
  const made = planBatch(recipe, { fats: own, scaleStep: { g: 1 } }).recipe;
  expect(toJson(made)).toMatchObject({
    version: 1,
    title: 'Base of the sums',
    lye: [{ alkali: 'naoh', mass: { g: '345' } }],
    additions: [
      { solvent: 'glycerol', mass: { g: '300' }, assay: { percent: '99.5' } },
      {},
      {},
      { name: 'colour', mass: { g: '3' } },
    ],
    target: { superfat: { percent: '1' } },
    temperatures: [{ stage: 'pouring', temperature: { celsius: '62' } }],
  });
  expect(made).not.toHaveProperty('claimed');
});

describe('what is refused', () => {
  const solid = { alkali: 'naoh', solid: { hydroxide: { percent: 98 } } } as const;
  const refused = (recipe: unknown, options: unknown = {}) =>
    refusal(() => planBatch(recipe as Recipe, { fats: own, ...(options as PlanBatchOptions) }));

  it.each([
    ['a recipe that is none', {}, {}, 'missing', 'version'],
    ['an alkali without mass and without target', { ...BASE, target: undefined }, {}, 'missing', 'lye[0].mass'],
    [
      'two alkalis without masses',
      { ...BASE, lye: [BASE.lye[0], { ...BASE.lye[0], alkali: 'koh' }] },
      {},
      'missing',
      'lye[0].mass',
    ],
    ['a solid without water', { ...BASE, lye: [solid] }, {}, 'missing', 'water'],
    [
      'two rows of one alkali with a target',
      { ...BASE, lye: [0, 1].map(() => ({ ...BASE.lye[0], mass: { g: 100 } })) },
      {},
      'bad-shape',
      'lye[1]',
    ],
    [
      'two alkalis of no mass',
      { ...BASE, lye: (['naoh', 'koh'] as const).map((alkali) => ({ ...BASE.lye[0], alkali, mass: { g: 0 } })) },
      {},
      'out-of-range',
      'lye',
    ],
    [
      'an addition by volume',
      { ...BASE, additions: [{ solvent: 'glycerol', volume: { mL: 100 } }] },
      {},
      'bad-shape',
      'additions[0].volume',
    ],
    [
      'a solvent without assay',
      { ...BASE, additions: [{ solvent: 'glycerol', mass: { g: 100 } }] },
      {},
      'missing',
      'additions[0].assay',
    ],
    ['a step that loses a row', BASE, { scaleStep: { g: 10 } }, 'infeasible', 'additions[3].mass'],
    [
      'a step that loses the lye',
      { ...BASE, target: undefined, lye: [{ ...BASE.lye[0], mass: { g: 2 } }] },
      { scaleStep: { g: 3 } },
      'infeasible',
      'lye[0].mass',
    ],
    ['more vapour than there is water', BASE, { evaporated: { kg: 1 } }, 'infeasible', 'options.evaporated'],
    ['an unknown option', BASE, { scalestep: { g: 1 } }, 'unknown-key', 'options.scalestep'],
    ['two scalings', BASE, { scaleTo: { batchMass: { kg: 1 }, inStock: {} } }, 'bad-shape', 'options.scaleTo'],
    ['no scaling', BASE, { scaleTo: {} }, 'missing', 'options.scaleTo'],
    ['another word', BASE, { scaleTo: 'jars' }, 'bad-shape', 'options.scaleTo'],
    [
      'moulds without their number',
      BASE,
      { scaleTo: 'moulds', moulds: { volume: { mL: 90 } } },
      'missing',
      'options.moulds.count',
    ],
    ['half a mould', BASE, { moulds: { volume: { mL: 90 }, count: '2.5' } }, 'out-of-range', 'options.moulds.count'],
    [
      'a stock of nothing in it',
      BASE,
      { scaleTo: { inStock: { item: 'tallow', mass: { g: 1 } } } },
      'unknown-key',
      'options.scaleTo.inStock.item',
    ],
    [
      'a stock of a row of nothing',
      { ...BASE, additions: [{ name: 'scent', mass: { g: 0 } }] },
      { scaleTo: { inStock: { item: 'scent', mass: { g: 1 } } } },
      'infeasible',
      'options.scaleTo.inStock.item',
    ],
    ['a price missing', BASE, { prices: { currency: 'x', of: {} } }, 'missing', 'options.prices.of.Oil of the sums'],
    [
      'a price of nothing in it',
      BASE,
      { prices: { currency: 'x', of: { tallow: { amount: 1, per: { kg: 1 } } } } },
      'unknown-key',
      'options.prices.of.tallow',
    ],
    [
      'two prices of one thing',
      BASE,
      {
        prices: {
          currency: 'x',
          of: Object.fromEntries(
            ['Oil of the sums', 'oil-of-the-sums'].map((item) => [item, { amount: 1, per: { kg: 1 } }]),
          ),
        },
      },
      'bad-shape',
      'options.prices.of.oil-of-the-sums',
    ],
    [
      'a price below nothing',
      BASE,
      { prices: { currency: 'x', of: { naoh: { amount: -1, per: { kg: 1 } } } } },
      'out-of-range',
      'options.prices.of.naoh.amount',
    ],
    ['a share of no loss', BASE, { spiritShareOfLoss: { percent: 50 } }, 'missing', 'options.evaporated'],
    ['a temperature no base is poured at', BASE, { pourAt: { celsius: 120 } }, 'outside-table', 'options.pourAt'],
    [
      'a step coarser than the alkali',
      { ...BASE, fats: [BASE.fats[0]], additions: [] },
      { scaleStep: { g: 700 } },
      'infeasible',
      'options.scaleStep',
    ],
    [
      'two temperatures at one time',
      {
        ...BASE,
        temperatures: [60, 70].map((celsius) => ({ stage: 'pouring', time: { minutes: 5 }, temperature: { celsius } })),
      },
      {},
      'infeasible',
      'temperatures[1].temperature',
    ],
  ] as const)('%s', (_what, recipe, options, code, path) => {
    const said = refused(recipe, options);
    expect([said.code, said.path]).toEqual([code, path]);
  });

  it('names both prices of one thing', () => {
    const of = Object.fromEntries(['Oil of the sums', 'oil-of-the-sums'].map((item) => [item, { amount: 1, per: { kg: 1 } }])); // prettier-ignore
    const { message } = refused(BASE, { prices: { currency: 'x', of } });
    expect(message).toBe(
      'options.prices.of.oil-of-the-sums: expected one price of Oil of the sums, received another as Oil of the sums',
    );
  });

  it('says that water among the additions is none of the lye', () => {
    const additions = [{ solvent: 'water' as const, mass: { g: 200 } }];
    expect(refused({ ...BASE, lye: [solid], additions }).message).toContain('apart from any among the additions');
  });

  it('says that a mass may follow from a target', () => {
    const { target, ...rest } = BASE;
    expect(target).toBeDefined();
    expect(refused(rest).message).toContain('or a target that it follows from');
  });

  it('suggests what may have been meant', () => {
    expect(refused(BASE, { scaleTo: { inStock: { item: 'sorbital', mass: { g: 1 } } } }).message).toContain(
      '"sorbitol"',
    );
  });
});

it('names without Latin letters are told apart', () => {
  const additions = [
    { name: 'краска', mass: { g: 10 } },
    { name: 'запах', mass: { g: 5 } },
  ];
  const scale = (item: string) =>
    planBatch({ ...BASE, additions }, { fats: own, scaleTo: { inStock: { item, mass: { g: 30 } } } }).scale
      .partsPerPart;
  expect([scale('краска'), scale('запах')].map(String)).toEqual(['3', '6']);
});

it('a published fat may be called by its id or its name', () => {
  const recipe = { ...BASE, fats: [{ fat: 'coconut-oil', mass: { g: 500 } }] };
  const scale = (item: string) =>
    planBatch(recipe, { scaleTo: { inStock: { item, mass: { g: 1000 } } } }).scale.partsPerPart;
  expect([scale('coconut-oil'), scale('Coconut oil')].map(String)).toEqual(['2', '2']);
});
