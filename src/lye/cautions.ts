import { frozen, type Remark } from '../numbers/index.js';

/** Codes of the cautions that lye and soap making call for. */
export type CautionCode = keyof typeof TEXTS;

/**
 * The always-on cautions, in our own words, most urgent first. They rest on published handling facts (classification
 * of sodium hydroxide as causing severe burns, read) and on textbook chemistry recalled; they replace no safety data
 * sheet.
 */
const TEXTS = {
  'caustic-burns':
    'Caustic burns skin and blinds eyes: goggles, gloves, sleeves, air. Rinse at once with much water and get medical help.',
  'solid-into-cold-water':
    'Solid alkali goes into cold water, a little at a time and stirred; never water onto the solid: it boils and spits.',
  'lye-into-hot-soap':
    'Lye poured into hot fat or soap can boil over: small portions, room in the pot, stir between them.',
  'free-fatty-acid-reacts-at-once':
    'Free fatty acid (stearic acid, rosin) takes up lye at once and gives off heat: melt it in the fats first, then add the lye slowly.',
  'carbonate-foams': 'Carbonate in the alkali foams with free fatty acid: leave room in the pot.',
  'free-caustic-possible':
    'With the leanest lawful lot and the strongest assay, free caustic is left in the finished batch. Test it before it touches skin.',
  'none-left-on-paper':
    'No lot leaves free caustic on paper, after complete reaction. Paper does not stir the pot: test before skin.',
  'stronger-than-dissolves':
    'Water at 20 °C dissolves sodium hydroxide to about 52 %; a stronger lye stays partly solid. Take more water.',
  'no-aluminium-zinc-tin':
    'No aluminium, zinc, tin or galvanised ware: lye dissolves it and gives off hydrogen, which burns.',
  'children-and-animals': 'Keep children and animals away from lye and from the hot pot.',
  'sums-not-a-certificate':
    'These are sums, not a certificate: follow the safety data sheet of the supplier, local codes and licensed practice.',
} as const;

/** What a result leads somebody to do. */
type Occasion = 'handling-alkali' | 'dissolving-solid';

const OCCASIONS: Readonly<Record<Occasion, readonly CautionCode[]>> = {
  'handling-alkali': ['caustic-burns', 'no-aluminium-zinc-tin', 'children-and-animals', 'sums-not-a-certificate'],
  'dissolving-solid': [
    'caustic-burns',
    'solid-into-cold-water',
    'no-aluminium-zinc-tin',
    'children-and-animals',
    'sums-not-a-certificate',
  ],
};

/** The cautions with these codes, most urgent first whatever the order asked. */
export function cautions(codes: readonly CautionCode[]): readonly Remark<CautionCode>[] {
  const asked: ReadonlySet<string> = new Set(codes);
  return frozen(
    (Object.keys(TEXTS) as CautionCode[])
      .filter((code) => asked.has(code))
      .map((code) => frozen({ code, text: TEXTS[code] })),
  );
}

/** The cautions of an occasion. */
export function cautionsFor(occasion: Occasion): readonly Remark<CautionCode>[] {
  return cautions(OCCASIONS[occasion]);
}
