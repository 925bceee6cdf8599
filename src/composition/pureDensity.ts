import { waterDensityTo100 } from '../lye/index.js';
import { Decimal, knotsFrom, monotoneCubic } from '../numbers/index.js';
import type { SourceId } from '../sources/index.js';
import type { SolventId } from './data/solventNames.js';
import { solventData, type DensityData } from './data/solvents.js';

/** Density of one pure substance by temperature. */
export interface PureDensity {
  /** °C. */
  readonly coldest: Decimal;
  readonly hottest: Decimal;
  /** g/mL, between the coldest and the hottest. */
  readonly at: (celsius: Decimal) => Decimal;
  readonly basis: readonly SourceId[];
}

/**
 * The density of a solvent by temperature: the measured figure, moved by what a correlation changes between the two
 * temperatures. Without a correlation it holds at the temperature of the measurement alone.
 */
export function pureDensity(solvent: SolventId): PureDensity {
  if (solvent === 'water') {
    return { coldest: new Decimal(0), hottest: new Decimal(100), at: waterDensityTo100, basis: ['kell-1975'] };
  }
  return fromData(solventData()[solvent].density);
}

function fromData({ measured: [celsius, gPerML, source], byTemperature }: DensityData): PureDensity {
  const [there, density] = [new Decimal(celsius), new Decimal(gPerML)];
  if (byTemperature === undefined) return { coldest: there, hottest: there, at: () => density, basis: [source] };
  const [temperatures, densities, correlation] = byTemperature;
  const knots = knotsFrom(temperatures.split(' '), densities.split(' '));
  const { at } = monotoneCubic(knots);
  const shift = density.minus(at(there));
  return {
    coldest: knots.reduce((least, { x }) => Decimal.min(least, x), there),
    hottest: knots.reduce((most, { x }) => Decimal.max(most, x), there),
    at: (wanted) => at(wanted).plus(shift),
    basis: source === correlation ? [source] : [source, correlation],
  };
}
