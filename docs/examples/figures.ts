/**
 * The figures of the guides, as data: the harbour workshop's batch, drawn. Weights, readings and times are invented.
 *
 * A chart is plain JSON: any library that knows Vega-Lite draws it. `npm run figures` writes these to docs/figures.
 */
import { compositionFrom, placeAmongPublished, soapFromLye } from 'laurate';
import { compositionChartOf, lotVariationChartOf, placeChartOf, temperatureChartOf, type Chart } from 'laurate/reports';
import { fats, plan, stock } from './harbour-batch.js';

const title = 'Harbour workshop (invented)';

const soap = soapFromLye({
  fats,
  lye: [{ alkali: 'naoh', mass: plan.weigh.naoh, solution: { hydroxide: stock } }],
  water: plan.weigh.water,
});
const composition = compositionFrom({
  soap,
  additions: [
    { solvent: 'propylene-glycol', mass: { g: 330 }, assay: { percent: '99.5' } },
    { solvent: 'glycerol', mass: { g: 260 }, assay: { percent: '99.5' } },
    { solvent: 'sorbitol', mass: { g: 520 }, assay: { percent: 70 } },
  ],
  evaporated: { g: 40 },
});

const log = [
  ['saponification', 0, 54],
  ['saponification', 10, 61],
  ['saponification', 20, 68],
  ['saponification', 30, 77],
  ['saponification', 45, 66],
  ['saponification', 60, 62],
  ['clearing', 75, 60],
  ['clearing', 90, 64],
  ['clearing', 105, 67],
  ['clearing', 120, 66],
  ['pouring', 130, 63],
  ['pouring', 136, 58],
] as const;
const readings = log.map(([stage, minutes, celsius]) => ({ stage, time: { minutes }, temperature: { celsius } }));

/** Each figure by the name of its file. */
export const figures: Readonly<Record<string, Chart>> = {
  composition: compositionChartOf(composition, { title }),
  'lot-variation': lotVariationChartOf(plan, { title, limit: 'toilet-soap-is-2888' }),
  place: placeChartOf(placeAmongPublished({ composition }), { title }),
  temperatures: temperatureChartOf({ readings }, { title }),
};
