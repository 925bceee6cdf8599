import { frozen, type Decimal } from '../numbers/index.js';
import type { Estimate } from '../quantities/index.js';
import type { PublishedFormula } from './publishedFormulas.js';
import { leadingFigureOf, leadingQuantity, type LeadingFigure, type LeadingQuantities } from './leadingFigures.js';

/** Where published formulas lie in one figure; an even number has the middle of the two in the middle as median. */
export interface PublishedSpread<Q> {
  readonly count: number;
  readonly low?: Q;
  readonly median?: Q;
  readonly high?: Q;
}

/** Formulas of one side, what is stated and what is inferred apart: they are never added together. */
export interface ByBasis<T> {
  /** Stated by the source, claimed by it, or seen by eye. */
  readonly stated: T;
  readonly inferred: T;
}

/** Where a base stands to the clear formulas in one figure. */
export type PlaceInRange = 'inside' | 'outside' | 'cannot-tell' | 'too-few-clear-formulas';

/** Fewer clear formulas than this bear no verdict; a convention. */
export const LEAST_CLEAR_FORMULAS = 30;

export const isClear = ({ outcome }: PublishedFormula): boolean => outcome === 'clear';
export const isInferred = ({ outcomeBasis }: PublishedFormula): boolean => outcomeBasis === 'inferred';

/** Something of the formulas with a stated outcome, and of those with an inferred one. */
export function byBasis<T>(
  formulas: readonly PublishedFormula[],
  of: (some: readonly PublishedFormula[]) => T,
): ByBasis<T> {
  const told = formulas.filter(({ outcomeBasis }) => outcomeBasis !== 'none');
  return frozen({ stated: of(told.filter((one) => !isInferred(one))), inferred: of(told.filter(isInferred)) });
}

/** Where some formulas lie in a figure. */
export function spreadOf<F extends LeadingFigure>(
  formulas: readonly PublishedFormula[],
  figure: F,
): PublishedSpread<LeadingQuantities[F]> {
  const values = valuesOf(formulas, figure);
  const count = values.length;
  const [low, high] = [values[0], values[count - 1]];
  const [before, after] = [values[Math.ceil(count / 2) - 1], values[Math.floor(count / 2)]];
  if (low === undefined || high === undefined || before === undefined || after === undefined) return frozen({ count });
  return frozen({
    count,
    low: leadingQuantity(figure, low),
    median: leadingQuantity(figure, before.plus(after).div(2)),
    high: leadingQuantity(figure, high),
  });
}

/** A figure of those formulas that tell it, least first. */
export function valuesOf(formulas: readonly PublishedFormula[], figure: LeadingFigure): readonly Decimal[] {
  return formulas.flatMap((formula) => leadingFigureOf(formula, figure) ?? []).sort((a, b) => a.cmp(b));
}

/**
 * Whether all that is lawful lies inside the range of what is stated clear, or all of it outside; no verdict while too few
 * clear formulas stand behind that range.
 */
export function placeInRange({ low, high }: Estimate<Decimal>, clear: readonly Decimal[]): PlaceInRange {
  const [least, most] = [clear[0], clear[clear.length - 1]];
  if (clear.length < LEAST_CLEAR_FORMULAS || least === undefined || most === undefined) return 'too-few-clear-formulas';
  if (low.gte(least) && high.lte(most)) return 'inside';
  return high.lt(least) || low.gt(most) ? 'outside' : 'cannot-tell';
}
