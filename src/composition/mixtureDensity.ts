import { frozen, noted, readShape, readWord, refuse, Decimal, type Steps } from '../numbers/index.js';
import {
  readPercent,
  readTemperature,
  type Density,
  type Fraction,
  type FractionInput,
  type Temperature,
  type TemperatureInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { MIXED_SOLVENTS, mixtureCurve, type MixedSolvent } from './mixtureCurve.js';
import { refuseOutside } from './solventDensity.js';

/** Input of {@link mixtureDensity}. */
export interface MixtureDensityInput {
  /** What is mixed with water. */
  readonly solvent: MixedSolvent;
  /** Its share of the mixture by mass: propylene glycol to 60, sucrose to 84, the others to 100 percent. */
  readonly share: FractionInput;
  /** Ethanol −20 to 40 °C, glycerol 15 to 40 °C, propylene glycol 0 to 60 °C, sucrose 20 °C. */
  readonly temperature: TemperatureInput;
}

/** Result of {@link mixtureDensity}. */
export interface MixtureDensityResult {
  readonly by: 'mixtureDensity';
  /** The inputs as read. */
  readonly given: { readonly solvent: MixedSolvent; readonly share: Fraction; readonly temperature: Temperature };
  readonly density: Density;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Density of glycerol, propylene glycol, ethanol or sucrose with water, by share and temperature.
 *
 * Formula: ethanol by the general formula of the alcoholometric tables, a polynomial in share and temperature. The others
 * from tables, a monotone cubic between the rows, ρ in g/mL over the share w in percent by mass; of glycerol
 * `ρ(w, t) = ρ(w, 20) + [ρ′(w, t) − ρ′(w, 20)]`, with ρ′ a second table for the differences.
 *
 * Validity: within the tables only. Glycerol: three tables agree within 0.0004 g/mL and are followed; a fourth lies up to
 * 0.001 below them. Propylene glycol above 60 % has nearly one density, with a flat maximum near 80 %: no table was read.
 *
 * Source: OIML R 22; Lange’s Handbook, 15th edition, Melinder 2010 and VDI Heat Atlas for glycerol; Melinder 2010 for
 * propylene glycol; CRC Handbook, 102nd edition, for sucrose; water Kell 1975.
 *
 * @param input - the substance, its share in percent by mass, the temperature
 * @returns g/mL, unrounded
 * @throws CalculationError `outside-table` (what is covered), `bad-shape` for another substance, and the faults of a quantity
 *
 * @example
 * ```ts
 * const { density } = mixtureDensity({ solvent: 'ethanol', share: { percent: 50 }, temperature: { celsius: 20 } });
 * density.gPerML.toFixed(5); // => '0.91377'
 * ```
 */
export function mixtureDensity(input: MixtureDensityInput): MixtureDensityResult {
  return mixtureDensitySteps(input);
}

/** The kernel, with room for the working. */
export function mixtureDensitySteps(input: MixtureDensityInput, steps?: Steps): MixtureDensityResult {
  const fields = readShape('input', input, ['solvent', 'share', 'temperature']);
  const solvent = readWord('solvent', fields['solvent'], MIXED_SOLVENTS);
  const percent = readPercent('share', fields['share']);
  const celsius = readTemperature('temperature', fields['temperature']);
  const { most, coldest, hottest, at, basis } = mixtureCurve(solvent);
  if (percent.gt(most)) {
    refuse('outside-table', 'share', `0 to ${String(most)} percent, which the table covers`, percent.toString());
  }
  refuseOutside(`${solvent} with water`, celsius, new Decimal(coldest), new Decimal(hottest));
  const gPerML = noted(steps, `density of ${solvent} with water`, 'ρ(w, t)', 'g/mL', at(percent, celsius));
  return frozen({
    by: 'mixtureDensity',
    given: frozen({ solvent, share: frozen({ percent }), temperature: frozen({ celsius }) }),
    density: frozen({ gPerML }),
    basis: frozen([...basis]),
    edition: EDITION,
  });
}
