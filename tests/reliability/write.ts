/** Writes the tables of docs/reliability.md but those of `npm run fuzz`: `npm run reliability`. */
import { branchesTable } from './branches.js';
import { lawsTable } from './lawsTable.js';
import { mutationTables } from './mutation.js';
import { writePart } from '../pages.js';

await writePart('reliability.md', 'laws', lawsTable());
const tables = mutationTables();
// without reports of a run the figures of the last one stay
if (tables !== undefined) await writePart('reliability.md', 'mutation', tables);
const branches = branchesTable();
if (branches !== undefined) await writePart('reliability.md', 'branches', branches);
