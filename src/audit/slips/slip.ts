import type { FindingValue } from '../findingValue.js';

/** The slips an audit knows: how a figure may have been made wrongly. */
export type SlipCode =
  | 'claimed-values-used'
  | 'koh-value-as-naoh'
  | 'naoh-value-as-koh'
  | 'equivalent-as-value'
  | 'value-per-fatty-acids'
  | 'saponification-plus-acid-value'
  | 'ester-value-as-saponification-value'
  | 'neighbouring-fat-value'
  | 'value-of-another-fat'
  | 'fat-left-out'
  | 'rows-swapped'
  | 'superfat-left-out'
  | 'superfat-added'
  | 'superfat-as-divisor'
  | 'superfat-twice'
  | 'superfat-percent-as-fraction'
  | 'superfat-fraction-as-percent'
  | 'solution-as-solid'
  | 'solid-as-solution'
  | 'claimed-strength-used'
  | 'assay-ignored'
  | 'assay-twice'
  | 'assay-upside-down'
  | 'oxide-percent-as-hydroxide'
  | 'hydroxide-percent-as-oxide'
  | 'carbonate-counted'
  | 'mole-share-as-mass-share'
  | 'weight-by-volume-as-by-weight'
  | 'parts-per-100-of-water-as-percent'
  | 'water-and-alkali-inverted'
  | 'strength-as-water-per-fat'
  | 'baume-degrees-as-percent'
  | 'baume-modulus-mistaken'
  | 'percent-of-another-total'
  | 'part-left-out-of-total'
  | 'percent-by-volume-as-by-mass'
  | 'syrup-as-dry'
  | 'dry-as-syrup'
  | 'fahrenheit-as-celsius'
  | 'celsius-as-fahrenheit'
  | 'unit-mistaken'
  | 'digits-exchanged'
  | 'decimal-point-moved';

/** One way in which a figure may have come about. */
export interface Slip {
  readonly code: SlipCode;
  /** The row of the recipe it would have happened in, where it is one row. */
  readonly path?: string;
  /**
   * `reproduces`: the recipe's own claimed values give the figure this way, to its last printed digit. `explains`: the
   * figure lies among those that lawful lots give this way.
   */
  readonly how: 'reproduces' | 'explains';
  /** What the slip makes of the figure. */
  readonly predicted: FindingValue;
  /** Words that belong to it, as the unit that was meant or the fat that was taken. */
  readonly words: Readonly<Record<string, string>>;
  /** The slip in a maker's words. */
  readonly explanation: string;
  /** What would tell it from the others. */
  readonly tell: string;
}
