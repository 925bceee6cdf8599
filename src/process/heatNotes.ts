import { frozen, type Remark } from '../numbers/index.js';

const note = (code: string, text: string): Remark => frozen({ code, text });

export const NO_MEASURED_HEAT: Remark = /* @__PURE__ */ note(
  'no-measured-heat',
  'No measured heat of saponification of a fat is on file. Likely is that of ethyl acetate, low that of glycerol triacetate, both from enthalpies of formation; high is a technical figure, recalled, of a fat that is not named, and free acid is given the same.',
);
export const ALL_AT_ONCE: Remark = /* @__PURE__ */ note(
  'all-at-once',
  'All of it reacted at once and none of its heat lost to pot, air or steam: a real pot stays cooler, a small or slow one much. Fat that is still solid takes up heat to melt, which is not counted.',
);
export const DILUTION_NOT_APART: Remark = /* @__PURE__ */ note(
  'heat-of-dilution-not-apart',
  'The heat that strong lye gives out when it is diluted is not counted apart. From 42.5 % of NaOH to no end of water it is 14 kJ/mol, from 50 % more: the high end leaves room for it, the likely figure does not.',
);
export const NOTHING_MELTS: Remark = /* @__PURE__ */ note(
  'nothing-melts-or-boils',
  'What melts, dissolves or evaporates on the way takes up heat besides: solid fatty acids some 180 to 215 kJ to the kilogram. Losses of the pot are not counted.',
);
export const HEAT_CAPACITIES_ASIDE: Remark = /* @__PURE__ */ note(
  'heat-capacities-near-use',
  'Heat capacities are those on file between 25 and 60 °C; sorbitol and sugars count as dry solids beside their water, and salts and what has no figure as solid caustic soda.',
);
