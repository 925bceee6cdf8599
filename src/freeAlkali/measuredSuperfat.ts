import { frozen, readShape, refuse, type Decimal } from '../numbers/index.js';
import type { Mass, MassInput, OneChoice, SaponificationValue, SaponificationValueInput } from '../quantities/index.js';
import {
  readApart,
  readMeasuredValue,
  readSample,
  readTest,
  readValueUncertainty,
  type CompletionGiven,
  type Measurement,
} from './measured.js';

/**
 * What a soap holds free, mg KOH to one gram of soap: its acid alone (`acidValue`), or fat and acid together by a second
 * saponification (`saponificationValue`). A result of `acidValueFromTitration` or `saponificationValueFromTitration` fits as
 * it is.
 */
export type MeasuredSuperfat = OneChoice<{
  readonly acidValue: SaponificationValueInput;
  readonly saponificationValue: SaponificationValueInput;
}> & {
  readonly standardUncertainty: SaponificationValueInput;
  /** What was weighed for it. */
  readonly sample?: MassInput;
};

/** The same in a result. */
export type MeasuredSuperfatGiven = OneChoice<{
  readonly acidValue: SaponificationValue;
  readonly saponificationValue: SaponificationValue;
}> & { readonly standardUncertainty: SaponificationValue; readonly sample?: Mass };

const KINDS = ['acidValue', 'saponificationValue'] as const;

/** Acid alone, or fat and acid together. */
export type MeasuredSuperfatKind = (typeof KINDS)[number];

/** What was measured free, as read. */
export interface ReadMeasured {
  readonly kind: MeasuredSuperfatKind;
  readonly measurement: Measurement;
  readonly given: MeasuredSuperfatGiven;
}

/** Reads what was measured free in a soap. */
export function readMeasuredSuperfat(path: string, value: unknown, batch: Decimal): ReadMeasured {
  const fields = readTest(
    path,
    value,
    [...KINDS, 'standardUncertainty', 'sample'],
    ['acidValueFromTitration', 'saponificationValueFromTitration'],
  );
  const [kind, second] = KINDS.filter((one) => fields[one] !== undefined);
  if (kind === undefined) return refuse('missing', path, KINDS.join(' or '), 'neither');
  if (second !== undefined) refuse('bad-shape', path, `either ${KINDS.join(' or ')}`, 'both');
  const found = readMeasuredValue(`${path}.${kind}`, fields[kind]);
  const uncertainty = readValueUncertainty(`${path}.standardUncertainty`, fields['standardUncertainty']);
  const content = frozen({ mgKohPerG: found });
  return {
    kind,
    measurement: { value: found, uncertainty },
    given: frozen({
      ...(kind === 'acidValue' ? { acidValue: content } : { saponificationValue: content }),
      standardUncertainty: frozen({ mgKohPerG: uncertainty }),
      ...readSample(path, fields['sample'], batch),
    }),
  };
}

/** The test before, as read. */
export interface ReadCompletion {
  readonly measured: ReadMeasured;
  readonly given: CompletionGiven<MeasuredSuperfatGiven>;
}

/** Reads the test before, of the same kind as the one now. */
export function readSuperfatCompletion(
  value: unknown,
  batch: Decimal,
  kind: MeasuredSuperfatKind,
): ReadCompletion | undefined {
  if (value === undefined) return undefined;
  const path = 'reactionComplete';
  const fields = readShape(path, value, ['earlier', 'apart']);
  const measured = readMeasuredSuperfat(`${path}.earlier`, fields['earlier'], batch);
  if (measured.kind !== kind)
    refuse('bad-shape', `${path}.earlier`, `a test of the same kind, with ${kind}`, measured.kind);
  return { measured, given: frozen({ earlier: measured.given, apart: readApart(path, fields['apart']) }) };
}
