import { frozen, type Remark } from '../numbers/index.js';

/*
 * What was assumed of a pot, in words. Each is a constant of its own, so that a bundle carries those it can say.
 */

const note = (code: string, text: string): Remark => frozen({ code, text });

export const REST_IS_WATER: Remark = /* @__PURE__ */ note(
  'rest-counts-as-water',
  'What a solvent, polyol or sugar holds beside its assay counts as water.',
);
export const REST_IS_OTHER: Remark = /* @__PURE__ */ note(
  'rest-of-amine-counts-as-other',
  'What triethanolamine holds beside its assay counts as other amines, under other.',
);
export const SPLIT_UNKNOWN: Remark = /* @__PURE__ */ note(
  'loss-split-unknown',
  'How much of the loss was spirit is not stated: low and high run from as little to as much as there can be; the middle is likely, a convention.',
);
export const SPIRITS_IN_PROPORTION: Remark = /* @__PURE__ */ note(
  'spirits-leave-in-proportion',
  'Two spirits are taken to leave in the proportion they are there, a convention.',
);
export const AMINE_AS_CHARGED: Remark = /* @__PURE__ */ note(
  'triethanolamine-as-charged',
  'Triethanolamine splits no fat and is counted as charged; with free fatty acid it makes soap, at most triethanolamineSoapAtMost.',
);
