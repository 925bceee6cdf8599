import { frozen, type Remark } from '../numbers/index.js';

/* What was assumed of a base, in words. */

const note = (code: string, text: string): Remark => frozen({ code, text });

export const SOLVED_FOR_LIKELY: Remark = /* @__PURE__ */ note(
  'solved-for-likely-lots',
  'Solved for the likely lot of every fat and the likely assays; low and high of the composition tell what other lots make of the same weights.',
);
export const UNROUNDED: Remark = /* @__PURE__ */ note(
  'weights-are-unrounded',
  'The weights are not rounded. Round alkali down, never up, and work the composition through again.',
);
export const REMAINDER_FOLLOWS_FATS: Remark = /* @__PURE__ */ note(
  'remainder-follows-the-fats',
  'What fats, lye and additions bring beside the target (fat left by the superfat, unsaponifiable matter, carbonate, other amines) takes its share of the base: see remainder. It goes with the fats, so that less soap has less of it.',
);
export const GLYCEROL_AS_FORMED: Remark = /* @__PURE__ */ note(
  'glycerol-as-formed',
  'The target does not name glycerol: what the fats set free is part of the remainder.',
);
export const WATER_TO_ADD: Remark = /* @__PURE__ */ note(
  'water-to-add',
  'The water to weigh is what lye and additions do not bring; what is expected to evaporate is in it.',
);
