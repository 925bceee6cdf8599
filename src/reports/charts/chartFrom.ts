import { readShape, readText } from '../../numbers/index.js';
import type { Chart, ChartEncoding, ChartPanel } from './chart.js';
import { DARK_GREY, LIGHT_GREY, WHITE } from './palette.js';
import { linesOf, plainText } from './words.js';

/** What every chart can be given. */
export interface ChartOptions {
  /** Your own title, as the name of the batch: plain text, cut after 60 characters. */
  readonly title?: string;
}

/** Reads the options of a chart and gives back its title. */
export function readTitle(options: unknown, known: readonly string[] = []): string | undefined {
  const { title } = readShape('options', options, ['title', ...known]);
  return title === undefined ? undefined : plainText(readText('options.title', title), 60);
}

/** What a chart is made of. */
export interface ChartParts {
  /** The user's own, which goes before ours. */
  readonly title: string | undefined;
  readonly shows: string;
  /** How to read it. */
  readonly legend: readonly string[];
  readonly description: string;
  readonly panels: ChartPanel[];
  /** Panels in a row. */
  readonly columns: number;
}

const LONGEST_LINE = 120;

/** A whole chart. */
export function chartFrom({ title, shows, legend, description, panels, columns }: ChartParts): Chart {
  return {
    $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
    description: title === undefined ? description : `${title}. ${description}`,
    background: WHITE,
    padding: 16,
    title: {
      // the colon also keeps a title such as `constructor` from being taken for a word of the drawing library
      text: title === undefined ? [shows] : [`${title}:`, shows],
      subtitle: legend.flatMap((line) => linesOf(line, LONGEST_LINE)),
      anchor: 'start',
      fontSize: 16,
      subtitleFontSize: 12,
      subtitleColor: DARK_GREY,
      subtitlePadding: 6,
      offset: 14,
    },
    columns,
    spacing: 28,
    concat: panels,
    config: {
      font: 'sans-serif',
      point: { opacity: 1 },
      tick: { opacity: 1 },
      view: { stroke: null },
      axis: { labelFontSize: 12, titleFontSize: 12, titleFontWeight: 'normal', gridColor: LIGHT_GREY },
    },
  };
}

/** A panel's own title. */
export function panelTitle(text: string): ChartPanel['title'] {
  return { text, anchor: 'start', frame: 'group', fontSize: 13, offset: 10 };
}

/** A look that each row names for itself. */
export function look(field: string): NonNullable<ChartEncoding['shape']> {
  return { field, type: 'nominal', scale: null, legend: null };
}
