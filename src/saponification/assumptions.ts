import type { Fat, FatCharge } from '../fats/index.js';
import type { LyeCharge } from '../lye/index.js';
import { frozen, type Remark } from '../numbers/index.js';
import type { Mass } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';

/* What a result says of the fats and alkalis it was worked out from. */

/** A fat and its mass, in a result. */
export interface ChargedFat {
  readonly fat: Fat;
  readonly mass: Mass;
}

/** Fats as they stand in `given`. */
export function givenFats(charges: readonly FatCharge[]): readonly ChargedFat[] {
  return frozen(charges.map(({ fat, grams }) => frozen({ fat, mass: frozen({ g: grams }) })));
}

/** The publications behind the fats of a charge, each once. */
export function basisOfFats(charges: readonly FatCharge[]): readonly SourceId[] {
  const basis = new Set<SourceId>(['iupac-2021']);
  for (const { fat } of charges) for (const id of fat.basis) basis.add(id);
  return [...basis];
}

const STRENGTH_AS_EXACT: Remark = /* @__PURE__ */ frozen({
  code: 'strength-taken-as-exact',
  text: 'A single figure for the strength or assay of an alkali is taken as exact. Give what it may be as a range, and superfat and free caustic follow.',
});

/** What was assumed of each alkali. */
export function notesOfLye(lye: readonly LyeCharge[]): readonly Remark[] {
  return lye.some(({ source: { hydroxide } }) => hydroxide.low.eq(hydroxide.high)) ? [STRENGTH_AS_EXACT] : [];
}
