/** Many recipes through a pool of workers, in parcels, so that a machine is busy and its memory is not. */
import { Piscina } from 'piscina';
import { recipeLine } from './recipes.js';

export interface PooledOptions {
  /** Recipes, numbered from 0. */
  readonly count: number;
  readonly workers: number;
  /** Recipes handed to a worker at a time. */
  readonly parcel: number;
  /** Called with the verdict lines of each parcel, in the order of the recipes. */
  readonly onParcel: (lines: readonly string[], done: number) => void;
}

/** Runs the job on every recipe; the order of results is the order of recipes, whoever worked them out. */
export async function pooled({ count, workers, parcel, onParcel }: PooledOptions): Promise<void> {
  const pool = new Piscina<readonly string[], readonly string[]>({
    filename: new URL('./worker.ts', import.meta.url).href,
    execArgv: ['--import', 'tsx'],
    minThreads: workers,
    maxThreads: workers,
  });
  // Two parcels for each worker are under way at a time: the next is drawn only when one is done.
  const underWay: Promise<readonly string[]>[] = [];
  try {
    let done = 0;
    const takeFirst = async (): Promise<void> => {
      const lines = (await underWay.shift()) ?? [];
      done += lines.length;
      onParcel(lines, done);
    };
    for (let from = 0; from < count; from += parcel) {
      const lines = Array.from({ length: Math.min(parcel, count - from) }, (_, at) => recipeLine(from + at));
      underWay.push(pool.run(lines));
      if (underWay.length >= 2 * workers) await takeFirst();
    }
    while (underWay.length > 0) await takeFirst();
  } finally {
    // after a fault: what is still under way ends with the pool, and its end is awaited
    const rest = Promise.allSettled(underWay);
    await pool.destroy();
    await rest;
  }
}
