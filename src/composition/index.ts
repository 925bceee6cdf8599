export { SOLVENT_IDS, type SolventId } from './data/solventNames.js';
