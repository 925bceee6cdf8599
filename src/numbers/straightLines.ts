import type { Decimal } from './decimal.js';
import type { Knot } from './monotoneCubic.js';
import { refuse } from './refuse.js';

/**
 * The value at x on the straight lines through knots of rising x. Beyond the ends the outermost line is carried on: the
 * caller says whether that is allowed.
 */
export function onStraightLines(knots: readonly Knot[], x: Decimal): Decimal {
  let from: Knot | undefined;
  let value: Decimal | undefined;
  for (const to of knots) {
    if (from !== undefined) {
      value = x.eq(to.x) ? to.y : from.y.plus(to.y.minus(from.y).times(x.minus(from.x)).div(to.x.minus(from.x)));
      if (x.lte(to.x)) break;
    }
    from = to;
  }
  return value ?? refuse('bad-shape', 'knots', 'at least two', knots.length);
}
