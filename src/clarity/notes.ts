import { frozen, type Remark } from '../numbers/index.js';

/*
 * What the published evidence can and cannot say, in words. Each is a constant or function of its own, so that a bundle
 * carries those it can say.
 */

const note = (code: string, text: string): Remark => frozen({ code, text });

/** Said of how many formulas stand behind a range. */
export function fewFormulas(clear: number, claimed: number, least: number): Remark {
  return note(
    'few-clear-formulas',
    `${String(clear)} clear formulas of this form stand behind the ranges, ${String(claimed)} of them claims of patents, many from one book. Fewer than ${String(least)} bear no verdict, a convention: to be like them is no proof of clarity, to be unlike them none against it.`,
  );
}

export const CLEAR_BY_WORD: Remark = /* @__PURE__ */ note(
  'clear-by-word-only',
  'No source measured clarity: clear is its word or its claim. Many of those not clear are controls judged so by inference, which makes the two sides look further apart than they are; so the two are counted apart.',
);
export const TYPICAL_OILS: Remark = /* @__PURE__ */ note(
  'typical-oils',
  'Palmitic and stearic acid of the published formulas are those of typical oils, recalled; the fats of their time may have differed.',
);
export const ALKALI_IS_NO_CLARITY: Remark = /* @__PURE__ */ note(
  'free-alkali-is-no-matter-of-clarity',
  'Free alkali is not compared here. Many clear formulas charge more alkali than the fats need, up to a quarter more: that is no reason to copy it. Judge free alkali by its limits.',
);
export const NOT_IN_PRINT: Remark = /* @__PURE__ */ note(
  'not-in-print',
  'Nothing published was found on cooling speed, salt, superfat, haze or sweating by themselves, and a clear melt proves nothing of the cold bar: make a trial and look at it cold.',
);
export const AS_CHARGED: Remark = /* @__PURE__ */ note(
  'compared-as-charged',
  'Published formulas are told as charged, so that the loss stated of this pot is not counted.',
);
export const SURFACTANT_NOT_SEEN: Remark = /* @__PURE__ */ note(
  'additions-by-name-not-looked-into',
  'What is added by name is not looked into: a base with surfactant is of another kind than is told here.',
);

/** Said where the fats do not tell their acids. */
export function withoutProfile(names: readonly string[]): Remark {
  return note(
    'no-fatty-acid-profile',
    `Palmitic and stearic acid are left out, because there is no fatty-acid profile of ${names.join(', ')}.`,
  );
}

/** Said where something is weighed in that has not been printed. */
export function notPublished(names: readonly string[]): Remark {
  return note('not-in-any-published-formula', `No complete published formula of this form holds ${names.join(', ')}.`);
}
