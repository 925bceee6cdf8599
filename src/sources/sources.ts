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
 *
 * @example
 * ```ts
 * const [first] = sources(['iupac-2021']);
 * first?.title; // => 'Standard atomic weights of the elements 2021 (IUPAC Technical Report)'
 * ```
 */
export function sources(ids: readonly SourceId[]): readonly Source[] {
  return ids.flatMap((id) => {
    const publication = shelves()
      .filter((shelf) => Object.hasOwn(shelf, id))
      .map((shelf) => shelf[id])
      .find((found) => found !== undefined);
    return publication === undefined ? [] : [Object.freeze({ id, ...publication })];
  });
}
