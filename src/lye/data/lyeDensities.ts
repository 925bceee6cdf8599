import type { SourceId } from '../../sources/index.js';

/** Figures of one publication, with how they were come by: read in a copy, or recalled and not yet seen. */
interface Tabulated {
  readonly source: SourceId;
  readonly obtained: 'read' | 'memory';
}

/** Density of one lye by strength, at one temperature. */
export interface DensityColumn extends Tabulated {
  /** Strength in percent by mass, density in g/mL. */
  readonly rows: readonly (readonly [percent: string, gPerML: string])[];
}

/** Density of one lye by strength and temperature. */
interface DensityGrid extends Tabulated {
  readonly celsius: readonly string[];
  /** Strength in percent by mass, then g/mL at each temperature. */
  readonly rows: readonly (readonly [percent: string, ...figures: string[]])[];
}

/** Sodium hydroxide at 20 °C, as printed to 40 %. */
export const naohAt20: DensityColumn = {
  source: 'crc-102-2021',
  obtained: 'read',
  rows: [
    ['0.5', '1.0039'],
    ['1', '1.0095'],
    ['2', '1.0207'],
    ['4', '1.0428'],
    ['5', '1.0538'],
    ['6', '1.0648'],
    ['8', '1.0869'],
    ['9', '1.0979'],
    ['10', '1.1089'],
    ['12', '1.1309'],
    ['13', '1.1419'],
    ['14', '1.1530'],
    ['16', '1.1751'],
    ['17', '1.1861'],
    ['18', '1.1971'],
    ['20', '1.2192'],
    ['22', '1.2412'],
    ['24', '1.2631'],
    ['28', '1.3064'],
    ['30', '1.3277'],
    ['32', '1.3488'],
    ['36', '1.3901'],
    ['38', '1.4102'],
    ['40', '1.4299'],
  ],
};

/**
 * Sodium hydroxide by temperature. Recalled; where the column for 20 °C meets the one that was read, from 1 to 40 %, the
 * two differ by at most 0.0002 g/mL.
 */
export const naohByTemperature: DensityGrid = {
  source: 'perry-densities',
  obtained: 'memory',
  celsius: ['0', '15', '20', '40', '60', '80', '100'],
  rows: [
    ['1', '1.0124', '1.01065', '1.0095', '1.0033', '0.9941', '0.9824', '0.9693'],
    ['2', '1.0244', '1.02198', '1.0207', '1.0139', '1.0045', '0.9929', '0.9797'],
    ['4', '1.0482', '1.04441', '1.0428', '1.0352', '1.0254', '1.0139', '1.0009'],
    ['8', '1.0943', '1.08887', '1.0869', '1.0780', '1.0676', '1.0560', '1.0432'],
    ['12', '1.1399', '1.13327', '1.1309', '1.1210', '1.1101', '1.0983', '1.0855'],
    ['16', '1.1849', '1.17761', '1.1751', '1.1645', '1.1531', '1.1408', '1.1277'],
    ['20', '1.2296', '1.22183', '1.2191', '1.2079', '1.1960', '1.1833', '1.1700'],
    ['24', '1.2741', '1.26582', '1.2629', '1.2512', '1.2388', '1.2259', '1.2124'],
    ['28', '1.3182', '1.30940', '1.3064', '1.2942', '1.2814', '1.2682', '1.2546'],
    ['32', '1.3614', '1.35200', '1.3490', '1.3362', '1.3232', '1.3097', '1.2960'],
    ['36', '1.4030', '1.39330', '1.3900', '1.3768', '1.3634', '1.3498', '1.3360'],
    ['40', '1.4435', '1.43340', '1.4300', '1.4164', '1.4027', '1.3889', '1.3750'],
    ['48', '1.5210', '1.51020', '1.5065', '1.4922', '1.4781', '1.4641', '1.4503'],
    ['50', '1.5400', '1.52900', '1.5253', '1.5109', '1.4967', '1.4827', '1.4690'],
  ],
};

/**
 * Potassium hydroxide at 15 °C. Recalled; the correlation below, whose constants were read, lies within 0.0009 g/mL of it
 * everywhere.
 */
export const kohAt15: DensityColumn = {
  source: 'perry-densities',
  obtained: 'memory',
  rows: [
    ['1', '1.0083'],
    ['2', '1.0175'],
    ['4', '1.0359'],
    ['6', '1.0544'],
    ['8', '1.0730'],
    ['10', '1.0918'],
    ['12', '1.1108'],
    ['14', '1.1299'],
    ['16', '1.1493'],
    ['18', '1.1688'],
    ['20', '1.1884'],
    ['22', '1.2083'],
    ['24', '1.2285'],
    ['26', '1.2489'],
    ['28', '1.2695'],
    ['30', '1.2905'],
    ['32', '1.3117'],
    ['34', '1.3331'],
    ['36', '1.3549'],
    ['38', '1.3769'],
    ['40', '1.3991'],
    ['42', '1.4215'],
    ['44', '1.4443'],
    ['46', '1.4673'],
    ['48', '1.4907'],
    ['50', '1.5143'],
  ],
};

/**
 * Potassium hydroxide at 20 °C in the handbook whose sodium hydroxide agrees with everything. This column lies below three
 * other tables, by 0.3 % at a strength of 10 %, 0.4 % at 20 % and 0.6 % from 30 to 50 %, which no temperature explains. It
 * is kept as a table of its own and used only by name.
 */
export const kohAt20: DensityColumn = {
  source: 'crc-102-2021',
  obtained: 'read',
  rows: [
    ['0.5', '1.0025'],
    ['1', '1.0068'],
    ['2', '1.0155'],
    ['3', '1.0242'],
    ['4', '1.0330'],
    ['5', '1.0419'],
    ['6', '1.0509'],
    ['7', '1.0599'],
    ['8', '1.0690'],
    ['9', '1.0781'],
    ['10', '1.0873'],
    ['11', '1.0966'],
    ['12', '1.1059'],
    ['13', '1.1153'],
    ['14', '1.1246'],
    ['15', '1.1341'],
    ['16', '1.1435'],
    ['17', '1.1531'],
    ['18', '1.1626'],
    ['19', '1.1722'],
    ['20', '1.1818'],
    ['22', '1.2014'],
    ['24', '1.2210'],
    ['26', '1.2408'],
    ['28', '1.2609'],
    ['30', '1.2813'],
    ['32', '1.3020'],
    ['34', '1.3230'],
    ['36', '1.3444'],
    ['38', '1.3661'],
    ['40', '1.3881'],
    ['42', '1.4104'],
    ['44', '1.4331'],
    ['46', '1.4560'],
    ['48', '1.4791'],
    ['50', '1.5024'],
  ],
};

/**
 * Constants of the correlation for the density of aqueous potassium hydroxide, as printed: strengths to 51.9 %, 4 to 95 °C.
 * `ρ(apparent) = (c0·w + c1)·exp(10⁻⁶·(t + c4)²)/(w + c2 + c3·t)`, in kg/m³, with w the strength as a fraction, t in °C.
 */
export const kohCorrelation = {
  source: 'laliberte-2009',
  obtained: 'read',
  c0: '821.119043254761',
  c1: '1043.20173374381',
  c2: '0.112873330222752',
  c3: '0.00124023636407386',
  c4: '539.630388368877',
} as const;
