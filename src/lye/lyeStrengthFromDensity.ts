import { frozen, noted, readShape, readWord, refuse, type Remark, type Steps } from '../numbers/index.js';
import {
  readDensity,
  readTemperature,
  type Density,
  type DensityInput,
  type Fraction,
  type Temperature,
  type TemperatureInput,
  type Titrant,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { ALKALIS, type Alkali } from './alkali.js';
import { CRYSTALS_MAKE_UNKNOWN, READS_ALL_SALTS } from './benchCautions.js';
import { alkaliCautions } from './cautions.js';
import { concentrationOf } from './concentration.js';
import { mayHoldCrystals } from './freezingCurve.js';
import { densityColumn, LYE_DENSITY_TABLES, type LyeDensityTable } from './densityColumn.js';

/** Input of {@link lyeStrengthFromDensity}. */
export interface LyeStrengthFromDensityInput {
  readonly alkali: Alkali;
  /** What the hydrometer or pycnometer says, in any unit of density. */
  readonly density: DensityInput;
  /** Temperature of the lye when it was read: NaOH 0 to 100 °C, KOH 15 to 80 °C. */
  readonly temperature: TemperatureInput;
  /** `recommended` unless given; `crc-102` is the column of one handbook for 20 °C. */
  readonly table?: LyeDensityTable;
}

/** Result of {@link lyeStrengthFromDensity}. */
export interface LyeStrengthFromDensityResult {
  readonly by: 'lyeStrengthFromDensity';
  /** The inputs as read; the density in g/mL. */
  readonly given: {
    readonly alkali: Alkali;
    readonly density: Density;
    readonly temperature: Temperature;
    readonly table: LyeDensityTable;
  };
  /** Hydroxide, share of the whole lye by mass, if there is nothing else in it. */
  readonly strength: Fraction;
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
 * Strength of a lye from its density and temperature: the inverse of `lyeDensity`, on the same tables.
 *
 * A reading on a scale (Baumé, Twaddell, a specific gravity) becomes g/mL by the density of water at the scale's own
 * temperature; the lye's temperature is then allowed for by the table. What is left out is the expansion of the glass: for
 * each degree above its reference a hydrometer shows about 0.000025 of the density too much (recalled). At 40 °C that is
 * 0.0008 g/mL or 0.08 % of NaOH; within 10 °C of the reference it is less than can be read.
 *
 * Everything dissolved counts as hydroxide: carbonate and salt make a lye read too strong.
 *
 * Source: as `lyeDensity`; scales as `valueIn`.
 *
 * @param input - the alkali, the reading, the temperature at which it was taken
 * @returns percent by mass and mol/L; going back by `lyeDensity` gives the density within 1e-25 g/mL
 * @throws CalculationError `outside-table` (what is covered), `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const { strength } = lyeStrengthFromDensity({
 *   alkali: 'naoh',
 *   density: { baume144_3: 36 },
 *   temperature: { celsius: 15 },
 * });
 * strength.percent.toFixed(1); // => '30.0'
 * ```
 */
export function lyeStrengthFromDensity(input: LyeStrengthFromDensityInput): LyeStrengthFromDensityResult {
  return lyeStrengthFromDensitySteps(input);
}

/** The kernel, with room for the working. */
export function lyeStrengthFromDensitySteps(
  input: LyeStrengthFromDensityInput,
  steps?: Steps,
): LyeStrengthFromDensityResult {
  const fields = readShape('input', input, ['alkali', 'density', 'temperature', 'table']);
  const alkali = readWord('alkali', fields['alkali'], ALKALIS);
  const gPerML = noted(
    steps,
    'density',
    'the reading, by the density of water at the temperature of its scale',
    'g/mL',
    readDensity('density', fields['density']),
  );
  const celsius = readTemperature('temperature', fields['temperature']);
  const table = readWord('table', fields['table'] ?? 'recommended', LYE_DENSITY_TABLES);
  const { curve, first, last, basis } = densityColumn(alkali, table, celsius);
  if (gPerML.lt(first.y) || gPerML.gt(last.y)) {
    const range = `${first.y.toFixed(4)} (water) to ${last.y.toFixed(4)} g/mL (${last.x.toString()} percent)`;
    refuse('outside-table', 'density', `${range} at ${celsius.toString()} °C`, `${gPerML.toFixed(4)} g/mL`);
  }
  const percent = noted(steps, 'strength', 'w at which ρ(w, t) is the density', 'percent', curve.inverse(gPerML));
  return frozen({
    by: 'lyeStrengthFromDensity',
    given: frozen({ alkali, density: frozen({ gPerML }), temperature: frozen({ celsius }), table }),
    strength: frozen({ percent }),
    concentration: concentrationOf(alkali, percent, gPerML, steps),
    cautions: alkaliCautions(
      ...(mayHoldCrystals(alkali, percent, celsius) ? [CRYSTALS_MAKE_UNKNOWN] : []),
      READS_ALL_SALTS,
    ),
    basis: frozen([...basis, 'tanaka-2001', 'iupac-2021', 'ghs-naoh'] as const),
    edition: EDITION,
  });
}
