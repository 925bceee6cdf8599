import { ALKALIS, alkaliCautions, hydroxideMolarMass, type Alkali } from '../lye/index.js';
import { frozen, readShape, readWord, type Remark, type Steps } from '../numbers/index.js';
import type { Estimate, Fraction, Mass, VolumeInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { rangeOf } from './alkaliAssay.js';
import { readTitration, TITRATION_KEYS, type TitrationGiven, type TitrationInput } from './readTitration.js';
import { expressed, titrated } from './titrated.js';

/** Input of {@link lyeStrengthFromTitration}: lye as weighed, in water without carbonic acid; one titration with acid. */
export type LyeStrengthFromTitrationInput = TitrationInput & {
  readonly alkali: Alkali;
  /** Acid that the water takes; none unless stated. */
  readonly blank?: VolumeInput;
};

/** Result of {@link lyeStrengthFromTitration}. */
export interface LyeStrengthFromTitrationResult {
  readonly by: 'lyeStrengthFromTitration';
  /** The inputs as read. */
  readonly given: TitrationGiven & { readonly alkali: Alkali };
  /** Hydroxide, share of the whole lye by mass. */
  readonly strength: Fraction;
  readonly standardUncertainty: Fraction;
  /** The strength with its limits of 95 %, as a lye plan takes it. */
  readonly range: Estimate<Fraction>;
  /** All that was weighed for it. */
  readonly sample: Mass;
  /** What was found out about the readings, and what else is counted. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>([
  'simmons-appleton-1908',
  'iupac-2021',
  'common-practice',
]);
const CARBONATE_READS_AS_LYE: Remark = /* @__PURE__ */ frozen({
  code: 'carbonate-read-as-hydroxide',
  text: 'To phenolphthalein half of the carbonate is read as hydroxide, to methyl orange all of it; after barium chloride, to phenolphthalein, none.',
});

/**
 * Strength of a stock lye, from acid.
 *
 * Formula: `w = c·(V − B)·M/(10·m)`, with w percent by mass, c eq/L, V acid and B blank (mL), m lye (g), M g/mol. By mass: weigh the
 * lye in a stoppered bottle by difference, a pipette would want its density.
 *
 * Source: Simmons and Appleton 1908, chapter X; atomic weights IUPAC 2021; usual uncertainties are common practice.
 *
 * @param input - the alkali; sample and volume, or readings; the acid in eq/L
 * @returns percent by mass; `range` is what `planLye` and `dilutedLye` take
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (a reading below the blank by more than
 * readings scatter, or more than 110 percent) and the faults of a quantity
 *
 * @example
 * ```ts
 * const stock = lyeStrengthFromTitration({
 *   alkali: 'naoh',
 *   readings: [
 *     { sample: { g: '2.51' }, volume: { mL: '31.25' } },
 *     { sample: { g: '2.47' }, volume: { mL: '30.80' } },
 *   ],
 *   titrant: { eqPerL: 1 },
 * });
 * stock.strength.percent.toFixed(1); // => '49.8'
 * ```
 */
export function lyeStrengthFromTitration(input: LyeStrengthFromTitrationInput): LyeStrengthFromTitrationResult {
  return lyeStrengthFromTitrationSteps(input);
}

/** The kernel, with room for the working. */
export function lyeStrengthFromTitrationSteps(
  input: LyeStrengthFromTitrationInput,
  steps?: Steps,
): LyeStrengthFromTitrationResult {
  const fields = readShape('input', input, [...TITRATION_KEYS, 'alkali']);
  const alkali = readWord('alkali', fields['alkali'], ALKALIS);
  const titration = readTitration(fields, { sampled: 'alkali', way: 'direct' });
  const found = titrated(titration, steps);
  const words = ['strength', 'x·M/10', 'percent'] as const;
  const { value, uncertainty } = expressed(found, hydroxideMolarMass(alkali).div(10), words, steps);
  return frozen({
    by: 'lyeStrengthFromTitration',
    given: frozen({ ...titration.given, alkali }),
    strength: frozen({ percent: value }),
    standardUncertainty: frozen({ percent: uncertainty }),
    range: rangeOf(value, uncertainty),
    sample: found.sample,
    notes: frozen([...found.notes, CARBONATE_READS_AS_LYE]),
    cautions: alkaliCautions(),
    basis: BASIS,
    edition: EDITION,
  });
}
