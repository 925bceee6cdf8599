import { frozen } from '../numbers/index.js';
import type { Estimate, Fraction, MassRatio } from '../quantities/index.js';
import { leadingEstimate, type LeadingFigure, type LeadingQuantities } from './leadingFigures.js';
import type { OwnFigures } from './nearest.js';
import {
  byBasis,
  isClear,
  isInferred,
  placeInRange,
  spreadOf,
  valuesOf,
  type ByBasis,
  type PlaceInRange,
  type PublishedSpread,
} from './outcomes.js';
import type { PublishedFormula } from './publishedFormulas.js';

/** A leading figure of a base beside those of published formulas. */
export interface PlacedFigure<Q> {
  readonly value: Estimate<Q>;
  readonly clear: ByBasis<PublishedSpread<Q>>;
  readonly notClear: ByBasis<PublishedSpread<Q>>;
  /** To the range of what is stated clear. */
  readonly place: PlaceInRange;
}

/** The leading figures of a base, as far as they can be told. */
export interface PlacedFigures {
  readonly clearingAgentsPerSoap: PlacedFigure<MassRatio>;
  /** Left out where a fat has no profile. */
  readonly palmiticAndStearic?: PlacedFigure<Fraction>;
  readonly water: PlacedFigure<Fraction>;
}

/** Each leading figure of a base beside those of formulas. */
export function figuresBeside(own: OwnFigures, formulas: readonly PublishedFormula[]): PlacedFigures {
  const clear = formulas.filter(isClear);
  const notClear = formulas.filter((one) => !isClear(one));
  const placed = <F extends LeadingFigure>(
    figure: F,
    value: OwnFigures['water'],
  ): PlacedFigure<LeadingQuantities[F]> => {
    const spread = (some: readonly PublishedFormula[]): ByBasis<PublishedSpread<LeadingQuantities[F]>> =>
      byBasis(some, (part) => spreadOf(part, figure));
    const stated = clear.filter((one) => !isInferred(one));
    return frozen({
      value: leadingEstimate(figure, value),
      clear: spread(clear),
      notClear: spread(notClear),
      place: placeInRange(value, valuesOf(stated, figure)),
    });
  };
  const { clearingAgentsPerSoap, palmiticAndStearic, water } = own;
  return frozen({
    clearingAgentsPerSoap: placed('clearingAgentsPerSoap', clearingAgentsPerSoap),
    ...(palmiticAndStearic === undefined
      ? {}
      : { palmiticAndStearic: placed('palmiticAndStearic', palmiticAndStearic) }),
    water: placed('water', water),
  });
}
