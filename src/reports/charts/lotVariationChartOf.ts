import { TEST_BEFORE_SKIN } from '../../freeAlkali/cautions.js';
import { readLimit, type FreeAlkaliLimitId, type Limit } from '../../freeAlkali/index.js';
import type { Decimal } from '../../numbers/index.js';
import type { AlkaliContentInput, Estimate } from '../../quantities/index.js';
import { readBalanced, type Balanced } from './balanced.js';
import type { Chart } from './chart.js';
import { chartFrom, readTitle, type ChartOptions } from './chartFrom.js';
import { inWords, interval } from './figures.js';
import { intervalPanel, type IntervalRow, type Mark } from './intervalPanel.js';
import { superfatsAlone } from './superfatsAlone.js';

/** Options of {@link lotVariationChartOf}. */
export interface LotVariationChartOptions extends ChartOptions {
  /** Drawn as a line: one of `freeAlkaliLimits` by its id, or a content of your own. */
  readonly limit?: FreeAlkaliLimitId | AlkaliContentInput;
}

const HOW_SURE = { read: '', memory: ', recalled', 'common-practice': ', common practice' } as const;

/**
 * What lots and assays do to superfat and free caustic, as a chart: all together, each fat by itself and the alkali by
 * itself, the widest first; and the free caustic beside a limit.
 *
 * Formula: of one alone, its lowest and highest value with all others at their likely one. The result is worked through again
 * from its `given`. Superfat is rounded to 0.01 %, free caustic to 0.001 %, intervals outward.
 *
 * @param result - a result of `planLye`, `superfatFromLye`, `soapFromLye` or `planBatch`, also one read back from JSON
 * @param options - the limit, and your own title
 * @returns a Vega-Lite specification as plain data; superfat in percent of the alkali demand, caustic as percent NaOH of the batch
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` and the faults of the result's inputs
 *
 * @example
 * ```ts
 * const plan = planLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
 *   alkali: { naoh: { solution: { hydroxide: { low: { percent: 49 }, high: { percent: 51 } } } } },
 *   target: { superfat: { percent: 2 } },
 *   dilution: { strength: { percent: 33 } },
 * });
 * const chart = lotVariationChartOf(plan, { limit: 'toilet-soap-is-2888' });
 * const [superfat, freeCaustic] = chart.concat;
 * superfat?.layer.at(-1)?.data.values.map((row) => row['name']); // => ['all together', 'Coconut oil', 'assay of the alkali']
 * freeCaustic?.layer.at(-1)?.data.values[0]?.['label']; // => '0.000 % (0.000 to 0.196)'
 * ```
 */
export function lotVariationChartOf(result: Balanced, options: LotVariationChartOptions = {}): Chart {
  const title = readTitle(options, ['limit']);
  const limit = options.limit === undefined ? undefined : readLimit('options.limit', options.limit);
  const { charged, superfat: together, freeCaustic, fats } = readBalanced('result', result);
  const rowOf = (name: string, estimate: Estimate<Decimal>): IntervalRow => ({
    name,
    interval: interval(estimate, 2),
    label: inWords(estimate, 1, ' %'),
  });
  const superfat = rowOf('all together', together);
  const caustic = { name: 'all together', interval: interval(freeCaustic, 3), label: inWords(freeCaustic, 3, ' %') };
  const heading = `Free caustic alkali after complete reaction${limit === undefined ? '' : besideLimit(freeCaustic, limit)}`;
  return chartFrom({
    title,
    shows: 'What lots and assays do to superfat and free caustic',
    legend: [
      'Diamond: likely. Line: from the lowest to the highest that lawful or certified lots and stated assays allow.',
      'Below all together: each by itself, the others at their likely value, the widest first.',
      `${leavesCaustic(freeCaustic)}${TEST_BEFORE_SKIN.text}`,
    ],
    description: `Superfat ${superfat.label}. ${heading}: ${caustic.label} NaOH of the batch. ${TEST_BEFORE_SKIN.text}`,
    panels: [
      intervalPanel({
        title: 'Superfat',
        axis: 'percent of the alkali that all fats need; below 0 alkali is in excess',
        rows: [superfat, ...superfatsAlone(charged, fats).map((one) => rowOf(one.name, one.superfat))],
        lines: [{ at: 0, label: '0: just enough alkali', is: 'zero' }],
      }),
      intervalPanel({
        title: heading,
        axis: 'percent NaOH of the batch',
        rows: [caustic],
        lines: limit === undefined ? [] : [lineOf(limit)],
      }),
    ],
    columns: 1,
  });
}

function leavesCaustic({ low, high }: Estimate<Decimal>): string {
  if (low.gt(0)) return 'Every lot leaves caustic, which burns skin. ';
  return high.gt(0) ? 'Some lots leave caustic, which burns skin. ' : '';
}

/** Compared unrounded. */
function besideLimit({ low, high }: Estimate<Decimal>, { percentNaoh }: Limit): string {
  if (high.lte(percentNaoh)) return ': all lots within the limit';
  return low.gt(percentNaoh) ? ': every lot above the limit' : ': some lots above the limit';
}

function lineOf({ row, percentNaoh }: Limit): Mark {
  const at = percentNaoh.toSignificantDigits(4).toNumber();
  const of = row === undefined ? '' : ` (${row.soap}${HOW_SURE[row.obtained]})`;
  return { at, label: `limit ${String(at)} %${of}`, is: 'limit' };
}
