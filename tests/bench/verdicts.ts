/** Verdicts of drawn recipes: by the audit, by `verdictsOf`, and by a plain script in floating point. */
import { auditRecipe, verdictsOf } from 'laurate/audit';
import type { Recipe } from 'laurate/recipe';
import { slipCorpus, soundCorpus } from './audit/corpus.js';
import { floatVerdict } from './floatVerdicts.js';
import { timed, type Rounds } from './harness.js';

/** One corpus, measured. */
export interface MeasuredVerdicts {
  readonly name: string;
  readonly recipes: number;
  /** Microseconds for each recipe: `verdictsOf` first. */
  readonly rounds: readonly Rounds[];
  /** In how many the plain script comes to another verdict. */
  readonly scriptDiffers: number;
}

/** An audit takes milliseconds, so that few rounds are long enough. */
const ROUNDS = 5;
const LIBRARY = '`verdictsOf`';

function measured(name: string, corpus: readonly Recipe[]): MeasuredVerdicts {
  const audits = (): readonly string[] => corpus.map((recipe) => auditRecipe(recipe).verdict);
  const verdicts = (): readonly string[] => Array.from(verdictsOf(corpus), ({ verdict }) => verdict);
  const script = (): readonly string[] => corpus.map(floatVerdict);
  const [exact, fast, plain] = [audits(), verdicts(), script()];
  if (exact.some((verdict, at) => verdict !== fast[at])) throw new Error('a verdict is not that of the audit');
  const rounds = timed(
    [
      { name: LIBRARY, run: verdicts },
      { name: '`auditRecipe`', run: audits },
      { name: 'plain script in float64', run: script },
    ],
    ROUNDS,
  );
  return {
    name,
    recipes: corpus.length,
    rounds: rounds.map((way) => ({ name: way.name, figures: way.figures.map((micros) => micros / corpus.length) })),
    scriptDiffers: exact.filter((verdict, at) => verdict !== plain[at]).length,
  };
}

const isPlain = ({ claimed }: Recipe): boolean => claimed?.shares === undefined;

/** Sound recipes, the same without the few that print what the whole pot is made of, and recipes with a slip. */
export function verdictContenders(sound = 800, slips = 60): readonly MeasuredVerdicts[] {
  const corpus = soundCorpus(sound, 41);
  return [
    measured('Drawn recipes', corpus),
    measured('Without those that print the parts of the pot', corpus.filter(isPlain).slice(0, slips)),
    measured('With a slip in each', slipCorpus(slips, 42)),
  ];
}
