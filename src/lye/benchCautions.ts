import { frozen, type Remark } from '../numbers/index.js';

/*
 * Cautions of the lye bench, in our own words, beside those that always hold. Each is a constant of its own, so that a
 * bundle carries those it can say.
 */

const caution = (code: string, text: string): Remark => frozen({ code, text });

export const LYE_WOULD_BOIL: Remark = /* @__PURE__ */ caution(
  'lye-would-boil',
  'On paper this lye passes its boiling point, or may: mixed at once it boils up and throws caustic. Small portions into cold water, cooled between them.',
);
export const PELLETS_BOIL_LOCALLY: Remark = /* @__PURE__ */ caution(
  'pellets-boil-locally',
  'From 80 °C on, solid alkali boils the water around it long before the mixed lye would: cold water, small portions, time to cool between them.',
);
export const DILUTING_WARMS: Remark = /* @__PURE__ */ caution(
  'diluting-warms',
  'Diluting a strong lye warms it: lye into water, stirred, and measure it again when it has cooled.',
);
export const CRYSTALLISED_STOCK: Remark = /* @__PURE__ */ caution(
  'crystallised-stock',
  'Lye of this strength can freeze in a cold store. A stock that has thrown crystals is of unknown strength: warm it until all is dissolved, mix, measure again.',
);
export const CRYSTALS_MAKE_UNKNOWN: Remark = /* @__PURE__ */ caution(
  'crystallised-stock',
  'A lye that has thrown crystals is of unknown strength: warm it until all is dissolved, mix, measure again.',
);
export const READS_ALL_SALTS: Remark = /* @__PURE__ */ caution(
  'reads-all-salts',
  'A hydrometer reads carbonate and salt as alkali: an old or impure lye is weaker than its density says. Titrate where it matters.',
);
