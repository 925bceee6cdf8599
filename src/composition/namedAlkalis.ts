import type { Alkali } from '../lye/index.js';

/*
 * What alkalis are called in the trade, in English, German, French, Spanish, Italian, Portuguese and Dutch: common practice,
 * no source. Words without accents and capitals, as `plainWords` gives them. Hydroxides first: their names hold those of the
 * others.
 */

/** Potassium hydroxide. */
const POTASH =
  /\b(?:koh|potassium hydroxide|caustic potash|kaliumhydroxide?|(?:a|ae)tzkali|kalilauge|(?:hydroxyde de|hidroxido de|idrossido di) potas(?:s?io|sium)|hidroxido potass?ico|(?:potasse|potasa|potassa) (?:caustique|caustica)|lessive de potasse|lejia de potasa|lixivia de potassa|liscivia di potassa|kaliloog|(?:bijtende|caustische) potas)\b/;

/** Sodium hydroxide, and lye of which no more is said. */
const SODA =
  /\b(?:naoh|sodium hydroxide|caustic soda|lye|natriumhydroxide?|(?:a|ae)tznatron|natronlauge|seifenstein|laugenstein|(?:hydroxyde de|hidroxido de|idrossido di) sodi(?:o|um)|hidroxido sodico|(?:soude|sosa|soda) (?:caustique|caustica)|lessive de soude|lejia de (?:sosa|soda)|lixivia de soda|liscivia di soda|natronloog|(?:bijtende|caustische) soda)\b/;

/** Carbonates, silicates, lime, borax and ammonia; and words that may mean a hydroxide or not. */
const WEAKER_WORDS = [
    'potash', 'pearl ?ash(?:es)?', 'wood ash(?:es)?', 'soda ash', 'washing soda', 'sal soda', 'soda crystals?', '(?:sodium|potassium|ammonium) carbonate',
    '(?:sodium|potassium) (?:meta)?silicate', 'water ?glass', '(?:hydrated|slaked|quick|burnt) ?lime', 'lime ?water', 'milk of lime', 'calcium (?:hydr)?oxide',
    'borax', 'sodium (?:tetra)?borate', 'ammonia', 'ammonium hydroxide',
    'pottasche', '(?:wasch|kristall)soda', '(?:natrium|kalium)(?:c|k)arbonat', '(?:natron|kali)?wasserglas', '(?:natrium|kalium)silikat', 'loschkalk', 'loeschkalk', 'kalk(?:hydrat|milch)',
    '(?:a|ae)tzkalk', 'branntkalk', 'calciumhydroxide?', 'ammoniak', 'salmiak(?:geist)?', 'lauge',
    'potasse', 'soude', '(?:carbonate|silicate) de (?:sodium|soude|potassium|potasse)', 'verre soluble', 'chaux', 'ammoniaque',
    'potasa', 'sosa', '(?:carbonato|silicato) d[ei] (?:sodio|sosa|soda|potas?sio|potas?sa)', 'vidrio (?:soluble|liquido)', 'cal (?:apagada|viva|hidratada|extinta)', 'amoniaco', 'lejia', 'barrilh?l?a',
    'potassa', 'soda solvay', 'vetro solubile', 'calce', 'ammoniaca', 'borace', 'liscivia', 'vidro (?:soluvel|liquido)', 'amonia', 'lixivia',
    'potas', 'kristalsoda', '(?:natrium|kalium)carbonaat', 'waterglas', '(?:natrium|kalium)silicaat', '(?:on)?gebluste kalk', 'loog',
] as const; // prettier-ignore
let made: RegExp | undefined;
const weaker = (): RegExp => (made ??= new RegExp(`\\b(?:${WEAKER_WORDS.join('|')})\\b`));

/** What holds such a word and is no alkali: soaps, alum, and what is sold as free of it. */
const NO_ALKALI =
  /\b(?:(?:naoh|koh|lye|ammonia|borax|caustic soda) free|(?:potash|soft) soap|potash alum|savon de (?:soude|potasse)|bicarbonate de (?:soude|potasse))\b/g;

/** A name in small letters without accents, its words apart. */
export const plainWords = (name: string): string =>
  name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z]+/g, ' ')
    .trim();

/** An alkali that something goes by the name of: a hydroxide, or one that is weaker or of unknown strength. */
export type NamedAlkali = Alkali | 'other';

/** The alkali that something goes by the name of, if it does. */
export function namedAlkali(name: string): NamedAlkali | undefined {
  const words = plainWords(name).replaceAll(NO_ALKALI, ' ');
  if (POTASH.test(words)) return 'koh';
  if (SODA.test(words)) return 'naoh';
  return words === 'soda' || weaker().test(words) ? 'other' : undefined;
}

/** Whether something goes by the name of an alkali, which has its place in the lye. */
export const isNamedAlkali = (name: string): boolean => namedAlkali(name) !== undefined;
