import type { ChartEncoding, ChartLayer, ChartMark, ChartPanel, ChartPlace } from './chart.js';
import { look, panelTitle } from './chartFrom.js';
import { BLACK, DARK_GREY, WHITE } from './palette.js';
import type { DrawnLimit, StageLog } from './stageLog.js';

const WIDTH = 260;
const HEIGHT = 280;
/** Room before the first and after the last reading, part of the time between them. */
const MARGIN = 0.08;

/** The log of one stage over its windows. */
export function stagePanel({ heading, isTimed, readings, limits }: StageLog, span: [number, number]): ChartPanel {
  const times = readings.map(({ at }) => at);
  const [first, last] = [Math.min(...times), Math.max(...times)];
  // an axis needs a length, also for one reading
  const margin = first === last ? 1 : (last - first) * MARGIN;
  const x: ChartPlace = {
    field: 'at',
    type: 'quantitative',
    axis: {
      title: isTimed ? 'minutes since the lye met the fats' : 'readings in the order written, times not known',
      grid: false,
      tickCount: 5,
      tickMinStep: 1,
    },
    scale: { domain: [first - margin, last + margin] },
  };
  const y: ChartPlace = {
    field: 'celsius',
    type: 'quantitative',
    axis: { title: 'temperature, °C', grid: true, tickCount: 8 },
    scale: { domain: span, nice: true },
  };
  const data = { values: readings.map((reading) => ({ ...reading })) };
  const words = (field: 'above' | 'below'): ChartLayer[] => {
    const [baseline, dy] = field === 'above' ? (['bottom', -8] as const) : (['top', 8] as const);
    const text = { type: 'text', fontSize: 11, fontWeight: 'bold', align: 'center', baseline, dy } as const;
    const encoding: ChartEncoding = { x, y, text: { field, type: 'nominal' } };
    // white behind the words keeps them legible where they stand on a line
    const behind: ChartMark = { ...text, aria: false, stroke: WHITE, strokeWidth: 4 };
    return [behind, { ...text, color: BLACK }].map((mark) => ({ data, mark, encoding }));
  };
  return {
    title: panelTitle(heading),
    width: WIDTH,
    height: HEIGHT,
    layer: [
      ...limits.flatMap((limit) => limitLayers(limit, y)),
      { data, mark: { type: 'line', color: DARK_GREY, strokeWidth: 1 }, encoding: { x, y } },
      {
        data,
        mark: { type: 'point', size: 80, stroke: BLACK, strokeWidth: 1.5 },
        encoding: {
          x,
          y,
          shape: look('shape'),
          fill: look('fill'),
        },
      },
      ...words('above'),
      ...words('below'),
    ],
  };
}

/** An end of a window: drawn through where it is usual, dashed where it is tolerable, with its words beside the panel. */
function limitLayers({ is, ...limit }: DrawnLimit, y: ChartPlace): ChartLayer[] {
  const data = { values: [limit] };
  return [
    {
      data,
      mark: { type: 'rule', color: BLACK, strokeWidth: 1.5, strokeDash: is === 'tolerable' ? [6, 3] : [] },
      encoding: { x: { value: 0 }, x2: { value: WIDTH }, y },
    },
    {
      data,
      mark: { type: 'text', color: BLACK, fontSize: 11, align: 'left', baseline: 'middle' },
      encoding: { x: { value: WIDTH + 4 }, y, text: { field: 'label', type: 'nominal' } },
    },
  ];
}
