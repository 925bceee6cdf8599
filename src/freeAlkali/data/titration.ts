import type { SourceId } from '../../sources/index.js';

/** Acids that acidity is reported as. */
export type AcidityAcid = 'oleic' | 'lauric' | 'palmitic' | 'erucic';

/** A molar mass that a method fixes by convention, in g/mol; with how it was come by. */
interface ConventionalAcid {
  readonly gPerMol: string;
  readonly source: SourceId;
  readonly obtained: 'read' | 'memory';
}

/** Molar masses that the method for acidity fixes, whole numbers by convention. */
export const conventionalAcids: Readonly<Record<AcidityAcid, ConventionalAcid>> = {
  oleic: { gPerMol: '282', source: 'iso-660', obtained: 'read' },
  lauric: { gPerMol: '200', source: 'iso-660', obtained: 'memory' },
  palmitic: { gPerMol: '256', source: 'iso-660', obtained: 'memory' },
  erucic: { gPerMol: '338', source: 'iso-660', obtained: 'memory' },
};

/** What is weighed for a titration: it decides how evenly a sample stands for the whole. */
export type Sampled = 'soap' | 'fat' | 'alkali';

/**
 * Standard uncertainties that hold where none are stated: common practice, no source. A scale that shows 0.01 g; a burette
 * of 25 or 50 mL read to half a line; an end point within a drop of 0.05 mL; a blank of two such; a titrant known to half
 * a per cent.
 */
export const usualUncertainties = {
  balance: '0.01', // g
  burette: '0.03', // mL
  endPoint: '0.03', // mL
  blank: '0.04', // mL
  titrant: '0.5', // percent of it
} as const;

/** How far one sample stands for the whole, percent of the result: common practice, no source. */
export const usualSampling: Readonly<Record<Sampled, string>> = { soap: '2', fat: '0.5', alkali: '0.5' };

/** The 95 % points of chi-square for 1 to 9 degrees of freedom (tables of statistics, recalled). */
export const chiSquare95 = [
  '3.841',
  '5.991',
  '7.815',
  '9.488',
  '11.070',
  '12.592',
  '14.067',
  '15.507',
  '16.919',
] as const;

/** One-sided 95 % points of Student's t for 1 to 9 degrees of freedom (tables of statistics, recalled). */
export const student95 = ['6.314', '2.920', '2.353', '2.132', '2.015', '1.943', '1.895', '1.860', '1.833'] as const;

/** The points of the normal distribution beyond which 5 % lie on one side, and 5 % on both together (recalled). */
export const ONE_SIDED = '1.645';
export const TWO_SIDED = '1.960';
