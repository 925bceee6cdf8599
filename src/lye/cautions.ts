import { frozen, type Remark } from '../numbers/index.js';

/*
 * The always-on cautions, in our own words. They rest on published handling facts (classification of sodium hydroxide as
 * causing severe burns, read), on textbook chemistry recalled, and on the first-aid and handling text that safety data
 * sheets of caustic have in common, recalled; they replace no safety data sheet. The heat of a 33 % lye is what
 * `lyeTemperatureFromDissolving` gives: 104 °C; a test holds it. Each is a constant of its own, so that a bundle carries
 * those it can say.
 */

const caution = (code: string, text: string): Remark => frozen({ code, text });

export const PERCENT_LIKE_FRACTION: Remark = /* @__PURE__ */ caution(
  'percent-looks-like-fraction',
  'A strength, a share of KOH or a superfat was read as hardly any percent. If a fraction of one was meant: 50 % is { percent: 50 } or { fraction: 0.5 }, 5 % is { percent: 5 } or { fraction: 0.05 }. Weigh nothing until that is sure.',
);
const CAUSTIC_BURNS: Remark = /* @__PURE__ */ caution(
  'caustic-burns',
  'Caustic burns skin and blinds eyes: goggles, gloves, sleeves, ventilation. Rinse at once with plenty of running water for at least 15 minutes, contact lenses out, and get medical help.',
);
export const SOLID_INTO_COLD_WATER: Remark = /* @__PURE__ */ caution(
  'solid-into-cold-water',
  'Solid alkali goes into cold water, a little at a time and stirred; never water onto the solid: it boils and spits. It gets hot at once: all of it in at once, a 33 % lye from flakes of 98 % and water of 20 °C passes 100 °C. A vessel that bears that (polypropylene, HDPE or stainless steel; no glass, no thin plastic, never aluminium), and ventilation: the mist burns.',
);
export const LYE_INTO_HOT_SOAP: Remark = /* @__PURE__ */ caution(
  'lye-into-hot-soap',
  'Lye poured into hot fat or soap can boil over: small portions, room in the pot, stir between them.',
);
export const HOT_SOAP_SCALDS: Remark = /* @__PURE__ */ caution(
  'hot-soap-scalds',
  'Hot soap base clings and scalds: long sleeves, gloves that keep heat out, goggles; pour slowly, away from yourself, and cool a burn at once with running water.',
);
export const FREE_FATTY_ACID: Remark = /* @__PURE__ */ caution(
  'free-fatty-acid-reacts-at-once',
  'Free fatty acid (stearic acid, rosin) takes up lye at once and gives off heat: melt it in the fats first, then add the lye slowly.',
);
export const CARBONATE_FOAMS: Remark = /* @__PURE__ */ caution(
  'carbonate-foams',
  'Carbonate in the alkali foams with free fatty acid: leave room in the pot.',
);
export const FREE_CAUSTIC_CERTAIN: Remark = /* @__PURE__ */ caution(
  'free-caustic-certain',
  'Every lot and every assay leaves free caustic in the finished batch: this lye is too much. It burns skin; do not use it.',
);
export const FREE_CAUSTIC_LIKELY: Remark = /* @__PURE__ */ caution(
  'free-caustic-likely',
  'The likely lot leaves free caustic in the finished batch: this lye is too much. Nothing of it belongs on skin.',
);
export const FREE_CAUSTIC_POSSIBLE: Remark = /* @__PURE__ */ caution(
  'free-caustic-possible',
  'With the leanest lawful lot and the strongest assay, free caustic is left in the finished batch. Test it before it touches skin.',
);
export const NONE_LEFT_ON_PAPER: Remark = /* @__PURE__ */ caution(
  'none-left-on-paper',
  'Within the bounds given or assumed (see the notes) no lot leaves free caustic, if all is mixed and reacts to the end, which these sums assume. Test before skin.',
);
export const CONTRADICTED_CERTIFICATE: Remark = /* @__PURE__ */ caution(
  'certificate-contradicts-standard',
  'A certified figure lies outside every published range of its fat (see the notes): ask for it again before any lye is weighed.',
);
export const BEYOND_KNOWN_FATS: Remark = /* @__PURE__ */ caution(
  'certificate-beyond-known-fats',
  'No published fat of its kind has such a saponification value as one that was certified (see the notes): check figure, unit and basis before any lye is weighed.',
);
export const STRONGER_THAN_DISSOLVES: Remark = /* @__PURE__ */ caution(
  'stronger-than-dissolves',
  'Water at 20 °C dissolves sodium hydroxide to about 52 %, potassium hydroxide to about 53 %; a stronger lye stays partly solid. Take more water.',
);
const NO_ALUMINIUM: Remark = /* @__PURE__ */ caution(
  'no-aluminium-zinc-tin',
  'No aluminium, zinc, tin or galvanised ware: lye dissolves it and gives off hydrogen, which burns.',
);
const CHILDREN_AND_ANIMALS: Remark = /* @__PURE__ */ caution(
  'children-and-animals',
  'Keep children and animals away from lye and from the hot pot.',
);
const NOT_A_CERTIFICATE: Remark = /* @__PURE__ */ caution(
  'sums-not-a-certificate',
  'These are sums, not a certificate: follow the safety data sheet of the supplier, local codes and licensed practice.',
);

/** The cautions of weighing and handling alkali, most urgent first; those of the occasion stand behind the first. */
export function alkaliCautions(...ofTheOccasion: readonly Remark[]): readonly Remark[] {
  return frozen([CAUSTIC_BURNS, ...ofTheOccasion, NO_ALUMINIUM, CHILDREN_AND_ANIMALS, NOT_A_CERTIFICATE]);
}
