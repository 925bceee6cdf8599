import {
  bareFigure,
  placeAmongPublishedSteps,
  type LeadingFigure,
  type PlaceAmongPublishedInput,
  type PlacedFigure,
  type PlaceInRange,
  type PublishedSpread,
} from '../../clarity/index.js';
import { givenOf } from '../../composition/index.js';
import { mapEnds, type Fraction, type MassRatio } from '../../quantities/index.js';
import type { Chart, ChartPanel } from './chart.js';
import { chartFrom, readTitle, type ChartOptions } from './chartFrom.js';
import { inWords, interval } from './figures.js';
import { intervalPanel, type IntervalRow } from './intervalPanel.js';

/** A result of `placeAmongPublished`, also one read back from JSON. */
export interface Placed {
  readonly by: 'placeAmongPublished';
  readonly given: unknown;
}

interface FigureWords {
  readonly name: string;
  readonly axis: string;
  readonly decimals: number;
  readonly unit: string;
}

const FIGURES: Readonly<Record<LeadingFigure, FigureWords>> = {
  clearingAgentsPerSoap: {
    name: 'Clearing agents to soap',
    axis: 'parts by mass to one part of anhydrous soap',
    decimals: 2,
    unit: '',
  },
  palmiticAndStearic: {
    name: 'Palmitic with stearic acid',
    axis: 'percent by mass of the fats',
    decimals: 1,
    unit: ' %',
  },
  water: { name: 'Water as charged', axis: 'percent by mass of the charge', decimals: 1, unit: ' %' },
};

const PLACES: Readonly<Record<PlaceInRange, string>> = {
  inside: 'inside the range of clear formulas',
  outside: 'outside the range of clear formulas',
  'cannot-tell': 'partly outside the range of clear formulas',
  'too-few-clear-formulas': 'too few clear formulas for a verdict',
};

/**
 * Where a base stands among published formulas, as a chart: for each leading figure the base, and from least to greatest
 * with the median the formulas that are clear and those that are not, stated and inferred apart.
 *
 * The result is worked through again from its `given`. Shares are rounded to 0.01 %, ratios to 0.001, intervals outward.
 *
 * Source: the published formulas, each with its own.
 *
 * @param place - a result of `placeAmongPublished`, also one read back from JSON
 * @param options - your own title
 * @returns a Vega-Lite specification as plain data
 * @throws CalculationError `missing` or `bad-shape` for what is no such result, `unknown-key`, and the faults of its inputs
 *
 * @example
 * ```ts
 * const soap = soapFromLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 300 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 106 }, solution: { hydroxide: { percent: 50 } } }],
 * });
 * const composition = compositionFrom({
 *   soap,
 *   additions: [{ solvent: 'glycerol', mass: { g: 150 }, assay: { percent: '99.5' } }],
 * });
 * const chart = placeChartOf(placeAmongPublished({ composition }));
 * chart.concat[2]?.layer[0]?.data.values[1]?.['name']; // => 'clear, stated: 12 formulas'
 * ```
 */
export function placeChartOf(place: Placed, options: ChartOptions = {}): Chart {
  const title = readTitle(options);
  const given = givenOf('place', place, 'placeAmongPublished') as PlaceAmongPublishedInput;
  const { figures, precedent } = placeAmongPublishedSteps(given);
  const placed = Object.entries(figures) as [LeadingFigure, PlacedFigure<Fraction | MassRatio>][];
  return chartFrom({
    title,
    shows: 'This base among published formulas',
    legend: [
      'Diamond and line: this base; likely, lowest and highest.',
      'Circle and line: published formulas; median, least and greatest. Filled where they are clear, open where not.',
      precedent.text,
    ],
    description: `${precedent.text} ${placed.map(([figure, one]) => inOneLine(figure, one)).join(' ')}`,
    panels: placed.map(([figure, one]) => panelOf(figure, one)),
    columns: 1,
  });
}

function inOneLine(figure: LeadingFigure, { value, place }: PlacedFigure<Fraction | MassRatio>): string {
  const { name, decimals, unit } = FIGURES[figure];
  return `${name}: ${inWords(mapEnds(value, bareFigure), decimals, unit)}, ${PLACES[place]}.`;
}

function panelOf(figure: LeadingFigure, placed: PlacedFigure<Fraction | MassRatio>): ChartPanel {
  const { name, axis, decimals, unit } = FIGURES[figure];
  const { value, clear, notClear, place } = placed;
  const row = (of: string, estimate: Parameters<typeof interval>[0], mark?: IntervalRow['mark']): IntervalRow => ({
    name: of,
    interval: interval(estimate, decimals + 1),
    label: inWords(estimate, decimals, unit),
    ...(mark === undefined ? {} : { mark }),
  });
  const published = (
    of: string,
    { count, low, median, high }: PublishedSpread<Fraction | MassRatio>,
    mark: 'filled-circle' | 'open-circle',
  ): readonly IntervalRow[] => {
    if (low === undefined || median === undefined || high === undefined) return [];
    const formulas = `${of}: ${String(count)} formula${count === 1 ? '' : 's'}`;
    return [row(formulas, { low: bareFigure(low), likely: bareFigure(median), high: bareFigure(high) }, mark)];
  };
  return intervalPanel({
    title: `${name}: ${PLACES[place]}`,
    axis,
    rows: [
      row('this base', mapEnds(value, bareFigure)),
      ...published('clear, stated', clear.stated, 'filled-circle'),
      ...published('clear, inferred', clear.inferred, 'filled-circle'),
      ...published('not clear, stated', notClear.stated, 'open-circle'),
      ...published('not clear, inferred', notClear.inferred, 'open-circle'),
    ],
  });
}
