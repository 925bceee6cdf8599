import { frozen, readShape, type Remark, type Steps } from '../numbers/index.js';
import type { Amount, Fraction, FractionInput, Mass, MassInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { alkaliCautions } from './cautions.js';
import { exchangedAlkali, readExchange } from './exchangedAlkali.js';

/** Input of {@link kohFromNaoh}. */
export interface KohFromNaohInput {
  /** Sodium hydroxide as weighed; zero or more. */
  readonly naoh: MassInput;
  /** Hydroxide in that sodium hydroxide, share by mass; over 0, at most 110 percent. */
  readonly naohAssay: FractionInput;
  /** Hydroxide in the potassium hydroxide that takes its place, share by mass. */
  readonly kohAssay: FractionInput;
}

/** Result of {@link kohFromNaoh}. */
export interface KohFromNaohResult {
  readonly by: 'kohFromNaoh';
  /** The inputs as read. */
  readonly given: { readonly naoh: Mass; readonly naohAssay: Fraction; readonly kohAssay: Fraction };
  /** Potassium hydroxide to weigh, at its assay. */
  readonly koh: Mass;
  /** Hydroxide supplied; the same before and after. */
  readonly hydroxide: Amount;
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iupac-2021', 'ghs-naoh']);

/**
 * Mass of potassium hydroxide that supplies the same hydroxide as a mass of sodium hydroxide.
 *
 * Formula: `n = m(NaOH)·w(NaOH)/M(NaOH)`, `m(KOH) = n·M(KOH)/w(KOH)`, with m mass (g), w hydroxide by mass
 * (fraction), M molar mass (g/mol), n amount (mol). Exact stoichiometry; assays are of hydroxide, not of total alkali.
 *
 * Source: molar masses from the IUPAC 2021 atomic weights.
 *
 * @param input - masses and assays by mass
 * @returns grams and moles, unrounded
 * @throws CalculationError `missing`, `unknown-key`, `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const { koh } = kohFromNaoh({ naoh: { g: 100 }, naohAssay: { percent: 98 }, kohAssay: { percent: 90 } });
 * koh.g.toFixed(3); // => '152.742'
 * ```
 */
export function kohFromNaoh(input: KohFromNaohInput): KohFromNaohResult {
  return kohFromNaohSteps(input);
}

/** The kernel, with room for the working. */
export function kohFromNaohSteps(input: KohFromNaohInput, steps?: Steps): KohFromNaohResult {
  const read = readExchange(readShape('input', input, ['naoh', 'naohAssay', 'kohAssay']), 'naoh', 'koh');
  const { mass, hydroxide } = exchangedAlkali(read, 'naoh', 'koh', steps);
  return frozen({
    by: 'kohFromNaoh',
    given: frozen({ naoh: read.mass, naohAssay: read.fromAssay, kohAssay: read.toAssay }),
    koh: mass,
    hydroxide,
    cautions: alkaliCautions(),
    basis: BASIS,
    edition: EDITION,
  });
}
