/*
 * The part of the Vega-Lite grammar that our charts are written in. It is our own type, so that nobody needs that package
 * to read our declarations; a type test holds that every chart fits the package's own.
 *
 * A chart is made anew at each call, and is not frozen: libraries that draw mark the rows they are given.
 */

/** One row of what is drawn: words, and rounded numbers. */
export type ChartRow = Record<string, string | number>;

/** A scale: either the ends of an axis, or the padding between rows. */
export interface ChartScale {
  type?: 'band';
  domain?: [number, number];
  nice?: boolean;
  padding?: number;
}

/** An axis with its title and unit. */
export interface ChartAxis {
  title: string;
  grid: boolean;
  tickCount?: number;
  tickMinStep?: number;
}

/** Where a mark stands: by a field of its row, or at a distance in pixels. */
export type ChartPlace =
  | {
      field: string;
      type: 'quantitative' | 'ordinal';
      axis?: ChartAxis | null;
      scale?: ChartScale;
      stack?: null;
    }
  | { value: number };

/** A look or a text that the row itself holds; looks pass through no scale. */
export interface ChartLook {
  field: string;
  type: 'nominal';
  scale?: null;
  legend?: null;
}

/** What the places and looks of a mark are taken from. */
export interface ChartEncoding {
  x?: ChartPlace;
  x2?: { field: string } | { value: number };
  y?: ChartPlace;
  y2?: { field: string } | { value: number };
  shape?: ChartLook;
  fill?: ChartLook;
  text?: ChartLook;
}

/** A mark and its look. */
export interface ChartMark {
  /** False where a mark says nothing that another does not say. */
  aria?: boolean;
  type: 'bar' | 'line' | 'point' | 'rect' | 'rule' | 'text' | 'tick';
  color?: string;
  fill?: string;
  stroke?: string;
  strokeWidth?: number;
  strokeDash?: number[];
  size?: number;
  thickness?: number;
  orient?: 'horizontal' | 'vertical';
  align?: 'left' | 'center' | 'right';
  baseline?: 'top' | 'middle' | 'bottom';
  dx?: number;
  dy?: number;
  fontSize?: number;
  fontWeight?: 'bold' | 'normal';
}

/** Marks of one kind with the rows that they draw. */
export interface ChartLayer {
  data: { values: ChartRow[] };
  mark: ChartMark;
  encoding: ChartEncoding;
}

/** One drawing of a chart. */
export interface ChartPanel {
  title: { text: string; anchor: 'start'; frame: 'group'; fontSize: number; offset: number };
  width: number;
  height: number | { step: number };
  layer: ChartLayer[];
}

/**
 * A chart as data: a Vega-Lite specification, plain JSON. Its numbers are rounded for the picture: an interval outward, so
 * that it never shows less than there may be. The figures themselves stand in the result it is drawn from.
 */
export interface Chart {
  $schema: string;
  /** The chart in words, for those who do not see it. */
  description: string;
  background: string;
  padding: number;
  title: {
    text: string[];
    subtitle: string[];
    anchor: 'start';
    fontSize: number;
    subtitleFontSize: number;
    subtitleColor: string;
    subtitlePadding: number;
    offset: number;
  };
  columns: number;
  spacing: number;
  concat: ChartPanel[];
  config: {
    font: string;
    point: { opacity: number };
    tick: { opacity: number };
    view: { stroke: null };
    axis: { labelFontSize: number; titleFontSize: number; titleFontWeight: 'normal'; gridColor: string };
  };
}
