import type { Batch } from '../../batch/planBatch.js';
import type { ChargedPot } from '../../composition/index.js';
import { DILUTING_WARMS } from '../../lye/index.js';
import { readComposition } from '../../composition/readComposition.js';
import type { Remark } from '../../numbers/index.js';
import type { SheetWriter } from './sheetWriter.js';

/** What every part of a sheet is written from. */
export interface Sheet {
  readonly batch: Batch;
  /** What is in its pot, as read. */
  readonly pot: ChargedPot;
  /** Of the batch and of its heat, each once. */
  readonly cautions: readonly Remark[];
  readonly write: SheetWriter;
}

/** A sheet about to be written. */
export function sheetOf(batch: Batch, write: SheetWriter): Sheet {
  const pot = readComposition('batch.composition', batch.composition);
  const { reaction, portions } = batch.heat;
  const all = [...batch.cautions, ...reaction.cautions, ...(portions?.cautions ?? []), ...ofDiluting(pot)];
  return { batch, pot, write, cautions: [...new Map(all.map((one) => [one.text, one])).values()] };
}

/** A lye that is made of a stronger one warms; a plan made from masses does not say so. */
function ofDiluting({ soap: { lye, given } }: ChargedPot): readonly Remark[] {
  const isSolution = lye.every(({ source }) => source.state === 'solution');
  return isSolution && !given.water.g.isZero() ? [DILUTING_WARMS] : [];
}
