import { SPIRIT_CATCHES_FIRE } from '../composition/index.js';
import { alkaliCautions, HOT_SOAP_SCALDS, LYE_INTO_HOT_SOAP } from '../lye/index.js';
import { Decimal, frozen, noted, readShape, type Remark, type Steps } from '../numbers/index.js';
import type { Temperature, Time } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { beyondWindow, type BeyondWindow } from './beyondWindow.js';
import { judgingWindow } from './processWindows.js';
import {
  givenReadings,
  inTime,
  readReadings,
  type Reading,
  type TemperatureReading,
  type TemperatureReadingGiven,
} from './readings.js';
import { WORK_STAGES, type WorkStage } from './stage.js';
import { meaningOf, windowsOfStage, type StageVerdict } from './stageWindows.js';

/** Input of {@link checkTemperatures}. */
export interface CheckTemperaturesInput {
  /** At least one, in any order: the times put them in order. */
  readonly readings: readonly TemperatureReading[];
}

/** What the log tells of a stage. */
export interface StageTemperatures {
  readonly stage: WorkStage;
  /** By the readings themselves; where they are both too hot and too cold, too hot. */
  readonly verdict: StageVerdict;
  readonly meaning: Remark;
  readonly lowest: Temperature;
  readonly highest: Temperature;
  /** First and last time; left out where a reading has none, or all have the same. */
  readonly logged?: { readonly from: Time; readonly to: Time };
  /** Each window that was passed. */
  readonly beyond: readonly BeyondWindow[];
}

/** Result of {@link checkTemperatures}. */
export interface CheckTemperaturesResult {
  readonly by: 'checkTemperatures';
  /** The inputs as read. */
  readonly given: { readonly readings: readonly TemperatureReadingGiven[] };
  /** The stages that were read, in the order of the work. */
  readonly stages: readonly StageTemperatures[];
  /** What the log does not tell. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const NOTES = {
  'common-practice-of-one-route':
    'The windows are common practice of the alcohol-free route, without a source. Publications of other routes print other ones: see processWindows.',
  'between-readings':
    'Between two readings the temperature is taken to go straight from one to the other. A peak between them is not seen, and a pot that heats itself can peak within minutes.',
  'times-do-not-tell':
    'Of a stage whose readings have no time, or all the same, how long it was beyond its window cannot be told.',
  'stages-overlap':
    'By their times two stages overlap: a reading may stand under the wrong stage. Each is judged by its own window.',
} as const;

/**
 * Temperatures of the work against the windows of the trade: highest and lowest of each stage, how far and how long each
 * window was passed, and what that means.
 *
 * Formula: between readings of a stage the temperature goes on straight lines, `t = t₁ + (t₂ − t₁)·(τ − τ₁)/(τ₂ − τ₁)`; the
 * time beyond a limit runs from crossing to crossing, the average beyond it is the integral of `t − limit` over that time,
 * divided by it. Both are exact. Nothing is drawn from one stage to the next.
 *
 * The verdict goes by the readings alone, and a reading just at a limit is inside. What happens between them is not known. A
 * stage has its times told only if every reading has one; two temperatures at one time of a stage are refused.
 *
 * Source: the windows' own; see `processWindows`.
 *
 * @param input - readings, each with its stage and, where known, the time since the lye met the fats
 * @returns a verdict for each stage that was read, in °C, Celsius degrees and minutes
 * @throws CalculationError `infeasible` for two temperatures at one time of a stage, `missing`, `bad-shape` and the faults of
 *   a quantity
 *
 * @example
 * ```ts
 * const { stages } = checkTemperatures({
 *   readings: [
 *     { stage: 'saponification', time: { minutes: 0 }, temperature: { celsius: 50 } },
 *     { stage: 'saponification', time: { minutes: 20 }, temperature: { celsius: 70 } },
 *     { stage: 'saponification', time: { minutes: 40 }, temperature: { celsius: 60 } },
 *   ],
 * });
 * const [saponification] = stages;
 * saponification?.verdict; // => 'tolerable'
 * saponification?.beyond[0]?.time; // => { minutes: '15' }
 * ```
 */
export function checkTemperatures(input: CheckTemperaturesInput): CheckTemperaturesResult {
  return checkTemperaturesSteps(input);
}

/** The kernel, with room for the working. */
export function checkTemperaturesSteps(input: CheckTemperaturesInput, steps?: Steps): CheckTemperaturesResult {
  const fields = readShape('input', input, ['readings']);
  const readings = readReadings('readings', fields['readings']);
  const logs = WORK_STAGES.map((stage) => readings.filter((one) => one.stage === stage)).filter(
    ({ length }) => length > 0,
  );
  const stages = logs.map((log) => stageOf(log, steps));
  return frozen({
    by: 'checkTemperatures',
    given: frozen({ readings: givenReadings(readings) }),
    stages: frozen(stages),
    notes: notesOf(stages),
    cautions: alkaliCautions(LYE_INTO_HOT_SOAP, HOT_SOAP_SCALDS, SPIRIT_CATCHES_FIRE),
    basis: frozen<readonly SourceId[]>(['common-practice', 'ghs-naoh']),
    edition: EDITION,
  });
}

function stageOf(log: readonly Reading[], steps: Steps | undefined): StageTemperatures {
  const [{ stage }] = log as readonly [Reading];
  const degrees = log.map(({ celsius }) => celsius);
  const lowest = noted(steps, `${stage}: lowest`, 'min t', '°C', Decimal.min(...degrees));
  const highest = noted(steps, `${stage}: highest`, 'max t', '°C', Decimal.max(...degrees));
  const timed = inTime(log);
  const beyond = windowsOfStage[stage]
    .map(judgingWindow)
    .flatMap((window) => beyondWindow(window, { lowest, highest, timed }, steps));
  const verdict = verdictOf(stage, beyond);
  const [first, last] = [timed[0], timed.at(-1)];
  return frozen({
    stage,
    verdict,
    meaning: meaningOf(stage, verdict),
    lowest: frozen({ celsius: lowest }),
    highest: frozen({ celsius: highest }),
    ...(first === undefined || last === undefined
      ? {}
      : {
          logged: frozen({ from: frozen({ minutes: first.minutes }), to: frozen({ minutes: last.minutes }) }),
        }),
    beyond: frozen(beyond),
  });
}

function verdictOf(stage: WorkStage, beyond: readonly BeyondWindow[]): StageVerdict {
  const windows = windowsOfStage[stage];
  if (windows.length === 0) return 'cannot-tell';
  const above = beyond.filter(({ side }) => side === 'above').length;
  if (above === windows.length) return 'too-hot';
  if (above > 0) return 'tolerable';
  return beyond.length > 0 ? 'too-cold' : 'within';
}

function notesOf(stages: readonly StageTemperatures[]): readonly Remark[] {
  const codes: readonly (keyof typeof NOTES)[] = [
    'common-practice-of-one-route',
    'between-readings',
    ...(stages.some(({ beyond }) => beyond.some(({ time }) => time === undefined))
      ? (['times-do-not-tell'] as const)
      : []),
    ...(overlap(stages) ? (['stages-overlap'] as const) : []),
  ];
  return frozen(codes.map((code) => frozen({ code, text: NOTES[code] })));
}

/** Whether a stage begins, by its times, before an earlier one has ended; the lye has its own vessel. */
function overlap(stages: readonly StageTemperatures[]): boolean {
  const spans = stages.flatMap(({ stage, logged }) => (stage === 'lye' || logged === undefined ? [] : [logged]));
  return spans.slice(1).some(({ from }, at) => spans[at]?.to.minutes.gt(from.minutes) === true);
}
