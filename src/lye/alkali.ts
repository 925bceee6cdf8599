import { molarMass } from '../chemistry/index.js';
import type { Decimal } from '../numbers/index.js';

/** The caustic alkalis of soap making: sodium and potassium hydroxide. */
export type Alkali = 'naoh' | 'koh';

export const ALKALIS = ['naoh', 'koh'] as const;

/** Molar mass of the hydroxide, g/mol. */
export function hydroxideMolarMass(alkali: Alkali): Decimal {
  return molarMass(alkali === 'naoh' ? 'NaOH' : 'KOH');
}

/** Molar mass of the carbonate, g/mol. */
export function carbonateMolarMass(alkali: Alkali): Decimal {
  return molarMass(alkali === 'naoh' ? 'Na2CO3' : 'K2CO3');
}

/** Grams of hydroxide with the same alkali as one gram of carbonate: `2·M(hydroxide)/M(carbonate)`. */
export function hydroxidePerCarbonate(alkali: Alkali): Decimal {
  return hydroxideMolarMass(alkali).times(2).div(carbonateMolarMass(alkali));
}

/** Grams of hydroxide with the same alkali as one gram of oxide: `2·M(hydroxide)/M(oxide)`. */
export function hydroxidePerOxide(alkali: Alkali): Decimal {
  return hydroxideMolarMass(alkali)
    .times(2)
    .div(molarMass(alkali === 'naoh' ? 'Na2O' : 'K2O'));
}
