export type { ClearingAgentKind, OutcomeBasis, PublishedForm, PublishedOutcome } from './data/formulaRows.js';
export type { WindowFigure } from './data/windowRows.js';
export type { LeadingFigure, LeadingQuantities } from './leadingFigures.js';
export type { NearFormula } from './nearest.js';
export type { ByBasis, PlaceInRange, PublishedSpread } from './outcomes.js';
export {
  placeAmongPublished,
  placeAmongPublishedSteps,
  type PlaceAmongPublishedInput,
  type PlaceAmongPublishedResult,
} from './placeAmongPublished.js';
export type { PlacedFigure, PlacedFigures } from './placedFigures.js';
export type { Precedent, SoapKind } from './precedent.js';
export { publishedFormulas, type PublishedFormula, type PublishedPart } from './publishedFormulas.js';
export { bareFigure, publishedWindows, type PublishedLimit, type PublishedWindow } from './publishedWindows.js';
export type { ComparedLimit, ComparedWindow } from './windows.js';
