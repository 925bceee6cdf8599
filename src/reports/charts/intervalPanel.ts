import type { ChartEncoding, ChartLayer, ChartMark, ChartPanel, ChartPlace, ChartRow } from './chart.js';
import { look, panelTitle } from './chartFrom.js';
import type { Interval } from './figures.js';
import { BLACK, SKY_BLUE, VERMILLION, WHITE } from './palette.js';
import { plainText } from './words.js';

/** One row of intervals: its name to the left, its figures in words to the right. */
export interface IntervalRow {
  readonly name: string;
  readonly interval: Interval;
  readonly label: string;
  /** How the likely figure is marked: filled diamond unless stated. */
  readonly mark?: 'filled-circle' | 'open-circle';
}

/** A line across all rows, with its meaning above it. */
export interface Mark {
  readonly at: number;
  readonly label: string;
  readonly is: 'zero' | 'limit';
}

/** What a panel of intervals shows. */
export interface IntervalPanelParts {
  readonly title: string;
  readonly axis: string;
  readonly rows: readonly IntervalRow[];
  readonly lines?: readonly Mark[];
  /** Whether bars run from nought to the likely figure, as for parts of a whole. */
  readonly bars?: boolean;
}

const WIDTH = 380;
const LONGEST_NAME = 44;
/** An axis goes a little further than what stands on it. */
const ROOM = 1.05;

/** Rows of intervals over one axis: a line from lowest to highest with its ends marked, and the likely figure on it. */
export function intervalPanel({ title, axis, rows, lines = [], bars = false }: IntervalPanelParts): ChartPanel {
  const data = { values: rows.map(rowOf) };
  const ends = [...rows.flatMap(({ interval }) => [interval.low, interval.high]), ...lines.map(({ at }) => at)];
  const [least, most] = [Math.min(0, ...ends), Math.max(0, ...ends)];
  const x = (field: string): ChartPlace => ({
    field,
    type: 'quantitative',
    stack: null,
    axis: { title: axis, grid: true, tickCount: 6 },
    // an axis needs a length, also where all is nought
    scale: { domain: [least * ROOM, most === least ? least + 1 : most * ROOM], nice: true },
  });
  // rows stand by their order, so that two of one name stay two, and a name is never more than text
  const y: ChartPlace = { field: 'order', type: 'ordinal', axis: null, scale: { type: 'band', padding: 0.3 } };
  const layer = (mark: ChartMark, encoding: ChartEncoding): ChartLayer => ({
    data,
    mark,
    encoding: { y, ...encoding },
  });
  const end = (field: string): ChartLayer =>
    layer({ type: 'tick', orient: 'vertical', color: BLACK, size: 10, thickness: 2 }, { x: x(field) });
  const words = (field: string, at: number, align: 'left' | 'right'): ChartLayer =>
    layer(
      { type: 'text', align, baseline: 'middle', fontSize: 12, color: BLACK },
      { x: { value: at }, text: { field, type: 'nominal' } },
    );
  return {
    title: panelTitle(title),
    width: WIDTH,
    height: { step: 26 },
    layer: [
      ...(bars ? [layer({ type: 'bar', fill: SKY_BLUE, stroke: BLACK, strokeWidth: 0.5 }, { x: x('likely') })] : []),
      ...lines.flatMap((line) => lineLayers(line, x('at'))),
      layer({ type: 'rule', color: BLACK, strokeWidth: 2 }, { x: x('low'), x2: { field: 'high' } }),
      end('low'),
      end('high'),
      layer(
        { type: 'point', size: 70, stroke: BLACK, strokeWidth: 1.5 },
        { x: x('likely'), shape: look('shape'), fill: look('fill') },
      ),
      words('name', -10, 'right'),
      words('label', WIDTH + 12, 'left'),
    ],
  };
}

function rowOf({ name, interval, label, mark }: IntervalRow, order: number): ChartRow {
  return {
    order,
    name: plainText(name, LONGEST_NAME),
    low: interval.low,
    likely: interval.likely,
    high: interval.high,
    label,
    shape: mark === undefined ? 'diamond' : 'circle',
    fill: mark === 'open-circle' ? WHITE : BLACK,
  };
}

/** A line of a limit is dashed, so that it is told from the axis without its colour. */
function lineLayers({ at, label, is }: Mark, x: ChartPlace): ChartLayer[] {
  const color = is === 'limit' ? VERMILLION : BLACK;
  const data = { values: [{ at, label }] };
  return [
    { data, mark: { type: 'rule', color, strokeWidth: 2, strokeDash: is === 'limit' ? [6, 3] : [] }, encoding: { x } },
    {
      data,
      mark: { type: 'text', color: BLACK, fontSize: 11, baseline: 'bottom', align: 'center' },
      encoding: { x, y: { value: -4 }, text: { field: 'label', type: 'nominal' } },
    },
  ];
}
