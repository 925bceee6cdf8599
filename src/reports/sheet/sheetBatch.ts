import type { Batch } from '../../batch/planBatch.js';
import type { ChargedPot } from '../../composition/index.js';
import { readComposition } from '../../composition/readComposition.js';
import type { StagedLyeResult } from '../../process/index.js';
import type { SheetWriter } from './sheetWriter.js';

/** A batch as a sheet takes it, with what a plan may carry besides. */
export type SheetBatch = Batch & {
  /** The portions that the lye goes in by. */
  readonly stagedLye?: StagedLyeResult;
  /** Where the base stands among published formulas. */
  readonly place?: { readonly precedent: { readonly text: string } };
};

/** What every part of a sheet is written from. */
export interface Sheet {
  readonly batch: SheetBatch;
  /** What is in its pot, as read. */
  readonly pot: ChargedPot;
  readonly write: SheetWriter;
}

/** A sheet about to be written. */
export function sheetOf(batch: SheetBatch, write: SheetWriter): Sheet {
  return { batch, pot: readComposition('batch.composition', batch.composition), write };
}
