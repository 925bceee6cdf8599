import type { FattyAcid } from '../../chemistry/index.js';

/** Published coefficients of one acid: iodine value per percent of it, in triglycerides and in free acids. */
export interface IodineValueCoefficients {
  readonly triglyceride: string;
  readonly 'free-fatty-acid': string;
}

/** AOCS Cd 1c-85 (reapproved 2009), calculated iodine value; read. */
export const iodineValueCoefficients: Readonly<Partial<Record<FattyAcid, IodineValueCoefficients>>> = {
  'C16:1': { triglyceride: '0.950', 'free-fatty-acid': '0.9976' },
  'C18:1': { triglyceride: '0.860', 'free-fatty-acid': '0.8986' },
  'C18:2': { triglyceride: '1.732', 'free-fatty-acid': '1.810' },
  'C18:3': { triglyceride: '2.616', 'free-fatty-acid': '2.735' },
  'C20:1': { triglyceride: '0.785', 'free-fatty-acid': '0.8175' },
  'C22:1': { triglyceride: '0.723', 'free-fatty-acid': '0.7497' },
};
