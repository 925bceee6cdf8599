import { molarMass } from '../chemistry/index.js';
import { SPIRIT_CATCHES_FIRE } from '../composition/cautions.js';
import { alkaliCautions } from '../lye/index.js';
import { frozen, readShape, type Remark, type Steps } from '../numbers/index.js';
import type { Mass, SaponificationValue, VolumeInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { readTitration, TITRATION_KEYS, type TitrationGiven, type TitrationInput } from './readTitration.js';
import { expressed, titrated } from './titrated.js';

/** Input of {@link saponificationValueFromTitration}: boiled with potash in spirit, titrated back with acid. */
export type SaponificationValueFromTitrationInput = TitrationInput & {
  /** Acid that the same potash takes without fat. */
  readonly blank: VolumeInput;
};

/** Result of {@link saponificationValueFromTitration}. */
export interface SaponificationValueFromTitrationResult {
  readonly by: 'saponificationValueFromTitration';
  /** The inputs as read. */
  readonly given: TitrationGiven;
  /** Alkali that one gram takes, free acid included. */
  readonly saponificationValue: SaponificationValue;
  readonly standardUncertainty: SaponificationValue;
  /** All that was weighed for it. */
  readonly sample: Mass;
  /** What was found out about the readings. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iso-3657', 'iupac-2021', 'common-practice']);

/**
 * Saponification value of a fat from a back titration; of a soap in spirit, the alkali that its free fat and acid take.
 *
 * Formula: `SV = c·(B − V)·M(KOH)/m` (mg KOH/g), with B the acid for the potash alone and V the acid that is left of it (mL), c
 * eq/L (sulfuric acid of 0.5 mol/L has 1 eq/L), m sample (g), M g/mol. The usual uncertainty of sampling is that of a fat; of a
 * soap state it, 2 % is usual.
 *
 * Source: ISO 3657; atomic weights IUPAC 2021; usual uncertainties are common practice.
 *
 * @param input - sample and volume, or readings; the acid in eq/L; the blank
 * @returns mg KOH/g, with standard uncertainty
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (a reading above the blank) and the faults
 * of a quantity
 *
 * @example
 * ```ts
 * const test = saponificationValueFromTitration({
 *   sample: { g: 2 },
 *   titrant: { eqPerL: '0.5' },
 *   blank: { mL: '24.60' },
 *   volume: { mL: '6.35' },
 * });
 * test.saponificationValue.mgKohPerG.toFixed(1); // => '256.0'
 * ```
 */
export function saponificationValueFromTitration(
  input: SaponificationValueFromTitrationInput,
): SaponificationValueFromTitrationResult {
  return saponificationValueFromTitrationSteps(input);
}

/** The kernel, with room for the working. */
export function saponificationValueFromTitrationSteps(
  input: SaponificationValueFromTitrationInput,
  steps?: Steps,
): SaponificationValueFromTitrationResult {
  const fields = readShape('input', input, TITRATION_KEYS);
  const titration = readTitration(fields, { sampled: 'fat', way: 'back' });
  const found = titrated(titration, steps);
  const words = ['saponification value', 'x·M(KOH)', 'mg KOH/g'] as const;
  const { value, uncertainty } = expressed(found, molarMass('KOH'), words, steps);
  return frozen({
    by: 'saponificationValueFromTitration',
    given: titration.given,
    saponificationValue: frozen({ mgKohPerG: value }),
    standardUncertainty: frozen({ mgKohPerG: uncertainty }),
    sample: found.sample,
    notes: found.notes,
    cautions: alkaliCautions(SPIRIT_CATCHES_FIRE),
    basis: BASIS,
    edition: EDITION,
  });
}
