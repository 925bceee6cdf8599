import type { ChargedFatInput } from '../fats/index.js';
import type { LyeChargeInput } from '../lye/index.js';
import { frozen, noted, type Remark, type Steps } from '../numbers/index.js';
import { mapEnds, type Amount, type Estimate, type Fraction, type Mass, type MassInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import type { Balance } from './balance.js';
import { extremesOf } from './extremes.js';
import { potCautions } from './potCautions.js';
import { PRODUCTS, type Product } from './reaction.js';
import { readReactingPot } from './reactingPot.js';
import type { GivenPot } from './readCharge.js';

/** Input of {@link soapFromLye}. */
export interface SoapFromLyeInput {
  /** At least one fat with its mass. */
  readonly fats: readonly ChargedFatInput[];
  /** The alkalis as weighed; one to four. */
  readonly lye: readonly LyeChargeInput[];
  /** Water added besides; none unless stated. */
  readonly water?: MassInput;
}

/** What is in the pot after complete reaction. The likely masses add up to what was charged; low and high do not. */
export interface SoapFromLyeResult extends Balance {
  readonly by: 'soapFromLye';
  /** The inputs as read. */
  readonly given: GivenPot;
  /**
   * Sodium and potassium soap; glycerol formed; water, charged and formed; fat and acid left free; caustic and carbonate
   * left; unsaponifiable matter with the alcohols of waxes; the rest of solid soda; and carbon dioxide, which leaves.
   */
  readonly products: Readonly<Record<Product, Estimate<Mass>>>;
  /** Moles of soap, by its metal. */
  readonly soap: { readonly sodium: Estimate<Amount>; readonly potassium: Estimate<Amount> };
  /** Extent to which the esters are split. */
  readonly extent: Estimate<Fraction>;
  /** Hydroxide that would split all of the fats. */
  readonly demand: Estimate<Amount>;
  /** Fats, lye and water as charged. */
  readonly charge: Mass;
  /** What was assumed of fats and alkali. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * What fats and a lye as weighed become, after complete reaction.
 *
 * A model, in moles: A hydroxide takes free acid a first, `min(A, a)`, giving soap and water; then all esters g to one
 * extent `x = min(1, (A − a)/g)`, giving soap and `x·g/3` glycerol; acid still free takes carbonate, two to one. Masses
 * follow from each fat's mean acid molar mass `M = (m·(1 − U − W) − g·(M(glycerol) − 3·M(H2O))/3)/n`, with U the
 * unsaponifiable share, W the moisture, n the acid: it is fixed by the saponification value in use. Sodium and potassium
 * keep the proportion charged (a convention); half of a wax's saponifiable mass counts as acid (a convention). Conserved: mass,
 * sodium, potassium, hydroxide, fatty acid.
 *
 * Low and high are exact over all lots, unsaponifiable matter, moisture and assays within their ranges. Left out: partial
 * glycerides, and water or spirit that evaporates.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021; the values' own sources in `basis`.
 *
 * @param input - fats, alkalis and water by mass; assays or strengths by mass
 * @returns grams and moles of each product, with bounds; superfat and free caustic of the same charge
 * @throws CalculationError `missing`, `bad-shape`, `out-of-range`, `infeasible` (unsaponifiable matter and moisture that
 *   leave no room for the acids) and the faults of a fat, source or quantity
 *
 * @example
 * ```ts
 * const made = soapFromLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 246 }, solution: { hydroxide: { percent: 50 } } }],
 *   water: { g: 127 },
 * });
 * made.products.soapSodium.likely.g.toFixed(0); // => '707'
 * made.products.glycerol.likely.g.toFixed(0); // => '94'
 * ```
 */
export function soapFromLye(input: SoapFromLyeInput): SoapFromLyeResult {
  return soapFromLyeSteps(input);
}

/** The kernel, with room for the working. */
export function soapFromLyeSteps(input: SoapFromLyeInput, steps?: Steps): SoapFromLyeResult {
  const { fats, lye, charge, demand, balance, dimensions, at, given, notes, basis } = readReactingPot('', input, steps);
  const figures = extremesOf(dimensions, (place) => {
    const { grams, soapMol, extent, turning } = at(place);
    return { figures: { ...grams, ...soapMol, extent: extent.times(100) }, turning };
  });
  const mass = (key: Product): Estimate<Mass> => mapEnds(figures[key], (g) => frozen({ g }));
  const amount = (key: 'sodium' | 'potassium'): Estimate<Amount> => mapEnds(figures[key], (mol) => frozen({ mol }));
  for (const product of PRODUCTS) noted(steps, ...WORKING[product], 'g', figures[product].likely);
  return frozen({
    by: 'soapFromLye',
    given,
    products: frozen(Object.fromEntries(PRODUCTS.map((key) => [key, mass(key)])) as Record<Product, Estimate<Mass>>),
    soap: frozen({ sodium: amount('sodium'), potassium: amount('potassium') }),
    extent: mapEnds(figures.extent, (percent) => frozen({ percent })),
    ...balance,
    demand: mapEnds(demand, ({ hydroxide }) => frozen({ mol: hydroxide })),
    charge: frozen({ g: charge }),
    notes,
    cautions: potCautions(fats, lye, balance),
    basis,
    edition: EDITION,
  });
}

/** What each line of a working shows, and by which formula. */
const WORKING: Readonly<Record<Product, readonly [figure: string, formula: string]>> = {
  soapSodium: ['sodium soap', 'n(Na)·(M + M(Na) − M(H))'],
  soapPotassium: ['potassium soap', 'n(K)·(M + M(K) − M(H))'],
  glycerol: ['glycerol formed', 'x·g/3·M(glycerol)'],
  water: ['water, charged and formed', 'm(water) + min(A, a)·M(H2O)'],
  freeFat: ['fat left', '(1 − x)·m(esters)'],
  freeAcid: ['fatty acid left', 'a − A, where acid is left'],
  freeNaoh: ['sodium hydroxide left', 'max(0, A − a − g)·share·M(NaOH)'],
  freeKoh: ['potassium hydroxide left', 'max(0, A − a − g)·share·M(KOH)'],
  sodiumCarbonate: ['sodium carbonate left', 'as charged, less what acid took'],
  potassiumCarbonate: ['potassium carbonate left', 'as charged, less what acid took'],
  unsaponifiable: ['unsaponifiable matter', 'Σ m·U, and the alcohols of waxes'],
  other: ['rest of solid soda', 'm·(1 − w)'],
  carbonDioxide: ['carbon dioxide, which leaves', 'half the acid that carbonate took'],
};
