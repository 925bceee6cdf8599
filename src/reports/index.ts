/**
 * What stands behind a result: its working step by step, and the records of a fat and of a solvent figure by figure.
 *
 * @module laurate/reports
 */

export { publishedRecordOf, type PublishedCell, type PublishedRecord } from './publishedRecordOf.js';
export { solventRecordOf, type SolventCell, type SolventRecord } from './solventRecordOf.js';
export { workingOf, type Explainable, type ExplainedBy } from './workingOf.js';
export type { LimitedQuantity, Obtained } from '../fats/data/publishedFatRecords.js';
export type { Step } from '../numbers/index.js';
