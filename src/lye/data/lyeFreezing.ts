import type { SourceId } from '../../sources/index.js';

/** Temperatures at which the first solid appears on cooling, by strength. */
interface FreezingPoints {
  readonly source: SourceId;
  readonly obtained: 'read' | 'memory';
  /** Strength in percent by mass, temperature in °C. */
  readonly rows: readonly (readonly [percent: string, celsius: string])[];
}

/**
 * Sodium hydroxide, read off a phase diagram: ice down to -28 °C near 18.7 %, NaOH·3.5H2O with its maximum of 15.7 °C near
 * 39 %, the trough of 6 °C near 45.6 %, then NaOH·H2O. Each point is good to about 0.5 °C and 0.3 % of strength.
 */
export const naohFreezing: FreezingPoints = {
  source: 'wang-2008',
  obtained: 'read',
  rows: [
    ['0.27', '0.0'],
    ['2.17', '-1.3'],
    ['4.06', '-2.9'],
    ['5.69', '-4.5'],
    ['7.58', '-6.7'],
    ['9.34', '-8.5'],
    ['10.96', '-10.9'],
    ['12.59', '-13.3'],
    ['14.08', '-16.0'],
    ['15.57', '-18.9'],
    ['16.79', '-21.9'],
    ['17.87', '-24.8'],
    ['18.68', '-28.0'],
    ['20.17', '-26.4'],
    ['21.66', '-24.8'],
    ['22.74', '-22.4'],
    ['23.69', '-20.5'],
    ['24.77', '-18.7'],
    ['25.58', '-14.1'],
    ['26.40', '-9.6'],
    ['27.34', '-5.3'],
    ['28.56', '-1.3'],
    ['29.78', '1.9'],
    ['31.81', '5.1'],
    ['32.89', '7.7'],
    ['34.25', '10.1'],
    ['35.74', '12.5'],
    ['37.36', '14.7'],
    ['38.98', '15.7'],
    ['40.34', '15.5'],
    ['41.96', '13.9'],
    ['43.45', '11.7'],
    ['44.67', '8.8'],
    ['45.62', '6.1'],
    ['47.11', '8.0'],
    ['48.73', '9.9'],
    ['50.36', '11.7'],
    ['51.44', '12.5'],
    ['52.25', '17.3'],
    ['53.06', '22.1'],
    ['53.87', '26.7'],
    ['54.96', '32.0'],
    ['55.91', '36.8'],
    ['56.99', '41.1'],
    ['58.34', '45.9'],
    ['59.97', '50.4'],
    ['61.86', '54.9'],
    ['63.76', '58.7'],
    ['65.65', '61.3'],
    ['68.09', '63.5'],
    ['70.25', '64.0'],
    ['72.15', '63.7'],
    ['73.37', '62.9'],
  ],
};

/** Potassium hydroxide to 7 %: the printed depressions with their sign turned. */
export const kohFreezing: FreezingPoints = {
  source: 'crc-102-2021',
  obtained: 'read',
  rows: [
    ['0.5', '-0.30'],
    ['1', '-0.61'],
    ['2', '-1.24'],
    ['3', '-1.89'],
    ['4', '-2.57'],
    ['5', '-3.36'],
    ['6', '-4.14'],
    ['7', '-4.92'],
  ],
};

/** Potassium hydroxide beyond: three single points, recalled. Nothing is known here of what lies between them. */
export const kohFreezingPoints: FreezingPoints = {
  source: 'handbooks-recalled',
  obtained: 'memory',
  rows: [
    ['30.8', '-65'], // the eutectic, placed near 30 to 31 %
    ['45', '-29'], // lye of commerce
    ['50', '7'], // lye of commerce; 6 to 7 °C
  ],
};
