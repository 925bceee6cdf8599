import type { ChargedFatInput } from '../fats/index.js';
import type { LyeChargeGiven, LyeChargeInput } from '../lye/index.js';
import { frozen, readShape, type Remark, type Steps } from '../numbers/index.js';
import {
  mapEnds,
  readOptionalMass,
  type Amount,
  type Estimate,
  type Mass,
  type MassInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import type { ChargedFat } from './assumptions.js';
import { balanceOf, hydroxideCharged, type Balance } from './balance.js';
import { batchOf, type BatchMass } from './batch.js';
import { demandOf } from './demand.js';
import { potCautions } from './potCautions.js';
import { readCharge } from './readCharge.js';

/** Input of {@link superfatFromLye}. */
export interface SuperfatFromLyeInput {
  /** At least one fat with its mass. */
  readonly fats: readonly ChargedFatInput[];
  /** The alkalis as weighed; at least one. */
  readonly lye: readonly LyeChargeInput[];
  /** Water added besides; none unless stated, and it only dilutes. */
  readonly water?: MassInput;
  /** Mass that free alkali is a share of; fats, lye and water unless stated. */
  readonly batchMass?: MassInput;
}

/** Result of {@link superfatFromLye}. */
export interface SuperfatFromLyeResult extends Balance {
  readonly by: 'superfatFromLye';
  /** The inputs as read. */
  readonly given: {
    readonly fats: readonly ChargedFat[];
    readonly lye: readonly LyeChargeGiven[];
    readonly water: Mass;
    readonly batchMass?: Mass;
  };
  /** Hydroxide that would split all of the fats. */
  readonly demand: Estimate<Amount>;
  /** What free alkali is a share of. */
  readonly batch: BatchMass;
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
 * Superfat and free caustic alkali that fats and a lye as weighed lead to, after complete reaction.
 *
 * Formula: `superfat = 100·(1 − A/n)`, `free caustic = 100·max(0, A − n)·M(NaOH)/m(batch)`, with A the hydroxide charged
 * and n the demand `Σ m·SV/(1000·M(KOH))`, in moles. Negative superfat is alkali in excess. Carbonate is not counted.
 * Low superfat is the leanest lot of every fat with the highest assay; high the richest with the lowest.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021; the values' own sources in `basis`.
 *
 * @param input - fats and alkalis by mass, assays or strengths by mass
 * @returns percent by alkali and by mass of fat, and percent NaOH of the batch
 * @throws CalculationError `missing`, `bad-shape`, `out-of-range` and the faults of a fat, source or quantity
 *
 * @example
 * ```ts
 * const { superfat } = superfatFromLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 900 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: '322.7' }, solution: { hydroxide: { percent: 49 } } }],
 * });
 * superfat.likely.percent.toFixed(1); // => '2.3'
 * ```
 */
export function superfatFromLye(input: SuperfatFromLyeInput): SuperfatFromLyeResult {
  return superfatFromLyeSteps(input);
}

/** The kernel, with room for the working. */
export function superfatFromLyeSteps(input: SuperfatFromLyeInput, steps?: Steps): SuperfatFromLyeResult {
  const fields = readShape('input', input, ['fats', 'lye', 'water', 'batchMass']);
  const { fats, lye, fatGrams, charge, given, notes, basis } = readCharge('', fields);
  const batch = batchOf(readOptionalMass('batchMass', fields['batchMass'], { min: fatGrams }), charge);
  const demand = demandOf(fats, steps);
  const balance = balanceOf(demand, hydroxideCharged(lye), fatGrams, batch.mass.g, steps);
  return frozen({
    by: 'superfatFromLye',
    given: frozen({ ...given, ...(batch.is === 'as-stated' ? { batchMass: batch.mass } : {}) }),
    ...balance,
    demand: mapEnds(demand, ({ hydroxide }) => frozen({ mol: hydroxide })),
    batch,
    notes,
    cautions: potCautions(fats, lye, balance),
    basis,
    edition: EDITION,
  });
}
