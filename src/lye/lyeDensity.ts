import { frozen, noted, readShape, readWord, refuse, type Remark, type Steps } from '../numbers/index.js';
import {
  readPercent,
  readTemperature,
  type Density,
  type Fraction,
  type FractionInput,
  type Temperature,
  type TemperatureInput,
  type Titrant,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { ALKALIS, type Alkali } from './alkali.js';
import { CRYSTALS_MAKE_UNKNOWN } from './benchCautions.js';
import { alkaliCautions } from './cautions.js';
import { concentrationOf } from './concentration.js';
import { mayHoldCrystals } from './freezingCurve.js';
import { densityColumn, LYE_DENSITY_TABLES, type LyeDensityTable } from './densityColumn.js';

/** Input of {@link lyeDensity}. */
export interface LyeDensityInput {
  readonly alkali: Alkali;
  /** True hydroxide, share of the whole lye by mass; 0 to 50 percent. */
  readonly strength: FractionInput;
  /** Temperature of the lye: NaOH 0 to 100 °C, KOH 15 to 80 °C. */
  readonly temperature: TemperatureInput;
  /** `recommended` unless given; `crc-102` is the column of one handbook for 20 °C. */
  readonly table?: LyeDensityTable;
}

/** Result of {@link lyeDensity}. */
export interface LyeDensityResult {
  readonly by: 'lyeDensity';
  /** The inputs as read. */
  readonly given: {
    readonly alkali: Alkali;
    readonly strength: Fraction;
    readonly temperature: Temperature;
    readonly table: LyeDensityTable;
  };
  /** Density of the lye at its temperature. */
  readonly density: Density;
  /** Hydroxide in a litre of it, at its temperature. */
  readonly concentration: Titrant;
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Density of a lye from its strength and temperature.
 *
 * Formula: `ρ(w, t) = ρ(w, t₀) + [ρ′(w, t) − ρ′(w, t₀)]` at the strengths of a fine table for one temperature t₀, a second
 * table giving the differences; between the rows a monotone cubic. `c = 10·w·ρ/M`, with w percent by mass, ρ in g/mL, M
 * g/mol, c mol/L.
 *
 * NaOH: t₀ = 20 °C; taken out one by one, the rows at 20 °C are met within 0.00014 g/mL. Independent figures lie within
 * 0.2 % of it. KOH: t₀ = 15 °C, recalled; within 0.0009 g/mL of the correlation that carries it to other temperatures.
 *
 * Source: NaOH: CRC Handbook, 102nd edition, to 40 %; above it, and for the temperatures, Perry (recalled). KOH: Perry
 * (recalled) and Laliberté 2009. Water: Kell 1975.
 *
 * @param input - the alkali, its strength in percent by mass, its temperature
 * @returns g/mL and mol/L, unrounded
 * @throws CalculationError `outside-table` (what is covered), `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const { density } = lyeDensity({ alkali: 'naoh', strength: { percent: 30 }, temperature: { celsius: 20 } });
 * density.gPerML; // => '1.3277'
 * ```
 */
export function lyeDensity(input: LyeDensityInput): LyeDensityResult {
  return lyeDensitySteps(input);
}

/** The kernel, with room for the working. */
export function lyeDensitySteps(input: LyeDensityInput, steps?: Steps): LyeDensityResult {
  const fields = readShape('input', input, ['alkali', 'strength', 'temperature', 'table']);
  const alkali = readWord('alkali', fields['alkali'], ALKALIS);
  const percent = readPercent('strength', fields['strength']);
  const celsius = readTemperature('temperature', fields['temperature']);
  const table = readWord('table', fields['table'] ?? 'recommended', LYE_DENSITY_TABLES);
  const { curve, last, basis } = densityColumn(alkali, table, celsius);
  if (percent.gt(last.x)) {
    refuse(
      'outside-table',
      'strength',
      `0 to ${last.x.toString()} percent, which the table covers`,
      percent.toString(),
    );
  }
  const gPerML = noted(steps, 'density', 'ρ(w, t) from the table', 'g/mL', curve.at(percent));
  return frozen({
    by: 'lyeDensity',
    given: frozen({ alkali, strength: frozen({ percent }), temperature: frozen({ celsius }), table }),
    density: frozen({ gPerML }),
    concentration: concentrationOf(alkali, percent, gPerML, steps),
    cautions: alkaliCautions(...(mayHoldCrystals(alkali, percent, celsius) ? [CRYSTALS_MAKE_UNKNOWN] : [])),
    basis: frozen([...basis, 'iupac-2021', 'ghs-naoh'] as const),
    edition: EDITION,
  });
}
