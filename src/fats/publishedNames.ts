import { fats, type FatListing } from './data/fatNames.js';

let byName: ReadonlyMap<string, FatListing> | undefined;

/** What may stand between the parts of a name, or not, with the digits beside it. */
const BETWEEN_WORDS = /(\p{N}?)[^\p{L}\p{M}\p{N}+-]+(?=(\p{N}?))/gu;
/** A hyphen only where it joins letters, so that no minus is lost. */
const JOINING_HYPHEN = /(?<=\p{L})-+(?=[\p{L}\p{N}])|(?<=\p{N})-+(?=\p{L})/gu;

/**
 * The letters and digits of a name in any script: `Flax-seed oil` and `flaxseed oil` are one name. What stands between two
 * digits counts, because `Lot 1.5` is not `Lot 15`.
 */
export const lettersOf = (name: string): string =>
  name
    .normalize('NFC')
    .toLowerCase()
    .replace(BETWEEN_WORDS, (all, before: string, after: string) => (before !== '' && after !== '' ? all : before))
    .replace(JOINING_HYPHEN, '');

/** Whether two names mean one thing: capitals and punctuation do not matter, where there are letters to go by. */
export function isSameName(name: string, called: string): boolean {
  const letters = lettersOf(called);
  return name === called || (letters !== '' && lettersOf(name) === letters);
}

/** Every name of a published fat. */
export const namesOf = ({ id, name, synonyms }: FatListing): readonly string[] => [id, name, ...synonyms];

/** The published fat of a name. */
export function listingOf(name: string): FatListing | undefined {
  byName ??= new Map(fats.flatMap((listing) => namesOf(listing).map((one) => [lettersOf(one), listing] as const)));
  return byName.get(lettersOf(name));
}

/** Whether something goes by a name of a published fat. */
export const isPublishedFat = (name: string): boolean => listingOf(name) !== undefined;
