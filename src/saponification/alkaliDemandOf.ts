import { notesOfFats, readFatCharges, type ChargedFatInput } from '../fats/index.js';
import { hydroxideMolarMass } from '../lye/index.js';
import { frozen, type Remark, type Steps } from '../numbers/index.js';
import { mapEnds, type Amount, type Estimate, type Mass } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { basisOfFats, givenFats, type ChargedFat } from './assumptions.js';
import { demandOf } from './demand.js';

/** Result of {@link alkaliDemandOf}. */
export interface AlkaliDemand {
  readonly by: 'alkaliDemandOf';
  /** The inputs as read. */
  readonly given: { readonly fats: readonly ChargedFat[] };
  /** Hydroxide that splits all of the fats: leanest lots, likely, richest lots. */
  readonly hydroxide: Estimate<Amount>;
  /** The same as pure sodium hydroxide. */
  readonly naoh: Estimate<Mass>;
  /** The same as pure potassium hydroxide. */
  readonly koh: Estimate<Mass>;
  /** What was assumed of the fats. */
  readonly notes: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Alkali that a charge of fats takes up when all of it is split.
 *
 * Formula: `n = Σ m·SV/(1000·M(KOH))` (mol), `m(NaOH) = n·M(NaOH)`, `m(KOH) = n·M(KOH)` (g, pure), with m the masses (g)
 * and SV the saponification values (mg KOH/g). Low and high take the lowest and highest value of every fat.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021; the values' own sources in `basis`.
 *
 * @param fats - at least one fat with its mass; together more than nothing
 * @returns mol of hydroxide, and grams of either pure alkali
 * @throws CalculationError `missing`, `bad-shape`, `out-of-range` and the faults of a fat or a quantity
 *
 * @example
 * ```ts
 * const { naoh } = alkaliDemandOf([{ fat: fat('coconut-oil'), mass: { g: 900 } }]);
 * [naoh.low.g.toFixed(0), naoh.high.g.toFixed(0)]; // => ['159', '170']
 * ```
 */
export function alkaliDemandOf(fats: readonly ChargedFatInput[]): AlkaliDemand {
  return alkaliDemandOfSteps({ fats });
}

/** The kernel, with room for the working. */
export function alkaliDemandOfSteps(input: { readonly fats: readonly ChargedFatInput[] }, steps?: Steps): AlkaliDemand {
  const charges = readFatCharges('fats', input.fats);
  const mol = mapEnds(demandOf(charges, steps), ({ hydroxide }) => hydroxide);
  return frozen({
    by: 'alkaliDemandOf',
    given: frozen({ fats: givenFats(charges) }),
    hydroxide: mapEnds(mol, (amount) => frozen({ mol: amount })),
    naoh: mapEnds(mol, (amount) => frozen({ g: amount.times(hydroxideMolarMass('naoh')) })),
    koh: mapEnds(mol, (amount) => frozen({ g: amount.times(hydroxideMolarMass('koh')) })),
    notes: frozen(notesOfFats(charges)),
    basis: frozen(basisOfFats(charges)),
    edition: EDITION,
  });
}
