import { molarMass } from '../chemistry/index.js';
import { SPIRIT_CATCHES_FIRE } from '../composition/cautions.js';
import { alkaliCautions } from '../lye/index.js';
import { frozen, readShape, type Remark, type Steps } from '../numbers/index.js';
import type { Mass, SaponificationValue, VolumeInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { readTitration, TITRATION_KEYS, type TitrationGiven, type TitrationInput } from './readTitration.js';
import { expressed, titrated } from './titrated.js';

/** Input of {@link acidValueFromTitration}: fat or soap in neutral spirit, alkali to phenolphthalein. */
export type AcidValueFromTitrationInput = TitrationInput & {
  /** Alkali that the spirit takes without sample; none unless stated. */
  readonly blank?: VolumeInput;
};

/** Result of {@link acidValueFromTitration}. */
export interface AcidValueFromTitrationResult {
  readonly by: 'acidValueFromTitration';
  /** The inputs as read. */
  readonly given: TitrationGiven;
  /** Alkali that the free acid of one gram takes. */
  readonly acidValue: SaponificationValue;
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

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iso-660', 'iupac-2021', 'common-practice']);

/**
 * Acid value of a fat, or free acid of a soap, from alkali to phenolphthalein.
 *
 * Formula: `AV = c·(V − B)·M(KOH)/m` (mg KOH/g), with c eq/L, V alkali and B blank (mL), m sample (g), M g/mol. Any mineral acid
 * is counted too. The usual uncertainty of sampling is that of a fat; of a soap state it, 2 % is usual.
 *
 * Source: ISO 660; atomic weights IUPAC 2021; usual uncertainties are common practice.
 *
 * @param input - sample and volume, or readings; the alkali in eq/L; blank and uncertainties as far as they are known
 * @returns mg KOH/g, with standard uncertainty
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (a reading below the blank by more than
 * readings scatter; within that nothing was found, and a note says so) and the faults of a quantity
 *
 * @example
 * ```ts
 * const test = acidValueFromTitration({ sample: { g: 10 }, titrant: { eqPerL: '0.1' }, volume: { mL: '1.80' } });
 * test.acidValue.mgKohPerG.toFixed(2); // => '1.01'
 * ```
 */
export function acidValueFromTitration(input: AcidValueFromTitrationInput): AcidValueFromTitrationResult {
  return acidValueFromTitrationSteps(input);
}

/** The kernel, with room for the working. */
export function acidValueFromTitrationSteps(
  input: AcidValueFromTitrationInput,
  steps?: Steps,
): AcidValueFromTitrationResult {
  const fields = readShape('input', input, TITRATION_KEYS);
  const titration = readTitration(fields, { sampled: 'fat', way: 'direct' });
  const found = titrated(titration, steps);
  const words = ['acid value', 'x·M(KOH)', 'mg KOH/g'] as const;
  const { value, uncertainty } = expressed(found, molarMass('KOH'), words, steps);
  return frozen({
    by: 'acidValueFromTitration',
    given: titration.given,
    acidValue: frozen({ mgKohPerG: value }),
    standardUncertainty: frozen({ mgKohPerG: uncertainty }),
    sample: found.sample,
    notes: found.notes,
    cautions: alkaliCautions(SPIRIT_CATCHES_FIRE),
    basis: BASIS,
    edition: EDITION,
  });
}
