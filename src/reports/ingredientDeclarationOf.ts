import type { ChargedPot } from '../composition/index.js';
import { readComposition } from '../composition/readComposition.js';
import { isSameName } from '../fats/index.js';
import { frozen, readList, readShape, readText, readWord, refuse, suggestion, type Remark } from '../numbers/index.js';
import type { Estimate, Fraction } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { asCharged } from './declaration/asCharged.js';
import { asFormed } from './declaration/asFormed.js';
import * as notes from './declaration/declarationNotes.js';
import {
  itemsOf,
  readIngredientNames,
  type NameObtained,
  type OwnIngredientNames,
} from './declaration/ingredientNames.js';
import { inOrder } from './declaration/inOrder.js';
import { readBatch, type PlannedBatch } from './readBatch.js';

/** What {@link ingredientDeclarationOf} has to be told. */
export interface IngredientDeclarationOptions {
  /** Oils and alkali as they went in, or the soaps and the glycerol they have become. */
  readonly as: 'charged' | 'formed';
  /** Names of one's own, by fat, solvent id, `naoh`, `koh`, `water` or the name of an addition; they come before ours. */
  readonly names?: Readonly<Record<string, OwnIngredientNames>>;
  /** Additions that are colourants: they stand last. */
  readonly colourants?: readonly string[];
}

/** One ingredient of a declaration. */
export interface DeclaredIngredient {
  readonly name: string;
  /** What it came from, as the recipe calls it. */
  readonly from: readonly string[];
  /** Of all that is declared, by mass. */
  readonly share: Estimate<Fraction>;
  /** Recalled, the caller's, or none known: then the name is that of the trade. */
  readonly obtained: NameObtained;
}

/** Result of {@link ingredientDeclarationOf}. */
export interface IngredientDeclaration {
  readonly as: 'charged' | 'formed';
  /** In the order of the declaration. */
  readonly entries: readonly DeclaredIngredient[];
  /** The same in one line, plain text; a name that is not known is marked. */
  readonly text: string;
  /** What it rests on, and where it may be wrong. */
  readonly notes: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * The ingredients of a batch in descending order by mass, as charged or as formed, colourants last.
 *
 * Formula: as charged, the mass of each fat; of each alkali `n·M` at its assay; water of lye and additions less what is gone.
 * As formed, of each fat `x·m(acid) + x·n·(M(metal) − M(H))`, with the extents x that all fats share, and `(1 − x)` of it
 * left; glycerol formed and added; all water. Share: `m / Σ m` of what is declared. Things of one name are one entry.
 *
 * The order is that of the likely masses; a note names neighbours whose masses lots could turn round or that lie within 1 %
 * (a convention). Low and high stand where all lots of a kind move together. Below 1 % rules commonly let any order
 * stand; it stays descending here.
 *
 * Source: masses, those of the batch; every ingredient name of ours is recalled.
 *
 * @param batch - a result of `planBatch`, also one read back from JSON
 * @param options - as charged or as formed; own names; which additions are colourants
 * @returns entries with shares in percent by mass, and the declaration as one line of plain text
 * @throws CalculationError `missing` or `bad-shape` for what is no batch or option, `unknown-key` for a name of nothing in
 *   the batch, and the faults of its recipe
 *
 * @example
 * ```ts
 * const batch = planBatch({
 *   version: 1,
 *   fats: [{ fat: 'coconut-oil', mass: { g: 700 } }],
 *   lye: [{ alkali: 'naoh', solution: { hydroxide: { percent: 50 } } }],
 *   additions: [{ solvent: 'glycerol', mass: { g: 250 }, assay: { percent: '99.5' } }],
 *   target: { superfat: { percent: 2 } },
 * });
 * ingredientDeclarationOf(batch, { as: 'charged' }).text; // => 'Cocos Nucifera (Coconut) Oil, Glycerin, Aqua, Sodium Hydroxide'
 * ingredientDeclarationOf(batch, { as: 'formed' }).text; // => 'Sodium Cocoate, Glycerin, Aqua, Cocos Nucifera (Coconut) Oil'
 * ```
 */
export function ingredientDeclarationOf(
  batch: PlannedBatch,
  options: IngredientDeclarationOptions,
): IngredientDeclaration {
  const fields = readShape('options', options, ['as', 'names', 'colourants']);
  const as = readWord('options.as', fields['as'], ['charged', 'formed']);
  const { composition } = readBatch('batch', batch);
  const pot = readComposition('batch.composition', composition);
  const names = readIngredientNames('options.names', fields['names'], pot);
  const colourants = readColourants('options.colourants', fields['colourants'], pot);
  const declared = (as === 'charged' ? asCharged : asFormed)(pot, names, colourants);
  const { entries, close } = inOrder(pot, declared);
  const has = (obtained: NameObtained): boolean => entries.some((entry) => entry.obtained === obtained);
  const isNamedApart = pot.additions.some(({ holds }) => holds === 'other');
  return frozen({
    as,
    entries,
    text: entries
      .map(({ name, obtained }) => (obtained === 'unknown' ? `${name} (INCI name not known)` : name))
      .join(', '),
    notes: frozen([
      notes.RULES_OF_THE_PLACE,
      notes.NAMES_RECALLED,
      ...(has('unknown') ? [notes.NAMES_UNKNOWN] : []),
      ...close.map(([first, second]) => notes.closeInOrder(first, second)),
      ...(as === 'formed' ? [notes.AFTER_COMPLETE_REACTION] : []),
      notes.WATER_THAT_IS_THERE,
      notes.LEFT_OUT,
      ...(pot.additions.some(({ given }) => 'solvent' in given && given.solvent === 'triethanolamine')
        ? [notes.AMINE_SOAP]
        : []),
      ...(isNamedApart ? [notes.SCENT_HAS_INGREDIENTS] : []),
    ]),
    basis: frozen<readonly SourceId[]>([...new Set<SourceId>(['inci', ...composition.basis])]),
    edition: EDITION,
  });
}

function readColourants(path: string, value: unknown, pot: ChargedPot): readonly string[] {
  return readList(path, value ?? [], 0).map((entry, at) => {
    const here = `${path}[${String(at)}]`;
    const name = readText(here, entry);
    const known = itemsOf(pot);
    if (known.some((one) => isSameName(one, name))) return name;
    return refuse('unknown-key', here, `an addition of the batch${suggestion(name, known)}`, name);
  });
}
