import { frozen } from '../numbers/index.js';
import { readTemperature, type Temperature, type TemperatureInput } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';
import {
  judgingWindows,
  printedWindows,
  type JudgingWindowId,
  type ProcessWindowId,
  type ProcessWindowKind,
  type ProcessWindowRow,
} from './data/processWindows.js';
import type { WorkStage } from './stage.js';

/** A window of temperature at a stage of the work. */
export interface ProcessWindow {
  readonly id: ProcessWindowId;
  readonly stage: WorkStage;
  /** `usual` and `tolerable` as the trade has it, `ceiling` and `printed` as a text has it. */
  readonly what: ProcessWindowKind;
  /** Whether temperatures are judged by it; the others are kept beside, of other routes. */
  readonly judges: boolean;
  /** The lowest, where there is one. */
  readonly from?: Temperature;
  /** The highest, where there is one. */
  readonly to?: Temperature;
  /** The figures as printed, in their own unit. */
  readonly printed: string;
  /** Read in a publication, or customary without one. */
  readonly obtained: 'read' | 'common-practice';
  readonly source: SourceId;
  /** Page or paragraph; of common practice the route it is of. */
  readonly where?: string;
  readonly statement: string;
}

/**
 * The windows of temperature of the work, each with its source: four that judge, common practice of the alcohol-free route,
 * and beside them what publications print of their own routes.
 *
 * The common practice has no source. Published figures lie close to it where fat is saponified and spirit clears; bases made
 * from fatty acids are held hotter. °F converts exactly.
 *
 * @returns frozen rows, temperatures in °C
 *
 * @example
 * ```ts
 * const { to, obtained } = processWindows().find(({ id }) => id === 'saponification-usual') ?? {};
 * to?.celsius.toString(); // => '65'
 * obtained; // => 'common-practice'
 * ```
 */
export function processWindows(): readonly ProcessWindow[] {
  const all = <Id extends ProcessWindowId>(rows: Readonly<Record<Id, ProcessWindowRow>>, judges: boolean) =>
    (Object.keys(rows) as Id[]).map((id) => window(id, rows[id], judges));
  return frozen([...all(judgingWindows, true), ...all(printedWindows, false)]);
}

/** A window that temperatures are judged by. */
export type JudgingWindow = ProcessWindow & { readonly id: JudgingWindowId };

/** One of the windows that judge. */
export function judgingWindow(id: JudgingWindowId): JudgingWindow {
  return window(id, judgingWindows[id], true);
}

function window<Id extends ProcessWindowId>(
  id: Id,
  row: ProcessWindowRow,
  judges: boolean,
): ProcessWindow & { readonly id: Id } {
  const { from, to, ...said } = row;
  const celsius = (value: TemperatureInput): Temperature => frozen({ celsius: readTemperature(id, value) });
  return frozen({
    id,
    ...said,
    judges,
    ...(from === undefined ? {} : { from: celsius(from) }),
    ...(to === undefined ? {} : { to: celsius(to) }),
    obtained: row.source === 'common-practice' ? 'common-practice' : 'read',
  });
}
