import { frozen, noted, readShape, readWord, refuse, type Remark, type Steps } from '../numbers/index.js';
import { readPercent, type Fraction, type FractionInput, type Temperature } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { ALKALIS, type Alkali } from './alkali.js';
import { CRYSTALS_MAKE_UNKNOWN } from './benchCautions.js';
import { alkaliCautions } from './cautions.js';
import { freezingOf, KNOWN_FREEZING } from './freezingCurve.js';

/** Input of {@link lyeFreezingPoint}. */
export interface LyeFreezingPointInput {
  readonly alkali: Alkali;
  /** True hydroxide, share of the whole lye by mass. */
  readonly strength: FractionInput;
}

/** Result of {@link lyeFreezingPoint}. */
export interface LyeFreezingPointResult {
  readonly by: 'lyeFreezingPoint';
  /** The inputs as read. */
  readonly given: { readonly alkali: Alkali; readonly strength: Fraction };
  /** Temperature at which the first solid, ice or a hydrate of the alkali, appears on cooling. */
  readonly freezingPoint: Temperature;
  /** Lowest and highest that the curve allows; left out where the figure was recalled without any. */
  readonly bounds?: { readonly low: Temperature; readonly high: Temperature };
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Temperature at which a lye begins to freeze.
 *
 * NaOH: straight lines between the points of a digitised phase diagram, each good to 0.5 °C and 0.3 % of strength; the
 * bounds allow for both. The curve is not monotonic: it falls to -28 °C near 19 %, rises to 15.7 °C near 39 %, dips to
 * 6 °C near 45.6 %, and lye of 50 % freezes near 11 °C. Up to 14 % it lies up to 1 °C above the depressions of the CRC
 * Handbook. KOH: those depressions to 7 %, straight lines between; beyond it three single points are known (30.8, 45 and
 * 50 %, recalled) and everything between them is refused.
 *
 * A lye that has frozen in part is of another strength in every layer, and of none that is known.
 *
 * Source: NaOH: Wang 2008. KOH: CRC Handbook, 102nd edition; recalled points.
 *
 * @param input - the alkali and its strength in percent by mass
 * @returns °C, with bounds
 * @throws CalculationError `outside-table` (for what is known), `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const { freezingPoint } = lyeFreezingPoint({ alkali: 'naoh', strength: { percent: 50 } });
 * freezingPoint.celsius.toFixed(1); // => '11.3'
 * lyeFreezingPoint({ alkali: 'koh', strength: { percent: 40 } }); // throws 'outside-table'
 * ```
 */
export function lyeFreezingPoint(input: LyeFreezingPointInput): LyeFreezingPointResult {
  return lyeFreezingPointSteps(input);
}

/** The kernel, with room for the working. */
export function lyeFreezingPointSteps(input: LyeFreezingPointInput, steps?: Steps): LyeFreezingPointResult {
  const fields = readShape('input', input, ['alkali', 'strength']);
  const alkali = readWord('alkali', fields['alkali'], ALKALIS);
  const percent = readPercent('strength', fields['strength']);
  const known =
    freezingOf(alkali, percent) ??
    refuse('outside-table', 'strength', KNOWN_FREEZING[alkali], `${percent.toString()} percent`);
  const { bounds } = known;
  const celsius = noted(steps, 'freezing point', 'straight lines between the points', '°C', known.celsius);
  return frozen({
    by: 'lyeFreezingPoint',
    given: frozen({ alkali, strength: frozen({ percent }) }),
    freezingPoint: frozen({ celsius }),
    ...(bounds === undefined
      ? {}
      : { bounds: frozen({ low: frozen({ celsius: bounds.low }), high: frozen({ celsius: bounds.high }) }) }),
    cautions: alkaliCautions(CRYSTALS_MAKE_UNKNOWN),
    basis: frozen([...known.basis, 'ghs-naoh'] as const),
    edition: EDITION,
  });
}
