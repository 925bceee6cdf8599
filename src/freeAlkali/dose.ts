import { Decimal, noted, ZERO, type Steps } from '../numbers/index.js';
import type { Estimate } from '../quantities/index.js';

/** What is to be brought down in a batch, and by what. Contents are in any unit that is so much to one gram of batch. */
export interface Correction {
  /** Batch as it stands, g. */
  readonly batch: Decimal;
  /** Content measured: at least, likely, at most. */
  readonly found: Estimate<Decimal>;
  /** Where the likely content is to end. */
  readonly target: Decimal;
  /** What no dose may fall below. */
  readonly bound: Decimal;
  /** What one gram of the corrector takes: as a content, what it takes from one gram. */
  readonly perGram: Estimate<Decimal>;
}

/** A dose, and what it leaves. */
export interface Dose {
  /** Corrector to add now, g. */
  readonly add: Decimal;
  /** Corrector that the likely figures ask for beyond that, g: not without another test. */
  readonly left: Decimal;
  /** Content once it has been added: at least, likely, at most. */
  readonly leaves: Estimate<Decimal>;
}

/**
 * Corrector that brings a content to a target, g.
 *
 * The batch grows by what is added, so that what is left is spread over more: `w·m − k·g = t·(m + g)`, hence
 * `g = (w − t)·m/(k + t)`.
 */
export function doseFor(found: Decimal, target: Decimal, batch: Decimal, perGram: Decimal): Decimal {
  return found.lte(target) ? ZERO : found.minus(target).times(batch).div(perGram.plus(target));
}

/** Content of a batch after so many grams of corrector; below zero is corrector in excess. */
export function contentAfter(found: Decimal, grams: Decimal, batch: Decimal, perGram: Decimal): Decimal {
  return found.times(batch).minus(perGram.times(grams)).div(batch.plus(grams));
}

/**
 * The dose to add now. The likely figures ask for one dose to the target; the least that may be there, against the
 * strongest that the corrector may be, allows no more than what ends at the bound. The smaller of the two is added; what is
 * left waits for another test.
 */
export function doseOf({ batch, found, target, bound, perGram }: Correction, steps?: Steps): Dose {
  const whole = noted(
    steps,
    'dose that the likely figures ask for',
    '(w − t)·m/(k + t)',
    'g',
    doseFor(found.likely, target, batch, perGram.likely),
  );
  const safe = noted(
    steps,
    'dose that cannot pass the bound',
    '(w(least) − b)·m/(k(most) + b)',
    'g',
    doseFor(found.low, bound, batch, perGram.high),
  );
  const add = noted(steps, 'dose to add now', 'the smaller of the two', 'g', Decimal.min(whole, safe));
  return {
    add,
    left: whole.minus(add),
    leaves: {
      // where a dose was made to end, it ends: the sums would miss it by their last digit
      low: add.eq(safe) && found.low.gt(bound) ? bound : contentAfter(found.low, add, batch, perGram.high),
      likely:
        add.eq(whole) && found.likely.gt(target) ? target : contentAfter(found.likely, add, batch, perGram.likely),
      high: contentAfter(found.high, add, batch, perGram.low),
    },
  };
}
