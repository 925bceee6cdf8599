import type { SourceId } from '../../sources/index.js';

/** Heat given out when one mole of solid sodium hydroxide dissolves in so many moles of water, at 25 °C. */
interface HeatOfSolution {
  readonly source: SourceId;
  readonly obtained: 'read' | 'memory';
  /** Moles of water to one of hydroxide, `Infinity` for no end of water; kJ to one mole of hydroxide. */
  readonly rows: readonly (readonly [water: string, kJ: string])[];
}

/** Heat capacity of a lye by strength and temperature. */
export interface HeatCapacityGrid {
  readonly source: SourceId;
  readonly obtained: 'derived';
  readonly celsius: readonly string[];
  /** Strength in percent by mass, then kJ/(kg·K) at each temperature. */
  readonly rows: readonly (readonly [percent: string, ...figures: string[]])[];
}

/** The six dilutions that were read. */
export const naohHeatOfSolution: HeatOfSolution = {
  source: 'koretsky',
  obtained: 'read',
  rows: [
    ['3', '28.886'],
    ['4', '34.430'],
    ['5', '37.761'],
    ['20', '42.865'],
    ['100', '42.334'],
    // A later compilation has 44.51 here, and no table by dilution to go with it. This one is of one cast.
    ['Infinity', '42.869'],
  ],
};

/**
 * The dilutions between, recalled from a second textbook whose table has the same origin: at the six dilutions above the
 * two differ by at most 0.03 kJ/mol.
 */
export const naohHeatOfSolutionBetween: HeatOfSolution = {
  source: 'felder-rousseau',
  obtained: 'memory',
  rows: [
    ['30', '42.72'],
    ['40', '42.59'],
    ['200', '42.26'],
    ['500', '42.38'],
    ['2000', '42.55'],
    ['5000', '42.68'],
    ['10000', '42.72'],
  ],
};

/** Potassium hydroxide in no end of water, kJ/mol: read. No table by dilution was found. */
export const kohHeatOfSolution = { source: 'parker-1965', obtained: 'read', kJ: '57.61' } as const;

const TEMPERATURES: readonly string[] = ['20', '25', '40', '60', '80'];

/** Water at 25 °C, kJ/(kg·K): read. Its change from 20 to 80 °C is below half a per cent. */
const WATER = '4.18';
export const waterHeatCapacity = { source: 'sonntag-5', obtained: 'read', kJPerKgK: '4.18' } as const;
const water: readonly [percent: string, ...figures: string[]] = ['0', WATER, WATER, WATER, WATER, WATER];

/** Solid hydroxides at 25 °C, J/(mol·K): read. */
export const solidHeatCapacity = {
  source: 'crc-thermodynamic-properties',
  obtained: 'read',
  naoh: '59.5',
  koh: '68.9',
} as const;

/** The temperature slope of the correlation for enthalpy. */
export const naohHeatCapacity: HeatCapacityGrid = {
  source: 'olsson-1997',
  obtained: 'derived',
  celsius: TEMPERATURES,
  rows: [
    water,
    ['10', '3.876', '3.865', '3.841', '3.826', '3.830'],
    ['20', '3.701', '3.698', '3.692', '3.690', '3.695'],
    ['30', '3.606', '3.606', '3.608', '3.611', '3.614'],
    ['40', '3.472', '3.471', '3.469', '3.466', '3.464'],
    // At 50 % the correlation begins at 26 °C: the figure for 40 °C stands in below.
    ['50', '3.224', '3.224', '3.224', '3.214', '3.205'],
  ],
};

/** The correlation for heat capacity. */
export const kohHeatCapacity: HeatCapacityGrid = {
  source: 'laliberte-2009',
  obtained: 'derived',
  celsius: TEMPERATURES,
  rows: [
    water,
    ['10', '3.64', '3.65', '3.68', '3.71', '3.72'],
    ['20', '3.25', '3.27', '3.30', '3.33', '3.34'],
    ['30', '2.95', '2.97', '3.00', '3.02', '3.03'],
    ['40', '2.72', '2.73', '2.75', '2.77', '2.77'],
  ],
};

/** Boiling point of sodium hydroxide lye at 101.325 kPa, solved from the correlation for vapour pressure. */
export const naohBoiling = {
  source: 'olsson-1997',
  obtained: 'derived',
  /** Strength in percent by mass, °C. */
  rows: [
    ['0', '100.0'],
    ['5', '101.3'],
    ['10', '102.8'],
    ['15', '104.9'],
    ['20', '107.9'],
    ['25', '112.0'],
    ['30', '117.0'],
    ['35', '123.1'],
    ['40', '130.1'],
    ['45', '138.0'],
    ['50', '146.4'],
  ],
} as const;
