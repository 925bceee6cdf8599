import type { Decimal } from '../../numbers/index.js';
import {
  checkTemperaturesSteps,
  processWindows,
  type StageTemperatures,
  type StageVerdict,
  type TemperatureReadingGiven,
  type WorkStage,
} from '../../process/index.js';
import { drawn } from './figures.js';
import { BLACK, BLUE, VERMILLION, WHITE } from './palette.js';

/** The readings of a stage and its limits, as they are drawn. */
export interface StageLog {
  /** The stage and how it went, in words. */
  readonly heading: string;
  /** Whether every reading has a time; else they stand in the order written. */
  readonly isTimed: boolean;
  readonly readings: readonly DrawnReading[];
  readonly limits: readonly DrawnLimit[];
  /** Lowest and highest reading, °C. */
  readonly span: { readonly low: number; readonly high: number };
}

/** One reading. */
export interface DrawnReading {
  /** Minutes, or its place in the order. */
  readonly at: number;
  readonly celsius: number;
  readonly shape: string;
  readonly fill: string;
  /** Its temperature in words where it is the highest; else empty. */
  readonly above: string;
  /** The same of the lowest. */
  readonly below: string;
}

/** One end of a window. */
export interface DrawnLimit {
  readonly celsius: number;
  readonly label: string;
  readonly is: 'usual' | 'tolerable';
}

const STAGES: Readonly<Record<WorkStage, string>> = {
  lye: 'Lye',
  saponification: 'Saponification',
  clearing: 'Clearing',
  pouring: 'Pouring',
};

/** How a verdict reads, and how a reading with it looks. */
const VERDICTS: Readonly<Record<StageVerdict, { words: string; shape: string; fill: string }>> = {
  within: { words: 'as usual', shape: 'circle', fill: BLUE },
  tolerable: { words: 'above the usual, still tolerable', shape: 'triangle-up', fill: WHITE },
  'too-hot': { words: 'too hot', shape: 'triangle-up', fill: VERMILLION },
  'too-cold': { words: 'too cold', shape: 'triangle-down', fill: VERMILLION },
  'cannot-tell': { words: 'no window known', shape: 'square', fill: BLACK },
};

/** The log of a stage as it is drawn. */
export function stageLogOf(
  { stage, verdict, lowest, highest }: StageTemperatures,
  readings: readonly TemperatureReadingGiven[],
): StageLog {
  const isTimed = readings.every(({ time }) => time !== undefined);
  const drawnReadings = readings.map((reading, at): DrawnReading => {
    const { celsius } = reading.temperature;
    const { shape, fill } = VERDICTS[verdictOf(reading)];
    const words = `${String(degrees(celsius))} °C`;
    return {
      at: reading.time === undefined || !isTimed ? at + 1 : drawn(reading.time.minutes, 1),
      celsius: degrees(celsius),
      shape,
      fill,
      above: celsius.eq(highest.celsius) ? words : '',
      below: celsius.eq(lowest.celsius) && !lowest.celsius.eq(highest.celsius) ? words : '',
    };
  });
  return {
    heading: `${STAGES[stage]}: ${VERDICTS[verdict].words}`,
    isTimed,
    readings: drawnReadings.sort((a, b) => a.at - b.at),
    limits: limitsOf(stage),
    span: { low: degrees(lowest.celsius), high: degrees(highest.celsius) },
  };
}

const degrees = (celsius: Decimal): number => drawn(celsius, 1);

/** What the trade says of one reading by itself. */
function verdictOf({ stage, temperature }: TemperatureReadingGiven): StageVerdict {
  const [only] = checkTemperaturesSteps({ readings: [{ stage, temperature }] }).stages;
  return only?.verdict ?? 'cannot-tell';
}

function limitsOf(stage: WorkStage): readonly DrawnLimit[] {
  return processWindows()
    .filter((window) => window.judges && window.stage === stage)
    .flatMap(({ what, from, to }) => {
      const is = what === 'tolerable' ? what : 'usual';
      const limit = (celsius: Decimal, side: 'from' | 'to'): DrawnLimit => ({
        celsius: degrees(celsius),
        label: `${is}: at ${side === 'to' ? 'most' : 'least'} ${String(degrees(celsius))} °C`,
        is,
      });
      return [...(from ? [limit(from.celsius, 'from')] : []), limit(to.celsius, 'to')];
    });
}
