import { frozen, type Remark } from '../numbers/index.js';

/** Said where bounds rest on the convention of 7 %. */
export const SPREAD_CONVENTION: Remark = /* @__PURE__ */ frozen({
  code: 'bounds-by-convention',
  text: 'No standard sets a range for this saponification value; lots are taken to lie within 7 % of it, a convention.',
});

/** Said where free acid is counted as none. */
export const NO_FREE_ACID: Remark = /* @__PURE__ */ frozen({
  code: 'acid-value-taken-as-zero',
  text: 'No acid value of the lot is given; free acid counts as none. That changes no lye amount, only the glycerol formed.',
});

/** Said where a certificate gives a value without its uncertainty. */
export const NO_UNCERTAINTY: Remark = /* @__PURE__ */ frozen({
  code: 'no-uncertainty-stated',
  text: 'The certificate states no uncertainty; its value is taken as exact. Repeats of the method differ by about 0.5 % (ISO 3657, 1988, recalled).',
});

/** Said where the published profile and the published range do not meet. */
export function disagreement(profileValue: string, low: string, high: string): Remark {
  return frozen({
    code: 'profile-and-range-disagree',
    text: `The likely profile gives ${profileValue} mg KOH/g, outside the published ${low} to ${high}; the nearer limit is taken as likely.`,
  });
}

/** Said where a published value is a middle because no profile is on file. */
export const MIDDLE_OF_RANGE: Remark = /* @__PURE__ */ frozen({
  code: 'middle-of-range',
  text: 'No fatty-acid profile is on file; the middle of the published range is taken as likely.',
});

/** Said where half the maximum unsaponifiable matter was taken off a profile's value. */
export const HALF_UNSAPONIFIABLE: Remark = /* @__PURE__ */ frozen({
  code: 'half-the-maximum-unsaponifiable',
  text: 'The likely value is that of the likely profile less half the maximum unsaponifiable matter, a convention.',
});

/** Said where an acid value is given of what is all acid. */
export const ALL_ACID: Remark = /* @__PURE__ */ frozen({
  code: 'acid-value-is-saponification-value',
  text: 'This kind is all acid: its acid value is its saponification value, and the acid value stated is not used.',
});

/** Said of an acid value that is the middle of its limits. */
export const MIDDLE_ACID_VALUE: Remark = /* @__PURE__ */ frozen({
  code: 'middle-of-acid-values',
  text: 'The acid value is a range; its middle is used.',
});
