import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { planBatch, type Batch, type PlanBatchOptions, type Recipe, type RecipeToPlan } from 'laurate/recipe';
import { batchSheetOf, type BatchSheetOptions } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { escaped } from '../../src/reports/markdown.js';
import { BASE, own, recipes, written } from '../batch/recipes.js';
import { Exact, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { cellsOf, harbour, HARBOUR, linesOf } from './batches.js';

const rowOf = (page: string, begins: string): readonly string[] =>
  cellsOf(linesOf(page).find((line) => line.startsWith(`| ${begins}`)) ?? '');
const section = (page: string, title: string): string => page.split('\n## ').find((one) => one.startsWith(title)) ?? '';
const stepOf = (page: string, title: string): string =>
  section(page, 'Work')
    .split(/\n(?=\d+\. )/)
    .find((step) => step.includes(`**${title}.**`)) ?? '';
const solid = { alkali: 'naoh', solid: { hydroxide: { percent: 98 } } } as const;
const twoLyes = [
  { alkali: 'naoh', mass: { g: 300 }, solution: { hydroxide: { percent: 50 } } },
  { alkali: 'koh', mass: { g: 60 }, solution: { hydroxide: { percent: 45 } } },
] as const;

describe('a sheet, worked by hand', () => {
  // as in the tests of planBatch: 345.54338 g of a lye of 50 %, 2348.5434 g in the pot
  it('weighs what the plan weighs, alkali cut, with the assay beside it', () => {
    const page = batchSheetOf(planBatch(BASE, { fats: own }));
    expect(rowOf(page, 'Oil of the sums')).toEqual(['Oil of the sums', '800.0', '☐', '']);
    expect(rowOf(page, 'Sodium')).toEqual(['Sodium hydroxide as lye of 50 %', '345.5', '☐', '']);
    expect(rowOf(page, 'Glycerol')).toEqual(['Glycerol of 99.5 %', '300.0', '☐', '']);
    expect(rowOf(page, 'colour')).toEqual(['colour', '3.00', '☐', '']);
    expect(rowOf(page, 'all together')).toEqual(['all together', '2348.5', '', '']);
    expect(page).toContain('No step of a scale was given');
  });

  it('keeps to the step of the scale, and turns grams into ounces', () => {
    const page = batchSheetOf(planBatch(BASE, { fats: own, scaleStep: { g: 1 } }), { units: 'both' });
    // 800/28.349523125 = 28.2192; 345/28.349523125 = 12.16952, cut
    expect(rowOf(page, 'Oil of the sums')).toEqual(['Oil of the sums', '800', '28.22', '☐', '']);
    expect(rowOf(page, 'Sodium')).toEqual(['Sodium hydroxide as lye of 50 %', '345', '12.16', '☐', '']);
    expect(page).not.toContain('No step of a scale was given');
    expect(page).toContain('62 °C (144 °F)');
  });

  it('shows a scale in ounces as it reads', () => {
    const page = batchSheetOf(planBatch(BASE, { fats: own, scaleStep: { oz: '0.05' } }), { units: 'us' });
    // 345.54338 g are 12.18868 oz, down to 12.15
    expect(rowOf(page, 'Sodium')).toEqual(['Sodium hydroxide as lye of 50 %', '12.15', '☐', '']);
    const bench = page.slice(0, page.indexOf('## What it rests on'));
    expect(bench).not.toMatch(/°C|\d (?:g|mL)\b/);
    expect(bench).toContain('Cool to 144 °F; the trade pours at 140 to 149 °F.');
  });

  it('tells targets with their bounds and limits', () => {
    const page = batchSheetOf(planBatch(BASE, { fats: own, scaleStep: { g: 5 } }));
    // superfat of 345 g: 1.1557 %; soap, water and the rest as in the composition
    expect(rowOf(page, 'superfat')).toEqual(['superfat, % of the alkali demand', '1.16', '', 'aim 1.00']);
    expect(rowOf(page, 'free caustic')).toEqual([
      'free caustic, % NaOH',
      '0.000',
      '',
      'at most 0.05 (toilet soap, recalled)',
    ]);
    const limited = { ...BASE, target: { freeCausticAlkaliAtMost: { percentKoh: '0.04' } } };
    // 0.04 · 39.997/56.105 = 0.028516, cut: a limit is not rounded up
    expect(rowOf(batchSheetOf(planBatch(limited, { fats: own })), 'free caustic')[3]).toBe('at most 0.0285 (target)');
    const charged = { ...BASE, target: undefined, lye: [{ ...BASE.lye[0], mass: { g: 340 } }] } as unknown as Recipe;
    expect(rowOf(batchSheetOf(planBatch(charged, { fats: own })), 'superfat')[3]).toBe('');
  });

  it('tells cost and moulds where they were planned', () => {
    const per = { kg: 1 };
    const names = ['coconut-oil', 'stearic-acid-50', 'naoh', 'glycerol', 'propylene-glycol', 'sorbitol', 'scent'];
    const of = Object.fromEntries(names.map((name) => [name, { amount: 2, per }]));
    const page = batchSheetOf(
      planBatch(HARBOUR, {
        scaleStep: { g: 1 },
        moulds: { volume: { mL: 500 }, count: 2 },
        prices: { currency: 'crowns | <b>', of },
      }),
    );
    const [, each, , batch = ''] = rowOf(page, String.raw`cost of a kilogram, crowns \| &lt;b&gt;`);
    expect(each).toBe('2.00'); // everything at one price, nothing evaporated
    const [, all = ''] = rowOf(page, 'all together');
    expect(batch).toBe(`batch ${(Number(all) * 0.002).toFixed(2)}`);
    expect(stepOf(page, 'Pour')).toMatch(
      /Set out \d+ moulds of 500 mL; 2 are sure to be full\. The moulds there are may fall short by \d+ mL\./,
    );
    const roomy = batchSheetOf(planBatch(HARBOUR, { moulds: { volume: { L: 9 }, count: 4 } }));
    expect(stepOf(roomy, 'Pour')).not.toContain('fall short');
  });

  it('writes figures as the caller is used to', () => {
    const batch = planBatch(BASE, { fats: own, scaleTo: { batchMass: { kg: 300 } }, scaleStep: { g: '0.1' } });
    const oil = (numbers: BatchSheetOptions['numbers']) =>
      rowOf(batchSheetOf(batch, numbers === undefined ? {} : { numbers }), 'Oil of the sums')[1];
    // 800 · 300000/2348.5434 = 102191.0
    expect(oil(undefined)).toBe('102191.0');
    expect(oil({ decimalMark: ',', groupMark: '.' })).toBe('102.191,0');
    expect(oil({ groupMark: '\u202f' })).toBe('102\u202f191.0');
  });
});

describe('the work', () => {
  it('goes on in the order of the trade: spirit last, off the heat; what is no solvent after it', () => {
    const recipe = {
      ...HARBOUR,
      additions: [
        { solvent: 'ethanol', mass: { g: 90 }, assay: { percentByVolume: 96 } },
        { solvent: 'triethanolamine', mass: { g: 20 }, assay: { percent: 99 } },
        { solvent: 'sucrose', mass: { g: 100 }, assay: { percent: 100 } },
        { solvent: 'water', mass: { g: 50 } },
        { name: 'colour', mass: { g: 1 } },
      ],
    } as const;
    const page = batchSheetOf(planBatch(recipe, { evaporated: { g: 10 } }));
    expect(stepOf(page, 'Clear')).toContain(
      'Stir in water, then sucrose of 100 %, then triethanolamine of 99 %, then ethanol of 93.84 %.',
    );
    expect(stepOf(page, 'Clear')).toContain('The spirit goes in off the heat.');
    // triethanolamine is alkaline itself: the test is before it
    expect(page).toContain('before triethanolamine goes in');
    expect(page).not.toContain('set bar');
    expect(stepOf(page, 'Pour')).toContain('what was found before it went in decides');
    expect(stepOf(page, 'What else goes in')).toContain('Let it come down near 62 °C and stir in colour.');
    expect(stepOf(page, 'Weigh the pot')).toContain('water or spirit is missing');
    expect(stepOf(page, 'Clear')).toContain('catches fire');
    expect(stepOf(page, 'Clear')).toContain('Sugars brown in hot lye');
    expect(stepOf(page, 'Hold and test')).toContain('Test before it is added.');
  });

  it('has no step for what there is nothing of, and numbers those that there are', () => {
    const titles = (additions: readonly object[]) =>
      section(batchSheetOf(planBatch({ ...BASE, additions } as unknown as RecipeToPlan, { fats: own })), 'Work').match(
        /^\d+\. \*\*[^*]+/gm,
      );
    const before = ['1. **Lye.', '2. **Fats.', '3. **Lye into the fats.', '4. **Hold and test.'];
    const [glycerol, , , colour] = BASE.additions;
    expect(titles([])).toEqual([...before, '5. **Weigh the pot.', '6. **Pour.']);
    expect(titles([glycerol])).toEqual([...before, '5. **Clear.', '6. **Weigh the pot.', '7. **Pour.']);
    expect(titles([colour])).toEqual([...before, '5. **What else goes in.', '6. **Weigh the pot.', '7. **Pour.']);
  });

  it('keeps to the order of the steps of work, whatever the order of the recipe', () => {
    const as = (solvent: string) => ({ solvent, mass: { g: 90 }, assay: { percent: 99 } });
    const additions = ['sorbitol', 'peg-400', 'propylene-glycol', 'glycerol'].map(as);
    const page = batchSheetOf(planBatch({ ...BASE, additions } as unknown as RecipeToPlan, { fats: own }));
    expect(stepOf(page, 'Clear')).toMatch(/Stir in glycerol.*then propylene glycol.*then polyethylene.*then sorbitol/);
  });

  it.each([
    [{ lye: [solid], water: { g: 200 } }, 'Dissolve the solid alkali in the water, a little at a time: '],
    [{ water: { g: 50 } }, 'Stir the lye into the water: '],
    [{}, 'It is used as it stands in the store, 50.0 % by mass, at 25 °C.'],
    [{ target: undefined, lye: [{ ...solid, mass: { g: 150 } }] }, 'gives solid alkali no water of its own'],
    [{ lye: [solid], water: { g: 50 } }, 'the solid alkali too little water ('],
    [{ lye: twoLyes }, 'Mix the lyes as they stand in the store: '],
    [{ lye: twoLyes, water: { g: 20 } }, 'Stir the lyes into the water: '],
    [
      {
        target: undefined,
        water: { g: 90 },
        lye: [
          { ...solid, mass: { g: 50 } },
          { ...BASE.lye[0], mass: { g: 200 } },
        ],
      },
      'a little at a time, then stir in the lye',
    ],
  ])('tells how the lye is made: %o', (change, said) => {
    const page = batchSheetOf(planBatch({ ...BASE, ...change } as unknown as RecipeToPlan, { fats: own }));
    expect(stepOf(page, 'Lye')).toContain(said);
    const isSolid = page.includes('Sodium hydroxide, solid');
    expect(stepOf(page, 'Lye').includes('Solid alkali goes into cold water')).toBe(isSolid);
    if (said.startsWith('Stir')) expect(stepOf(page, 'Lye')).toContain('Diluting a strong lye warms it');
  });

  it.each([
    { lye: [solid], water: { g: 50 } },
    { lye: [{ alkali: 'koh', solid: { hydroxide: { percent: 90 } } }], water: { g: 50 } },
    { target: undefined, lye: [{ ...solid, mass: { g: 150 } }] },
  ])('parts no alkali that stays solid: %o', (change) => {
    const page = batchSheetOf(planBatch({ ...BASE, ...change } as unknown as RecipeToPlan, { fats: own }));
    expect(stepOf(page, 'Lye into the fats')).toContain('Not as it is planned here: the lye stays partly solid.');
    expect(page).not.toMatch(/when all is clear|In \d+ portions/);
    expect(linesOf(page).find((line) => line.startsWith('> '))).toContain('a stronger lye stays partly solid');
  });

  it('says what spirit and acid do that are known by their names only, where they go in', () => {
    const additions = [...BASE.additions, { name: 'vodka', mass: { g: 50 } }, { name: 'citric acid', mass: { g: 5 } }];
    const page = batchSheetOf(planBatch({ ...BASE, additions }, { fats: own }));
    const rest = stepOf(page, 'What else goes in');
    expect(rest).toContain('What is spirit goes in last, off the heat.');
    expect(rest).toContain('no flame, spark or glowing plate');
    expect(rest).toContain('Acid poured into hot soap');
    expect(page).toContain('What it takes up of the lye is not counted');
    const plain = stepOf(batchSheetOf(planBatch(BASE, { fats: own })), 'What else goes in');
    expect(plain).toContain('stir in colour.');
    expect(plain).not.toMatch(/off the heat|Caution/);
  });

  it('says what to do with a pot that is too heavy, or too stiff for more lye', () => {
    const step = (change: object, options: PlanBatchOptions = {}) =>
      stepOf(batchSheetOf(planBatch({ ...BASE, ...change }, { fats: own, ...options })), 'Weigh the pot');
    expect(step({}, { evaporated: { g: 20 } })).toContain(
      'less has gone as steam: keep it open, hot and stirred until it',
    );
    expect(step({})).toContain('If it is more, more was weighed in than planned');
    const spirit = { solvent: 'ethanol', mass: { g: 90 }, assay: { percent: 94 } };
    const withSpirit = step({ additions: [spirit] }, { evaporated: { g: 20 } });
    expect(withSpirit).toContain('accept a wetter base, and drive no spirit off to mend it.');
    expect(withSpirit).not.toContain('open');
    expect(step({ additions: [{ name: 'vodka', mass: { g: 90 } }] }, { evaporated: { g: 20 } })).not.toContain('open');
    const page = batchSheetOf(harbour());
    expect(stepOf(page, 'Lye into the fats')).toContain('Stop if it cannot be stirred');
    expect(page).toContain('a pot that is stiff or weighs too much are common practice');
  });

  it('speaks of no bar where all alkali is potash', () => {
    const sheet = (...alkalis: readonly string[]) => {
      const lye = alkalis.map((alkali) => ({ alkali, mass: { g: 200 }, solution: { hydroxide: { percent: 45 } } }));
      return batchSheetOf(planBatch({ ...BASE, target: undefined, lye } as unknown as Recipe, { fats: own }));
    };
    expect(sheet('koh')).toContain('Test the cooled soap before any of it touches skin.');
    expect(rowOf(sheet('koh'), 'cooled soap')[0]).toBe('cooled soap, before skin');
    expect(sheet('koh')).not.toContain('set bar');
    for (const alkalis of [['naoh'], ['naoh', 'koh']]) expect(sheet(...alkalis)).toContain('Test a set bar');
  });

  it('tells kilograms and litres from ten thousand on, in metric units', () => {
    const of = (kg: number, units: 'metric' | 'us' = 'metric') =>
      batchSheetOf(planBatch(BASE, { fats: own, scaleTo: { batchMass: { kg } }, scaleStep: { g: 1 } }), { units });
    expect(rowOf(of(400), 'finished base')[1]).toMatch(/^(400|399\.9\d) kg$/);
    expect(rowOf(of(400), 'volume at pouring')[1]).toMatch(/^3\d\d\.\d\d L$/);
    expect(rowOf(of(9), 'finished base')[1]).toMatch(/^(9000|8999) g$/);
    expect(rowOf(of(9), 'volume at pouring')[1]).toMatch(/^\d{4} mL$/);
    expect(rowOf(of(400, 'us'), 'finished base')[1]).toMatch(/ oz$/);
  });

  it('says at the weights that a scale is coarse', () => {
    const page = (g: string) => section(batchSheetOf(planBatch(BASE, { fats: own, scaleStep: { g } })), 'Weigh out');
    expect(page('5')).toContain('Half a step of the scale is 0.72 % of the naoh weighed');
    expect(page('1')).not.toContain('Half a step');
  });

  it('says from where its portions start, and how hot it gets at the most', () => {
    const batch = harbour();
    const step = stepOf(batchSheetOf(batch), 'Lye into the fats');
    const { likely, high } = batch.heat.reaction.final;
    expect(step).toContain('cool it back to 55 °C: warmer, they are too large.');
    expect(step).toContain(
      `bring it to ${likely.celsius.toFixed(0)} °C, at the most to ${high.celsius.toFixed(0)} °C.`,
    );
  });

  it('says why it parts no lye', () => {
    const bare = { ...HARBOUR, additions: [] };
    const step = (options: PlanBatchOptions): string =>
      stepOf(batchSheetOf(planBatch(bare, options)), 'Lye into the fats');
    expect(step({ start: { pot: { celsius: 70 }, lye: { celsius: 60 } } })).toContain(
      'by itself. No parting of the lye keeps the pot below its ceiling: the pot would have to start below the ceiling of 65 °C.',
    );
    expect(step({ scaleStep: { g: 50 } })).toContain('the scale needs a step fine enough for the portions.');
  });

  it('warns of hot soap from the lye on, and again where it is poured', () => {
    const page = batchSheetOf(harbour());
    for (const title of ['Lye into the fats', 'Pour']) expect(stepOf(page, title)).toContain('Hot soap base clings');
  });

  it('names solids by what their label says', () => {
    const lye = [
      { alkali: 'naoh', mass: { g: 100 }, solid: { hydroxide: { low: { percent: 97 }, high: { percent: 99 } } } },
      { alkali: 'koh', mass: { g: 50 }, solid: { totalAlkali: { percent: 90 }, carbonate: { percent: '1.5' } } },
    ] as const;
    const page = batchSheetOf(
      planBatch({ ...BASE, target: undefined, lye, water: { g: 200 } } as unknown as Recipe, { fats: own }),
    );
    expect(rowOf(page, 'Sodium')[0]).toBe('Sodium hydroxide, solid, 97 to 99 %');
    expect(rowOf(page, 'Potassium')[0]).toBe('Potassium hydroxide, solid, total alkali 90 %, carbonate 1.5 %');
    expect(rowOf(page, 'Water')).toEqual(['Water', '200.0', '☐', '']);
  });

  it.each([
    ['50', '50', '50'],
    ['49.25', '50', '49.25 to 50.00'],
    ['49', '50.5', '49.0 to 50.5'],
    ['49.125', '50.375', '49.12 to 50.38'], // two decimals at most, half to even
  ])('names a lye by the digits of its label: %s to %s', (low, high, expected) => {
    const lye = [
      { alkali: 'naoh', solution: { hydroxide: { low: { percent: low }, high: { percent: high } } } },
    ] as const;
    const page = batchSheetOf(planBatch({ ...BASE, lye }, { fats: own }));
    expect(rowOf(page, 'Sodium')[0]).toBe(`Sodium hydroxide as lye of ${expected} %`);
  });

  it('weighs out nothing of what there is nothing of', () => {
    const additions = [...BASE.additions, { name: 'nothing', mass: { g: 0 } }];
    const page = batchSheetOf(planBatch({ ...BASE, additions }, { fats: own }), { units: 'both' });
    expect(rowOf(page, 'nothing')).toEqual(['nothing', '0.0', '0.00', '☐', '']);
  });

  it('parts the lye as the plan does, or says only that it is to be parted', () => {
    const batch = harbour();
    const portions = batch.heat.portions?.portions ?? [];
    expect(portions.length).toBeGreaterThan(1);
    expect(stepOf(batchSheetOf(batch), 'Lye into the fats')).toContain(`In ${String(portions.length)} portions of `);
    const warm = { start: { pot: { celsius: 64 }, lye: { celsius: 60 } } };
    const hot = planBatch(HARBOUR, { start: { pot: { celsius: 70 }, lye: { celsius: 60 } } });
    expect(hot.heat.portions).toBeUndefined();
    expect(stepOf(batchSheetOf(hot), 'Lye into the fats')).toContain('In small portions, stirred; wait');
    const weak = { ...BASE, water: { kg: 60 } } as const;
    expect(stepOf(batchSheetOf(planBatch(weak, { fats: own, ...warm })), 'Lye into the fats')).toContain(
      'In one portion of ',
    );
  });

  it.each([
    ['1', '5', '40 to 41'],
    ['0.5', '5', '40.5 to 41.0'],
    ['0.5', '0.9', '7.0 to 7.5'],
    ['0.5', '5.1', '41.5 to 42.0'],
    ['0.1', '5', '40.9 to 41.0'],
    ['2', '5', '40 to 42'],
  ])('writes portions as the scale of %s g shows them, in %s kg', (g, kg, expected) => {
    const start = { pot: { celsius: 55 }, lye: { celsius: 25 } };
    const batch = planBatch(HARBOUR, { scaleTo: { batchMass: { kg } }, scaleStep: { g }, start });
    const masses = batch.heat.portions?.portions.map(({ mass }) => mass.g.toNumber()) ?? [];
    expect(expected.split(' to ').map(Number)).toEqual([Math.min(...masses), Math.max(...masses)]);
    expect(stepOf(batchSheetOf(batch), 'Lye into the fats')).toContain(` portions of ${expected} g, stirred`);
  });

  it('says there nothing of what is assumed of heat, which stands at the end', () => {
    const batch = planBatch(BASE, { fats: own });
    const [note] = batch.heat.notes;
    expect(note?.code).toBe('start-temperatures-assumed');
    const page = batchSheetOf(batch);
    expect(stepOf(page, 'Lye into the fats')).toMatch(/falls again by itself[^.]*\. Stop if it cannot be stirred/);
    expect(page.split(escaped(note?.text ?? ''))).toHaveLength(2);
  });

  it('tells what the temperatures of the recipe mean', () => {
    const temperatures = [
      { stage: 'saponification', temperature: { celsius: 60 } },
      { stage: 'saponification', temperature: { celsius: 80 } },
      { stage: 'pouring', temperature: { celsius: '62.5' } },
    ] as const;
    const page = batchSheetOf(planBatch({ ...HARBOUR, temperatures }));
    expect(page).toContain('As the recipe has it: saponification 60 to 80 °C. Hotter than the trade tolerates');
    expect(page).toContain('pouring 62.5 °C. Where the trade works');
    expect(batchSheetOf(harbour())).not.toContain('As the recipe has it');
  });

  it('stops before anything is weighed where every lot leaves caustic', () => {
    const recipe = { ...HARBOUR, target: undefined, lye: [{ ...BASE.lye[0], mass: { g: 500 } }] } as unknown as Recipe;
    const [title, , quoted] = linesOf(batchSheetOf(planBatch(recipe)));
    expect(title).toBe('# Harbour clear base');
    expect(quoted).toMatch(/^> \*\*Caution:\*\* Every lot and every assay leaves free caustic/);
  });

  it('tells where the base stands among published formulas', () => {
    const { place } = harbour();
    const text = place.precedent.text.replaceAll('~', String.raw`\~`);
    expect(batchSheetOf(harbour())).toContain(`**Among published formulas:** ${text}\n`);
  });
});

describe('every sheet', () => {
  const anyRecipe = fc.oneof<fc.Arbitrary<Recipe | RecipeToPlan>[]>(recipes, written);
  const runs = { seed: 20262, numRuns: 40 };

  it('weighs every item, never more alkali than planned, and says every caution at its place, the last of all last', () => {
    fc.assert(
      fc.property(anyRecipe, fc.constantFrom('metric' as const, 'us' as const), (recipe, units) => {
        const batch = planBatch(recipe, { scaleStep: { g: '0.1' } });
        const page = batchSheetOf(batch, { units });
        const rows = linesOf(section(page, 'Weigh out')).filter((line) => line.includes('☐'));
        expect(rows).toHaveLength(batch.weigh.length);
        for (const [at, { kind, mass }] of batch.weigh.entries()) {
          const [, shown = 'NaN'] = cellsOf(rows[at] ?? '');
          const grams = new Exact(shown).times(units === 'us' ? '28.349523125' : 1);
          const off = grams.minus(mass.g.toString());
          // metric: as planned; ounces: three digits and 0.01 oz
          expect(off.abs().lte(units === 'us' ? '0.284' : 0)).toBe(true);
          if (kind === 'alkali') expect(off.lte(0)).toBe(true);
        }
        // what is hot stands where the lye goes in and where it is poured; fire wherever spirit is stirred in or stirred
        const isThere = (title: string): boolean => stepOf(page, title) !== '';
        const withSpirit = ['Clear', 'What else goes in'].filter(isThere).length;
        for (const { code, text } of batch.cautions) {
          const times = { 'hot-soap-scalds': 2, 'spirit-catches-fire': withSpirit }[code] ?? 1;
          expect(page.split(escaped(text))).toHaveLength(times + 1);
        }
        expect(linesOf(page).at(-1)).toContain('These are sums, not a certificate');
      }),
      runs,
    );
  });

  it('comes out the same from JSON, whatever the figures in it have become', () => {
    const batch = harbour();
    const stored = throughJson(batch) as Batch;
    expect(batchSheetOf({ ...stored, weigh: [] } as Batch)).toBe(batchSheetOf(batch));
  });

  it('of a normal batch is one page', () => {
    expect(linesOf(batchSheetOf(harbour())).length).toBeLessThanOrEqual(60);
  });

  it('of the harbour base stands here to be read', async () => {
    const page = batchSheetOf(harbour(), { units: 'both', numbers: { groupMark: ' ' } });
    await expect(page).toMatchFileSnapshot('sheets/harbour-clear-base.txt');
    expect(readFileSync(new URL('../../docs/batch-sheet.md', import.meta.url), 'utf8')).toContain(page.trimEnd());
  });
});

describe('what is refused', () => {
  const refused = (batch: unknown, options?: unknown) =>
    refusal(() => batchSheetOf(batch as Batch, options as BatchSheetOptions));

  it.each([
    [undefined, {}, 'missing', 'batch'],
    [{ by: 'planLye' }, {}, 'bad-shape', 'batch.by'],
    [{ by: 'planBatch' }, {}, 'missing', 'batch.given'],
    [{ by: 'planBatch', given: { recipe: {} } }, {}, 'missing', 'version'],
    [{ by: 'planBatch', given: { weigh: [] } }, {}, 'unknown-key', 'batch.given.weigh'],
    [harbour(), { units: 'imperial' }, 'bad-shape', 'options.units'],
    [harbour(), { unit: 'us' }, 'unknown-key', 'options.unit'],
    [harbour(), { numbers: { decimalMark: '|' } }, 'bad-shape', 'options.numbers.decimalMark'],
    [harbour(), { numbers: { decimalMark: ',', groupMark: ',' } }, 'bad-shape', 'options.numbers'],
  ])('%#', (batch, options, code, path) => {
    const said = refused(batch, options);
    expect([said.code, said.path]).toEqual([code, path]);
  });
});
