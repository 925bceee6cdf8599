import { frozen, type Remark } from '../numbers/index.js';

/*
 * Cautions of testing soap and of mending it, in our own words, beside those that always hold: textbook knowledge
 * recalled. Each is a constant of its own, so that a bundle carries those it can say.
 */

const caution = (code: string, text: string): Remark => frozen({ code, text });

export const BARIUM_IS_POISON: Remark = /* @__PURE__ */ caution(
  'barium-chloride-poisonous',
  'Barium chloride is poisonous when swallowed: gloves, no food near it, and no drain for what is left.',
);
export const ACID_HURTS_EYES: Remark = /* @__PURE__ */ caution(
  'acid-hurts-eyes',
  'Acid hurts eyes and skin as well: goggles and gloves, and never acid onto strong lye.',
);
export const TOO_MUCH_ACID: Remark = /* @__PURE__ */ caution(
  'too-much-acid-splits-soap',
  'Acid beyond the free caustic splits the soap into fatty acid, which clouds and cannot be taken back: never the whole dose on one test.',
);
export const TEST_BEFORE_SKIN: Remark = /* @__PURE__ */ caution(
  'test-before-skin',
  'Test the finished soap, from more than one place of the batch, before it touches skin.',
);
export const ABOVE_THE_LIMIT: Remark = /* @__PURE__ */ caution(
  'free-caustic-above-limit',
  'This soap holds more free caustic than the limit: it does not belong on skin.',
);
export const NOT_SHOWN_BELOW: Remark = /* @__PURE__ */ caution(
  'free-caustic-not-shown-below',
  'It is not shown that this soap keeps the limit: nothing of it belongs on skin until it is.',
);
export const LARGE_DOSE: Remark = /* @__PURE__ */ caution(
  'large-dose',
  'So large a dose, over 3 % of the batch or leaving over 1 % of salts (conventions), dulls, thins and heats the base: try it on a weighed part first, or blend the batch off.',
);
export const HEAT_FIRST: Remark = /* @__PURE__ */ caution(
  'heat-before-correcting',
  'One titration cannot tell caustic that has not yet reacted from caustic in excess: heat, wait an hour, test again before anything is added.',
);
export const CAUSTIC_NOT_RULED_OUT: Remark = /* @__PURE__ */ caution(
  'caustic-not-ruled-out',
  'A reading above what soap shows may be free caustic: keep it off skin until a titration shows that it is none.',
);
export const LOW_PH_IS_NOT_SAFE: Remark = /* @__PURE__ */ caution(
  'low-ph-is-not-safe',
  'A low reading means free acid, detergent, triethanolamine or a bad strip; it never means that a soap is safe. Titrate.',
);
export const PH_IS_NO_ASSAY: Remark = /* @__PURE__ */ caution(
  'ph-is-no-assay',
  'At a dilution of 1 %, with the error of a strip, pH 9.5 to 10.5 cannot tell no free caustic from 0.05 %: pH finds gross faults, titration finds free caustic.',
);
