import type { JudgingWindowId } from '../../process/index.js';
import { judgingWindow } from '../../process/processWindows.js';
import type { CautionPlace } from './placedCautions.js';
import type { Sheet } from './sheet.js';

/** A step of the work: what is done, and the cautions that stand with it. */
export interface SheetStep {
  readonly title: string;
  readonly does: string;
  readonly cautions: CautionPlace;
}

/** The upper end of a window, as it is written. */
export const ceiling = (id: JudgingWindowId, { write }: Sheet): string => write.temperature(judgingWindow(id).to);
