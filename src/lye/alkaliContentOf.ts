import { frozen, noted, readShape, readWord, type Decimal, type Steps } from '../numbers/index.js';
import { mapEnds, type Estimate, type Fraction } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { ALKALIS, type Alkali } from './alkali.js';
import { alkaliSourceFrom, type AlkaliSource } from './alkaliSource.js';

/** Input of {@link alkaliContentOf}: which alkali, and its assay or strength. */
export type AlkaliContentOfInput = { readonly alkali: Alkali } & AlkaliSource;

/** Result of {@link alkaliContentOf}. */
export interface AlkaliContentOfResult {
  readonly by: 'alkaliContentOf';
  /** The inputs as read. */
  readonly given: AlkaliContentOfInput;
  /** True hydroxide, share by mass. */
  readonly hydroxide: Estimate<Fraction>;
  /** Carbonate, share by mass; left out where the assay does not state it. */
  readonly carbonate?: Estimate<Fraction>;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iupac-2021']);

/**
 * True hydroxide of an alkali, from its assay or strength.
 *
 * Formula: `hydroxide = total alkali − carbonate·2·M(hydroxide)/M(carbonate)`, all shares by mass. The assay of a
 * pharmacopoeia is total alkali: 95.0 % with 3.0 % Na2CO3 is 92.74 % hydroxide. Carbonate does not split fat.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021.
 *
 * @param input - the alkali, and `solid` or `solution` with shares by mass, each a value or a range
 * @returns percent by mass
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const { hydroxide } = alkaliContentOf({
 *   alkali: 'naoh',
 *   solid: { totalAlkali: { percent: '95.0' }, carbonate: { percent: '3.0' } },
 * });
 * hydroxide.likely.percent.toFixed(2); // => '92.74'
 * ```
 */
export function alkaliContentOf(input: AlkaliContentOfInput): AlkaliContentOfResult {
  return alkaliContentOfSteps(input);
}

/** The kernel, with room for the working. */
export function alkaliContentOfSteps(input: AlkaliContentOfInput, steps?: Steps): AlkaliContentOfResult {
  const fields = readShape('input', input, ['alkali', 'solid', 'solution']);
  const alkali = readWord('alkali', fields['alkali'], ALKALIS);
  const { hydroxide, carbonate, given } = alkaliSourceFrom('', fields, alkali);
  const percent = (share: Decimal): Fraction => frozen({ percent: share.times(100) });
  const content = mapEnds(hydroxide, percent);
  const formula = carbonate === undefined ? 'as stated' : 'total alkali − carbonate·2·M(hydroxide)/M(carbonate)';
  noted(steps, 'true hydroxide', formula, 'percent', content.likely.percent);
  return frozen({
    by: 'alkaliContentOf',
    given: frozen({ alkali, ...given }),
    hydroxide: content,
    ...(carbonate === undefined ? {} : { carbonate: mapEnds(carbonate, percent) }),
    basis: BASIS,
    edition: EDITION,
  });
}
