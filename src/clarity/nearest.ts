import { frozen, ZERO, type Decimal } from '../numbers/index.js';
import type { Estimate, Fraction } from '../quantities/index.js';
import {
  LEADING_FIGURES,
  leadingFigureOf,
  leadingQuantity,
  type LeadingFigure,
  type LeadingQuantities,
} from './leadingFigures.js';
import { valuesOf } from './outcomes.js';
import type { PublishedFormula } from './publishedFormulas.js';

/** A published formula beside a base. */
export interface NearFormula extends PublishedFormula {
  /** How far off, percent of the spread of the published formulas of the same form. */
  readonly distance: Fraction;
  readonly figures: { readonly [F in LeadingFigure]?: LeadingQuantities[F] };
}

/** The leading figures of a base, as far as they can be told. */
export interface OwnFigures {
  readonly clearingAgentsPerSoap: Estimate<Decimal>;
  /** Nothing where a fat does not tell its acids. */
  readonly palmiticAndStearic: Estimate<Decimal> | undefined;
  readonly water: Estimate<Decimal>;
}

/**
 * The distances from a base: in each leading figure the difference as a part of the spread (least to greatest) of the
 * formulas it is scaled by, and of these the root of the mean square. Figures that either side does not tell are left out.
 * A convention: nothing published says which figure weighs more.
 */
export function distancesFrom(
  own: OwnFigures,
  scale: readonly PublishedFormula[],
): (formula: PublishedFormula) => Decimal {
  const spreads = LEADING_FIGURES.map((figure) => {
    const values = valuesOf(scale, figure);
    return [figure, (values[values.length - 1] ?? ZERO).minus(values[0] ?? ZERO)] as const;
  });
  return (formula) => {
    const squares = spreads.flatMap(([figure, spread]) => {
      const [ours, theirs] = [own[figure]?.likely, leadingFigureOf(formula, figure)];
      if (ours === undefined || theirs === undefined || spread.isZero()) return [];
      return ours.minus(theirs).div(spread).pow(2);
    });
    const sum = squares.reduce((total, square) => total.plus(square), ZERO);
    return sum.div(Math.max(squares.length, 1)).sqrt().times(100);
  };
}

/** The nearest of some formulas, nearest first; of two as near, the one listed first. */
export function nearestOf(
  formulas: readonly PublishedFormula[],
  distanceOf: (formula: PublishedFormula) => Decimal,
  most: number,
): readonly NearFormula[] {
  return frozen(
    formulas
      .map((formula) => ({ formula, percent: distanceOf(formula) }))
      .sort((a, b) => a.percent.cmp(b.percent))
      .slice(0, most)
      .map(({ formula, percent }) => nearFormula(formula, frozen({ percent }))),
  );
}

function nearFormula(formula: PublishedFormula, distance: Fraction): NearFormula {
  const figures = LEADING_FIGURES.flatMap((figure) => {
    const value = leadingFigureOf(formula, figure);
    return value === undefined ? [] : [[figure, leadingQuantity(figure, value)] as const];
  });
  return frozen({ ...formula, distance, figures: frozen(Object.fromEntries(figures)) });
}
