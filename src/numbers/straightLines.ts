import type { Decimal } from './decimal.js';
import type { Knot } from './monotoneCubic.js';
import { refuse } from './refuse.js';

/**
 * The value at x on the straight lines through knots of rising x. Beyond the ends the outermost line is carried on: the
 * caller says whether that is allowed.
 */
export function onStraightLines(knots: readonly Knot[], x: Decimal): Decimal {
  let line: { readonly from: Knot; readonly to: Knot } | undefined;
  let from: Knot | undefined;
  for (const to of knots) {
    if (from !== undefined) {
      line = { from, to };
      if (x.lte(to.x)) break;
    }
    from = to;
  }
  if (line === undefined) return refuse('bad-shape', 'knots', 'at least two', knots.length);
  const { from: left, to: right } = line;
  if (x.eq(right.x)) return right.y;
  return left.y.plus(right.y.minus(left.y).times(x.minus(left.x)).div(right.x.minus(left.x)));
}
