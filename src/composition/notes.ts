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
export const ACID_NOT_COUNTED: Remark = /* @__PURE__ */ note(
  'acid-not-counted',
  'An addition goes by the name of an acid. What it takes up of the lye is not counted: with it more fat is left than is told here. A fatty acid belongs among the fats.',
);
export const SOAP_DENSITY_CONVENTION: Remark = /* @__PURE__ */ note(
  'density-of-soap-is-a-convention',
  'No published density of anhydrous soap was found: 1.00 to 1.10 g/mL is taken, of potassium soap 1.02 to 1.12, and plain figures for fat, acid and salts.',
);
export const IDEAL_MIXING: Remark = /* @__PURE__ */ note(
  'ideal-mixing',
  'Volumes are added up as if nothing shrank on mixing; low is 3.7 % less of water and solvents, what ethanol and water lose. Air that is stirred in is not counted.',
);
export const SPIRIT_BOILS: Remark = /* @__PURE__ */ note(
  'spirit-boils',
  'At this temperature spirit by itself boils: it leaves the pot as vapour, which burns, and what is poured is less than this. Pour cooler.',
);
export const DENSITY_OF_ANOTHER_TEMPERATURE: Remark = /* @__PURE__ */ note(
  'density-of-another-temperature',
  'What has no density on file at this temperature counts with that of the nearest; liquids swell by about 1 % for 13 °C.',
);
