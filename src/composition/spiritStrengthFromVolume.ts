import { frozen, noted, readShape, type Decimal, type Steps } from '../numbers/index.js';
import { readSpiritStrength, type Fraction, type SpiritStrengthInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { ethanolShareFromVolume } from './ethanolWater.js';

/** Input of {@link spiritStrengthFromVolume}. */
export interface SpiritStrengthFromVolumeInput {
  /** Ethanol in percent by volume at 20 °C, as on the label. */
  readonly strength: SpiritStrengthInput;
}

/** Result of {@link spiritStrengthFromVolume}. */
export interface SpiritStrengthFromVolumeResult {
  readonly by: 'spiritStrengthFromVolume';
  /** The inputs as read. */
  readonly given: { readonly strength: { readonly percentByVolume: Decimal } };
  /** Ethanol, share by mass. */
  readonly strength: Fraction;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Strength of spirit by mass, from its strength by volume.
 *
 * Formula: the w with `w·ρ(w) = v·ρ(1)`, where v is the share by volume and ρ the density of ethanol with water at 20 °C.
 *
 * Validity: 0 to 100 %, spirit of ethanol and water. Denaturants are not allowed for. A strength stated at 60 °F or 15 °C
 * differs by at most 0.1 % by mass.
 *
 * Source: OIML R 22, International alcoholometric tables, 1975.
 *
 * @param input - percent by volume at 20 °C
 * @returns percent by mass, unrounded
 * @throws CalculationError `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const { strength } = spiritStrengthFromVolume({ strength: { percentByVolume: 96 } });
 * strength.percent.toFixed(2); // => '93.84'
 * ```
 */
export function spiritStrengthFromVolume(input: SpiritStrengthFromVolumeInput): SpiritStrengthFromVolumeResult {
  return spiritStrengthFromVolumeSteps(input);
}

/** The kernel, with room for the working. */
export function spiritStrengthFromVolumeSteps(
  input: SpiritStrengthFromVolumeInput,
  steps?: Steps,
): SpiritStrengthFromVolumeResult {
  const fields = readShape('input', input, ['strength']);
  const percentByVolume = readSpiritStrength('strength', fields['strength']);
  const share = ethanolShareFromVolume(percentByVolume.div(100));
  const percent = noted(steps, 'ethanol by mass', 'w·ρ(w) = v·ρ(1)', 'percent', share.times(100));
  return frozen({
    by: 'spiritStrengthFromVolume',
    given: frozen({ strength: frozen({ percentByVolume }) }),
    strength: frozen({ percent }),
    basis: frozen(['oiml-r-22'] as const),
    edition: EDITION,
  });
}
