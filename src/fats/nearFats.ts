import { closestMatch } from 'leven';
import { fats } from './data/fatNames.js';
import { lettersOf, namesOf } from './publishedNames.js';

/** Words that many fats have in their names, and that tell none from another. */
const GENERIC = /\b(?:oils?|butter|fat|wax|virgin|extra|refined|unrefined|raw|pure|organic|cold|pressed)\b/g;
/** Longer is no slip of the pen; it also bounds the work. */
const LONGEST = 60;

/** What tells a fat from others: its name without the words that many have. */
const coreOf = (name: string): string => lettersOf(name.toLowerCase().replaceAll(GENERIC, ' '));

/** Whether one of the words of a name, written together or not, begins with some letters. */
const hasWord = (name: string, letters: string): boolean =>
  lettersOf(name).startsWith(letters) || name.toLowerCase().split(/[^a-z0-9]+/).some((word) => word.startsWith(letters)); // prettier-ignore

/**
 * The ids of the fats that a name may have meant: those of the same distinguishing word, then those that have a word so
 * beginning (`rosin`, `stearic acid`: each is several); else that of the nearest name, one edit to four letters.
 */
function idsNear(written: string): readonly string[] {
  const core = coreOf(written);
  if (core.length < 3 || written.length > LONGEST) return [];
  const having = (is: (name: string) => boolean): string[] =>
    fats.filter((listing) => namesOf(listing).some(is)).map(({ id }) => id);
  const same = having((name) => coreOf(name) === core);
  const alike = [...new Set([...same, ...having((name) => hasWord(name, core))])];
  if (alike.length > 0) return alike.slice(0, 5);
  // the generic words count too, for they may be the ones misspelt; but never the more edits for them
  const keys = new Map<string, string>();
  for (const listing of fats)
    for (const name of namesOf(listing)) {
      keys.set(lettersOf(name), listing.id);
      if (coreOf(name).length > 2) keys.set(coreOf(name), listing.id);
    }
  const maxDistance = Math.floor(core.length / 4);
  const nearest = [core, lettersOf(written)]
    .map((word) => closestMatch(word, [...keys.keys()], { maxDistance }))
    .find((found) => found !== undefined);
  const id = nearest === undefined ? undefined : keys.get(nearest);
  return id === undefined ? [] : [id];
}

/** What a name that is on no file may have meant, and where all are listed. */
export function nearFats(written: unknown): string {
  const ids = typeof written === 'string' ? idsNear(written) : [];
  return `${ids.length === 0 ? '' : ` (did you mean ${ids.join(' or ')}?)`}; fats.map(({ id }) => id) lists all`;
}
