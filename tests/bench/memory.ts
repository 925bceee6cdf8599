/** What results keep in memory, and what a stream of recipes leaves behind. */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { fat, planLye } from 'laurate';
import { auditRecipe, verdictsOf } from 'laurate/audit';
import { planBatch, type Recipe } from 'laurate/recipe';

setFlagsFromString('--expose-gc');
const collectGarbage = runInNewContext('gc') as () => void;

function heapInUse(): number {
  collectGarbage();
  return process.memoryUsage().heapUsed;
}

/** Bytes that one result keeps, by name of the call. */
export interface Kept {
  readonly name: string;
  readonly bytes: number;
}

const RESULTS = 500;

/** Keeps so many results, and shares out what the heap has grown by. */
function keptBy(name: string, call: () => unknown): Kept {
  call();
  const before = heapInUse();
  const results = Array.from({ length: RESULTS }, call);
  const bytes = (heapInUse() - before) / results.length;
  return { name, bytes };
}

/** What the results of a lye plan, a batch and an audit keep. */
export function keptResults(recipe: Recipe): readonly Kept[] {
  const coconut = { fat: fat('coconut-oil'), mass: { g: 700 } };
  const alkali = { naoh: { solution: { hydroxide: { percent: 50 } } } };
  const target = { superfat: { percent: 2 } };
  return [
    keptBy('`planLye` of one fat', () => planLye({ fats: [coconut], alkali, target, dilution: 'as-is' })),
    keptBy('`planBatch` of one fat', () =>
      planBatch({
        version: 1,
        fats: [{ fat: 'coconut-oil', mass: { g: 700 } }],
        lye: [{ alkali: 'naoh', solution: { hydroxide: { percent: 50 } } }],
        target,
      }),
    ),
    keptBy('`auditRecipe` of a drawn recipe', () => auditRecipe(recipe)),
  ];
}

/** Verdicts of so many recipes in one stream. */
export interface Stream {
  readonly recipes: number;
  readonly microsEach: number;
  /** Growth of the heap in use from before the first verdict to after the last. */
  readonly bytesLeft: number;
}

/** The recipes of a corpus over and over, each read from its JSON, as out of a file. */
function* repeated(texts: readonly string[], count: number): Iterable<unknown> {
  for (let made = 0; made < count; made += 1) yield JSON.parse(texts[made % texts.length] ?? 'null');
}

/** Time and memory of streams of growing length; the corpus goes round. */
export function streams(corpus: readonly Recipe[], lengths: readonly number[]): readonly Stream[] {
  const texts = corpus.map((recipe) => JSON.stringify(recipe));
  const run = (count: number): number => {
    const start = performance.now();
    let seen = 0;
    for (const { index } of verdictsOf(repeated(texts, count))) seen = index + 1;
    if (seen !== count) throw new Error('a recipe has no verdict');
    return performance.now() - start;
  };
  run(corpus.length);
  return lengths.map((recipes) => {
    const before = heapInUse();
    const microsEach = (run(recipes) * 1000) / recipes;
    return { recipes, microsEach, bytesLeft: heapInUse() - before };
  });
}
