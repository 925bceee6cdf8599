/** `npm run differential`: 100 000 recipes, or as many as are asked for, from a seed that may be given as well. */
import { textsOf, trials } from './trials.js';

const [recipes = 100_000, seed = 1] = process.argv.slice(2).map(Number);
const result = trials(recipes, seed, (done, soFar) => {
  if (done % 1000 !== 0) return;
  const found = `worst ${soFar.worst.deviation.toExponential(1)}, ${String(soFar.differences.size)} figures differ`;
  process.stderr.write(`${String(done)} of ${String(recipes)}: ${found}\n`);
});
for (const text of textsOf(result)) process.stdout.write(`${text}\n`);
const { figures, refusedByBoth, worst, differences } = result;
process.stdout.write(
  `${String(recipes)} recipes from seed ${String(seed)}, ${String(figures)} figures, ${String(refusedByBoth)} refusals by both; ` +
    `worst deviation ${worst.deviation.toExponential(1)} (${worst.figure}); ${String(differences.size)} figures differ\n`,
);
if (differences.size > 0) process.exitCode = 1;
