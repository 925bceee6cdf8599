import { Ajv, type SchemaObject } from 'ajv';
import fc from 'fast-check';
import {
  compositionFrom,
  fat,
  fatFromCertificate,
  fatFromBlend,
  placeAmongPublished,
  planLye,
  soapFromLye,
  superfatFromLye,
  toJson,
  type AdditionInput,
  type Decimal,
  type Estimate,
  type TemperatureReading,
} from 'laurate';
import { planBatch } from 'laurate/recipe';
import {
  compositionChartOf,
  lotVariationChartOf,
  placeChartOf,
  temperatureChartOf,
  type Chart,
  type ChartPlace,
  type ChartRow,
} from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import schema from '../../node_modules/vega-lite/build/vega-lite-schema.json' with { type: 'json' };
import { svgOf } from '../docs/svgOf.js';
import { refusal } from '../laws/refusal.js';

const coconut = fat('coconut-oil');
const fats = [
  { fat: coconut, mass: { g: 610 } },
  { fat: fat('stearic-acid-50'), mass: { g: 230 } },
  { fat: fat('castor-oil'), mass: { g: 60 } },
];
const stock = { low: { percent: 49 }, likely: { percent: 50 }, high: { percent: 51 } };
const naoh = (g: number) => [{ alkali: 'naoh', mass: { g }, solution: { hydroxide: stock } }] as const;
const additions: readonly AdditionInput[] = [
  { solvent: 'propylene-glycol', mass: { g: 330 }, assay: { percent: '99.5' } },
  { solvent: 'sorbitol', mass: { g: 520 }, assay: { percent: 70 } },
  { salt: 'Salt', mass: { g: 3 } },
];
const pot = compositionFrom({ soap: soapFromLye({ fats, lye: naoh(300), water: { g: 140 } }), additions });
const plan = planLye({
  fats,
  alkali: { naoh: { solution: { hydroxide: stock } } },
  target: { superfat: { percent: 2 } },
  dilution: { strength: { percent: 33 } },
});
const strong = superfatFromLye({ fats, lye: naoh(340) });
const weak = superfatFromLye({ fats: [{ fat: coconut, mass: { g: 900 } }], lye: naoh(100) });
const batch = planBatch({
  version: 1,
  fats: [{ fat: 'coconut-oil', mass: { g: 700 } }],
  lye: [{ alkali: 'naoh', solution: { hydroxide: stock } }],
  additions: [{ solvent: 'glycerol', mass: { g: 250 }, assay: { percent: '99.5' } }],
  target: { superfat: { percent: 1 } },
});
const place = placeAmongPublished({ composition: pot });

const reading = (stage: TemperatureReading['stage'], celsius: number, minutes?: number): TemperatureReading => ({
  stage,
  temperature: { celsius },
  ...(minutes === undefined ? {} : { time: { minutes } }),
});
const log = [
  reading('lye', 88, 0),
  reading('saponification', 64, 20),
  reading('saponification', 52, 0),
  reading('saponification', 77, 40),
  reading('saponification', 70, 60),
  reading('clearing', 66),
  reading('clearing', 71),
  reading('pouring', 58, 120),
];

const charts: Readonly<Record<string, Chart>> = {
  'a pot': compositionChartOf(pot),
  'a pot of soap alone': compositionChartOf(
    compositionFrom({ soap: soapFromLye({ fats, lye: naoh(300) }), additions: [] }),
  ),
  'a plan': lotVariationChartOf(plan, { limit: 'toilet-soap-is-2888' }),
  'a plan without a limit': lotVariationChartOf(plan),
  'too much alkali': lotVariationChartOf(strong, { limit: { percentNaoh: '0.3' } }),
  'far too little alkali': lotVariationChartOf(weak, { limit: { percentNaoh: '0.000012345' } }),
  'a batch': lotVariationChartOf(batch, { limit: 'laundry-soap-customary', title: 'Batch 12' }),
  'a log': temperatureChartOf({ readings: log }),
  'one reading': temperatureChartOf({ readings: [reading('pouring', 62)] }),
  'one temperature twice': temperatureChartOf({ readings: [reading('clearing', 62, 5), reading('clearing', 62, 5)] }),
  'a place': placeChartOf(place, { title: 'Batch 12' }),
  'a place among creams': placeChartOf(placeAmongPublished({ composition: pot, form: 'cream' })),
  'a place without profile': placeChartOf(
    placeAmongPublished({
      composition: pot,
      fats: [
        {
          fat: fatFromCertificate({ name: 'Lot', saponificationValue: { mgKohPerG: 200 }, kind: 'triglyceride' }),
          mass: { g: 1 },
        },
      ],
    }),
  ),
};

/** A chart to be read: each mark, and what it is drawn from, on a line of its own; what is as at the last mark is not repeated. */
function page({ concat, ...whole }: Chart): string {
  const lines = (value: object): readonly string[] =>
    Object.entries(value).map(([key, one]) => `${key}: ${JSON.stringify(one)}`);
  const panels = concat.flatMap(({ layer, ...panel }) => {
    const last = new Map<string, string>();
    const once = (line: string): string => {
      const key = line.slice(0, line.indexOf(':'));
      if (last.get(key) === line) return `${key}: as above`;
      last.set(key, line);
      return line;
    };
    const layers = layer.flatMap(({ mark, encoding, data }) => [
      `  mark: ${JSON.stringify(mark)}`,
      ...lines(encoding).map((line) => `    ${once(line)}`),
      ...once(`rows: ${data.values.map((one) => `\n      ${JSON.stringify(one)}`).join('')}`)
        .split('\n')
        .map((line, at) => (at === 0 ? `    ${line.trimEnd()}` : line)),
    ]);
    return ['', ...lines(panel), ...layers];
  });
  return [...lines(whole), ...panels, ''].join('\n');
}

/** Rows of a panel: those that its last layer draws. */
const rowsOf = (chart: Chart, panel = 0): ChartRow[] => chart.concat[panel]?.layer.at(-1)?.data.values ?? [];
const row = (chart: Chart, name: string, panel = 0): ChartRow | undefined =>
  rowsOf(chart, panel).find((one) => one['name'] === name);
const texts = (svg: string): string[] => [...svg.matchAll(/>([^<]+)</g)].map(([, text = '']) => text);

const scaleOf = (place: ChartPlace | undefined) =>
  place !== undefined && 'field' in place && place.type === 'quantitative' ? place.scale : undefined;
/** The ends of an axis of a panel. */
const domainOf = (chart: Chart | undefined, panel: number, axis: 'x' | 'y' = 'x') =>
  chart?.concat[panel]?.layer.flatMap(({ encoding }) => scaleOf(encoding[axis])?.domain ?? []).slice(0, 2);

/** That an interval covers an estimate and is wider by less than a step at each end. */
function expectCovers(drawn: ChartRow | undefined, { low, likely, high }: Estimate<Decimal>, step: number): void {
  const [drawnLow, drawnLikely, drawnHigh] = ['low', 'likely', 'high'].map((end) => Number(drawn?.[end]));
  expect(low.minus(drawnLow ?? NaN).toNumber()).toBeGreaterThanOrEqual(0);
  expect(low.minus(drawnLow ?? NaN).toNumber()).toBeLessThan(step);
  expect(Math.abs(likely.minus(drawnLikely ?? NaN).toNumber())).toBeLessThanOrEqual(step / 2);
  expect(high.minus(drawnHigh ?? NaN).toNumber()).toBeLessThanOrEqual(0);
  expect(high.minus(drawnHigh ?? NaN).toNumber()).toBeGreaterThan(-step);
}
const percents = (estimate: Estimate<{ readonly percent: Decimal }>): Estimate<Decimal> => ({
  low: estimate.low.percent,
  likely: estimate.likely.percent,
  high: estimate.high.percent,
});

describe('every chart', () => {
  const validate = new Ajv({ strict: false, allErrors: true, validateFormats: false }).compile(schema as SchemaObject);

  it.each(Object.entries(charts))('%s follows the schema of Vega-Lite', (_, chart) => {
    expect(validate(chart) ? [] : validate.errors?.slice(0, 3)).toEqual([]);
  });

  it('would not follow it with a mark that is none', () => {
    const chart = structuredClone(charts['a plan']);
    Object.assign(chart?.concat[0]?.layer[0]?.mark ?? {}, { type: 'bra' });
    expect(validate(chart)).toBe(false);
  });

  it.each(Object.entries(charts))('%s is drawn without a complaint, its words as text', async (_, chart) => {
    // a copy, because the library marks the rows it draws
    const { svg, complaints } = await svgOf(structuredClone(chart));
    expect(complaints).toEqual([]);
    expect(svg).not.toMatch(/NaN|undefined|null|Infinity/);
    const written = texts(svg);
    for (const text of [
      ...chart.title.text,
      ...chart.title.subtitle,
      ...chart.concat.map((panel) => panel.title.text),
    ]) {
      expect(written).toContain(text);
    }
    for (const { layer } of chart.concat) {
      for (const { mark, encoding, data } of layer) {
        const field = mark.type === 'text' ? encoding.text?.field : undefined;
        if (field !== undefined) {
          for (const one of data.values) if (one[field] !== '') expect(written).toContain(one[field]);
        }
      }
    }
  });

  it('would be complained of with a shape on a bar', async () => {
    const { complaints } = await svgOf({
      data: { values: [{ a: 1 }] },
      mark: 'bar',
      encoding: { x: { field: 'a', type: 'quantitative' }, shape: { field: 'a', type: 'nominal' } },
    });
    expect(complaints).toEqual([expect.stringContaining('shape')]);
  });

  it.each(Object.entries(charts))('%s is plain JSON, with the unit in the title of each axis', (_, chart) => {
    expect(JSON.parse(JSON.stringify(chart))).toStrictEqual(chart);
    const axes = JSON.stringify(chart).match(/"axis":\{"title":"[^"]+"/g) ?? [];
    expect(axes.length).toBeGreaterThan(0);
    for (const axis of axes) expect(axis).toMatch(/percent|parts|minutes|°C|readings in the order/);
  });

  /** Each axis of a panel with its ends, and every figure that stands on it. */
  const axesOf = ({ layer }: Chart['concat'][number]) =>
    (['x', 'y'] as const).flatMap((axis) => {
      const scales = layer.flatMap(({ encoding }) => scaleOf(encoding[axis]) ?? []);
      const figures = layer.flatMap(({ encoding, data }) =>
        [encoding[axis], encoding[`${axis}2`]].flatMap((place) =>
          place !== undefined && 'field' in place && scaleOf(encoding[axis]) !== undefined
            ? data.values.map((one) => Number(one[place.field]))
            : [],
        ),
      );
      return scales.length === 0 ? [] : [{ axis, scales, figures }];
    });

  it.each(Object.entries(charts))('%s has room on each axis for all that stands on it', (_, chart) => {
    for (const panel of chart.concat) {
      const axes = axesOf(panel);
      expect(axes.length).toBeGreaterThan(0);
      for (const { scales, figures } of axes) {
        // layers of one axis agree on its ends
        expect(new Set(scales.map((scale) => JSON.stringify(scale))).size).toBe(1);
        const [from = NaN, to = NaN] = scales[0]?.domain ?? [];
        expect(to).toBeGreaterThan(from);
        for (const figure of figures) {
          expect(figure).toSatisfy((one: number) => one > from || (one === 0 && from === 0));
          expect(figure).toSatisfy((one: number) => one < to || (one === 0 && to === 0));
        }
      }
    }
  });

  it.each([
    ['a pot', 'composition'],
    ['a plan', 'lot-variation'],
    ['a log', 'temperature'],
    ['a place', 'place'],
  ])('%s stands here to be read', async (name, file) => {
    const chart = charts[name];
    if (chart === undefined) throw new Error('no chart');
    await expect(page(chart)).toMatchFileSnapshot(`charts/${file}.txt`);
  });

  it.each([
    [() => compositionChartOf(pot, { title: 'Batch 12' }), 'a pot'],
    [() => lotVariationChartOf(plan, { title: 'Batch 12' }), 'a plan without a limit'],
    [() => temperatureChartOf({ readings: log }, { title: 'Batch 12' }), 'a log'],
    [() => placeChartOf(place, { title: 'Batch 12' }), 'without'],
  ])('says its title before all else, and is the same without it: %#', (draw, plain) => {
    const [titled, bare] = [draw(), charts[plain] ?? placeChartOf(place)];
    expect(titled.description).toBe(`Batch 12. ${bare.description}`);
    expect(titled.title.text).toEqual(['Batch 12:', ...bare.title.text]);
    expect({ ...titled, title: 0, description: 0 }).toEqual({ ...bare, title: 0, description: 0 });
  });

  it('is made anew and not frozen, because the library marks the rows it draws', async () => {
    const chart = compositionChartOf(pot);
    const { complaints } = await svgOf(chart);
    expect(complaints).toEqual([]);
    expect(chart).not.toEqual(charts['a pot']);
    expect(JSON.stringify(chart)).toBe(JSON.stringify(charts['a pot']));
    expect(compositionChartOf(pot)).toEqual(charts['a pot']);
  });

  it('is the same of a result read back from JSON', () => {
    const back = <T>(result: T) => JSON.parse(JSON.stringify(toJson(result))) as T;
    expect(compositionChartOf(back(pot))).toEqual(charts['a pot']);
    expect(lotVariationChartOf(back(plan))).toEqual(charts['a plan without a limit']);
    expect(placeChartOf(back(place), { title: 'Batch 12' })).toEqual(charts['a place']);
    expect(lotVariationChartOf(back(batch), { limit: 'laundry-soap-customary', title: 'Batch 12' })).toEqual(
      charts['a batch'],
    );
  });
});

describe('compositionChartOf', () => {
  const chart = compositionChartOf(pot);

  it('covers the shares of the composition, the most first, and leaves out what is not there', () => {
    expect(rowsOf(chart).map(({ name }) => name)).toEqual([
      'sodium soap',
      'water',
      'sorbitol',
      'propylene glycol',
      'glycerol, formed and added',
      'fat left free',
      'unsaponifiable matter',
      'salts',
      'caustic left free',
    ]);
    expectCovers(row(chart, 'sodium soap'), percents(pot.components.soapSodium.share), 0.01);
    expectCovers(row(chart, 'fat left free'), percents(pot.components.freeFat.share), 0.01);
    expectCovers(row(chart, 'caustic left free'), percents(pot.components.freeCaustic.share), 0.01);
    expect(pot.components.freeCaustic.share.likely.percent.isZero()).toBe(true);
    expect(Number(row(chart, 'caustic left free')?.['high'])).toBeGreaterThan(0);
  });

  it('gives what does not vary by one figure', () => {
    const { low, likely, high } = percents(pot.components.salts.share);
    expect(high.minus(low).gt(0)).toBe(false);
    expect(row(chart, 'salts')).toMatchObject({ low: 0.14, likely: 0.14, high: 0.14, label: '0.1 %' });
    expect(likely.toFixed(4)).toBe('0.1368'); // 3 of 900 + 300 + 140 + 330 + 520 + 3 g
  });

  it('says the same in words, for those who do not see it', () => {
    for (const { name, label } of rowsOf(chart))
      expect(chart.description).toContain(`${String(name)} ${String(label)}`);
  });
});

describe('lotVariationChartOf', () => {
  it('goes a twentieth further than what stands on its axis, and is one long where all is nought', () => {
    const { low, high } = row(lotVariationChartOf(plan), 'all together') ?? {};
    expect(Number(low)).toBeLessThan(0);
    expect(domainOf(charts['a plan'], 0)).toEqual([Number(low) * 1.05, Number(high) * 1.05]);
    // far above what any lot leaves
    const limited = lotVariationChartOf(plan, { limit: { percentNaoh: 2 } });
    expect(domainOf(limited, 1)).toEqual([0, 2.1]);
    expect(domainOf(lotVariationChartOf(weak), 1)).toEqual([0, 1]);
    // superfat below nought only: the axis ends at the line of just enough alkali
    const lots = row(charts['too much alkali'] ?? limited, 'all together');
    expect(Number(lots?.['high'])).toBeLessThan(0);
    expect(domainOf(charts['too much alkali'], 0)).toEqual([Number(lots?.['low']) * 1.05, 0]);
  });

  it('covers superfat and free caustic of each result, and stands at its limit', () => {
    for (const [result, chart] of [
      [plan, charts['a plan']],
      [strong, charts['too much alkali']],
      [batch, charts['a batch']],
      [soapFromLye({ fats, lye: naoh(320) }), lotVariationChartOf(soapFromLye({ fats, lye: naoh(320) }))],
    ] as const) {
      if (chart === undefined) throw new Error('no chart');
      const { low, likely, high } = result.freeCausticAlkali;
      expectCovers(row(chart, 'all together'), percents(result.superfat), 0.01);
      expectCovers(
        row(chart, 'all together', 1),
        { low: low.percentNaoh, likely: likely.percentNaoh, high: high.percentNaoh },
        0.001,
      );
    }
    const lines = charts['a plan']?.concat[1]?.layer.map(({ data }) => data.values[0]) ?? [];
    expect(lines).toContainEqual({ at: 0.05, label: 'limit 0.05 % (toilet soap, recalled)' });
    expect(charts['far too little alkali']?.concat[1]?.layer[0]?.data.values).toEqual([
      { at: 0.00001234, label: 'limit 0.00001234 %' }, // four digits, ties to even
    ]);
  });

  it('takes the caustic of a batch as its share of the finished batch', () => {
    const high = Number(row(lotVariationChartOf(batch), 'all together', 1)?.['high']);
    expect(high).toBeCloseTo(batch.freeCausticAlkali.high.percentNaoh.toNumber(), 2);
    expect(high).toBeLessThan(batch.soap.freeCausticAlkali.high.percentNaoh.toNumber());
  });

  it('tells what one fat does by itself, and the alkali: worked by hand', () => {
    const lots = { low: { mgKohPerG: 190 }, likely: { mgKohPerG: 200 }, high: { mgKohPerG: 204 } };
    const lot = fatFromCertificate({ name: 'A', kind: 'triglyceride', saponificationValue: lots });
    const exact = fatFromCertificate({ name: 'B', kind: 'triglyceride', saponificationValue: { mgKohPerG: 250 } });
    const chart = lotVariationChartOf(
      superfatFromLye({
        fats: [
          { fat: exact, mass: { g: 400 } },
          { fat: lot, mass: { g: 500 } },
        ],
        lye: [
          {
            alkali: 'koh',
            mass: { g: 210 },
            solid: { hydroxide: { low: { percent: 88 }, likely: { percent: 90 }, high: { percent: 91 } } },
          },
        ],
      }),
    );
    // demand in g KOH: 400 · 0.250 + 500 · 0.200 = 200, from 195 to 202; charged 210 · 0.90 = 189, from 184.8 to 191.1
    expect(rowsOf(chart).map(({ name, low, likely, high }) => [name, low, likely, high])).toEqual([
      ['all together', 2, 5.5, 8.52], // 1 − 191.1/195, 1 − 189/200, 1 − 184.8/202 = 0.08515
      ['A', 3.07, 5.5, 6.44], // 1 − 189/195 = 0.03077, 1 − 189/202 = 0.06436
      ['assay of the alkali', 4.45, 5.5, 7.6], // 1 − 191.1/200, 1 − 184.8/200
      ['B', 5.5, 5.5, 5.5],
    ]);
  });

  it('tells the parts of a blend, and two lots of one name, apart', () => {
    const blend = fatFromBlend({
      name: 'House blend',
      parts: [
        { fat: coconut, mass: { g: 250 } },
        { fat: fat('castor-oil'), mass: { g: 250 } },
      ],
    });
    const chart = lotVariationChartOf(
      superfatFromLye({
        fats: [
          { fat: blend, mass: { g: 500 } },
          { fat: coconut, mass: { g: 400 } },
        ],
        lye: naoh(300),
      }),
    );
    expect(rowsOf(chart).map(({ name }) => name)).toEqual([
      'all together',
      'assay of the alkali',
      'Coconut oil',
      'Coconut oil',
      'Castor oil',
    ]);
    expect(new Set(rowsOf(chart).map(({ order }) => order)).size).toBe(5);
  });

  it('holds each alone inside all together, whatever fats and lye', () => {
    const ids = ['coconut-oil', 'castor-oil', 'palm-oil', 'stearic-acid-50', 'olive-oil'] as const;
    const some = fc.uniqueArray(fc.constantFrom(...ids), { minLength: 1 });
    fc.assert(
      fc.property(some, fc.integer({ min: 50, max: 500 }), (chosen, g) => {
        const result = superfatFromLye({
          fats: chosen.map((id) => ({ fat: fat(id), mass: { g: 300 } })),
          lye: naoh(g),
        });
        const [all, ...alone] = rowsOf(lotVariationChartOf(result));
        for (const one of alone) {
          expect(Number(one['low'])).toBeGreaterThanOrEqual(Number(all?.['low']));
          expect(Number(one['high'])).toBeLessThanOrEqual(Number(all?.['high']));
          expect(one['likely']).toBe(all?.['likely']);
        }
      }),
      { seed: 20, numRuns: 40 },
    );
  });

  it('writes alkali in excess with a minus', () => {
    expect(row(lotVariationChartOf(strong), 'all together')?.['label']).toMatch(/^−\d+\.\d % \(−/);
  });

  it('says whether lots keep the limit, by the figures before they are rounded', () => {
    const titleWith = (percentNaoh: string | Decimal) =>
      lotVariationChartOf(strong, { limit: { percentNaoh } }).concat[1]?.title.text;
    const { low, high } = strong.freeCausticAlkali;
    expect(titleWith(high.percentNaoh)).toBe('Free caustic alkali after complete reaction: all lots within the limit');
    expect(titleWith(high.percentNaoh.minus('1e-9'))).toMatch(/: some lots above the limit$/);
    expect(titleWith(low.percentNaoh)).toMatch(/: some lots above the limit$/);
    expect(titleWith(low.percentNaoh.minus('1e-9'))).toMatch(/: every lot above the limit$/);
    expect(lotVariationChartOf(strong).concat[1]?.title.text).toBe('Free caustic alkali after complete reaction');
  });

  it('bids test the soap before it touches skin, and says where lots leave caustic', () => {
    const words = (chart: Chart | undefined) => chart?.title.subtitle.join(' ') ?? '';
    expect(words(charts['too much alkali'])).toContain(
      'Every lot leaves caustic, which burns skin. Test the finished soap',
    );
    expect(words(lotVariationChartOf(superfatFromLye({ fats, lye: naoh(318) })))).toContain('Some lots leave caustic');
    expect(words(charts['far too little alkali'])).not.toMatch(/leaves? caustic/);
    for (const name of ['a plan', 'too much alkali', 'far too little alkali']) {
      expect(words(charts[name])).toContain('before it touches skin');
      expect(charts[name]?.description).toContain('before it touches skin');
    }
  });
});

describe('temperatureChartOf', () => {
  const chart = charts['a log'];
  const points = (panel: number) =>
    chart?.concat[panel]?.layer
      .find(({ mark }) => mark.type === 'point')
      ?.data.values.map(({ at, celsius, shape, fill }) => [at, celsius, shape, fill]);

  it('has a panel for each stage, in the order of the work', () => {
    expect(chart?.concat.map((panel) => panel.title.text)).toEqual([
      'Lye: no window known',
      'Saponification: too hot',
      'Clearing: too hot',
      'Pouring: too cold',
    ]);
  });

  it('puts readings in the order of their times, each with the shape of its own verdict', () => {
    expect(points(0)).toEqual([[0, 88, 'square', '#000000']]);
    expect(points(1)).toEqual([
      [0, 52, 'circle', '#0072B2'],
      [20, 64, 'circle', '#0072B2'],
      [40, 77, 'triangle-up', '#D55E00'],
      [60, 70, 'triangle-up', '#FFFFFF'],
    ]);
    expect(points(3)).toEqual([[120, 58, 'triangle-down', '#D55E00']]);
  });

  it('names the highest and the lowest of a stage, and one that is both once', () => {
    const said = (one: Chart | undefined, panel: number) =>
      (one?.concat[panel]?.layer.at(-1)?.data.values ?? []).map(({ celsius, above, below }) => [celsius, above, below]);
    expect(said(chart, 0)).toEqual([[88, '88 °C', '']]);
    expect(said(chart, 1)).toEqual([
      [52, '', '52 °C'],
      [64, '', ''],
      [77, '77 °C', ''],
      [70, '', ''],
    ]);
    expect(said(charts['one temperature twice'], 0)).toEqual([
      [62, '62 °C', ''],
      [62, '62 °C', ''],
    ]);
  });

  it('leaves room around what it draws: worked by hand', () => {
    // 52 to 88 °C were read, 60 to 75 °C are windows; 4 °C more at both ends, the same in every panel
    for (const panel of [0, 1, 2, 3]) expect(domainOf(chart, panel, 'y')).toEqual([48, 92]);
    expect(domainOf(chart, 1)).toEqual([-4.8, 64.8]); // 60 minutes, 8 % of them
    expect(domainOf(chart, 2)).toEqual([0.92, 2.08]); // first and second
    expect(domainOf(chart, 3)).toEqual([119, 121]);
  });

  it('leaves readings without times as they are written, and says so', () => {
    expect(points(2)?.map(([at, celsius]) => [at, celsius])).toEqual([
      [1, 66],
      [2, 71],
    ]);
    const titles = chart?.concat.map((panel) => JSON.stringify(panel).includes('readings in the order written'));
    expect(titles).toEqual([false, false, true, false]);
    const halfTimed = temperatureChartOf({ readings: [reading('pouring', 63, 90), reading('pouring', 61)] });
    expect(rowsOf(halfTimed).map(({ at }) => at)).toEqual([1, 2]);
  });

  it('draws the windows of the trade, tolerable dashed', () => {
    const rules = (panel: number) =>
      chart?.concat[panel]?.layer
        .filter(({ mark }) => mark.type === 'rule')
        .map(({ mark, data }) => [data.values[0]?.['celsius'], data.values[0]?.['label'], mark.strokeDash]);
    expect(rules(0)).toEqual([]);
    expect(rules(1)).toEqual([
      [65, 'usual: at most 65 °C', []],
      [75, 'tolerable: at most 75 °C', [6, 3]],
    ]);
    expect(rules(3)).toEqual([
      [60, 'usual: at least 60 °C', []],
      [65, 'usual: at most 65 °C', []],
    ]);
  });

  it('rounds what is drawn, and judges what was read', () => {
    const just = temperatureChartOf({
      readings: [{ stage: 'clearing', temperature: { fahrenheit: '158.01' }, time: { minutes: '3.14159' } }],
    });
    expect(rowsOf(just)[0]).toMatchObject({ at: 3.1, celsius: 70, shape: 'triangle-up' });
  });
});

describe('placeChartOf', () => {
  const chart = placeChartOf(place);

  it('covers the base, and gives the formulas as published', () => {
    const { clearingAgentsPerSoap, palmiticAndStearic, water } = place.figures;
    const ratio = clearingAgentsPerSoap.value;
    expectCovers(
      row(chart, 'this base', 0),
      { low: ratio.low.partsPerPart, likely: ratio.likely.partsPerPart, high: ratio.high.partsPerPart },
      0.001,
    );
    if (palmiticAndStearic === undefined) throw new Error('no profile');
    expectCovers(row(chart, 'this base', 1), percents(palmiticAndStearic.value), 0.01);
    expectCovers(row(chart, 'this base', 2), percents(water.value), 0.01);
    const { count, low, median, high } = water.clear.stated;
    expect(row(chart, `clear, stated: ${String(count)} formulas`, 2)).toMatchObject({
      low: low?.percent.toNumber(),
      likely: median?.percent.toNumber(),
      high: high?.percent.toNumber(),
      shape: 'circle',
      fill: '#000000',
    });
    const notClear = rowsOf(chart, 2).filter(({ name }) => String(name).startsWith('not clear'));
    expect(notClear.map(({ shape, fill }) => [shape, fill])).toEqual([
      ['circle', '#FFFFFF'],
      ['circle', '#FFFFFF'],
    ]);
  });

  it('leaves out a figure that cannot be told, and rows of no formula', () => {
    expect(charts['a place without profile']?.concat.map((panel) => panel.title.text)).toEqual([
      'Clearing agents to soap: too few clear formulas for a verdict',
      'Water as charged: too few clear formulas for a verdict',
    ]);
    expect(
      rowsOf(chart)
        .map(({ name }) => String(name))
        .some((name) => name.includes(' 0 ')),
    ).toBe(false);
  });

  it('counts one formula as one', () => {
    const names = rowsOf(placeChartOf(placeAmongPublished({ composition: pot, form: 'soft' }))).map(({ name }) => name);
    expect(names).toEqual([
      'this base',
      'clear, inferred: 1 formula',
      'not clear, stated: 1 formula',
      'not clear, inferred: 1 formula',
    ]);
  });

  it('says what is published of its kind', () => {
    expect(chart.title.subtitle.join(' ')).toContain(place.precedent.text);
    expect(chart.description).toContain(place.precedent.text);
  });
});

describe('names and titles of somebody else', () => {
  const names = [
    'datum.low > 0 ? "a" : "b"',
    '{"expr":"alert(1)"}',
    '</text><script>alert(1)</script>',
    '" onload="alert(1)',
    "a.b['c'][0]",
    'name',
    'constructor',
    '__proto__',
    'Öl & Fett — नारियल',
  ];
  const chartWith = (name: string): Chart =>
    lotVariationChartOf(
      superfatFromLye({
        fats: [
          {
            fat: fatFromCertificate({ name, like: coconut, saponificationValue: { mgKohPerG: 255 } }),
            mass: { g: 700 },
          },
        ],
        lye: naoh(240),
      }),
      { title: name },
    );
  const escaped = (text: string): string =>
    text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

  it.each(names)('%s is drawn as text', async (name) => {
    const { svg, complaints } = await svgOf(chartWith(name));
    expect(complaints).toEqual([]);
    expect(texts(svg)).toContain(escaped(name));
    expect(texts(svg)).toContain(`${escaped(name)}:`);
    expect(svg).not.toMatch(/<script|<[^>]*\sonload="/);
  });

  it('stand in rows and titles alone: no chart holds an expression, a signal, a transform or an address', () => {
    const keys = new Set<string>();
    const walk = (value: unknown): void => {
      if (typeof value !== 'object' || value === null) return;
      for (const [key, field] of Object.entries(value)) {
        keys.add(key);
        walk(field);
      }
    };
    for (const chart of [...Object.values(charts), ...names.map(chartWith)]) walk(chart);
    for (const key of ['expr', 'signal', 'transform', 'params', 'labelExpr', 'condition', 'href', 'url', 'format']) {
      expect(keys).not.toContain(key);
    }
  });

  it('lose what no picture can show, and are cut where they are too long', () => {
    expect(chartWith('a\u0000b\u202Ec\nd\uD800e').title.text[0]).toBe('a b c d e:');
    expect(rowsOf(chartWith('a\u0000b\u202Ec\nd\uD800e'))[2]?.['name']).toBe('a b c d e');
    const long = chartWith('🥥'.repeat(90));
    expect(long.title.text[0]).toBe(`${'🥥'.repeat(59)}…:`);
    expect(rowsOf(long)[2]?.['name']).toBe(`${'🥥'.repeat(43)}…`);
    expect(chartWith('x'.repeat(60)).title.text[0]).toBe(`${'x'.repeat(60)}:`);
  });
});

describe('refusals', () => {
  it('name the options that there are', () => {
    const said = (act: () => unknown) => refusal(act).message;
    const other = { name: 'x' } as never;
    for (const act of [
      () => compositionChartOf(pot, other),
      () => temperatureChartOf({ readings: log }, other),
      () => placeChartOf(place, other),
    ]) {
      expect(said(act)).toBe("options.name: expected only the fields title, received the unknown field 'name'");
    }
    expect(said(() => lotVariationChartOf(plan, other))).toContain('only the fields title, limit, received');
  });

  it.each([
    [() => compositionChartOf(plan as never), 'bad-shape', 'composition.by'],
    [() => compositionChartOf(undefined as never), 'missing', 'composition'],
    [() => compositionChartOf(pot, { name: 'x' } as never), 'unknown-key', 'options.name'],
    [() => compositionChartOf(pot, { title: '' }), 'bad-shape', 'options.title'],
    [() => compositionChartOf(pot, { title: { expr: '1' } } as never), 'bad-shape', 'options.title'],
    [() => lotVariationChartOf(pot as never), 'bad-shape', 'result.by'],
    [() => lotVariationChartOf({ by: 'toString', given: {} } as never), 'bad-shape', 'result.by'],
    [() => lotVariationChartOf(plan, { limit: 'soap' as never }), 'bad-shape', 'options.limit'],
    [() => lotVariationChartOf(plan, { limit: { percentNaoh: -1 } }), 'out-of-range', 'options.limit.percentNaoh'],
    [() => temperatureChartOf({ readings: [] }), 'bad-shape', 'readings'],
    [() => temperatureChartOf({ reading: log } as never), 'unknown-key', 'input.reading'],
    [() => temperatureChartOf({ readings: log }, { limit: 1 } as never), 'unknown-key', 'options.limit'],
    [() => placeChartOf(pot as never), 'bad-shape', 'place.by'],
  ])('%s', (act, code, path) => {
    expect(act).toThrow(expect.objectContaining({ code, path }));
  });
});
