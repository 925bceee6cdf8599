import { frozen, noted, readShape, readWord, type Steps } from '../numbers/index.js';
import { readPercent, type Fraction, type FractionInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { ALKALIS, hydroxidePerOxide, type Alkali } from './alkali.js';

/** Input of {@link hydroxideFromOxideGrade}. */
export interface HydroxideFromOxideGradeInput {
  readonly alkali: Alkali;
  /** The grade: alkali as Na2O (of sodium) or K2O (of potassium), share by mass. */
  readonly grade: FractionInput;
}

/** Result of {@link hydroxideFromOxideGrade}. */
export interface HydroxideFromOxideGradeResult {
  readonly by: 'hydroxideFromOxideGrade';
  /** The inputs as read. */
  readonly given: { readonly alkali: Alkali; readonly grade: Fraction };
  /** The same alkali as hydroxide, share by mass; over 100 says that the grade counts carbonate or is misread. */
  readonly hydroxide: Fraction;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iupac-2021']);

/**
 * Hydroxide of an alkali that is graded by its oxide, as old and some technical grades are.
 *
 * Formula: `w(hydroxide) = w(oxide)·2·M(hydroxide)/M(oxide)`. The old English degree of soda stands about one above
 * the percentage of Na2O; take it off first.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021.
 *
 * @param input - the alkali and its grade in percent of oxide
 * @returns percent of hydroxide by mass
 * @throws CalculationError `out-of-range`, `bad-shape` and the faults of a quantity
 *
 * @example
 * ```ts
 * hydroxideFromOxideGrade({ alkali: 'naoh', grade: { percent: 76 } }).hydroxide.percent.toFixed(2); // => '98.09'
 * ```
 */
export function hydroxideFromOxideGrade(input: HydroxideFromOxideGradeInput): HydroxideFromOxideGradeResult {
  return hydroxideFromOxideGradeSteps(input);
}

/** The kernel, with room for the working. */
export function hydroxideFromOxideGradeSteps(
  input: HydroxideFromOxideGradeInput,
  steps?: Steps,
): HydroxideFromOxideGradeResult {
  const fields = readShape('input', input, ['alkali', 'grade']);
  const alkali = readWord('alkali', fields['alkali'], ALKALIS);
  const grade = readPercent('grade', fields['grade']);
  const percent = grade.times(hydroxidePerOxide(alkali));
  noted(steps, 'hydroxide', 'w(oxide)·2·M(hydroxide)/M(oxide)', 'percent', percent);
  return frozen({
    by: 'hydroxideFromOxideGrade',
    given: frozen({ alkali, grade: frozen({ percent: grade }) }),
    hydroxide: frozen({ percent }),
    basis: BASIS,
    edition: EDITION,
  });
}
