import { frozen, readList } from '../numbers/index.js';
import { shelves, type SourceId } from './bibliography.js';
import type { Publication } from './publication.js';

/** A publication with the name the library cites it by. */
export interface Source extends Publication {
  /** The name used in every `basis`. */
  readonly id: string;
}

/**
 * The publications behind a list of source names, in the order given.
 *
 * A name that is not in the bibliography is left out: a stored result may cite a publication of a later edition of
 * the library.
 *
 * @param ids - names as found in the `basis` of any result
 * @returns one row a publication: title, authors, edition or year, place in it
 * @throws CalculationError `missing` or `bad-shape` for what is no list
 *
 * @example
 * ```ts
 * const [first] = sources(['iupac-2021']);
 * first?.title; // => 'Standard atomic weights of the elements 2021 (IUPAC Technical Report)'
 * ```
 */
export function sources(ids: readonly SourceId[]): readonly Source[] {
  return frozen(
    readList('ids', ids, 0).flatMap((id) => {
      const shelf = typeof id === 'string' ? shelves().find((candidate) => Object.hasOwn(candidate, id)) : undefined;
      const publication = shelf?.[id as SourceId];
      return publication === undefined ? [] : [frozen({ id: id as SourceId, ...publication })];
    }),
  );
}
