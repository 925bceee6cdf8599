import { alkaliCautions } from '../lye/index.js';
import { frozen, readShape, refuse, type Remark, type Steps } from '../numbers/index.js';
import { readVolume, type Volume, type VolumeInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import {
  ALKALI_TITRATION_KEYS,
  assayed,
  readAlkaliTitration,
  type AlkaliAssay,
  type AlkaliTitrationGiven,
  type AlkaliTitrationInput,
} from './alkaliAssay.js';
import { BARIUM_IS_POISON } from './cautions.js';
import { scatterOf } from './readTitration.js';

/** Input of {@link alkaliAssayFromBariumChloride}: two samples alike, with and without barium chloride. */
export interface AlkaliAssayFromBariumChlorideInput extends AlkaliTitrationInput {
  /** Acid to phenolphthalein once barium chloride has thrown down the carbonate; for the whole sample. */
  readonly bariumChloride: VolumeInput;
  /** Acid to methyl orange without it. */
  readonly methylOrange: VolumeInput;
}

/** Result of {@link alkaliAssayFromBariumChloride}. */
export interface AlkaliAssayFromBariumChlorideResult extends AlkaliAssay {
  readonly by: 'alkaliAssayFromBariumChloride';
  /** The inputs as read. */
  readonly given: AlkaliTitrationGiven & { readonly bariumChloride: Volume; readonly methylOrange: Volume };
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['talbot-1921', 'iupac-2021', 'common-practice']);

/**
 * Hydroxide and carbonate of a caustic by barium chloride, which throws the carbonate down.
 *
 * Formula: `w(hydroxide) = c·B·M/(10·m)`, `w(carbonate) = c·(T − B)·M(carbonate)/(20·m)`, with B the acid to phenolphthalein after
 * barium chloride, T the acid to methyl orange without it (mL), both for the same mass m (g); c eq/L, M g/mol.
 *
 * Source: Talbot 1921, problem 39; atomic weights IUPAC 2021; usual uncertainties are common practice.
 *
 * @param input - the alkali, the sample that is titrated, the acid in eq/L, the two volumes
 * @returns percent by mass, each with its standard uncertainty; `range` is hydroxide as an assay takes it
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (less acid to methyl orange than after barium
 * chloride; or more than 110 percent) and the faults of a quantity
 *
 * @example
 * ```ts
 * const flake = alkaliAssayFromBariumChloride({
 *   alkali: 'koh',
 *   sample: { g: '2.000' },
 *   titrant: { eqPerL: 1 },
 *   bariumChloride: { mL: '31.10' },
 *   methylOrange: { mL: '31.50' },
 * });
 * [flake.hydroxide.percent.toFixed(1), flake.carbonate.percent.toFixed(1)]; // => ['87.2', '1.4']
 * ```
 */
export function alkaliAssayFromBariumChloride(
  input: AlkaliAssayFromBariumChlorideInput,
): AlkaliAssayFromBariumChlorideResult {
  return alkaliAssayFromBariumChlorideSteps(input);
}

/** The kernel, with room for the working. */
export function alkaliAssayFromBariumChlorideSteps(
  input: AlkaliAssayFromBariumChlorideInput,
  steps?: Steps,
): AlkaliAssayFromBariumChlorideResult {
  const fields = readShape('input', input, [...ALKALI_TITRATION_KEYS, 'bariumChloride', 'methylOrange']);
  const titration = readAlkaliTitration(fields);
  const after = readVolume('bariumChloride', fields['bariumChloride']);
  const whole = readVolume('methylOrange', fields['methylOrange']);
  if (whole.minus(after).lt(scatterOf(titration.uncertainty).neg())) {
    const expected = `at least ${after.toString()} mL, the acid after barium chloride`;
    refuse('out-of-range', 'methylOrange', expected, whole.toString());
  }
  const acid = {
    hydroxide: { mL: after, endPoints: 1 },
    carbonate: { mL: whole.minus(after), endPoints: 2 },
    totalAlkali: { mL: whole, endPoints: 1 },
  };
  return frozen({
    by: 'alkaliAssayFromBariumChloride',
    given: frozen({ ...titration, bariumChloride: frozen({ mL: after }), methylOrange: frozen({ mL: whole }) }),
    ...assayed(titration, acid, steps),
    cautions: alkaliCautions(BARIUM_IS_POISON),
    basis: BASIS,
    edition: EDITION,
  });
}
