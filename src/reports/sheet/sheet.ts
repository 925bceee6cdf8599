import type { Batch } from '../../batch/planBatch.js';
import type { ChargedPot } from '../../composition/index.js';
import { isAnyNamed, isNamedSpirit } from '../../composition/namedAdditions.js';
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

/** Whether all alkali is potash: such soap stays soft, and is no bar. */
export const isPotash = ({ pot }: Pick<Sheet, 'pot'>): boolean => pot.soap.lye.every(({ alkali }) => alkali === 'koh');

/** Whether something in the pot goes by the name of a spirit, without an assay. */
export const hasNamedSpirit = ({ pot }: Pick<Sheet, 'pot'>): boolean => isAnyNamed(pot.additions, isNamedSpirit);

/** Whether the finished soap cannot be tested: triethanolamine is alkaline itself. */
export const hidesAlkali = ({ pot }: Pick<Sheet, 'pot'>): boolean =>
  pot.additions.some(({ component }) => component === 'triethanolamine');

/** The soap that is tested at the end. */
export const finished = (sheet: Pick<Sheet, 'pot'>): string => (isPotash(sheet) ? 'cooled soap' : 'set bar');

/** A sheet about to be written. */
export function sheetOf(batch: Batch, write: SheetWriter): Sheet {
  const pot = readComposition('batch.composition', batch.composition);
  const { portions } = batch.heat;
  const all = [...batch.cautions, ...(portions?.cautions ?? [])];
  return { batch, pot, write, cautions: [...new Map(all.map((one) => [one.text, one])).values()] };
}
