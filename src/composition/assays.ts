import type { Dimension } from '../saponification/index.js';
import { isSpirit } from './components.js';
import type { SolventId } from './data/solventNames.js';

/** With which others an assay varies. Water falls with each of them, so that those of one kind move together. */
export const assayDimension = (solvent: SolventId): Dimension => (isSpirit(solvent) ? 'spirit' : 'assays');

/** What a solvent holds beside its assay: water, but the rest of a technical triethanolamine is other amines. */
export const restOf = (solvent: SolventId): 'water' | 'other' => (solvent === 'triethanolamine' ? 'other' : 'water');
