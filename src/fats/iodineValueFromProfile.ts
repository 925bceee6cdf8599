import { molarMass } from '../chemistry/index.js';
import { Decimal, frozen, noted, readShape, readWord, ZERO, type Remark, type Steps } from '../numbers/index.js';
import { mapEnds, type Estimate, type IodineValue } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { fatMassOfAcids } from './acidsPerGram.js';
import { iodineValueCoefficients } from './data/iodineValueCoefficients.js';
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
import { readProfileBasis } from './saponificationValueFromProfile.js';

/** Input of {@link iodineValueFromProfile}. */
export interface IodineValueFromProfileInput {
  /** Shares of total fatty acids, percent by mass, each a value or a range. */
  readonly profile: FattyAcidProfileInput;
  /** What the acids are bound to. */
  readonly kind: ProfileKind;
  /** What the shares are percent of; fatty acids unless stated. */
  readonly per?: ProfileBasis;
}

/** Result of {@link iodineValueFromProfile}. */
export interface IodineValueFromProfileResult {
  readonly by: 'iodineValueFromProfile';
  /** The inputs as read. */
  readonly given: { readonly profile: GivenProfile; readonly kind: ProfileKind; readonly per: ProfileBasis };
  /** By mass balance, with exact bounds for the profile given. */
  readonly iodineValue: Estimate<IodineValue>;
  /** The sum of published coefficients over the likely profile, to compare; none is published for waxes. */
  readonly publishedCoefficients?: { readonly iodineValue: IodineValue };
  /** The profile as used. */
  readonly profile: FattyAcidProfile;
  readonly notes: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Iodine value of a fat from its fatty-acid profile.
 *
 * Formula: `IV = 100·M(I2)·Σ(wᵢ·dᵢ/Mᵢ) / (mass of fat that holds one gram of these acids)`, with wᵢ the shares, dᵢ the
 * double bonds and Mᵢ the molar masses (g/mol) of the acids; for triglycerides that is `100·M(I2)·double bonds/M_tag`.
 * A wax is taken as the ester of each acid with the alcohol of the same chain and double bonds (a convention).
 *
 * The sum of published coefficients is shown beside: it weighs each acid as its own simple triglyceride and knows six
 * acids only. Conjugated double bonds count in full here, while the Wijs method takes up less.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021; coefficients of AOCS Cd 1c-85.
 *
 * @param input - profile (percent of total fatty acids) and kind
 * @returns g I2 per 100 g with exact bounds
 * @throws CalculationError `unknown-acid`, `profile-does-not-close` and the faults of a quantity
 *
 * @example
 * ```ts
 * const olein = { 'C16:0': 4, 'C18:1': 80, 'C18:2': 16 } as const;
 * iodineValueFromProfile({ profile: olein, kind: 'triglyceride' }).iodineValue.likely.gI2Per100g.toFixed(1); // => '96.5'
 * ```
 */
export function iodineValueFromProfile(input: IodineValueFromProfileInput): IodineValueFromProfileResult {
  return iodineValueFromProfileSteps(input);
}

/** The kernel, with room for the working. */
export function iodineValueFromProfileSteps(
  input: IodineValueFromProfileInput,
  steps?: Steps,
): IodineValueFromProfileResult {
  const fields = readShape('input', input, ['profile', 'kind', 'per']);
  const kind = readWord('kind', fields['kind'], PROFILE_KINDS);
  const per = readProfileBasis(fields['per']);
  const { rows, given, notes } = readProfile('profile', fields['profile'], per);
  const published = kind === 'wax-ester' ? undefined : coefficientSum(rows, kind);
  const iodineValue = iodineValueOfProfile(rows, kind);
  noted(
    steps,
    'iodine value, likely profile',
    '100·M(I2)·Σ(w·d/M)/m(fat)',
    'g I2/100 g',
    iodineValue.likely.gI2Per100g,
  );
  noted(
    steps,
    'iodine value, least',
    'the same at the least unsaturated shares',
    'g I2/100 g',
    iodineValue.low.gI2Per100g,
  );
  noted(
    steps,
    'iodine value, greatest',
    'the same at the most unsaturated shares',
    'g I2/100 g',
    iodineValue.high.gI2Per100g,
  );
  return frozen({
    by: 'iodineValueFromProfile',
    given: frozen({ profile: given, kind, per }),
    iodineValue,
    ...(published === undefined
      ? {}
      : { publishedCoefficients: frozen({ iodineValue: frozen({ gI2Per100g: published }) }) }),
    profile: profileInResult(rows),
    notes: frozen([...notes, ...conjugationNotes(rows)]),
    basis: frozen(published === undefined ? (['iupac-2021'] as const) : (['iupac-2021', 'aocs-cd-1c-85'] as const)),
    edition: EDITION,
  });
}

/** The value with exact bounds, from a profile as read. */
export function iodineValueOfProfile(rows: readonly ProfileRow[], kind: ProfileKind): Estimate<IodineValue> {
  const { a, b } = fatMassOfAcids(kind);
  // the alcohol of a wax is taken to be as unsaturated as its acid
  const bonds = kind === 'wax-ester' ? 2 : 1;
  const ratio = ratioOverProfile(rows, {
    over: ({ acid }) => new Decimal(acid.doubleBonds * bonds).div(acid.molarMass),
    under: ({ acid }) => new Decimal(b).div(acid.molarMass).plus(a),
  });
  const iodine = molarMass('I2').times(100);
  return mapEnds(ratio, (perGram) => frozen({ gI2Per100g: perGram.times(iodine) }));
}

function coefficientSum(rows: readonly ProfileRow[], kind: 'triglyceride' | 'free-fatty-acid'): Decimal {
  return rows.reduce(
    (total, { acid, likely }) => total.plus(likely.times(100).times(iodineValueCoefficients[acid.id]?.[kind] ?? 0)),
    ZERO,
  );
}

function conjugationNotes(rows: readonly ProfileRow[]): readonly Remark[] {
  if (!rows.some(({ acid, high }) => acid.id === 'C18:3-conj' && high.gt(0))) return [];
  return [
    frozen({
      code: 'conjugated-acids',
      text: 'Conjugated double bonds count in full here; the Wijs method takes up less iodine, so a measured value reads lower.',
    }),
  ];
}
