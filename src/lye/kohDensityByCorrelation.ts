import { ONE, type Decimal } from '../numbers/index.js';
import { kohCorrelation } from './data/lyeDensities.js';
import { waterDensityTo100 } from './waterDensityTo100.js';

/**
 * Density of potassium hydroxide lye by a correlation, g/mL: a function of the strength (percent by mass) for one
 * temperature (°C).
 *
 * Formula: `1/ρ = (1 − w)/ρ(water) + w/ρ(apparent)`, the apparent density by the constants beside the tables.
 *
 * Source: M. Laliberté, J. Chem. Eng. Data 54 (2009) 1725-1760.
 */
export function kohDensityByCorrelation(celsius: Decimal): (percent: Decimal) => Decimal {
  const { c0, c1, c2, c3, c4 } = kohCorrelation;
  const water = waterDensityTo100(celsius);
  const warmth = celsius.plus(c4).pow(2).div(1e6).exp();
  const shift = celsius.times(c3).plus(c2);
  return (percent) => {
    const share = percent.div(100);
    const apparent = share.times(c0).plus(c1).times(warmth).div(share.plus(shift)).div(1000);
    return ONE.div(ONE.minus(share).div(water).plus(share.div(apparent)));
  };
}
