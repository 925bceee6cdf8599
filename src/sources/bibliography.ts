import { checkSources } from './data/checkSources.js';
import { clearSoap } from './data/clearSoap.js';
import { constants } from './data/constants.js';
import { lyeTables } from './data/lyeTables.js';
import { processSources } from './data/processSources.js';
import { solventSources } from './data/solventSources.js';
import { soapTests } from './data/soapTests.js';
import { standards } from './data/standards.js';
import type { Publication } from './publication.js';

/** Name of a publication in the bibliography. */
export type SourceId =
  | keyof ReturnType<typeof constants>
  | keyof ReturnType<typeof lyeTables>
  | keyof ReturnType<typeof solventSources>
  | keyof ReturnType<typeof soapTests>
  | keyof ReturnType<typeof standards>
  | keyof ReturnType<typeof clearSoap>
  | keyof ReturnType<typeof processSources>
  | keyof ReturnType<typeof checkSources>;

/** The shelves of the bibliography; a function, so that a bundle that cites nothing carries none of them. */
export function shelves(): readonly Readonly<Record<string, Publication>>[] {
  return [
    constants(),
    lyeTables(),
    solventSources(),
    soapTests(),
    standards(),
    clearSoap(),
    processSources(),
    checkSources(),
  ];
}
