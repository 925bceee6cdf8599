import { frozen, type Remark } from '../numbers/index.js';

/*
 * Cautions of the heat of the work, in our own words, beside those that always hold.
 */

const caution = (code: string, text: string): Remark => frozen({ code, text });

export const REACTION_CAN_RUN: Remark = /* @__PURE__ */ caution(
  'reaction-can-run',
  'Saponification can lag and then run: lye that has not reacted yet gives its heat later, all at once. Let the pot warm up and come down again before more goes in, keep cold water at hand to stand the pot in, and leave it room to rise.',
);
export const POT_MAY_BOIL: Remark = /* @__PURE__ */ caution(
  'pot-may-boil',
  'On paper this pot may pass the boiling point of water by its own heat: it foams up and over, caustic and all. Smaller portions of lye, a cooler start, a pot filled to a third.',
);
export const SPIRIT_MAY_BOIL: Remark = /* @__PURE__ */ caution(
  'spirit-may-boil',
  'The heat of the reaction may bring the spirit in this pot to the boil: its vapour burns. Let the fats react before any spirit goes in.',
);
