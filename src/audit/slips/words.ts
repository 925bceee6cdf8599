import { signOf } from '../figures.js';
import type { SlipCode } from './slip.js';

/** What is said of a slip, and what would tell it from others that give the same figure. */
interface Said {
  readonly explanation: string;
  readonly tell: string;
  /** The sentence on the figure that the slip gives, where it is another than that it gives it. */
  readonly gives?: (figure: string) => string;
}

type Words = Readonly<Record<string, string>>;

const of = ({ fat }: Words): string => (fat === undefined ? '' : `${fat}: `);
const VALUE_TABLE = 'Ask which table of saponification values was used, and for which alkali it gives them.';
const ASK_SUPERFAT = 'Ask how the superfat was taken off the lye.';
const WEIGH_LYE = 'Ask what stood on the scale: the solid, or a lye, and of what strength.';
const ASK_LABEL = 'Read the label or certificate of the alkali again.';

/** Every slip in a maker's words. A bundle carries all of them: they are the point of an audit. */
const SAID: Readonly<Record<SlipCode, (words: Words) => Said>> = {
  'claimed-values-used': ({ fat = 'a fat' }) => ({
    explanation: `The lye follows from the saponification values that the recipe prints, and what it prints for ${fat} lies outside the published range.`,
    tell: 'Look the printed values up again.',
  }),
  'koh-value-as-naoh': (words) => ({
    explanation: `${of(words)}A value for KOH seems to have been used for NaOH, which is 1.403 times too much.`,
    tell: VALUE_TABLE,
  }),
  'naoh-value-as-koh': (words) => ({
    explanation: `${of(words)}A value for NaOH seems to have been used for KOH, or a value was turned from KOH to NaOH twice: 0.713 times what it should be.`,
    tell: VALUE_TABLE,
  }),
  'equivalent-as-value': (words) => ({
    explanation: `${of(words)}A saponification equivalent (grams of fat to a mole of alkali) seems to stand for the value, or the reverse.`,
    tell: VALUE_TABLE,
  }),
  'value-per-fatty-acids': (words) => ({
    explanation: `${of(words)}A value per gram of fatty acids seems to have been used for the fat: 4 to 6 % too much.`,
    tell: 'Ask whether the value is of the fat or of its acids.',
  }),
  'saponification-plus-acid-value': (words) => ({
    explanation: `${of(words)}The acid value seems to have been added to the saponification value, which holds it already.`,
    tell: 'Read the certificate again: acid value, ester value, saponification value.',
  }),
  'ester-value-as-saponification-value': (words) => ({
    explanation: `${of(words)}The ester value seems to stand for the saponification value: the free acid is left out.`,
    tell: 'Read the certificate again: acid value, ester value, saponification value.',
  }),
  'value-of-another-fat': ({ fat = 'a fat', other = 'another' }) => ({
    explanation: `The value of ${other} seems to have been taken for ${fat}.`,
    tell: 'Ask which fat it is, and look its value up again.',
  }),
  'neighbouring-fat-value': ({ fat = 'a fat', other = 'another' }) => ({
    explanation: `The value of ${other} seems to have been taken for ${fat}, its neighbour in a list.`,
    tell: 'Look the value up again, with a ruler under the row.',
  }),
  'fat-left-out': ({ fat = 'a fat' }) => ({
    explanation: `${fat} seems to have been left out of the sum.`,
    tell: 'Add up the alkali of each fat again.',
  }),
  'rows-swapped': ({ fat = 'one fat', other = 'another' }) => ({
    explanation: `${fat} and ${other} seem to have changed places.`,
    tell: 'Ask which mass belongs to which fat.',
  }),
  'superfat-left-out': () => ({
    explanation: 'The lye seems to be for all of the fat: no superfat was taken off.',
    tell: ASK_SUPERFAT,
  }),
  'superfat-added': () => ({
    explanation: 'The superfat seems to have been added to the lye instead of taken off.',
    tell: ASK_SUPERFAT,
  }),
  'superfat-as-divisor': () => ({
    explanation: 'The lye seems to have been divided by one plus the superfat instead of reduced by it.',
    tell: ASK_SUPERFAT,
  }),
  'superfat-twice': () => ({
    explanation: 'The superfat seems to have been taken off twice, as of a value that was reduced already.',
    tell: ASK_SUPERFAT,
  }),
  'superfat-percent-as-fraction': () => ({
    explanation: 'The superfat seems to have been entered as a fraction of a per cent: next to none was taken off.',
    tell: ASK_SUPERFAT,
  }),
  'superfat-fraction-as-percent': () => ({
    explanation: 'The superfat seems to be printed as a fraction of one, under the sign of per cent.',
    tell: ASK_SUPERFAT,
  }),
  'claimed-strength-used': () => ({
    explanation:
      'The lye seems to be reckoned with the strength that is claimed, which is not that of the lye as it stands there.',
    tell: 'Ask which of the two strengths the lye has, or measure it.',
  }),
  'solution-as-solid': ({ strength }) => ({
    explanation: `The mass of a lye${strength === undefined ? '' : ` of ${strength} %`} seems to be printed as that of the solid alkali.`,
    tell: WEIGH_LYE,
  }),
  'solid-as-solution': () => ({
    explanation: 'The mass of the pure solid seems to be printed as that of the lye.',
    tell: WEIGH_LYE,
  }),
  'assay-ignored': () => ({
    explanation: 'The alkali seems to have been reckoned as pure: its assay was not used.',
    tell: ASK_LABEL,
  }),
  'assay-twice': () => ({ explanation: 'The assay of the alkali seems to have been applied twice.', tell: ASK_LABEL }),
  'assay-upside-down': () => ({
    explanation: 'The lye seems to have been multiplied by the assay instead of divided by it.',
    tell: ASK_LABEL,
  }),
  'oxide-percent-as-hydroxide': () => ({
    explanation: 'The lye seems to be for an alkali whose per cent are of the oxide (Na2O, K2O), not of the hydroxide.',
    tell: 'Ask what the per cent of the alkali are of.',
  }),
  'hydroxide-percent-as-oxide': () => ({
    explanation: 'Per cent of hydroxide seem to have been taken for per cent of the oxide (Na2O, K2O).',
    tell: 'Ask what the per cent of the alkali are of.',
  }),
  'carbonate-counted': () => ({
    explanation: 'The carbonate in the alkali seems to have been counted as caustic.',
    tell: ASK_LABEL,
  }),
  'mole-share-as-mass-share': () => ({
    explanation: 'The share of KOH seems to be one by mass of alkali, not by mole of hydroxide.',
    tell: 'Ask what the share is of: grams of alkali, or moles of hydroxide.',
  }),
  'weight-by-volume-as-by-weight': ({ of: what = 'the lye' }) => ({
    explanation: `The figure seems to be grams in 100 mL of ${what}, not in 100 g.`,
    tell: `Ask how the figure was taken, or weigh 100 mL of ${what}.`,
  }),
  'percent-by-volume-as-by-mass': () => ({
    explanation: 'Per cent by volume of the spirit seem to have been taken for per cent by mass.',
    tell: 'Ask what the per cent of the spirit are of.',
  }),
  'syrup-as-dry': () => ({
    explanation: 'The water in syrups and solutions seems to have been counted as what is dissolved in it.',
    tell: 'Read on the label how much of it is dry substance.',
  }),
  'dry-as-syrup': ({ strength }) => ({
    explanation:
      strength === undefined
        ? 'Only the substance itself seems to have been counted, not the water that it is sold with.'
        : `A dry sugar or polyol seems to have been counted as a syrup of ${strength} %.`,
    tell: 'Ask whether a dry substance or a syrup was weighed.',
  }),
  'fahrenheit-as-celsius': ({ meant = '', is = '' }) => ({
    explanation: `Degrees Fahrenheit seem to be printed as degrees Celsius: ${meant} °F, which is ${is} °C, was meant.`,
    tell: 'Look at the scale of the thermometer.',
    gives: said,
  }),
  'celsius-as-fahrenheit': ({ meant = '', is = '' }) => ({
    explanation: `Degrees Celsius seem to be printed as degrees Fahrenheit: ${meant} °C, which is ${is} °F, was meant.`,
    tell: 'Look at the scale of the thermometer.',
    gives: said,
  }),
  'parts-per-100-of-water-as-percent': () => ({
    explanation: 'The strength seems to be grams of alkali to 100 g of water, not in 100 g of lye.',
    tell: 'Ask whether the per cent are of the water or of the lye.',
  }),
  'water-and-alkali-inverted': () => ({
    explanation: 'Water and alkali seem to have changed places.',
    tell: 'Ask which of the two figures is the water.',
  }),
  'strength-as-water-per-fat': () => ({
    explanation:
      'One percentage seems to stand for another: the strength of the lye, and its water as a share of the fats.',
    tell: 'Ask what the per cent are of: the lye, or the fats.',
  }),
  'baume-degrees-as-percent': () => ({
    explanation: 'The strength seems to be the degrees of a Baumé hydrometer.',
    tell: 'Ask whether the figure was read on a hydrometer.',
  }),
  'baume-modulus-mistaken': () => ({
    explanation: 'The strength seems to be read from the degrees of another Baumé scale.',
    tell: 'Ask for the modulus and the temperature of the hydrometer.',
  }),
  'percent-of-another-total': ({ of: total = 'another total' }) => ({
    explanation: `The figure seems to be that of ${total}.`,
    tell: 'Ask what the figure is of.',
  }),
  'part-left-out-of-total': ({ part = 'a part' }) => ({
    explanation: `The total seems to leave out ${part}.`,
    tell: 'Add the masses up again.',
  }),
  'unit-mistaken': ({ printed = 'one', meant = 'another', of: what = 'a mass' }) => ({
    explanation: `The figure for ${what} seems to be in ${UNIT_NAMES[meant] ?? meant}, not in ${UNIT_NAMES[printed] ?? printed}.`,
    tell: `Ask in which unit ${what === 'the lye' ? 'the lye' : 'it'} was weighed, or weigh it again.`,
    ...(what === 'the lye' ? { gives: inMeantUnit(printed, meant) } : {}),
  }),
  'digits-exchanged': ({ meant = '', unit = '', of: what }) => ({
    explanation: `Two digits seem to have changed places: ${meant} ${signOf(unit)}${ofWhat(what)} was meant.`,
    tell: 'Compare the figure with the notes it was copied from.',
  }),
  'decimal-point-moved': ({ meant = '', unit = '', of: what }) => ({
    explanation: `The decimal point seems to have moved: ${meant} ${signOf(unit)}${ofWhat(what)} was meant.`,
    tell: 'Compare the figure with the notes it was copied from.',
  }),
};

const ofWhat = (what: string | undefined): string => (what === undefined ? '' : ` of ${what}`);

/** The explanation has told the figure already. */
const said = (): string => '';

/** The same figure fits in the unit that was meant, and that is what the maker has to hear. */
function inMeantUnit(printed: string, meant: string): (figure: string) => string {
  const sign = ` ${printed}`;
  return (figure) =>
    figure.endsWith(sign)
      ? `In ${UNIT_NAMES[meant] ?? meant} the figure fits: ${figure.slice(0, -sign.length)} ${meant} would be right there.`
      : gives(figure);
}

const gives = (figure: string): string => `That gives ${figure}.`;

const UNIT_NAMES: Words = {
  mg: 'milligrams',
  g: 'grams',
  kg: 'kilograms',
  oz: 'ounces',
  lb: 'pounds',
  mL: 'millilitres',
  L: 'litres',
  usFlOz: 'US fluid ounces',
  impFlOz: 'imperial fluid ounces',
  usGal: 'US gallons',
  impGal: 'imperial gallons',
};

/** A slip in words. */
export function wordsOf(code: SlipCode, words: Words): Said {
  return SAID[code](words);
}
