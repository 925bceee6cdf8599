import { molarMass, type MolarMass } from '../chemistry/index.js';
import {
  frozen,
  noted,
  ONE,
  readShape,
  readWord,
  ZERO,
  type Decimal,
  type Remark,
  type Steps,
} from '../numbers/index.js';
import {
  mapEnds,
  readPercent,
  readRanged,
  type Estimate,
  type Fraction,
  type FractionInput,
  type Ranged,
  type SaponificationValue,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { fatMassOfAcids } from './acidsPerGram.js';
import { PROFILE_KINDS, type ProfileKind } from './fatKind.js';
import {
  profileInResult,
  readProfile,
  type FattyAcidProfile,
  type FattyAcidProfileInput,
  type GivenProfile,
  type ProfileBasis,
  type ProfileRow,
} from './profile.js';
import { ratioOverProfile } from './profileRatio.js';

/** Input of {@link saponificationValueFromProfile}. */
export interface SaponificationValueFromProfileInput {
  /** Shares of total fatty acids, percent by mass, each a value or a range. */
  readonly profile: FattyAcidProfileInput;
  /** What the acids are bound to. */
  readonly kind: ProfileKind;
  /** Unsaponifiable matter, share of the fat by mass; none stated counts as none, and the notes say so. */
  readonly unsaponifiable?: Ranged<FractionInput>;
  /** What the shares are percent of; fatty acids unless stated. */
  readonly per?: ProfileBasis;
}

/** Result of {@link saponificationValueFromProfile}. */
export interface SaponificationValueFromProfileResult {
  readonly by: 'saponificationValueFromProfile';
  /** The inputs as read. */
  readonly given: {
    readonly profile: GivenProfile;
    readonly kind: ProfileKind;
    readonly per: ProfileBasis;
    readonly unsaponifiable?: Estimate<Fraction>;
  };
  /** Bounds are exact for the profile and unsaponifiable matter given; real lots may spread further. */
  readonly saponificationValue: Estimate<SaponificationValue>;
  /** Mole-weighted (harmonic) mean molar mass of the fatty acids. */
  readonly meanAcidMolarMass: Estimate<MolarMass>;
  /** The value by the mass-weighted (arithmetic) mean, as the calculated-value method is remembered; to compare. */
  readonly arithmeticMean: { readonly saponificationValue: SaponificationValue };
  /** The profile as used. */
  readonly profile: FattyAcidProfile;
  readonly notes: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iupac-2021']);

const SV_FORMULA: Readonly<Record<ProfileKind, string>> = {
  triglyceride: '3000·M(KOH)/(3·M + M(glycerol) − 3·M(H2O))·(1 − U)',
  'free-fatty-acid': '1000·M(KOH)/M·(1 − U)',
  'wax-ester': '1000·M(KOH)/(2·M − 2·M(O))·(1 − U)',
};

/** Moles of acid in one gram of an acid. */
const molPerGram = (row: ProfileRow): Decimal => ONE.div(row.acid.molarMass);

/**
 * Saponification value of a fat from its fatty-acid profile.
 *
 * Formula, with wᵢ the shares and Mᵢ the molar masses (g/mol) of the acids, U the unsaponifiable share:
 * `M = 1 / Σ(wᵢ/Mᵢ)`, `M_tag = 3·M + M(glycerol) − 3·M(H2O)`,
 * `SV = 3000·M(KOH)/M_tag·(1 − U)` for triglycerides, `1000·M(KOH)/M·(1 − U)` for free acids,
 * `1000·M(KOH)/(2·M − 2·M(O))·(1 − U)` for waxes (alcohol of the same chain as its acid: a convention).
 *
 * Left out: partial glycerides and free acid in a triglyceride. A value printed per gram of fatty acids runs 4 to 6 %
 * higher than the value of the fat.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021. The arithmetic mean shown beside follows AOCS Cd 3a-94, recalled.
 *
 * @param input - profile (percent of total fatty acids), kind, unsaponifiable matter (share by mass)
 * @returns mg KOH/g with exact bounds, the mean molar mass in g/mol, the profile as used
 * @throws CalculationError `unknown-acid`, `profile-does-not-close`, `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const { saponificationValue } = saponificationValueFromProfile({
 *   kind: 'triglyceride',
 *   profile: { 'C16:0': 10, 'C18:0': { low: 2, high: 4 }, 'C18:1': { low: 80, high: 90 } },
 * });
 * saponificationValue.likely.mgKohPerG.toFixed(1); // => '191.9'
 * ```
 */
export function saponificationValueFromProfile(
  input: SaponificationValueFromProfileInput,
): SaponificationValueFromProfileResult {
  return saponificationValueFromProfileSteps(input);
}

/** The kernel, with room for the working. */
export function saponificationValueFromProfileSteps(
  input: SaponificationValueFromProfileInput,
  steps?: Steps,
): SaponificationValueFromProfileResult {
  const fields = readShape('input', input, ['profile', 'kind', 'unsaponifiable', 'per']);
  const kind = readWord('kind', fields['kind'], PROFILE_KINDS);
  const per = readProfileBasis(fields['per']);
  const { rows, given, notes } = readProfile('profile', fields['profile'], per);
  const stated = fields['unsaponifiable'] !== undefined;
  const unsaponifiable = readUnsaponifiable(fields['unsaponifiable']);
  return frozen({
    by: 'saponificationValueFromProfile',
    given: frozen({
      profile: given,
      kind,
      per,
      ...(stated ? { unsaponifiable: unsaponifiableInResult(unsaponifiable) } : {}),
    }),
    ...saponificationValueOfProfile(rows, kind, unsaponifiable, steps),
    profile: profileInResult(rows),
    notes: frozen(stated ? notes : [...notes, NO_UNSAPONIFIABLE]),
    basis: BASIS,
    edition: EDITION,
  });
}

/** Said where nothing was published or stated. */
export const NO_UNSAPONIFIABLE: Remark = /* @__PURE__ */ frozen({
  code: 'no-unsaponifiable-stated',
  text: 'No unsaponifiable matter is stated; it counts as none, so a saponification value worked out from the profile may read high.',
});

/** Reads what the shares of a profile are percent of. */
export function readProfileBasis(value: unknown): ProfileBasis {
  return value === undefined
    ? '100 g of fatty acids'
    : readWord('per', value, ['100 g of fatty acids', '100 g of oil']);
}

/** Reads unsaponifiable matter as fractions of one; nothing stated is zero. */
export function readUnsaponifiable(value: unknown, path = 'unsaponifiable'): Estimate<Decimal> {
  const share = value === undefined ? { percent: 0 } : value;
  const percents = readRanged(path, share, (at, part) => readPercent(at, part, { min: 0, max: 99 }));
  return mapEnds(percents, (percent) => percent.div(100));
}

/** Unsaponifiable matter as it stands in results, in percent. */
export function unsaponifiableInResult(unsaponifiable: Estimate<Decimal>): Estimate<Fraction> {
  return mapEnds(unsaponifiable, (share) => frozen({ percent: share.times(100) }));
}

/** The value with exact bounds, from a profile as read and unsaponifiable fractions. */
export function saponificationValueOfProfile(
  rows: readonly ProfileRow[],
  kind: ProfileKind,
  unsaponifiable: Estimate<Decimal>,
  steps?: Steps,
): Pick<SaponificationValueFromProfileResult, 'saponificationValue' | 'meanAcidMolarMass' | 'arithmeticMean'> {
  const mol = ratioOverProfile(rows, { over: molPerGram });
  const { a, b } = fatMassOfAcids(kind);
  const potash = molarMass('KOH').times(1000);
  // SV = 1000·M(KOH)·n/(a + b·n): it rises with n, the moles in a gram of acids
  const value = (n: Decimal, u: Decimal): SaponificationValue =>
    frozen({ mgKohPerG: potash.times(n).div(n.times(b).plus(a)).times(ONE.minus(u)) });
  const mean = (n: Decimal): MolarMass => frozen({ gPerMol: ONE.div(n) });
  const arithmetic = rows.reduce((total, { acid, likely }) => total.plus(likely.times(acid.molarMass)), ZERO);
  const saponificationValue = frozen({
    low: value(mol.low, unsaponifiable.high),
    likely: value(mol.likely, unsaponifiable.likely),
    high: value(mol.high, unsaponifiable.low),
  });
  const meanAcidMolarMass = frozen({ low: mean(mol.high), likely: mean(mol.likely), high: mean(mol.low) });
  noted(
    steps,
    'mean molar mass of the acids, likely profile',
    'M = 1/Σ(w/M)',
    'g/mol',
    meanAcidMolarMass.likely.gPerMol,
  );
  noted(
    steps,
    'saponification value, likely profile',
    SV_FORMULA[kind],
    'mg KOH/g',
    saponificationValue.likely.mgKohPerG,
  );
  noted(
    steps,
    'saponification value, least',
    'the same at the heaviest acids',
    'mg KOH/g',
    saponificationValue.low.mgKohPerG,
  );
  noted(
    steps,
    'saponification value, greatest',
    'the same at the lightest acids',
    'mg KOH/g',
    saponificationValue.high.mgKohPerG,
  );
  return {
    saponificationValue,
    meanAcidMolarMass,
    arithmeticMean: frozen({ saponificationValue: value(ONE.div(arithmetic), ZERO) }),
  };
}
