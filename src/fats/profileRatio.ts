import { Decimal, frozen, ONE, ZERO } from '../numbers/index.js';
import type { Estimate } from '../quantities/index.js';
import type { ProfileRow } from './profile.js';

/** A property of one acid, per gram of it. */
type PerGram = (row: ProfileRow) => Decimal;

/** A ratio of two mass-weighted sums over a profile; both are linear in the shares. */
export interface ProfileRatio {
  readonly over: PerGram;
  /** Left out where the divisor is one for every profile. */
  readonly under?: PerGram;
}

interface Term extends Estimate<Decimal> {
  readonly over: Decimal;
  readonly under: Decimal;
}

/**
 * A ratio over a profile with its exact bounds: the least and the greatest it takes for any shares inside their limits
 * that sum to one.
 *
 * A linear sum is extreme where the remainder above the low limits goes to the acids in order of their coefficient
 * (the fractional knapsack). A ratio N/D is extreme where N − λ·D is, at λ the ratio itself: Dinkelbach's steps reach
 * it, each at a corner of the box, so that there is an end.
 */
export function ratioOverProfile(rows: readonly ProfileRow[], { over, under }: ProfileRatio): Estimate<Decimal> {
  const terms = rows.map((row) => ({
    low: row.low,
    likely: row.likely,
    high: row.high,
    over: over(row),
    under: under === undefined ? ONE : under(row),
  }));
  const ratio = (shares: readonly Decimal[]): Decimal => {
    let [top, bottom] = [ZERO, ZERO];
    for (const [at, { over: a, under: b }] of terms.entries()) {
      const share = shares[at] ?? ZERO;
      top = top.plus(share.times(a));
      bottom = bottom.plus(share.times(b));
    }
    return top.div(bottom);
  };
  const likely = ratio(terms.map((term) => term.likely));
  return frozen({ low: extreme(terms, ratio, likely, -1), likely, high: extreme(terms, ratio, likely, 1) });
}

function extreme(
  terms: readonly Term[],
  ratio: (shares: readonly Decimal[]) => Decimal,
  start: Decimal,
  sign: 1 | -1,
): Decimal {
  let best = start;
  for (;;) {
    const next = ratio(cornerShares(terms, best, sign));
    if (next.minus(best).times(sign).lte(0)) return best;
    best = next;
  }
}

/** The shares that make `sign·Σ share·(over − λ·under)` greatest. */
function cornerShares(terms: readonly Term[], lambda: Decimal, sign: 1 | -1): readonly Decimal[] {
  let left = terms.reduce((rest, { low }) => rest.minus(low), ONE);
  const shares = terms.map(({ low }) => low);
  const gains = terms
    .map((term, at) => ({
      at,
      width: term.high.minus(term.low),
      gain: term.over.minus(lambda.times(term.under)).times(sign),
    }))
    .sort((a, b) => b.gain.cmp(a.gain));
  for (const { at, width } of gains) {
    const more = Decimal.min(width, left);
    shares[at] = (shares[at] ?? ZERO).plus(more);
    left = left.minus(more);
  }
  return shares;
}
