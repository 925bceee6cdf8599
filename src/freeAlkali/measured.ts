import {
  frozen,
  readFields,
  readShape,
  readWord,
  refuse,
  ZERO,
  type Decimal,
  type Fields,
  type Limits,
} from '../numbers/index.js';
import {
  readAlkaliContent,
  readMass,
  readSaponificationValue,
  readTime,
  type AlkaliContent,
  type AlkaliContentInput,
  type Estimate,
  type Mass,
  type MassInput,
  type Time,
  type TimeInput,
} from '../quantities/index.js';
import { ONE_SIDED, TWO_SIDED } from './data/titration.js';

/** A free caustic that was measured; a result of `freeCausticAlkaliFromTitration` fits as it is. */
export interface MeasuredFreeCaustic {
  readonly freeCausticAlkali: AlkaliContentInput;
  readonly standardUncertainty: AlkaliContentInput;
  /** What was weighed for it. */
  readonly sample?: MassInput;
}

/** A free caustic that was measured, in a result. */
export interface MeasuredFreeCausticGiven {
  readonly freeCausticAlkali: AlkaliContent;
  readonly standardUncertainty: AlkaliContent;
  readonly sample?: Mass;
}

/** Two measurements with heat between them. */
export interface Completion<M> {
  /** The measurement before. */
  readonly earlier: M;
  /** Time in the heat between the two; an hour at least. */
  readonly apart: TimeInput;
}

/** The same in a result. */
export interface CompletionGiven<M> {
  readonly earlier: M;
  readonly apart: Time;
}

/** A figure that was measured, in a unit of the caller's choice. */
export interface Measurement {
  readonly value: Decimal;
  readonly uncertainty: Decimal;
}

/** No test finds less than this, so that everything worked out from it is a number that can be read again. */
function notTooFine(path: string, content: Decimal): Decimal {
  if (!content.isZero() && content.lt('1e-12'))
    refuse('out-of-range', path, '0, or 1e-12 and more', content.toString());
  return content;
}

/** No test is without uncertainty: with none, a verdict and a dose would be surer than any burette is. */
const SOME: Limits = { above: 0 };

/**
 * Reads the fields of a test: of a result, which says by what, those that are wanted; of an object of the caller's none but
 * those.
 */
export function readTest(path: string, value: unknown, keys: readonly string[], by: readonly string[]): Fields {
  const fields = readFields(path, value);
  if (fields['by'] === undefined) return readShape(path, value, keys);
  readWord(`${path}.by`, fields['by'], by);
  return fields;
}

/** Reads a free caustic that was measured, with its sample if told. */
export function readMeasuredFreeCaustic(path: string, value: unknown, batch?: Decimal): MeasuredFreeCausticGiven {
  const keys = ['freeCausticAlkali', 'standardUncertainty', 'sample'] as const;
  const fields = readTest(path, value, keys, ['freeCausticAlkaliFromTitration']);
  const content = (key: (typeof keys)[number], limits: Limits): AlkaliContent => {
    const at = `${path}.${key}`;
    return frozen({ percentNaoh: notTooFine(at, readAlkaliContent(at, fields[key], { max: 100, ...limits })) });
  };
  return frozen({
    freeCausticAlkali: content('freeCausticAlkali', { min: 0 }),
    standardUncertainty: content('standardUncertainty', SOME),
    ...readSample(path, fields['sample'], batch),
  });
}

/** Reads what was weighed for a test: less than the batch it was taken from. */
export function readSample(path: string, sample: unknown, batch?: Decimal): { readonly sample?: Mass } {
  if (sample === undefined) return {};
  const g = readMass(`${path}.sample`, sample);
  if (batch !== undefined && g.gt(batch)) {
    refuse('out-of-range', `${path}.sample`, `at most the batch, ${batch.toString()} g`, `${g.toString()} g`);
  }
  return { sample: frozen({ g }) };
}

/** Reads a free acid or fat that was measured, mg KOH per gram; so much no soap holds. */
export function readMeasuredValue(path: string, value: unknown, limits: Limits = { min: 0 }): Decimal {
  return notTooFine(path, readSaponificationValue(path, value, { max: 300, ...limits }));
}

/** Reads its standard uncertainty. */
export function readValueUncertainty(path: string, value: unknown): Decimal {
  return readMeasuredValue(path, value, SOME);
}

/** Reads the time of heat that lies between two measurements. */
export function readApart(path: string, value: unknown): Time {
  return frozen({ minutes: readTime(`${path}.apart`, value) });
}

/** Lower and upper limit of a measurement, one-sided 95 % each; none below nothing. */
export function limitsOf({ value, uncertainty }: Measurement): Estimate<Decimal> {
  const margin = uncertainty.times(ONE_SIDED);
  const low = value.minus(margin);
  return { low: low.lt(0) ? ZERO : low, likely: value, high: value.plus(margin) };
}

/** What two measurements an hour of heat apart say of the reaction. */
export type ReactionState = 'complete' | 'still-changing' | 'too-coarse' | 'not-shown';

/** How long soap is heated between two tests that are to show that nothing moves, min: common practice. */
const APART = 60;

/** The greatest fall that two tests may fail to show, as a share of what is there: a convention of this library. */
const HIDDEN_AT_MOST = '0.25';

/**
 * Whether a reaction is over: two measurements, an hour of heat apart at least, that agree within their uncertainty,
 * `|a − b| ≤ d` with `d = 1.96·√(u² + u²)`, and are sure enough for it to mean something: a fall of d would not be seen, and
 * it may be no more than a quarter of what is there now.
 */
export function reactionState(
  later: Measurement,
  earlier: Measurement | undefined,
  apart: Time | undefined,
): ReactionState {
  if (earlier === undefined || apart === undefined || apart.minutes.lt(APART)) return 'not-shown';
  const hidden = later.uncertainty.pow(2).plus(earlier.uncertainty.pow(2)).sqrt().times(TWO_SIDED);
  if (later.value.minus(earlier.value).abs().gt(hidden)) return 'still-changing';
  return hidden.gt(later.value.times(HIDDEN_AT_MOST)) ? 'too-coarse' : 'complete';
}
