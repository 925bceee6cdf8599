import { frozen, noted, type Steps } from '../numbers/index.js';
import { mapEnds, type Estimate, type Fraction, type Mass } from '../quantities/index.js';
import { extremesOf } from '../saponification/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { composedFrom, readComposition, type ComposedFrom, type MadeComposition } from './readComposition.js';

/** Result of {@link totalFattyMatterOf}. */
export interface TotalFattyMatter {
  readonly by: 'totalFattyMatterOf';
  /** The composition, as read. */
  readonly given: ComposedFrom;
  /** Share of what is in the pot. */
  readonly totalFattyMatter: Estimate<Fraction>;
  readonly mass: Estimate<Mass>;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Total fatty matter of a pot: what acid would set free of it, and a solvent take up.
 *
 * Formula: `100·(m(acid of the soap) + m(free acid) + m(free fat) + m(unsaponifiable)) / m(pot)`, all in grams; the acid of
 * the soap is the soap less its metal, with hydrogen in its place, fatty and rosin acids alike.
 *
 * Validity: an ideal. The method of analysis loses C8 and C10 acids, which dissolve or dry off, and part of hydroxy acids;
 * it finds less in a soap of coconut or castor oil.
 *
 * Source: definition of ISO 685, recalled; the composition's own.
 *
 * @param composition - a result of `compositionFrom`, also one read back from JSON
 * @returns percent of the pot by mass, and grams, with bounds over all lots and assays
 * @throws CalculationError `missing` or `bad-shape` for what is no composition
 *
 * @example
 * ```ts
 * const soap = soapFromLye({
 *   fats: [{ fat: fat('tallow'), mass: { g: 1000 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 400 }, solution: { hydroxide: { percent: 33 } } }],
 * });
 * const { totalFattyMatter } = totalFattyMatterOf(compositionFrom({ soap, additions: [] }));
 * totalFattyMatter.likely.percent.toFixed(1); // => '68.4'
 * ```
 */
export function totalFattyMatterOf(composition: MadeComposition): TotalFattyMatter {
  return totalFattyMatterOfSteps(composition);
}

/** The kernel, with room for the working. */
export function totalFattyMatterOfSteps(composition: MadeComposition, steps?: Steps): TotalFattyMatter {
  const pot = readComposition('composition', composition);
  const { g, percent } = extremesOf(pot.dimensions, (place) => {
    const { grams, soapAcid, all, turning } = pot.at(place);
    const matter = soapAcid.plus(grams.freeAcid).plus(grams.freeFat).plus(grams.unsaponifiable);
    return { figures: { g: matter, percent: matter.times(100).div(all) }, turning };
  });
  noted(steps, 'fatty matter', 'acid of the soap + free acid + free fat + unsaponifiable', 'g', g.likely);
  noted(steps, 'total fatty matter', '100·m/m(pot)', 'percent', percent.likely);
  return frozen({
    by: 'totalFattyMatterOf',
    given: composedFrom(pot),
    totalFattyMatter: mapEnds(percent, (one) => frozen({ percent: one })),
    mass: mapEnds(g, (one) => frozen({ g: one })),
    basis: pot.soap.basis,
    edition: EDITION,
  });
}
