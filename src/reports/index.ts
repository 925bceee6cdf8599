/**
 * What people look at: the sheet of a batch, its ingredient declaration, an audit as a page, the working of any result step by step, charts of
 * results as data, which any library that knows Vega-Lite draws, and the records of a fat and of a solvent figure by figure.
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
export { auditAsMarkdown, type AuditAsMarkdownOptions, type PrintedAudit } from './auditAsMarkdown.js';
export { batchSheetOf, type BatchSheetOptions } from './batchSheetOf.js';
export type { NameObtained, OwnIngredientNames } from './declaration/ingredientNames.js';
export {
  ingredientDeclarationOf,
  type DeclaredIngredient,
  type IngredientDeclaration,
  type IngredientDeclarationOptions,
} from './ingredientDeclarationOf.js';
export type { NumberFormat } from './numberFormat.js';
export type { PlannedBatch } from './readBatch.js';
export type { SheetUnits } from './sheet/sheetWriter.js';
export { publishedRecordOf, type PublishedCell, type PublishedRecord } from './publishedRecordOf.js';
export { solventRecordOf, type SolventCell, type SolventRecord } from './solventRecordOf.js';
export { workingAsMarkdown, type WorkingAsMarkdownOptions } from './workingAsMarkdown.js';
export { workingOf, type Explainable, type ExplainedBy } from './workingOf.js';
export type { LimitedQuantity, Obtained } from '../fats/data/publishedFatRecords.js';
export type { Step } from '../numbers/index.js';
