import { frozen, readList, readShape, readWord, refuse, type Decimal } from '../numbers/index.js';
import {
  readTemperature,
  readTime,
  type Temperature,
  type TemperatureInput,
  type Time,
  type TimeInput,
} from '../quantities/index.js';
import { WORK_STAGES, type WorkStage } from './stage.js';

/** What the thermometer showed at a stage of the work; the temperatures of a recipe fit it. */
export interface TemperatureReading {
  readonly stage: WorkStage;
  /** Time since the lye met the fats. */
  readonly time?: TimeInput;
  readonly temperature: TemperatureInput;
}

/** A reading in a result. */
export interface TemperatureReadingGiven {
  readonly stage: WorkStage;
  readonly time?: Time;
  readonly temperature: Temperature;
}

/** A reading as read. */
export interface Reading {
  readonly stage: WorkStage;
  readonly minutes: Decimal | undefined;
  readonly celsius: Decimal;
}

/** A reading whose time is known. */
export interface TimedReading extends Reading {
  readonly minutes: Decimal;
}

/**
 * Reads a log, at least one reading. It may stand in any order: the times put it in order.
 *
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, the faults of a quantity, and `infeasible` for two
 *   temperatures at one time of one stage
 */
export function readReadings(path: string, value: unknown): readonly Reading[] {
  const readings = readList(path, value).map((entry, at): Reading => {
    const here = `${path}[${String(at)}]`;
    const fields = readShape(here, entry, ['stage', 'time', 'temperature']);
    return {
      stage: readWord(`${here}.stage`, fields['stage'], WORK_STAGES),
      minutes: fields['time'] === undefined ? undefined : readTime(`${here}.time`, fields['time']),
      celsius: readTemperature(`${here}.temperature`, fields['temperature']),
    };
  });
  refuseContradiction(path, readings);
  return readings;
}

function refuseContradiction(path: string, readings: readonly Reading[]): void {
  const seen = new Map<string, Decimal>();
  for (const [at, { stage, minutes, celsius }] of readings.entries()) {
    if (minutes === undefined) continue;
    const moment = `${stage} ${minutes.toString()}`;
    const before = seen.get(moment);
    if (before !== undefined && !before.eq(celsius)) {
      const both = `${before.toString()} and ${celsius.toString()} °C at ${minutes.toString()} minutes`;
      refuse('infeasible', `${path}[${String(at)}].temperature`, `one temperature at one time of ${stage}`, both);
    }
    seen.set(moment, celsius);
  }
}

/** Readings as they stand in `given`, in the order they came. */
export function givenReadings(readings: readonly Reading[]): readonly TemperatureReadingGiven[] {
  return frozen(
    readings.map(({ stage, minutes, celsius }) =>
      frozen({
        stage,
        ...(minutes === undefined ? {} : { time: frozen({ minutes }) }),
        temperature: frozen({ celsius }),
      }),
    ),
  );
}

/** The readings of a stage in the order of their times, where each has one and they span some time; else none. */
export function inTime(readings: readonly Reading[]): readonly TimedReading[] {
  const timed = readings.flatMap(({ minutes, ...rest }) => (minutes === undefined ? [] : [{ ...rest, minutes }]));
  const inOrder = timed.sort((a, b) => a.minutes.cmp(b.minutes));
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  const spansTime = first !== undefined && last !== undefined && first.minutes.lt(last.minutes);
  return timed.length === readings.length && spansTime ? inOrder : [];
}
