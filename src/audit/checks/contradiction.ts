import { frozen, type Decimal } from '../../numbers/index.js';
import type { SourceId } from '../../sources/index.js';
import { asPrinted, type Shown } from '../figures.js';
import type { Finding, FindingCode } from '../finding.js';
import type { Printed } from '../printed.js';
import { slipsOf, spanAt, type Points } from '../slips/diagnosis.js';
import type { Hypothesis } from '../slips/hypothesis.js';
import { meet, type Span } from '../span.js';

/** A printed figure beside the values of the recipe that it hangs on. */
export interface Comparison<V> {
  readonly code: FindingCode;
  readonly path: string;
  /** What the figure is, as `a strength of the lye`. */
  readonly what: string;
  readonly printed: Printed;
  readonly points: Points<V>;
  /** How the figure follows from the values; several ways where the trade uses one word for several things. */
  readonly readings: readonly ((values: V) => Decimal | undefined)[];
  /** Worked out only where the figure meets no reading. */
  readonly hypotheses: () => readonly Hypothesis<V>[];
  /** What gives the figures it is compared with. */
  readonly from: 'the rest of the recipe' | 'lots within the published range';
  readonly shown: (span: Span) => Shown;
  readonly basis: readonly SourceId[];
}

/** A finding where a printed figure meets none of its readings. */
export function contradiction<V>(comparison: Comparison<V>): Finding | undefined {
  const { code, path, what, printed, points, readings, hypotheses, from, shown, basis } = comparison;
  const spans = readings.flatMap((reading) => spanAt(points, reading) ?? []);
  const [first] = spans;
  if (first === undefined || spans.some((span) => meet(span, printed))) return undefined;
  const computed = shown(first);
  return {
    code,
    severity: 'caution',
    path,
    claimed: asPrinted(printed).value,
    computed: computed.value,
    values: frozen({}),
    explanation: `The recipe prints ${what} of ${asPrinted(printed).text}, but ${from} ${from === 'lots within the published range' ? 'have' : 'gives'} ${computed.text}.`,
    slips: slipsOf({ span: printed, printed, shown }, points, hypotheses()),
    basis,
  };
}
