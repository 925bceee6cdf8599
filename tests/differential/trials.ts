/** Many recipes, each worked out twice. */
import { chanceFrom } from '../bench/audit/draw.js';
import { pairsOf } from './compare.js';
import { drawn, type Drawn } from './drawn.js';
import { deviationOf, type Pair } from './pairs.js';

/** Of the mass of the batch; of shares, as parts of one. */
const AGREEMENT = 1e-25;

export interface Trials {
  readonly recipes: number;
  readonly figures: number;
  readonly refusedByBoth: number;
  readonly worst: { readonly deviation: number; readonly figure: string };
  /** The figures that differ by more than `AGREEMENT`, and the recipe that is the first to show each. */
  readonly differences: ReadonlyMap<string, { readonly pair: Pair; readonly drawn: Drawn }>;
}

export function trials(
  recipes: number,
  seed: number,
  progress: (done: number, soFar: Trials) => void = () => undefined,
): Trials {
  const chance = chanceFrom(seed);
  const differences = new Map<string, { pair: Pair; drawn: Drawn }>();
  const tally = { recipes, figures: 0, refusedByBoth: 0, worst: { deviation: 0, figure: 'none' } };
  for (let done = 1; done <= recipes; done += 1) {
    const recipe = drawn(chance);
    for (const pair of pairsOf(recipe)) {
      const deviation = deviationOf(pair);
      tally.figures += 1;
      if (pair.figure.endsWith('refused') && deviation === 0) tally.refusedByBoth += 1;
      if (deviation > tally.worst.deviation) tally.worst = { deviation, figure: pair.figure };
      if (!(deviation <= AGREEMENT) && !differences.has(pair.figure))
        differences.set(pair.figure, { pair, drawn: recipe });
    }
    progress(done, { ...tally, differences });
  }
  return { ...tally, differences };
}

/** What differs, with both figures and the recipe. */
export const textsOf = ({ differences }: Trials): readonly string[] =>
  [...differences].map(
    ([figure, { pair, drawn: recipe }]) =>
      `${figure}: ${pair.own.valueOf().toPrecision(15)} here, ${pair.library} by the library, of ${JSON.stringify(recipe)}`,
  );
