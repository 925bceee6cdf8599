import { lettersOf } from '../fats/index.js';

/** What caustic is called, as words of a name. */
const CAUSTIC = /\b(?:(?:sodium|potassium) hydroxide|caustic (?:soda|potash)|naoh|koh|lye)\b/;

/** What spirit is called, and what is sold dissolved in it. */
const SPIRIT =
  /\b(?:alcohols?|spirits?|(?:m?eth|prop|isoprop)anol|isopropyl|ipa|ims|meths|methylated|vodka|gin|rum|brandy|tinctures?)\b/;

/** What is called so and is none: solids of long chains, sugar alcohols, vinegar. */
const NO_SPIRIT =
  /\b(?:alcohol free|spirit vinegar|(?:fatty|sugar|wool|wax|lanolin|polyvinyl|benzyl|cetyl|cetearyl|cetostearyl|stearyl|behenyl|lauryl|myristyl|oleyl) alcohols?)\b/g;

const wordsOf = (name: string): string => name.toLowerCase().replaceAll(/[^a-z]+/g, ' ');

/** Whether something goes by the name of a caustic alkali, which has its place in the lye. */
export const isNamedAlkali = (name: string): boolean => CAUSTIC.test(wordsOf(name));

/** Whether something goes by the name of a spirit: by its name nothing tells how much, but it burns all the same. */
export const isNamedSpirit = (name: string): boolean => SPIRIT.test(wordsOf(name).replaceAll(NO_SPIRIT, ' '));

/** An acid that something goes by the name of; `other` is one whose mass does not tell what it takes up of the lye. */
export type NamedAcid = 'citric' | 'lactic' | 'other';

/** The acid that something goes by the name of, if it does. */
export function namedAcid(name: string): NamedAcid | undefined {
  const letters = lettersOf(name);
  if (letters.includes('citricacid')) return 'citric';
  if (letters.includes('lacticacid')) return 'lactic';
  return letters.includes('acid') || letters.includes('vinegar') ? 'other' : undefined;
}
