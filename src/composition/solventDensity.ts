import { frozen, noted, readShape, readWord, refuse, type Decimal, type Steps } from '../numbers/index.js';
import { readTemperature, type Density, type Temperature, type TemperatureInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { SOLVENT_IDS, type SolventId } from './data/solventNames.js';
import { pureDensity } from './pureDensity.js';

/** Input of {@link solventDensity}. */
export interface SolventDensityInput {
  readonly solvent: SolventId;
  /** Most liquids 15 to 80 °C, water 0 to 100 °C; where there is one figure only, its temperature. */
  readonly temperature: TemperatureInput;
}

/** Result of {@link solventDensity}. */
export interface SolventDensityResult {
  readonly by: 'solventDensity';
  /** The inputs as read. */
  readonly given: { readonly solvent: SolventId; readonly temperature: Temperature };
  /** Of the pure substance; of a sugar or of sorbitol that of the solid. */
  readonly density: Density;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Density of a pure solvent, polyol, sugar or amine at a temperature.
 *
 * Formula: `ρ(t) = ρ(t₀) + [ρ′(t) − ρ′(t₀)]`, with ρ(t₀) a measured density, in g/mL, and ρ′ a correlation that gives the
 * change with temperature; between its rows a monotone cubic.
 *
 * Validity: ethanol, 2-propanol, glycerol, propylene glycol and 1,3-butanediol 15 to 80 °C; water 0 to 100 °C; polyethylene
 * glycol 20 to 25 °C; the others have one figure, at 20, 18 or 17 °C. Independent figures lie within 0.1 % of it.
 *
 * Source: CRC Handbook, physical constants; VDI Heat Atlas and Perry for the temperatures; water Kell 1975.
 *
 * @param input - the substance and its temperature
 * @returns g/mL, unrounded
 * @throws CalculationError `outside-table` (what is covered), `bad-shape` for a substance not on file and the faults of a
 *   quantity
 *
 * @example
 * ```ts
 * const { density } = solventDensity({ solvent: 'glycerol', temperature: { celsius: 20 } });
 * density; // => { gPerML: '1.2611' }
 * ```
 */
export function solventDensity(input: SolventDensityInput): SolventDensityResult {
  return solventDensitySteps(input);
}

/** The kernel, with room for the working. */
export function solventDensitySteps(input: SolventDensityInput, steps?: Steps): SolventDensityResult {
  const fields = readShape('input', input, ['solvent', 'temperature']);
  const solvent = readWord('solvent', fields['solvent'], SOLVENT_IDS);
  const celsius = readTemperature('temperature', fields['temperature']);
  const { coldest, hottest, at, basis } = pureDensity(solvent);
  refuseOutside(solvent, celsius, coldest, hottest);
  const gPerML = noted(steps, `density of ${solvent}`, 'ρ(t₀) + ρ′(t) − ρ′(t₀)', 'g/mL', at(celsius));
  return frozen({
    by: 'solventDensity',
    given: frozen({ solvent, temperature: frozen({ celsius }) }),
    density: frozen({ gPerML }),
    basis: frozen([...basis]),
    edition: EDITION,
  });
}

/**
 * Refuses a temperature that no figure covers.
 *
 * @throws CalculationError `outside-table`
 */
export function refuseOutside(what: string, celsius: Decimal, coldest: Decimal, hottest: Decimal): void {
  if (celsius.gte(coldest) && celsius.lte(hottest)) return;
  const range = coldest.eq(hottest)
    ? `${coldest.toString()} °C alone`
    : `${coldest.toString()} to ${hottest.toString()} °C`;
  refuse('outside-table', 'temperature', `${range}, which the figures of ${what} cover`, `${celsius.toString()} °C`);
}
