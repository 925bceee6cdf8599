/**
 * The figures of the guides, as data: the harbour workshop's batch, drawn. Weights, readings and times are invented.
 *
 * A chart is plain JSON: any library that knows Vega-Lite draws it. `npm run figures` writes these to docs/figures.
 */
import { compositionChartOf, lotVariationChartOf, placeChartOf, temperatureChartOf, type Chart } from 'laurate/reports';
import { batch } from './harbour-batch.js';

const title = 'Harbour workshop (invented)';

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
  composition: compositionChartOf(batch.composition, { title }),
  'lot-variation': lotVariationChartOf(batch, { title, limit: 'toilet-soap-is-2888' }),
  place: placeChartOf(batch.place, { title }),
  temperatures: temperatureChartOf({ readings }, { title }),
};
