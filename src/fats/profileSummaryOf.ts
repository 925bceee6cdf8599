import type { FattyAcidFigures, MolarMass } from '../chemistry/index.js';
import { Decimal, frozen, type Remark, ONE } from '../numbers/index.js';
import { mapEnds, type ChainLength, type Estimate, type Fraction, type Unsaturation } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { readProfile, type FattyAcidProfileInput } from './profile.js';
import { ratioOverProfile } from './profileRatio.js';

/** Result of {@link profileSummaryOf}; shares are percent by mass of total fatty acids, and add up in `likely`. */
export interface ProfileSummary {
  /** Mole-weighted mean molar mass of the acids. */
  readonly meanMolarMass: Estimate<MolarMass>;
  /** Mole-weighted mean chain length. */
  readonly meanChainLength: Estimate<ChainLength>;
  /** Mole-weighted mean number of double bonds. */
  readonly meanUnsaturation: Estimate<Unsaturation>;
  /** Saturated acids of 4 to 10 carbons. */
  readonly saturatedC4ToC10: Estimate<Fraction>;
  /** Saturated acids of 12 to 15 carbons. */
  readonly saturatedC12ToC15: Estimate<Fraction>;
  /** Saturated acids of 16 to 24 carbons. */
  readonly saturatedC16ToC24: Estimate<Fraction>;
  /** Acids with one double bond, hydroxy acids apart. */
  readonly monounsaturated: Estimate<Fraction>;
  /** Acids with two or more double bonds. */
  readonly polyunsaturated: Estimate<Fraction>;
  /** Acids with a hydroxyl group in the chain. */
  readonly hydroxy: Estimate<Fraction>;
  readonly notes: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iupac-2021']);

const isSaturated = (acid: FattyAcidFigures): boolean => acid.doubleBonds === 0 && !acid.hydroxy;

/**
 * What a fatty-acid profile is in chemistry: means and groups by chain length and unsaturation, each with exact bounds.
 *
 * Formula: means are `Σ(wᵢ/Mᵢ·xᵢ)/Σ(wᵢ/Mᵢ)`, groups `Σ wᵢ`, with wᵢ the shares, Mᵢ the molar masses (g/mol) and xᵢ the
 * carbons or double bonds of the acids.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021.
 *
 * @param profile - shares of total fatty acids, percent by mass, each a value or a range
 * @returns g/mol, carbons and double bonds to one acid, and percent by mass of the fatty acids
 * @throws CalculationError `unknown-acid`, `profile-does-not-close` and the faults of a quantity
 *
 * @example
 * ```ts
 * const summary = profileSummaryOf({ 'C12:0': 50, 'C14:0': 20, 'C18:1': 30 });
 * summary.saturatedC12ToC15.likely.percent; // => '70'
 * summary.meanChainLength.likely.carbonsPerAcid.toFixed(2); // => '13.83'
 * ```
 */
export function profileSummaryOf(profile: FattyAcidProfileInput): ProfileSummary {
  const { rows, notes } = readProfile('profile', profile);
  const perMole = (property: (acid: FattyAcidFigures) => number): Estimate<Decimal> =>
    ratioOverProfile(rows, {
      over: ({ acid }) => new Decimal(property(acid)).div(acid.molarMass),
      under: ({ acid }) => ONE.div(acid.molarMass),
    });
  const share = (belongs: (acid: FattyAcidFigures) => boolean): Estimate<Fraction> =>
    mapEnds(ratioOverProfile(rows, { over: ({ acid }) => new Decimal(belongs(acid) ? 100 : 0) }), (percent) =>
      frozen({ percent }),
    );
  const saturated = (from: number, to: number): Estimate<Fraction> =>
    share((acid) => isSaturated(acid) && acid.carbons >= from && acid.carbons <= to);
  const mol = ratioOverProfile(rows, { over: ({ acid }) => ONE.div(acid.molarMass) });
  const mean = (n: Decimal): MolarMass => frozen({ gPerMol: ONE.div(n) });
  return frozen({
    meanMolarMass: frozen({ low: mean(mol.high), likely: mean(mol.likely), high: mean(mol.low) }),
    meanChainLength: mapEnds(
      perMole((acid) => acid.carbons),
      (carbonsPerAcid) => frozen({ carbonsPerAcid }),
    ),
    meanUnsaturation: mapEnds(
      perMole((acid) => acid.doubleBonds),
      (doubleBondsPerAcid) => frozen({ doubleBondsPerAcid }),
    ),
    saturatedC4ToC10: saturated(4, 10),
    saturatedC12ToC15: saturated(12, 15),
    saturatedC16ToC24: saturated(16, 24),
    monounsaturated: share((acid) => acid.doubleBonds === 1 && !acid.hydroxy),
    polyunsaturated: share((acid) => acid.doubleBonds > 1),
    hydroxy: share((acid) => acid.hydroxy),
    notes,
    basis: BASIS,
    edition: EDITION,
  });
}
