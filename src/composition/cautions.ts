import { frozen, type Remark } from '../numbers/index.js';

/*
 * Cautions of what goes into the pot beside fats and lye, in our own words. Flash points are in the solvents' records; that
 * sugars break down in hot lye is textbook chemistry recalled.
 */

const caution = (code: string, text: string): Remark => frozen({ code, text });

export const SPIRIT_CATCHES_FIRE: Remark = /* @__PURE__ */ caution(
  'spirit-catches-fire',
  'Spirit gives off vapour that catches fire from 12 °C on: no flame, spark or glowing plate in the room; a water bath, a lid, moving air; off the heat while it is stirred in.',
);
export const SUGAR_IN_HOT_LYE: Remark = /* @__PURE__ */ caution(
  'sugar-in-hot-lye',
  'Sugars brown in hot lye and give off carbon monoxide: add them when the alkali is used up, below 70 °C, with moving air.',
);
export const AMINE_HIDES_ALKALI: Remark = /* @__PURE__ */ caution(
  'amine-hides-alkali',
  'Triethanolamine is alkaline itself: neither a titration nor a pH reading can then tell that no caustic is left. Test before it is added.',
);
export const ALKALI_AMONG_ADDITIONS: Remark = /* @__PURE__ */ caution(
  'alkali-among-additions',
  'An addition goes by the name of an alkali. By its name it counts as none: superfat and free caustic are told without it. A hydroxide burns skin and belongs to the lye.',
);
export const ACID_INTO_HOT_SOAP: Remark = /* @__PURE__ */ caution(
  'acid-into-hot-soap',
  'Acid poured into hot soap boils, and foams where carbonate is: dissolve it, cool the soap as far as it stays fluid, small portions, room in the pot, stir between them.',
);
