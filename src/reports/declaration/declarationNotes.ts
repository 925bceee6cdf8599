import { frozen, type Remark } from '../../numbers/index.js';

const note = (code: string, text: string): Remark => frozen({ code, text });

export const RULES_OF_THE_PLACE: Remark = /* @__PURE__ */ note(
  'rules-of-the-place-of-sale',
  'Which names, which order and what else a label must say is set by the rules of the place of sale; they come before this list. Descending by mass, below 1 % in any order and colourants last is what such rules commonly ask, recalled.',
);
export const NAMES_RECALLED: Remark = /* @__PURE__ */ note(
  'names-recalled',
  "All ingredient names here but the caller's are recalled, none was read: check each in the list that binds before it is printed.",
);
export const NAMES_UNKNOWN: Remark = /* @__PURE__ */ note(
  'names-unknown',
  'Where no ingredient name is known the name of the trade stands in its place, marked; the list cannot be printed like that.',
);
export const WATER_THAT_IS_THERE: Remark = /* @__PURE__ */ note(
  'water-that-is-there',
  'Shares are those of the batch as planned, after what evaporates; a bar that goes on drying loses water, and its order may change.',
);
export const LEFT_OUT: Remark = /* @__PURE__ */ note(
  'no-ingredients-of-their-own',
  'Unsaponifiable matter, moisture of the fats and what alkali and amines hold beside their assay are no ingredients of their own: where they are not in a fat as charged they are left out, and the shares are of what is declared.',
);
export const AFTER_COMPLETE_REACTION: Remark = /* @__PURE__ */ note(
  'after-complete-reaction',
  'Soaps are those of complete reaction, every fat split to one extent, a model; what superfat leaves stands under the name of its fat.',
);
export const AMINE_SOAP: Remark = /* @__PURE__ */ note(
  'amine-as-charged',
  'Triethanolamine stands as charged; soap that it makes of free acid is not told apart.',
);
export const SCENT_HAS_INGREDIENTS: Remark = /* @__PURE__ */ note(
  'named-as-in-the-recipe',
  'What is added by a name of its own, as scent, may have to be declared by what it holds: its supplier knows.',
);

/** Two neighbours of a list whose order a lot may turn round. */
export function closeInOrder(first: string, second: string): Remark {
  return note('order-may-change', `${first} and ${second} are so close that lots could turn their order round.`);
}
