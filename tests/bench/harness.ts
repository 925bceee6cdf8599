/** A small harness: what is compared runs in turns inside one process, so that a busy machine slows all of it alike. */

/** One way of doing a job. */
export interface Contender {
  readonly name: string;
  readonly run: () => unknown;
}

/** A figure for every round; those of one comparison belong together round by round. */
export interface Rounds {
  readonly name: string;
  readonly figures: readonly number[];
}

/** Median and quartiles. */
export interface Spread {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** Long against the grain of the clock, short against the other doings of the machine. */
const BATCH_MS = 10;
/** Enough for the optimising compiler to have settled. */
const WARM_UP_MS = 400;

/** Every result goes here, so that no call can be left out as without effect. */
const blackHole: { swallowed: unknown } = { swallowed: undefined };

/** Median and quartiles, between ranks by interpolation. */
export function spreadOf(figures: readonly number[]): Spread {
  const sorted = [...figures].sort((a, b) => a - b);
  const at = (share: number): number => {
    const rank = share * (sorted.length - 1);
    const [below, above] = [sorted[Math.floor(rank)], sorted[Math.ceil(rank)]];
    if (below === undefined || above === undefined) throw new Error('nothing was measured');
    return below + (above - below) * (rank - Math.floor(rank));
  };
  return { low: at(0.25), middle: at(0.5), high: at(0.75) };
}

/** How many times one is the other, in each round. */
export function ratioOf(one: Rounds, other: Rounds): Spread {
  return spreadOf(one.figures.map((figure, round) => figure / (other.figures[round] ?? Number.NaN)));
}

/** Measures every entry once in each round. Each round begins at another entry, so that none always has the same neighbour. */
export function interleaved<T extends { readonly name: string }>(
  entries: readonly T[],
  rounds: number,
  measure: (entry: T) => number,
): readonly Rounds[] {
  const measured = entries.map((entry) => ({ entry, name: entry.name, figures: [] as number[] }));
  for (let round = 0; round < rounds; round += 1) {
    const first = round % measured.length;
    for (const { entry, figures } of [...measured.slice(first), ...measured.slice(0, first)]) {
      figures.push(measure(entry));
    }
  }
  return measured;
}

/** Calls that fill a batch, found during the warm-up. */
function callsPerBatch({ run }: Contender): number {
  const start = performance.now();
  let [calls, spent] = [0, 0];
  while (spent < WARM_UP_MS) {
    blackHole.swallowed = run();
    calls += 1;
    spent = performance.now() - start;
  }
  return Math.max(1, Math.round((calls * BATCH_MS) / spent));
}

/** Microseconds that each contender's job takes, in each round. */
export function timed(contenders: readonly Contender[], rounds: number): readonly Rounds[] {
  const entries = contenders.map((contender) => ({ ...contender, calls: callsPerBatch(contender) }));
  return interleaved(entries, rounds, ({ run, calls }) => {
    const start = performance.now();
    for (let call = 0; call < calls; call += 1) blackHole.swallowed = run();
    return ((performance.now() - start) * 1000) / calls;
  });
}
