import {
  composedFrom,
  POLYOLS,
  readComposition,
  SOAPS,
  SPIRITS,
  SUGARS,
  type ChargedPot,
  type ComponentName,
  type ComposedFrom,
} from '../composition/index.js';
import { gramsOf } from '../fats/index.js';
import { ZERO, type Decimal } from '../numbers/index.js';
import type { Estimate } from '../quantities/index.js';
import { extremesOf } from '../saponification/index.js';
import type { WindowFigure } from './data/windowRows.js';
import type { LeadingFigure } from './leadingFigures.js';

/** What a base is compared by, apart from its fats. */
export type ChargeFigure = WindowFigure | Exclude<LeadingFigure, 'palmiticAndStearic'>;

/** A base as it was charged, before anything left it. */
export interface Charge {
  readonly pot: ChargedPot;
  /** The composition as it came. */
  readonly given: ComposedFrom;
  /** Whether it came with a loss, which is not counted here. */
  readonly hadLoss: boolean;
  /** Percent by mass of the whole; ratios in parts to one part. */
  readonly figures: Readonly<Record<ChargeFigure, Estimate<Decimal>>>;
}

/**
 * Reads a composition as it was charged: soap and additions, without the loss, because published formulas are given so.
 *
 * @throws CalculationError `missing` or `bad-shape` for what is no composition, and the faults of its inputs
 */
export function readCharge(path: string, value: unknown): Charge {
  const come = readComposition(path, value);
  const { soap, additions } = come.given;
  const hadLoss = come.given.evaporated !== undefined || come.given.potMass !== undefined;
  const pot = hadLoss ? readComposition(path, { by: 'compositionFrom', given: { soap, additions } }) : come;
  return { pot, given: composedFrom(come), hadLoss, figures: figuresOf(pot) };
}

function figuresOf(pot: ChargedPot): Charge['figures'] {
  const fat = gramsOf(pot.soap.fats);
  return extremesOf(pot.dimensions, (place) => {
    const { grams, all, soapAcid, turning } = pot.at(place);
    const sum = (names: readonly ComponentName[]): Decimal =>
      names.reduce((total, name) => total.plus(grams[name]), ZERO);
    const share = (mass: Decimal): Decimal => mass.times(100).div(all);
    const [soap, polyol, sugar, spirit] = [sum(SOAPS), sum(POLYOLS), sum(SUGARS), sum(SPIRITS)];
    const polyolAndSugar = polyol.plus(sugar);
    return {
      figures: {
        clearingAgentsPerSoap: polyolAndSugar.plus(spirit).div(soap),
        polyolAndSugarPerFattyAcid: polyolAndSugar.div(soapAcid.plus(grams.freeAcid)),
        sugarPerFat: sugar.div(fat),
        soap: share(soap),
        sodiumSoap: share(grams.soapSodium),
        water: share(grams.water),
        glycerol: share(grams.glycerol),
        propyleneGlycol: share(grams.propyleneGlycol),
        polyol: share(polyol),
        sugar: share(sugar),
        polyolAndSugar: share(polyolAndSugar),
        spirit: share(spirit),
      },
      turning,
    };
  });
}
