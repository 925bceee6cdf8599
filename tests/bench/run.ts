/**
 * Measures the built package against plain ways of doing the same: `npm run bench`. With `--write` the page
 * `docs/performance.md` is written, else printed.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { fat, planLye } from 'laurate';
import { auditRecipe } from 'laurate/audit';
import { format, resolveConfig } from 'prettier';
import { callingByName, soundCorpus } from './audit/corpus.js';
import { certificateContenders } from './certificate.js';
import { timed } from './harness.js';
import { importTimes } from './imports.js';
import { lyeBenchContenders } from './lyeBench.js';
import { growthContender, lyePlanContenders } from './lyePlan.js';
import { keptResults, streams } from './memory.js';
import { pageOf } from './page.js';
import { importProfile, profileOf } from './profile.js';
import { sizes } from './sizes.js';
import { profileValueContenders } from './profileValue.js';
import { verdictContenders } from './verdicts.js';

const ROUNDS = 60;
const IMPORT_ROUNDS = 60;
const SIZES = [1, 10, 100, 1000];
const STREAMS = [1, 1000, 100_000, 1_000_000];
const STREAMS_OF_LOTS = [1, 1000, 10_000];
const CORPUS = soundCorpus(400, 43);

// Run with the tests' configuration the name would stand for the sources: that is not what users get.
const entry = new URL(import.meta.resolve('laurate'));
if (!entry.pathname.endsWith('/dist/index.js')) throw new Error('the built package is to be measured, not its sources');

const FIVE = ['coconut-oil', 'olive-oil', 'castor-oil', 'palm-oil', 'lard'].map((id) => ({
  fat: fat(id),
  mass: { g: 100 },
}));
const planOfFive = () =>
  planLye({
    fats: FIVE,
    alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
    target: { superfat: { percent: '2' } },
    dilution: { strength: { percent: 33 } },
  });
const [DRAWN] = CORPUS;
if (DRAWN === undefined) throw new Error('no recipe was drawn');

const page = pageOf({
  rounds: ROUNDS,
  importRounds: IMPORT_ROUNDS,
  plans: new Map([1, 5, 20].map((fats) => [fats, timed(lyePlanContenders(fats), ROUNDS)])),
  growth: timed(SIZES.map(growthContender), ROUNDS),
  profileValue: timed(profileValueContenders(), ROUNDS),
  certificate: timed(certificateContenders(), ROUNDS),
  lyeBench: timed(lyeBenchContenders, ROUNDS),
  verdicts: verdictContenders(),
  imports: importTimes(IMPORT_ROUNDS),
  sizes: sizes(),
  importParts: importProfile(),
  profiles: [
    await profileOf('`planLye` of five fats', planOfFive),
    await profileOf('`auditRecipe` of a drawn recipe', () => auditRecipe(DRAWN)),
  ],
  kept: keptResults(DRAWN),
  streams: streams(callingByName(CORPUS), STREAMS),
  streamsOfLots: streams(CORPUS, STREAMS_OF_LOTS),
});

const path = fileURLToPath(new URL('../../docs/performance.md', import.meta.url));
const text = await format(page, { ...(await resolveConfig(path)), parser: 'markdown' });
if (process.argv.includes('--write')) writeFileSync(path, text);
else process.stdout.write(text);
