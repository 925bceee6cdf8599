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

/** Input of {@link alkaliAssayFromTwoIndicators}: one sample, acid to phenolphthalein and on to methyl orange. */
export interface AlkaliAssayFromTwoIndicatorsInput extends AlkaliTitrationInput {
  /** Acid until phenolphthalein loses its colour. */
  readonly phenolphthalein: VolumeInput;
  /** Acid from there until methyl orange turns; with two samples, the difference of the two. */
  readonly methylOrange: VolumeInput;
}

/** Result of {@link alkaliAssayFromTwoIndicators}. */
export interface AlkaliAssayFromTwoIndicatorsResult extends AlkaliAssay {
  readonly by: 'alkaliAssayFromTwoIndicators';
  /** The inputs as read. */
  readonly given: AlkaliTitrationGiven & { readonly phenolphthalein: Volume; readonly methylOrange: Volume };
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>([
  'usp-28-nf-23-2005',
  'simmons-appleton-1908',
  'iupac-2021',
  'common-practice',
]);

/**
 * Hydroxide and carbonate of a caustic by two indicators.
 *
 * Formula: to phenolphthalein P goes all hydroxide and half of the carbonate, from there to methyl orange Q the other half:
 * `w(hydroxide) = c·(P − Q)·M/(10·m)`, `w(carbonate) = c·2Q·M(carbonate)/(20·m)`, total alkali by `P + Q`; c eq/L, volumes mL, m
 * g, M g/mol. Good for a few per cent of carbonate and more; for less, barium chloride.
 *
 * Source: National Formulary, assay of sodium and potassium hydroxide; atomic weights IUPAC 2021; usual uncertainties are
 * common practice.
 *
 * @param input - the alkali, the sample that is titrated, the acid in eq/L, the two volumes
 * @returns percent by mass, each with its standard uncertainty; `range` is hydroxide as an assay takes it
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (more acid after phenolphthalein than before:
 * no hydroxide; or more than 110 percent) and the faults of a quantity
 *
 * @example
 * ```ts
 * const flake = alkaliAssayFromTwoIndicators({
 *   alkali: 'naoh',
 *   sample: { g: '1.500' },
 *   titrant: { eqPerL: 1 },
 *   phenolphthalein: { mL: '36.60' },
 *   methylOrange: { mL: '0.20' },
 * });
 * [flake.hydroxide.percent.toFixed(1), flake.carbonate.percent.toFixed(1)]; // => ['97.1', '1.4']
 * ```
 */
export function alkaliAssayFromTwoIndicators(
  input: AlkaliAssayFromTwoIndicatorsInput,
): AlkaliAssayFromTwoIndicatorsResult {
  return alkaliAssayFromTwoIndicatorsSteps(input);
}

/** The kernel, with room for the working. */
export function alkaliAssayFromTwoIndicatorsSteps(
  input: AlkaliAssayFromTwoIndicatorsInput,
  steps?: Steps,
): AlkaliAssayFromTwoIndicatorsResult {
  const fields = readShape('input', input, [...ALKALI_TITRATION_KEYS, 'phenolphthalein', 'methylOrange']);
  const titration = readAlkaliTitration(fields);
  const first = readVolume('phenolphthalein', fields['phenolphthalein']);
  const further = readVolume('methylOrange', fields['methylOrange']);
  if (further.gt(first)) {
    const expected = `what it takes from phenolphthalein on, not both together, at most ${first.toString()} mL: else there is no hydroxide`;
    refuse('out-of-range', 'methylOrange', expected, further.toString());
  }
  // with end points p and t of the whole, P = p and Q = t − p: the squares of what each counts for
  const acid = {
    hydroxide: { mL: first.minus(further), endPoints: 5 },
    carbonate: { mL: further.times(2), endPoints: 8 },
    totalAlkali: { mL: first.plus(further), endPoints: 1 },
  };
  return frozen({
    by: 'alkaliAssayFromTwoIndicators',
    given: frozen({
      ...titration,
      phenolphthalein: frozen({ mL: first }),
      methylOrange: frozen({ mL: further }),
    }),
    ...assayed(titration, acid, steps),
    cautions: alkaliCautions(),
    basis: BASIS,
    edition: EDITION,
  });
}
