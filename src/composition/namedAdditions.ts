import type { Addition } from './additions.js';
import { plainWords } from './namedAlkalis.js';

/** What spirit is called, and what is sold dissolved in it. */
const SPIRIT =
  /\b(?:alcohols?|spirits?|(?:m?eth|prop|isoprop)anol|isopropyl|ipa|ims|meths|methylated|vodka|gin|rum|brandy|tinctures?)\b/;

/** What is called so and is none: solids of long chains, sugar alcohols, vinegar. */
const NO_SPIRIT =
  /\b(?:alcohol free|spirit vinegar|(?:fatty|sugar|wool|wax|lanolin|polyvinyl|benzyl|cetyl|cetearyl|cetostearyl|stearyl|behenyl|lauryl|myristyl|oleyl) alcohols?)\b/g;

/** Whether something goes by the name of a spirit: by its name nothing tells how much, but it burns all the same. */
export const isNamedSpirit = (name: string): boolean => SPIRIT.test(plainWords(name).replaceAll(NO_SPIRIT, ' '));

/** Whether something among additions was weighed in by such a name only. */
export const isAnyNamed = (additions: readonly Pick<Addition, 'given'>[], isSuch: (name: string) => boolean): boolean =>
  additions.some(({ given }) => 'name' in given && isSuch(given.name));

/** An acid that something goes by the name of; `other` is one whose mass does not tell what it takes up of the lye. */
export type NamedAcid = 'citric' | 'lactic' | 'other';

/*
 * Their names in English, German, French, Spanish, Italian, Portuguese and Dutch, without accents and spaces; `acid` is in most
 * of them. Common practice, no source.
 */
const CITRIC = /citricacid|zitronensae?ure|citronensae?ure|(?:acide|acido)citri(?:que|co)|citroenzuur/;
const LACTIC = /lacticacid|milchsae?ure|acidelactique|acidol(?:act|at|att)ico|melkzuur/;
const OTHER = /acid|vinegar|sae?ure|zuur|vinaigre|vinagre|essig|azijn/;

/** The acid that something goes by the name of, if it does. */
export function namedAcid(name: string): NamedAcid | undefined {
  const letters = plainWords(name).replaceAll(' ', '');
  if (CITRIC.test(letters)) return 'citric';
  if (LACTIC.test(letters)) return 'lactic';
  return OTHER.test(letters) ? 'other' : undefined;
}
