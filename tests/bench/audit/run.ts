/**
 * Tries the audit on drawn recipes, sound ones and ones with a slip: `npm run bench:audit`. With `--write` the tables of
 * `docs/audit.md` are written, else printed.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { slipTrials, soundTrials } from './trials.js';
import { tablesOf } from './tables.js';

const SOUND = Number(process.env['SOUND'] ?? 100_000);
const EACH_SLIP = Number(process.env['EACH_SLIP'] ?? 400);

const page = fileURLToPath(new URL('../../../docs/audit.md', import.meta.url));
const [BEGIN, END] = ['<!-- bench:audit begins -->', '<!-- bench:audit ends -->'];

const tables = tablesOf(soundTrials(SOUND, 1), slipTrials(EACH_SLIP, 2));
if (process.argv.includes('--write')) {
  const text = readFileSync(page, 'utf8');
  const [before, rest = ''] = text.split(BEGIN);
  const after = rest.split(END)[1];
  if (after === undefined) throw new Error(`${page} has no place for the tables`);
  const whole = `${before ?? ''}${BEGIN}\n\n${tables}\n\n${END}${after}`;
  writeFileSync(page, await format(whole, { ...(await resolveConfig(page)), parser: 'markdown' }));
} else {
  process.stdout.write(`${tables}\n`);
}
