/**
 * What stands behind a result: its working step by step, and the published record of a fat cell by cell.
 *
 * @module laurate/reports
 */

export { publishedRecordOf, type PublishedCell, type PublishedRecord } from './publishedRecordOf.js';
export { workingOf, type Explainable, type ExplainedBy } from './workingOf.js';
export type { LimitedQuantity, Obtained } from '../fats/data/publishedFatRecords.js';
export type { Step } from '../numbers/index.js';
