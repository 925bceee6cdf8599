import { Decimal, frozen } from '../../numbers/index.js';
import type { Printed } from '../printed.js';
import { meet, spanOver, type Span } from '../span.js';
import type { FindingValue } from '../findingValue.js';
import type { Hypothesis } from './hypothesis.js';
import type { Slip } from './slip.js';
import { wordsOf } from './words.js';

/** The values of a recipe that a figure hangs on: over the lots and assays, and as the recipe itself claims them. */
export interface Points<V> {
  readonly corners: readonly V[];
  readonly likely: V;
  /** Undefined where the recipe does not claim them all. */
  readonly own?: V | undefined;
}

/** The span of a figure over the points of a recipe; undefined where these do not say. */
export function spanAt<V>(
  { corners, likely }: Points<V>,
  figure: (values: V) => Decimal | undefined,
): Span | undefined {
  const middle = figure(likely);
  if (middle?.isFinite() !== true) return undefined;
  const ends = corners.flatMap((values) => figure(values) ?? []);
  return spanOver(
    middle,
    ends.filter((end) => end.isFinite()),
  );
}

/** What is looked into: the figure as it is printed, and how figures of its kind are shown. */
export interface Questioned {
  /** With what assays add to its last digit. */
  readonly span: { readonly low: Decimal; readonly high: Decimal };
  /** With its last digit only. */
  readonly printed: Printed;
  readonly shown: (span: Span) => { readonly value: FindingValue; readonly text: string };
}

/** The ways in which a figure may have come about: first those that reproduce it, then those that explain it. */
export function slipsOf<V>(
  figure: Questioned,
  points: Points<V>,
  hypotheses: readonly Hypothesis<V>[],
): readonly Slip[] {
  const found = hypotheses.flatMap((hypothesis) => evidenceOf(figure, points, hypothesis) ?? []);
  found.sort((one, other) => Number(isExact(other)) - Number(isExact(one)) || other.rank - one.rank);
  const kept = new Map<string, Slip>();
  for (const { slip } of found) {
    const key = [slip.code, slip.path, ...Object.values(slip.words)].join();
    if (!kept.has(key)) kept.set(key, slip);
  }
  return frozen([...kept.values()]);
}

const isExact = ({ slip }: Evidence): boolean => slip.how === 'reproduces';

interface Evidence {
  readonly slip: Slip;
  readonly rank: number;
}

function evidenceOf<V>(figure: Questioned, points: Points<V>, hypothesis: Hypothesis<V>): Evidence | undefined {
  const exact = points.own === undefined ? undefined : hypothesis.figure(points.own);
  const { low, high } = figure.printed;
  if (exact !== undefined && exact.gte(low) && exact.lte(high)) {
    return { slip: slipFrom(figure, hypothesis, 'reproduces', spanOver(exact, [])), rank: hypothesis.weight };
  }
  const span = spanAt(points, hypothesis.figure);
  if (span === undefined || !meet(span, figure.span)) return undefined;
  return { slip: slipFrom(figure, hypothesis, 'explains', span), rank: hypothesis.weight * closeness(figure, span) };
}

/**
 * How well a span points at a figure: a narrow one that is met in the middle does so better than a wide one met at its end.
 * It orders alternatives and nothing else. A printed figure has a last digit, so that the width is never nought.
 */
function closeness({ printed, span: { low, high } }: Questioned, span: Span): number {
  const width = span.high.minus(span.low).plus(high.minus(low)).div(2);
  const off = printed.value.minus(span.likely).abs().div(width);
  return Number(Decimal.max('0.05', Decimal.sub(1, off)).times(span.likely.abs()).div(width).toPrecision(6));
}

function slipFrom<V>(
  figure: Questioned,
  { code, path, words = {} }: Hypothesis<V>,
  how: Slip['how'],
  span: Span,
): Slip {
  const { value, text } = figure.shown(span);
  const { explanation, tell, gives } = wordsOf(code, words);
  const said =
    gives?.(text) ??
    (how === 'reproduces' ? `From the recipe’s own figures that gives ${text}.` : `That gives ${text}.`);
  return frozen({
    code,
    ...(path === undefined ? {} : { path }),
    how,
    predicted: value,
    words: frozen(words),
    explanation: said === '' ? explanation : `${explanation} ${said}`,
    tell,
  });
}
