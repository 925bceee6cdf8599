import { frozen, readShape, readText, readWord, ZERO } from '../numbers/index.js';
import { mapEnds, type FractionInput, type Ranged } from '../quantities/index.js';
import { EDITION } from '../sources/index.js';
import type { SingleFat } from './fatType.js';
import { PROFILE_KINDS, type ProfileKind } from './fatKind.js';
import { iodineValueOfProfile } from './iodineValueFromProfile.js';
import { knownFat } from './knownFat.js';
import { NO_FREE_ACID, SPREAD_CONVENTION } from './notes.js';
import { profileInResult, readProfile, type FattyAcidProfileInput, type ProfileBasis } from './profile.js';
import { spreadOf } from './saponificationValueBounds.js';
import {
  NO_UNSAPONIFIABLE,
  readProfileBasis,
  readUnsaponifiable,
  saponificationValueOfProfile,
  unsaponifiableInResult,
} from './saponificationValueFromProfile.js';

/** Input of {@link fatFromProfile}. */
export interface FatFromProfileInput {
  readonly name: string;
  readonly kind: ProfileKind;
  /** Shares of total fatty acids, percent by mass, each a value or a range. */
  readonly profile: FattyAcidProfileInput;
  /** Unsaponifiable matter, share of the fat by mass; none stated counts as none, and the notes say so. */
  readonly unsaponifiable?: Ranged<FractionInput>;
  /** What the shares are percent of; fatty acids unless stated. */
  readonly per?: ProfileBasis;
}

/**
 * A fat known by its fatty-acid profile.
 *
 * Its likely saponification value is that of the likely profile with the likely unsaponifiable matter; its bounds are
 * 7 % either way (a convention) or those of the profile where these are wider: a profile does not bound real lots.
 *
 * @param input - name, kind, profile (percent of total fatty acids), unsaponifiable matter (share by mass)
 * @returns a frozen fat: saponification value in mg KOH/g, iodine value in g I2/100 g
 * @throws CalculationError `unknown-acid`, `profile-does-not-close`, `bad-shape` and the faults of a quantity
 *
 * @example
 * ```ts
 * const palmFraction = fatFromProfile({
 *   name: 'A palm fraction',
 *   kind: 'triglyceride',
 *   profile: { 'C16:0': 45, 'C18:0': 5, 'C18:1': 40, 'C18:2': 10 },
 * });
 * palmFraction.saponificationValue.likely.mgKohPerG.toFixed(1); // => '198.5'
 * ```
 */
export function fatFromProfile(input: FatFromProfileInput): SingleFat {
  const fields = readShape('input', input, ['name', 'kind', 'profile', 'unsaponifiable', 'per']);
  const name = readText('name', fields['name']);
  const kind = readWord('kind', fields['kind'], PROFILE_KINDS);
  const { rows, notes } = readProfile('profile', fields['profile'], readProfileBasis(fields['per']));
  const unsaponifiable = readUnsaponifiable(fields['unsaponifiable']);
  const exact = saponificationValueOfProfile(rows, kind, unsaponifiable).saponificationValue;
  const saponificationValue = spreadOf(exact.likely, exact);
  return knownFat(
    {
      name,
      kind,
      saponificationValue,
      acidValue: kind === 'free-fatty-acid' ? saponificationValue.likely : frozen({ mgKohPerG: ZERO }),
      unsaponifiable: unsaponifiableInResult(unsaponifiable),
      moisture: mapEnds({ low: ZERO, likely: ZERO, high: ZERO }, (percent) => frozen({ percent })),
      iodineValue: iodineValueOfProfile(rows, kind),
      profile: profileInResult(rows),
      from: 'profile',
      notes: frozen([
        ...notes,
        SPREAD_CONVENTION,
        ...(fields['unsaponifiable'] === undefined ? [NO_UNSAPONIFIABLE] : []),
        ...(kind === 'free-fatty-acid' ? [] : [NO_FREE_ACID]),
      ]),
      basis: frozen(['iupac-2021', 'laurate-convention'] as const),
      edition: EDITION,
    },
    'unsaponifiable',
  );
}
