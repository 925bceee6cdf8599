import { frozen, type Remark } from '../numbers/index.js';

/*
 * What a test of soap cannot tell once triethanolamine is in it, in words. Its pKa of 7.8 is textbook knowledge recalled.
 */

const note = (code: string, text: string): Remark => frozen({ code, text });

export const AMINE_READS_AS_ALKALI: Remark = /* @__PURE__ */ note(
  'triethanolamine-reads-as-alkali',
  'Triethanolamine is alkaline itself: neither a titration nor a pH tells it from caustic. Test before it is added.',
);
export const AMINE_READS_AS_ACID: Remark = /* @__PURE__ */ note(
  'triethanolamine-reads-as-acid',
  'Triethanolamine lets go of its acid before the colour turns, and takes up acid in a titration back: what is free is not told. Test before it is added.',
);
