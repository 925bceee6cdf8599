import type { ErrorCode } from '../numbers/index.js';
import type { SourceId } from '../sources/index.js';
import type { FindingValue } from './findingValue.js';
import type { Slip } from './slips/slip.js';

/** How much a finding matters: to the skin, to the recipe, or to the reader. */
export type Severity = 'danger' | 'caution' | 'note';

/** What an audit can find. */
export type FindingCode =
  | 'free-caustic-above-limit'
  | 'free-caustic-above-limit-at-leanest-lot'
  | 'free-caustic-below-limit'
  | 'free-caustic-hangs-on-assay'
  | 'free-caustic-printed-above-limit'
  | 'worst-case'
  | 'much-fat-left'
  | 'lye-stronger-than-dissolves'
  | 'assay-not-of-a-solid'
  | 'pot-much-diluted'
  | 'superfat-contradicted'
  | 'target-missed'
  | 'target-missed-at-leanest-lot'
  | 'own-values-contradicted'
  | 'saponification-value-contradicted'
  | 'share-contradicted'
  | 'strength-contradicted'
  | 'water-per-alkali-contradicted'
  | 'water-per-fat-contradicted'
  | 'koh-share-contradicted'
  | 'total-contradicted'
  | 'addition-share-contradicted'
  | 'part-share-contradicted'
  | 'shares-above-whole'
  | 'clearing-agents-per-soap-contradicted'
  | 'water-per-soap-contradicted'
  | 'free-caustic-contradicted'
  | 'free-caustic-not-of-these-masses'
  | 'ph-contradicted'
  | 'ph-above-soap'
  | 'ph-cannot-tell'
  | 'temperature-too-hot'
  | 'temperature-too-cold'
  | 'spirit-boils'
  | 'acid-not-counted'
  | 'alkali-not-counted'
  | 'fat-not-counted'
  | 'fat-contradicts-standard'
  | 'unreadable'
  | 'assay-missing'
  | 'not-judged';

/** One thing an audit has to say. */
export interface Finding {
  readonly code: FindingCode;
  readonly severity: Severity;
  /** Where in the recipe, as `claimed.superfat` or `fats[0].fat`; `recipe` for the whole. */
  readonly path: string;
  /** The figure as it is printed. */
  readonly claimed?: FindingValue;
  /** The figure as it follows from the rest of the recipe. */
  readonly computed?: FindingValue;
  /** Every further figure of the explanation, by name, for texts in other words or languages. */
  readonly values: Readonly<Record<string, FindingValue | string>>;
  /** The finding in a maker's words. */
  readonly explanation: string;
  /** How the figure may have come about, the likeliest first. All of them give it: these figures cannot tell them apart. */
  readonly slips: readonly Slip[];
  /** Of `unreadable`: why the reader refused it. */
  readonly error?: ErrorCode;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
}
