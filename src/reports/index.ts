/**
 * What stands behind a result: its working step by step, and the records of a fat and of a solvent figure by figure; and
 * charts of results as data, which any library that knows Vega-Lite draws.
 *
 * @module laurate/reports
 */

export type {
  Chart,
  ChartAxis,
  ChartEncoding,
  ChartLayer,
  ChartLook,
  ChartMark,
  ChartPanel,
  ChartPlace,
  ChartRow,
  ChartScale,
} from './charts/chart.js';
export type { ChartOptions } from './charts/chartFrom.js';
export { compositionChartOf } from './charts/compositionChartOf.js';
export { lotVariationChartOf, type LotVariationChartOptions } from './charts/lotVariationChartOf.js';
export type { Balanced } from './charts/balanced.js';
export { placeChartOf, type Placed } from './charts/placeChartOf.js';
export { temperatureChartOf, type TemperatureChartInput } from './charts/temperatureChartOf.js';
export { publishedRecordOf, type PublishedCell, type PublishedRecord } from './publishedRecordOf.js';
export { solventRecordOf, type SolventCell, type SolventRecord } from './solventRecordOf.js';
export { workingOf, type Explainable, type ExplainedBy } from './workingOf.js';
export type { LimitedQuantity, Obtained } from '../fats/data/publishedFatRecords.js';
export type { Step } from '../numbers/index.js';
