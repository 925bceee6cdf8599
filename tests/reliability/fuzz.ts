/**
 * A million bounded inputs: `npm run fuzz`. `SHARE=0.01 npm run fuzz` tries a hundredth of them. With `--write` the counts go
 * into docs/reliability.md.
 */
import { auditRecipe } from 'laurate/audit';
import { recipeFromBase } from 'laurate/recipe';
import { fats, full, whole } from '../audit/recipes.js';
import { examples, type Example } from '../laws/examples.js';
import { tallyOf, type Tally } from './fuzzed.js';
import { growths } from './growth.js';
import { table, writePart } from '../pages.js';
import { counted } from './page.js';
import { readers } from './readers.js';

const SHARE = Number(process.env['SHARE'] ?? 1);
const SEED = 20261125;
/** Inputs of each function: many of those that read, fewer of those that work a whole pot through. */
const [EACH_READER, EACH_FUNCTION, EACH_POT, AUDITS] = [17_000, 2800, 1000, 20_000];
/** Above this a cost counts as more than linear; a squared one would be 100, or 10 in the shorter list. */
const MOST_GROWTH = 5;
const POTS = ['placeAmongPublished', 'baseFromTarget', 'stagedLye', 'planBatch', 'potHeatFromReaction'];

const base = examples.find(({ name }) => name === 'baseFromTarget');
const others: readonly Example[] = [
  {
    name: 'recipeFromBase',
    run: (value) => recipeFromBase(value as never),
    args: (base?.args ?? []).map(([input]) => [base?.run(input)]),
  },
];
const audit: Example = {
  name: 'auditRecipe',
  run: (recipe) => auditRecipe(recipe, { fats }),
  args: [[full], [whole]],
};

interface Group {
  readonly what: string;
  readonly tallies: readonly Tally[];
}

let seed = SEED;
function tried(what: string, some: readonly Example[], countOf: (name: string) => number, mayRefuse = true): Group {
  const tallies = some
    .filter(({ args }) => args.some((set) => set.length > 0))
    .map((example) => {
      const tally = tallyOf(example, Math.ceil(countOf(example.name) * SHARE), (seed += 1), mayRefuse);
      process.stderr.write(
        `${tally.name}: ${String(tally.tried)} in ${tally.seconds.toFixed(1)} s, ${String(tally.faults.length)} faults\n`,
      );
      return tally;
    });
  return { what, tallies };
}

const sum = (tallies: readonly Tally[], key: 'tried' | 'answered' | 'refused'): number =>
  tallies.reduce((total, tally) => total + tally[key], 0);
const rowOf = (what: string, tallies: readonly Tally[]): readonly (string | number)[] => [
  what,
  tallies.length,
  counted(sum(tallies, 'tried')),
  counted(sum(tallies, 'answered')),
  counted(sum(tallies, 'refused')),
  tallies.reduce((total, { faults }) => total + faults.length, 0),
];

/** Prints or writes a part of the page, and tells what is wrong. */
async function tell(part: string, report: string, faults: readonly string[]): Promise<void> {
  if (process.argv.includes('--write')) await writePart('reliability.md', part, report);
  else process.stdout.write(`${report}\n`);
  if (faults.length === 0) return;
  process.stderr.write(`${faults.join('\n')}\n`);
  process.exitCode = 1;
}

async function fuzz(): Promise<void> {
  const groups = [
    tried('readers', readers, () => EACH_READER),
    tried('public functions', [...examples, ...others], (name) => (POTS.includes(name) ? EACH_POT : EACH_FUNCTION)),
    tried('`auditRecipe`, which always answers', [audit], () => AUDITS, false),
  ];
  const all = groups.flatMap(({ tallies }) => tallies);
  const share = SHARE === 1 ? '' : `; a run of ${String(100 * SHARE)} % of the inputs`;
  const rows = [...groups.map(({ what, tallies }) => rowOf(what, tallies)), rowOf('together', all)];
  const head = ['what is called', 'functions', 'inputs', 'answered', 'refused, typed', 'faults'];
  const report = `Seeds from ${String(SEED)} on, one for each function${share}.\n\n${table(head, rows)}`;
  await tell(
    'fuzz',
    report,
    all.flatMap(({ name, faults }) => faults.map((fault) => `${name}: ${fault}`)),
  );
}

async function growth(): Promise<void> {
  const grown = growths();
  const rows = grown.map(({ name, rows: of, many, ratio }) => [`\`${name}\``, of, counted(many), ratio.toFixed(1)]);
  const squared = grown.filter(({ ratio }) => ratio > MOST_GROWTH);
  await tell(
    'growth',
    table(['function', 'rows', 'long list', 'ratio'], rows),
    squared.map(({ name, rows: of }) => `${name}: more than linear in ${of}`),
  );
}

// `--growth` leaves out the inputs
if (!process.argv.includes('--growth')) await fuzz();
await growth();
