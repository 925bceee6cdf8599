import { fats, type FatListing } from './data/fatNames.js';

let byName: ReadonlyMap<string, FatListing> | undefined;

/** Letters and digits only: `Flax-seed oil` and `flaxseed oil` are one name. */
export const lettersOf = (name: string): string => name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '');

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
