import { Decimal, ZERO } from './decimal.js';
import { refuse } from './refuse.js';

/** A point a curve goes through. */
export interface Knot {
  readonly x: Decimal;
  readonly y: Decimal;
}

/** Knots from a row of x and a row of y, as many as both have. */
export function knotsFrom(xs: readonly string[], ys: readonly string[]): readonly Knot[] {
  return xs.flatMap((x, at) => ys.slice(at, at + 1).map((y) => ({ x: new Decimal(x), y: new Decimal(y) })));
}

/** A smooth curve through knots, read both ways. */
export interface Curve {
  /** The value at x. */
  readonly at: (x: Decimal) => Decimal;
  /** The x of a value, for knots that rise or fall throughout. */
  readonly inverse: (y: Decimal) => Decimal;
}

/** Two neighbouring knots. */
interface Gap {
  readonly from: Knot;
  readonly to: Knot;
}

/** The stretch between two neighbouring knots. */
interface Span extends Gap {
  readonly width: Decimal;
  /** Slope of the straight line between the two. */
  readonly secant: Decimal;
}

/** A span with the slopes of the curve at its ends: one cubic. */
interface Piece extends Span {
  readonly slopeFrom: Decimal;
  readonly slopeTo: Decimal;
}

/**
 * A monotone piecewise cubic through knots of rising x: where the knots rise the curve rises, and it nowhere leaves the
 * box of two neighbours. Straight lines are reproduced exactly.
 *
 * Slopes at the knots are those of the parabola through three neighbours, held to at most three times either secant and
 * to zero at a turn, which Fritsch and Carlson proved sufficient.
 *
 * Source: F. N. Fritsch, R. E. Carlson, Monotone piecewise cubic interpolation, SIAM Journal on Numerical Analysis 17
 * (1980) 238-246.
 *
 * @param knots - two or more, x strictly rising
 * @returns the curve; it refuses what lies outside its knots
 */
export function monotoneCubic(knots: readonly Knot[]): Curve {
  const gaps = gapsOf(knots);
  // a piece costs divisions, and most calls need one: each is made when first asked for
  const pieces: Piece[] = [];
  const within = (value: Decimal, axis: 'x' | 'y'): Piece => {
    for (const [place, gap] of gaps.entries()) {
      if (value.cmp(gap.from[axis]) * value.cmp(gap.to[axis]) <= 0)
        return (pieces[place] ??= pieceOf(gap, gaps[place - 1], gaps[place + 1]));
    }
    return refuse('outside-table', axis, 'a figure between the first knot and the last', value.toString());
  };
  return {
    at: (x) => {
      const piece = within(x, 'x');
      return x.eq(piece.to.x) ? piece.to.y : valueAt(piece, x.minus(piece.from.x).div(piece.width));
    },
    inverse: (y) => {
      const piece = within(y, 'y');
      if (y.eq(piece.from.y)) return piece.from.x;
      return y.eq(piece.to.y) ? piece.to.x : piece.from.x.plus(placeOf(piece, y).times(piece.width));
    },
  };
}

function gapsOf(knots: readonly Knot[]): readonly Gap[] {
  return knots.slice(1).flatMap((to, place) => knots.slice(place, place + 1).map((from) => ({ from, to })));
}

function spanOf({ from, to }: Gap): Span {
  const width = to.x.minus(from.x);
  return { from, to, width, secant: to.y.minus(from.y).div(width) };
}

/** A span with its slopes. At the ends of the curve the parabola is that of the first or last three knots. */
function pieceOf(gap: Gap, gapBefore: Gap | undefined, gapAfter: Gap | undefined): Piece {
  const span = spanOf(gap);
  const before = gapBefore && spanOf(gapBefore);
  const after = gapAfter && spanOf(gapAfter);
  return {
    ...span,
    slopeFrom: before === undefined ? endSlope(span, after) : innerSlope(before, span),
    slopeTo: after === undefined ? endSlope(span, before) : innerSlope(span, after),
  };
}

function innerSlope(left: Span, right: Span): Decimal {
  if (left.secant.times(right.secant).lte(0)) return ZERO;
  const parabola = left.secant
    .times(right.width)
    .plus(right.secant.times(left.width))
    .div(left.width.plus(right.width));
  return held(parabola, Decimal.min(left.secant.abs(), right.secant.abs()));
}

function endSlope(span: Span, next: Span | undefined): Decimal {
  if (next === undefined) return span.secant;
  const parabola = span.secant.plus(span.secant.minus(next.secant).times(span.width).div(span.width.plus(next.width)));
  return parabola.times(span.secant).lte(0) ? ZERO : held(parabola, span.secant.abs());
}

/** A slope of the same sign, no steeper than three times the secant. */
function held(slope: Decimal, secant: Decimal): Decimal {
  const most = secant.times(3);
  return slope.abs().lte(most) ? slope : most.times(slope.s);
}

/** The cubic by its coefficients in t, which runs from 0 to 1 along the piece. */
function coefficients({ from, to, width, slopeFrom, slopeTo }: Piece): readonly [Decimal, Decimal, Decimal, Decimal] {
  const rise = to.y.minus(from.y);
  const first = slopeFrom.times(width);
  const last = slopeTo.times(width);
  return [from.y, first, rise.times(3).minus(first.times(2)).minus(last), first.plus(last).minus(rise.times(2))];
}

function valueAt(piece: Piece, t: Decimal): Decimal {
  const [a, b, c, d] = coefficients(piece);
  return d.times(t).plus(c).times(t).plus(b).times(t).plus(a);
}

/** Steps smaller than this part of a span are not taken. */
const FINEST = '1e-30';

/**
 * Where on a piece the curve has a value between its ends: Newton's steps, and a halving of the bracket wherever a step
 * would leave it or does not shrink to half the one before, so that the search always ends.
 */
function placeOf(piece: Piece, y: Decimal): Decimal {
  const [a, b, c, d] = coefficients(piece);
  const rises = piece.to.y.gt(piece.from.y);
  let low = ZERO;
  let high = new Decimal(1);
  let t = y.minus(piece.from.y).div(piece.to.y.minus(piece.from.y));
  let step = high;
  while (step.abs().gt(FINEST)) {
    const miss = d.times(t).plus(c).times(t).plus(b).times(t).plus(a).minus(y);
    if (miss.isZero()) break;
    if (miss.gt(0) === rises) high = t;
    else low = t;
    const slope = d.times(3).times(t).plus(c.times(2)).times(t).plus(b);
    // where the curve is level the step is infinite, and not taken
    const newton = miss.div(slope).neg();
    const next = t.plus(newton);
    const useNewton = next.gt(low) && next.lt(high) && newton.abs().times(2).lte(step.abs());
    step = useNewton ? newton : high.minus(low).div(2);
    t = useNewton ? next : low.plus(step);
  }
  return t;
}
