/**
 * Tries the audit on drawn recipes, sound ones and ones with a slip: `npm run bench:audit`. With `--write` the tables of
 * `docs/audit.md` are written, else printed.
 */
import { writePart } from '../../pages.js';
import { slipTrials, soundTrials } from './trials.js';
import { tablesOf } from './tables.js';

const SOUND = Number(process.env['SOUND'] ?? 100_000);
const EACH_SLIP = Number(process.env['EACH_SLIP'] ?? 400);

const tables = tablesOf(soundTrials(SOUND, 1), slipTrials(EACH_SLIP, 2));
if (process.argv.includes('--write')) {
  await writePart('audit.md', 'bench:audit', tables);
} else {
  process.stdout.write(`${tables}\n`);
}
