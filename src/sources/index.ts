export { EDITION } from './edition.js';
export { shelves, type SourceId } from './bibliography.js';
export type { Publication } from './publication.js';
export { sources, type Source } from './sources.js';
