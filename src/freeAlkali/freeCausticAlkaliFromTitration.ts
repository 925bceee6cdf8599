import { molarMass } from '../chemistry/index.js';
import { SPIRIT_CATCHES_FIRE } from '../composition/cautions.js';
import { alkaliCautions } from '../lye/index.js';
import { frozen, readShape, readWord, type Remark, type Steps } from '../numbers/index.js';
import type { AlkaliContent, Mass, VolumeInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { BARIUM_IS_POISON, TEST_BEFORE_SKIN } from './cautions.js';
import { readTitration, TITRATION_KEYS, type TitrationGiven, type TitrationInput } from './readTitration.js';
import { expressed, titrated } from './titrated.js';

/** How free caustic is told from soap and carbonate: dissolved in neutral spirit, or after barium chloride. */
export type FreeCausticMethod = 'alcohol' | 'barium-chloride';

/** Input of {@link freeCausticAlkaliFromTitration}: soap in spirit, acid to phenolphthalein. */
export type FreeCausticAlkaliFromTitrationInput = TitrationInput & {
  /** Acid that the spirit takes without soap; none unless stated. */
  readonly blank?: VolumeInput;
  /** `alcohol` unless stated, which is for soda soap; potash soap wants barium chloride. */
  readonly method?: FreeCausticMethod;
};

/** Result of {@link freeCausticAlkaliFromTitration}. */
export interface FreeCausticAlkaliFromTitrationResult {
  readonly by: 'freeCausticAlkaliFromTitration';
  /** The inputs as read. */
  readonly given: TitrationGiven & { readonly method: FreeCausticMethod };
  /** Free caustic of the soap as it was weighed. */
  readonly freeCausticAlkali: AlkaliContent;
  readonly standardUncertainty: AlkaliContent;
  /** All that was weighed for it. */
  readonly sample: Mass;
  /** What was found out about the readings, and what the method cannot do. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iso-456', 'iupac-2021', 'common-practice']);
const FOR_SODA_SOAP: Remark = /* @__PURE__ */ frozen({
  code: 'alcohol-method-for-soda-soap',
  text: 'The alcohol method is for soda soap; carbonate of potash dissolves in spirit and is read as caustic: potash soap wants barium chloride.',
});
const BOIL_SHORTLY: Remark = /* @__PURE__ */ frozen({
  code: 'free-fat-takes-caustic',
  text: 'Free fat takes up caustic while the spirit boils, and less is found: no longer than it takes to dissolve. Spirit that turns no colour at all holds free acid: titrate that with alkali.',
});

/**
 * Free caustic alkali of a soap, from acid to phenolphthalein.
 *
 * Formula: `w = c·(V − B)·M(NaOH)/(10·m)`, with w percent NaOH, c eq/L, V acid and B blank (mL), m soap (g), M g/mol. The
 * standard uncertainty takes in balance, burette, end point, blank, titrant and sampling, stated or usual; of several
 * readings the mean, with what they do not share divided by their number.
 *
 * Limits are of one side: the content is below `w + 1.645·u` with 95 % confidence. Colourless spirit is free acid, not
 * negative alkali.
 *
 * Source: ISO 456 (principle); atomic weights IUPAC 2021; usual uncertainties are common practice.
 *
 * @param input - sample and volume, or readings; the acid in eq/L; blank and uncertainties as far as they are known
 * @returns percent NaOH of the soap as weighed
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (a reading below the blank by more than
 * readings scatter; within that nothing was found, and a note says so) and the faults of a quantity
 *
 * @example
 * ```ts
 * const test = freeCausticAlkaliFromTitration({ sample: { g: 10 }, titrant: { eqPerL: '0.1' }, volume: { mL: '2.40' } });
 * test.freeCausticAlkali.percentNaoh.toFixed(3); // => '0.096'
 * test.standardUncertainty.percentNaoh.toFixed(4); // => '0.0031'
 * ```
 */
export function freeCausticAlkaliFromTitration(
  input: FreeCausticAlkaliFromTitrationInput,
): FreeCausticAlkaliFromTitrationResult {
  return freeCausticAlkaliFromTitrationSteps(input);
}

/** The kernel, with room for the working. */
export function freeCausticAlkaliFromTitrationSteps(
  input: FreeCausticAlkaliFromTitrationInput,
  steps?: Steps,
): FreeCausticAlkaliFromTitrationResult {
  const fields = readShape('input', input, [...TITRATION_KEYS, 'method']);
  const method = readWord('method', fields['method'] ?? 'alcohol', ['alcohol', 'barium-chloride']);
  const titration = readTitration(fields, { sampled: 'soap', way: 'direct' });
  const found = titrated(titration, steps);
  const words = ['free caustic alkali', 'x·M(NaOH)/10', 'percent NaOH'] as const;
  const { value, uncertainty } = expressed(found, molarMass('NaOH').div(10), words, steps);
  const byAlcohol = method === 'alcohol';
  return frozen({
    by: 'freeCausticAlkaliFromTitration',
    given: frozen({ ...titration.given, method }),
    freeCausticAlkali: frozen({ percentNaoh: value }),
    standardUncertainty: frozen({ percentNaoh: uncertainty }),
    sample: found.sample,
    notes: frozen([...found.notes, ...(byAlcohol ? [FOR_SODA_SOAP] : []), BOIL_SHORTLY]),
    cautions: alkaliCautions(SPIRIT_CATCHES_FIRE, ...(byAlcohol ? [] : [BARIUM_IS_POISON]), TEST_BEFORE_SKIN),
    basis: BASIS,
    edition: EDITION,
  });
}
