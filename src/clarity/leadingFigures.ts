import { frozen, ZERO, type Decimal } from '../numbers/index.js';
import { mapEnds, type Estimate, type Fraction, type MassRatio } from '../quantities/index.js';
import type { PublishedFormula, PublishedPart } from './publishedFormulas.js';

/** The figures that bars are compared by, most telling first. More would find a likeness in anything. */
export const LEADING_FIGURES = ['clearingAgentsPerSoap', 'palmiticAndStearic', 'water'] as const;

/** One of them. */
export type LeadingFigure = (typeof LEADING_FIGURES)[number];

/** The quantity that each is. */
export interface LeadingQuantities {
  readonly clearingAgentsPerSoap: MassRatio;
  readonly palmiticAndStearic: Fraction;
  readonly water: Fraction;
}

const CLEARING: readonly PublishedPart[] = [
  'ethanol',
  'glycerol',
  'propyleneGlycol',
  'polyethyleneGlycol',
  'sorbitol',
  'sucrose',
];

/** A leading figure of a published formula, where it can be told. */
export function leadingFigureOf(formula: PublishedFormula, figure: LeadingFigure): Decimal | undefined {
  const { shares, palmiticAndStearic } = formula;
  if (figure === 'palmiticAndStearic') return palmiticAndStearic?.percent;
  if (shares?.soap === undefined) return undefined;
  if (figure === 'water') return shares.water?.percent ?? ZERO;
  return CLEARING.reduce((sum, part) => sum.plus(shares[part]?.percent ?? ZERO), ZERO).div(shares.soap.percent);
}

/** A value of a leading figure with its unit. */
export function leadingQuantity<F extends LeadingFigure>(figure: F, value: Decimal): LeadingQuantities[F] {
  const quantity = figure === 'clearingAgentsPerSoap' ? { partsPerPart: value } : { percent: value };
  return frozen(quantity) as LeadingQuantities[F];
}

/** An estimate of a leading figure with its unit. */
export function leadingEstimate<F extends LeadingFigure>(
  figure: F,
  value: Estimate<Decimal>,
): Estimate<LeadingQuantities[F]> {
  return mapEnds(value, (one) => leadingQuantity(figure, one));
}
