import { Decimal } from '../numbers/index.js';

/**
 * Density of air-free water in g/mL, for a temperature in °C, 0 to 40 °C.
 *
 * Formula: `ρ = a₅·(1 − (t + a₁)²·(t + a₂) / (a₃·(t + a₄)))`.
 *
 * Source: Tanaka et al., Metrologia 38 (2001) 301; coefficients recalled. Kell's polynomial (1975), read, agrees
 * within 0.003 kg/m³ at 4, 15 and 20 °C.
 */
export function waterDensity(celsius: Decimal | number): Decimal {
  const t = new Decimal(celsius);
  const bend = t.plus('-3.983035').pow(2).times(t.plus('301.797')).div(t.plus('69.34881').times('522528.9'));
  return new Decimal(1).minus(bend).times('0.999974950');
}
