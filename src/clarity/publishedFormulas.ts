import { Decimal, frozen } from '../numbers/index.js';
import type { Fraction } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';
import {
  formulaRows,
  type ClearingAgentKind,
  type FormulaRow,
  type OutcomeBasis,
  type PublishedForm,
  type PublishedOutcome,
} from './data/formulaRows.js';

/** What a published soap is made of. `soap` is anhydrous; `glycerol` is formed and added together. */
export type PublishedPart =
  | 'soap'
  | 'water'
  | 'ethanol'
  | 'glycerol'
  | 'propyleneGlycol'
  | 'polyethyleneGlycol'
  | 'sorbitol'
  | 'sucrose'
  | 'salts'
  | 'freeFat'
  | 'freeAcid'
  | 'freeCaustic'
  | 'surfactant'
  | 'other';

/** A published formula of a clear soap, or of another to compare. */
export interface PublishedFormula {
  readonly id: string;
  readonly title: string;
  readonly source: SourceId;
  /** Page, entry or paragraph in it. */
  readonly where: string;
  readonly obtained: 'read' | 'second-hand';
  readonly form: PublishedForm;
  readonly outcome: PublishedOutcome;
  readonly outcomeBasis: OutcomeBasis;
  /** Left out where the text does not tell. */
  readonly clearingAgents?: ClearingAgentKind;
  /** As charged, percent by mass of the whole; left out where amounts are missing. Parts that are not there are left out. */
  readonly shares?: Readonly<Partial<Record<PublishedPart, Fraction>>>;
  /** Palmitic with stearic acid, share of the fats; of typical oils, recalled. */
  readonly palmiticAndStearic?: Fraction;
  /** Alkali charged, percent of what fats and acids need. Not to be copied: what is over 100 burns. */
  readonly alkaliOfNeed?: Fraction;
  readonly remark?: string;
}

/**
 * Published formulas of clear soaps, with bars, gels and liquids that are not clear, to compare.
 *
 * Shares are percent by mass of the whole charge after saponification, nothing evaporated, worked out by others from what is
 * printed; what their sources leave out (strength of spirit, water in ready-made soap, some saponification values) is
 * recalled. No source measured clarity: `outcome` is its word, or a claim, or inferred where it says nothing.
 *
 * Many of these charges hold more alkali than the fats need. They are evidence of clarity, not recipes.
 *
 * Source: each formula names its own.
 *
 * @returns one row a formula, in no order of merit; shares in percent
 *
 * @example
 * ```ts
 * const formulas = publishedFormulas();
 * formulas.length; // => 59
 * formulas.find(({ id }) => id === 'simmons-castor-and-sugar')?.shares?.sucrose?.percent; // => '13.12'
 * ```
 */
export function publishedFormulas(): readonly PublishedFormula[] {
  return frozen(formulaRows().map(formulaOf));
}

const percentOf = (printed: string): Fraction => frozen({ percent: new Decimal(printed) });

function formulaOf(row: FormulaRow): PublishedFormula {
  const [id, title, source, where, form, outcome, outcomeBasis, obtained, clearingAgents, ...more] = row;
  const [shares = '', palmiticAndStearic = '', alkaliOfNeed = '', remark = ''] = more;
  return frozen({
    id,
    title,
    source,
    where,
    obtained,
    form,
    outcome,
    outcomeBasis,
    ...(clearingAgents === 'unknown' ? {} : { clearingAgents }),
    ...(shares === '' ? {} : { shares: sharesOf(shares) }),
    ...(palmiticAndStearic === '' ? {} : { palmiticAndStearic: percentOf(palmiticAndStearic) }),
    ...(alkaliOfNeed === '' ? {} : { alkaliOfNeed: frozen({ percent: new Decimal(alkaliOfNeed).times(100) }) }),
    ...(remark === '' ? {} : { remark }),
  });
}

/** `soap 41.84 water 24.01`: a name and a figure by turns. */
function sharesOf(text: string): NonNullable<PublishedFormula['shares']> {
  const pairs = [...text.matchAll(/(\w+) ([\d.]+)/g)].map(([, part = '', percent = '']) => [part, percentOf(percent)]);
  return frozen(Object.fromEntries(pairs) as Partial<Record<PublishedPart, Fraction>>);
}
