/** The law of `verdictsOf` on many recipes: `npx tsx tests/bench/audit/verdicts.ts 20000 1`, with their number and a seed. */
import { auditRecipe, verdictsOf } from 'laurate/audit';
import { slipCorpus, soundCorpus } from './corpus.js';

const [count = 2000, seed = 1] = process.argv.slice(2).map(Number);
let [tried, differ] = [0, 0];
for (const corpus of [soundCorpus(count, seed), slipCorpus(count, seed)]) {
  for (const { index, verdict } of verdictsOf(corpus)) {
    const exact = auditRecipe(corpus[index]).verdict;
    tried += 1;
    if (verdict === exact) continue;
    differ += 1;
    process.stdout.write(`${verdict}, and ${exact} by the audit: ${JSON.stringify(corpus[index])}\n`);
  }
}
process.stdout.write(`${String(tried)} recipes, ${String(differ)} verdicts that differ\n`);
if (differ > 0) process.exitCode = 1;
