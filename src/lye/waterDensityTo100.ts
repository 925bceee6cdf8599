import { Decimal } from '../numbers/index.js';

/** Constants of the numerator from the power 0 to 5, and of the denominator; g/mL. */
const NUMERATOR = ['0.99983952', '16.945176e-3', '-7.9870401e-6', '-46.170461e-9', '105.56302e-12', '-280.54253e-15'];
const DENOMINATOR = '16.879850e-3';

/**
 * Density of water in g/mL, for a temperature in °C, 0 to 100 °C: the row of 0 % in the tables of lyes.
 *
 * Formula: a polynomial of the fifth power over `1 + 0.01687985·t`. `waterDensity` of the quantities, for the reference
 * temperatures of hydrometers, agrees within 0.000003 g/mL but ends at 40 °C.
 *
 * Source: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97-105; constants read in a restatement.
 */
export function waterDensityTo100(celsius: Decimal): Decimal {
  const polynomial = NUMERATOR.reduceRight((sum, factor) => sum.times(celsius).plus(factor), new Decimal(0));
  return polynomial.div(celsius.times(DENOMINATOR).plus(1));
}
