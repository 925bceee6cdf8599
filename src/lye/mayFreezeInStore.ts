import type { Decimal } from '../numbers/index.js';
import type { Alkali } from './alkali.js';

/**
 * Strengths from which a lye may throw crystals in a store room at 5 °C, percent by mass. NaOH: the upper bound of its
 * freezing curve passes 5 °C just above 31 % and stays over it to the end; beyond nothing is known. KOH: liquid to 45 %,
 * unknown from there to 50 %, which freezes at 7 °C. A test holds both against the curves.
 */
const FREEZES_FROM = { naoh: 31, koh: 45 } as const;

/** Whether a lye of this strength (percent by mass) may throw crystals in a cold store room, so far as is known. */
export function mayFreezeInStore(alkali: Alkali, percent: Decimal): boolean {
  return percent.gt(FREEZES_FROM[alkali]);
}
