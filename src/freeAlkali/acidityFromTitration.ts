import { SPIRIT_CATCHES_FIRE } from '../composition/cautions.js';
import { alkaliCautions } from '../lye/index.js';
import { Decimal, frozen, noted, readShape, readWord, type Remark, type Steps } from '../numbers/index.js';
import type { Fraction, Mass, VolumeInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { conventionalAcids, type AcidityAcid } from './data/titration.js';
import { readTitration, TITRATION_KEYS, type TitrationGiven, type TitrationInput } from './readTitration.js';
import { expressed, titrated } from './titrated.js';

/** Input of {@link acidityFromTitration}. */
export type AcidityFromTitrationInput = TitrationInput & {
  /** The acid that the figure is printed as: oleic for most fats, lauric for coconut and palm kernel, palmitic for palm. */
  readonly as: AcidityAcid;
  /** Alkali that the spirit takes without sample; none unless stated. */
  readonly blank?: VolumeInput;
};

/** Result of {@link acidityFromTitration}. */
export interface AcidityFromTitrationResult {
  readonly by: 'acidityFromTitration';
  /** The inputs as read. */
  readonly given: TitrationGiven & { readonly as: AcidityAcid };
  /** Free acid, counted as that acid, share by mass. */
  readonly acidity: Fraction;
  readonly standardUncertainty: Fraction;
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

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iso-660', 'common-practice']);
const ACIDS = ['oleic', 'lauric', 'palmitic', 'erucic'] as const;

/**
 * Acidity of a fat or soap: its free acid as percent of a conventional acid, from alkali to phenolphthalein.
 *
 * Formula: `w = c·(V − B)·M/(10·m)`, with M the molar mass that the method fixes: oleic 282, lauric 200, palmitic 256, erucic
 * 338 g/mol, whole numbers by convention; c eq/L, V alkali and B blank (mL), m sample (g). The usual uncertainty of sampling is that of a
 * fat; of a soap state it, 2 % is usual.
 *
 * Source: ISO 660 (oleic acid read, the others recalled); usual uncertainties are common practice.
 *
 * @param input - sample and volume, or readings; the alkali in eq/L; the acid to count as
 * @returns percent by mass, with standard uncertainty
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (a reading below the blank by more than
 * readings scatter; within that nothing was found, and a note says so) and the faults of a quantity
 *
 * @example
 * ```ts
 * const test = acidityFromTitration({
 *   as: 'oleic',
 *   sample: { g: 10 },
 *   titrant: { eqPerL: '0.1' },
 *   volume: { mL: '1.80' },
 * });
 * test.acidity.percent.toFixed(3); // => '0.508'
 * ```
 */
export function acidityFromTitration(input: AcidityFromTitrationInput): AcidityFromTitrationResult {
  return acidityFromTitrationSteps(input);
}

/** The kernel, with room for the working. */
export function acidityFromTitrationSteps(input: AcidityFromTitrationInput, steps?: Steps): AcidityFromTitrationResult {
  const fields = readShape('input', input, [...TITRATION_KEYS, 'as']);
  const as = readWord('as', fields['as'], ACIDS);
  const titration = readTitration(fields, { sampled: 'fat', way: 'direct' });
  const found = titrated(titration, steps);
  const { gPerMol } = conventionalAcids[as];
  const molarMass = noted(steps, `${as} acid, by convention`, 'fixed by the method', 'g/mol', new Decimal(gPerMol));
  const words = [`acidity as ${as} acid`, 'x·M/10', 'percent'] as const;
  const { value, uncertainty } = expressed(found, molarMass.div(10), words, steps);
  return frozen({
    by: 'acidityFromTitration',
    given: frozen({ ...titration.given, as }),
    acidity: frozen({ percent: value }),
    standardUncertainty: frozen({ percent: uncertainty }),
    sample: found.sample,
    notes: found.notes,
    cautions: alkaliCautions(SPIRIT_CATCHES_FIRE),
    basis: BASIS,
    edition: EDITION,
  });
}
