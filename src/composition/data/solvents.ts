import type { SourceId } from '../../sources/index.js';
import type { SolventId } from './solventNames.js';

/** Density of a liquid, or of a solid as it is; figures as printed. That of water is by its formula. */
export interface DensityData {
  /** Measured, at one temperature: °C, g/mL. */
  readonly measured: readonly [celsius: string, gPerML: string, source: SourceId];
  /** How it changes with temperature: the differences of this row are used, not its own height. */
  readonly byTemperature?: readonly [celsius: string, gPerML: string, source: SourceId];
}

/** What is on file of a solvent, polyol, sugar or amine. */
export interface SolventData {
  /** Of a substance; a polyethylene glycol is a mixture. */
  readonly formula?: string;
  readonly density: DensityData;
  /** °C at one atmosphere. */
  readonly boilingPoint?: readonly [celsius: string, source: SourceId];
  /** °C; lowest and highest figure on file, cups of both kinds. */
  readonly flashPoint?: readonly [low: string, high: string, sources: readonly SourceId[]];
  /** What is sold: its name, and percent by mass that it holds. */
  readonly grades: readonly (readonly [grade: string, low: string, high: string, source: SourceId])[];
}

const SIX = '15 20 25 40 60 80';

/** What is on file of each; where each figure is from, and whether it was read, is in `solventRecords`. */
export const solventData = (): Readonly<Record<SolventId, SolventData>> => ({
  water: {
    formula: 'H2O',
    density: { measured: ['20', '0.99821', 'kell-1975'] },
    boilingPoint: ['99.97', 'crc-organic-constants'],
    grades: [],
  },
  ethanol: {
    formula: 'C2H6O',
    density: {
      measured: ['20', '0.7893', 'crc-organic-constants'],
      byTemperature: [SIX, '0.7943 0.7902 0.7860 0.7730 0.7545 0.7346', 'vdi-heat-atlas'],
    },
    boilingPoint: ['78.24', 'crc-organic-constants'],
    flashPoint: ['12', '13', ['iec-60079-20-1', 'nfpa-497']],
    grades: [
      ['alcohol, USP', '92.3', '93.8', 'pharmacopoeias-recalled'],
      ['ethanol (96 per cent), Ph. Eur.', '92.6', '95.2', 'pharmacopoeias-recalled'],
      ['diluted alcohol, NF', '41.0', '42.0', 'nf-diluted-alcohol'],
    ],
  },
  '2-propanol': {
    formula: 'C3H8O',
    density: {
      measured: ['20', '0.7848', 'crc-102-2021'],
      byTemperature: [SIX, '0.7909 0.7864 0.7818 0.7676 0.7478 0.7268', 'vdi-heat-atlas'],
    },
    boilingPoint: ['82.21', 'crc-organic-constants'],
    flashPoint: ['12', '12', ['iec-60079-20-1', 'nfpa-497']],
    grades: [['isopropyl alcohol, USP', '99.0', '100', 'pharmacopoeias-recalled']],
  },
  glycerol: {
    formula: 'C3H8O3',
    density: {
      measured: ['20', '1.2611', 'crc-102-2021'],
      byTemperature: [SIX, '1.2644 1.2612 1.2580 1.2484 1.2353 1.2219', 'vdi-heat-atlas'],
    },
    boilingPoint: ['289', 'crc-organic-constants'],
    flashPoint: ['160', '177', ['dippr-flash-points', 'handbooks-recalled']],
    grades: [
      ['glycerin, USP', '95', '100', 'usp-29-glycerin'],
      ['glycerol, Ph. Eur.', '96', '100', 'pharmacopoeias-recalled'],
      ['glycerol (85 per cent), Ph. Eur.', '83.5', '88.5', 'pharmacopoeias-recalled'],
    ],
  },
  'propylene-glycol': {
    formula: 'C3H8O2',
    density: {
      measured: ['20', '1.0361', 'crc-organic-constants'],
      byTemperature: [SIX, '1.0401 1.0364 1.0326 1.0211 1.0052 0.9887', 'perry-8-densities'],
    },
    boilingPoint: ['187.3', 'crc-organic-constants'],
    flashPoint: ['99', '103', ['handbooks-recalled']],
    grades: [['propylene glycol, USP', '99.5', '100', 'pharmacopoeias-recalled']],
  },
  'dipropylene-glycol': {
    formula: 'C6H14O3',
    density: { measured: ['20', '1.0206', 'crc-organic-constants'] },
    boilingPoint: ['231', 'crc-organic-constants'],
    flashPoint: ['117.9', '138', ['dippr-flash-points', 'handbooks-recalled']],
    grades: [['for perfumery, three isomers', '99.5', '100', 'handbooks-recalled']],
  },
  '1-3-butanediol': {
    formula: 'C4H10O2',
    density: {
      measured: ['20', '1.0053', 'crc-organic-constants'],
      byTemperature: [SIX, '1.0087 1.0051 1.0016 0.9908 0.9760 0.9608', 'perry-8-densities'],
    },
    boilingPoint: ['208.2', 'crc-organic-constants'],
    flashPoint: ['108.9', '108.9', ['dippr-flash-points']],
    grades: [['for cosmetics', '99.5', '100', 'handbooks-recalled']],
  },
  sorbitol: {
    formula: 'C6H14O6',
    density: { measured: ['20', '1.489', 'crc-organic-constants'] },
    grades: [
      ['sorbitol solution, NF, dry substance', '68.5', '71.5', 'usp-28-sorbitol-solution'],
      ['liquid sorbitol, Ph. Eur., dry substance', '68', '72', 'pharmacopoeias-recalled'],
      ['sorbitol, Ph. Eur., solid', '97', '100', 'ph-eur-6-sorbitol'],
    ],
  },
  sucrose: {
    formula: 'C12H22O11',
    density: { measured: ['17', '1.5805', 'crc-organic-constants'] },
    grades: [['white sugar', '99.7', '100', 'codex-stan-212']],
  },
  glucose: {
    formula: 'C6H12O6',
    density: { measured: ['18', '1.562', 'handbooks-recalled'] },
    grades: [
      ['anhydrous', '99.5', '100', 'handbooks-recalled'],
      // C6H12O6 in C6H12O6·H2O: 180.156/198.171
      ['monohydrate', '90.5', '91.4', 'handbooks-recalled'],
    ],
  },
  'peg-400': {
    density: {
      measured: ['20', '1.128', 'handbooks-recalled'],
      byTemperature: ['20 25', '1.128 1.120', 'handbooks-recalled'],
    },
    flashPoint: ['238', '238', ['handbooks-recalled']],
    grades: [['polyethylene glycol 400, NF', '99', '100', 'pharmacopoeias-recalled']],
  },
  triethanolamine: {
    formula: 'C6H15NO3',
    density: { measured: ['20', '1.1242', 'crc-organic-constants'] },
    boilingPoint: ['350', 'crc-organic-constants'],
    flashPoint: ['179', '190', ['iec-60079-20-1', 'dippr-flash-points']],
    grades: [
      ['for cosmetics', '99', '100', 'handbooks-recalled'],
      ['technical, the rest other ethanolamines', '85', '85', 'handbooks-recalled'],
    ],
  },
});
