import { Decimal } from '../numbers/index.js';
import type { Alkali } from './alkali.js';

/** Where a hydroxide stops dissolving in water at 20 °C, percent by mass: 109 g of NaOH, 112 g of KOH to 100 g, recalled. */
const DISSOLVES_TO: Readonly<Record<Alkali, string>> = { naoh: '52.2', koh: '52.8' };

/**
 * The strength above which a lye stays partly solid at 20 °C, percent of hydroxide by mass. Of soda and potash together no
 * figure is on file: their sum counts against the lower of the two limits, a convention that errs towards more water,
 * because each keeps the other out of solution. Undefined where there is no alkali.
 */
export function dissolvesTo(alkalis: readonly [Alkali, ...Alkali[]]): Decimal;
export function dissolvesTo(alkalis: readonly Alkali[]): Decimal | undefined;
export function dissolvesTo(alkalis: readonly Alkali[]): Decimal | undefined {
  return alkalis.length === 0 ? undefined : Decimal.min(...alkalis.map((alkali) => DISSOLVES_TO[alkali]));
}
