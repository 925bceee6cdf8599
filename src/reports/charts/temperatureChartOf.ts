import { readShape } from '../../numbers/index.js';
import { checkTemperaturesSteps, type TemperatureReading } from '../../process/index.js';
import type { Chart } from './chart.js';
import { chartFrom, readTitle, type ChartOptions } from './chartFrom.js';
import { stageLogOf } from './stageLog.js';
import { stagePanel } from './stagePanel.js';

/** Input of {@link temperatureChartOf}. */
export interface TemperatureChartInput {
  /** At least one, as `checkTemperatures` takes them. */
  readonly readings: readonly TemperatureReading[];
}

/**
 * A log of temperatures as a chart: a panel for each stage of the work that was read, over the windows that the trade keeps.
 *
 * Readings are joined in the order of their times; where a reading of a stage has no time, its readings stand in the order
 * written, and the axis says so. Temperatures are rounded to 0.1 °C, times to 0.1 minutes; each is judged as it was read.
 *
 * Source: the windows are common practice, without a source; see `processWindows`.
 *
 * @param input - the readings, each with its stage and, where known, its time
 * @param options - your own title
 * @returns a Vega-Lite specification as plain data; °C over minutes since the lye met the fats
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `infeasible` and the faults of a quantity, as `checkTemperatures`
 *
 * @example
 * ```ts
 * const chart = temperatureChartOf({
 *   readings: [
 *     { stage: 'saponification', time: { minutes: 0 }, temperature: { celsius: 52 } },
 *     { stage: 'saponification', time: { minutes: 25 }, temperature: { celsius: 71 } },
 *     { stage: 'pouring', time: { minutes: 90 }, temperature: { celsius: 62 } },
 *   ],
 * });
 * chart.concat.map(({ title }) => title.text); // => ['Saponification: above the usual, still tolerable', 'Pouring: as usual']
 * ```
 */
export function temperatureChartOf(input: TemperatureChartInput, options: ChartOptions = {}): Chart {
  const title = readTitle(options);
  const { readings } = readShape('input', input, ['readings']);
  const { stages, given } = checkTemperaturesSteps({ readings } as TemperatureChartInput);
  const logs = stages.map((stage) =>
    stageLogOf(
      stage,
      given.readings.filter((one) => one.stage === stage.stage),
    ),
  );
  const celsius = logs.flatMap((log) => [...log.readings, ...log.limits].map((one) => one.celsius));
  const span: [number, number] = [Math.min(...celsius) - MARGIN, Math.max(...celsius) + MARGIN];
  return chartFrom({
    title,
    shows: 'Temperatures of the work, over the windows of the trade',
    legend: [
      'Circle: inside the usual window. Open triangle: above it, still tolerable.',
      'Filled triangle: too hot (pointing up) or too cold (pointing down). Square: no window is known.',
      'The windows are common practice of the route without spirit, not published limits.',
      'What happens between two readings is not known.',
    ],
    description: `Temperatures of the work. ${logs.map(({ heading, span: { low, high } }) => `${heading}, ${String(low)} to ${String(high)} °C.`).join(' ')}`,
    panels: logs.map((log) => stagePanel(log, span)),
    columns: 2,
  });
}

/** Room above and below what is drawn, °C. */
const MARGIN = 4;
