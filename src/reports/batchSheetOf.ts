import { readShape, readWord } from '../numbers/index.js';
import { escaped } from './markdown.js';
import { readNumberFormat, type NumberFormat } from './numberFormat.js';
import { readBatch, type PlannedBatch } from './readBatch.js';
import { evidence } from './sheet/evidence.js';
import { cautionsAt } from './sheet/placedCautions.js';
import { sheetOf } from './sheet/sheet.js';
import { sheetWriter, type SheetUnits } from './sheet/sheetWriter.js';
import { targets } from './sheet/targets.js';
import { readings } from './sheet/readings.js';
import { weighOut } from './sheet/weighOut.js';
import { work } from './sheet/work.js';

/** What {@link batchSheetOf} may be told. */
export interface BatchSheetOptions {
  /** Grams, millilitres and °C; ounces, US fluid ounces and °F; or both. Metric unless stated. */
  readonly units?: SheetUnits;
  /** How figures are written; `1234.5` unless stated. */
  readonly numbers?: NumberFormat;
}

/**
 * A batch as one page for the bench, in Markdown: what to weigh, the order of the work with its temperatures, what the batch should be,
 * tests with room for their readings, and what the figures rest on.
 *
 * Masses are those of the plan, to the step of its scale; in a unit that the step does not fit they are rounded to 0.01 oz or 0.1 g,
 * or three digits if that is finer, alkali always down. Each caution of the batch stands at the step where the hand meets
 * what it is of. Names from the recipe are escaped: none can break a table or become markup. The sheet is worked out from
 * what the batch was planned from, so that one read back from JSON gives the same page.
 *
 * Order of work and temperatures: common practice of the route without spirit, no source; see `orderOfWork` and `processWindows`.
 * The limit of free caustic is the target's; without one the strictest on file, recalled.
 *
 * @param batch - a result of `planBatch`, also one read back from JSON
 * @param options - units, and how figures are written
 * @returns CommonMark with tables, ending with a line end
 * @throws CalculationError `missing` or `bad-shape` for what is no batch, `unknown-key`, `bad-shape` for another unit or mark,
 *   and the faults of the batch's recipe
 *
 * @example
 * ```ts
 * const batch = planBatch(
 *   {
 *     version: 1,
 *     title: 'Clear base 1',
 *     fats: [{ fat: 'coconut-oil', mass: { g: 700 } }],
 *     lye: [{ alkali: 'naoh', solution: { hydroxide: { percent: 50 } } }],
 *     target: { superfat: { percent: 2 } },
 *   },
 *   { scaleStep: { g: 1 } },
 * );
 * const lines = batchSheetOf(batch, { units: 'both' }).split('\n');
 * lines[0]; // => '# Clear base 1'
 * lines.find((line) => line.startsWith('| Sodium')); // => '| Sodium hydroxide as lye of 50 % | 246 | 8.67 | ☐ |  |'
 * ```
 */
export function batchSheetOf(batch: PlannedBatch, options: BatchSheetOptions = {}): string {
  const { units, numbers } = readShape('options', options, ['units', 'numbers']);
  const system = readWord('options.units', units ?? 'metric', ['metric', 'us', 'both']);
  const write = sheetWriter(system, readNumberFormat('options.numbers', numbers));
  const sheet = sheetOf(readBatch('batch', batch), write);
  const title = escaped(sheet.batch.recipe.title ?? '');
  const urgent = cautionsAt('start', sheet.cautions);
  return [
    `# ${title === '' ? 'Batch sheet' : title}`,
    '',
    'Batch no. ____________ · Date ____________ · Made by ____________',
    '',
    ...(urgent.length === 0 ? [] : [...urgent.map((text) => `> ${text}`), '']),
    ...[weighOut, work, targets, readings, evidence].flatMap((part) => [...part(sheet), '']),
  ].join('\n');
}
