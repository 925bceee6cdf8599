import { frozen, readShape, type Remark, type Steps } from '../numbers/index.js';
import type { Amount, Fraction, FractionInput, Mass, MassInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { alkaliCautions } from './cautions.js';
import { exchangedAlkali, readExchange } from './exchangedAlkali.js';

/** Input of {@link naohFromKoh}. */
export interface NaohFromKohInput {
  /** Potassium hydroxide as weighed; zero or more. */
  readonly koh: MassInput;
  /** Hydroxide in that potassium hydroxide, share by mass; over 0, at most 110 percent. */
  readonly kohAssay: FractionInput;
  /** Hydroxide in the sodium hydroxide that takes its place, share by mass. */
  readonly naohAssay: FractionInput;
}

/** Result of {@link naohFromKoh}. */
export interface NaohFromKohResult {
  readonly by: 'naohFromKoh';
  /** The inputs as read. */
  readonly given: { readonly koh: Mass; readonly kohAssay: Fraction; readonly naohAssay: Fraction };
  /** Sodium hydroxide to weigh, at its assay. */
  readonly naoh: Mass;
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
 * Mass of sodium hydroxide that supplies the same hydroxide as a mass of potassium hydroxide.
 *
 * Formula: `n = m(KOH)·w(KOH)/M(KOH)`, `m(NaOH) = n·M(NaOH)/w(NaOH)`, with m mass (g), w hydroxide by mass
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
 * const { naoh } = naohFromKoh({ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });
 * naoh.g.toFixed(3); // => '65.470'
 * ```
 */
export function naohFromKoh(input: NaohFromKohInput): NaohFromKohResult {
  return naohFromKohSteps(input);
}

/** The kernel, with room for the working. */
export function naohFromKohSteps(input: NaohFromKohInput, steps?: Steps): NaohFromKohResult {
  const read = readExchange(readShape('input', input, ['koh', 'kohAssay', 'naohAssay']), 'koh', 'naoh');
  const { mass, hydroxide } = exchangedAlkali(read, 'koh', 'naoh', steps);
  return frozen({
    by: 'naohFromKoh',
    given: frozen({ koh: read.mass, kohAssay: read.fromAssay, naohAssay: read.toAssay }),
    naoh: mass,
    hydroxide,
    cautions: alkaliCautions(),
    basis: BASIS,
    edition: EDITION,
  });
}
