import { frozen } from '../../numbers/index.js';

/** What is weighed in beside fats and lye and is a substance on file. */
export const SOLVENT_IDS = [
  'water',
  'ethanol',
  '2-propanol',
  'glycerol',
  'propylene-glycol',
  'dipropylene-glycol',
  '1-3-butanediol',
  'sorbitol',
  'sucrose',
  'glucose',
  'peg-400',
  'triethanolamine',
] as const;

/** Name of a solvent, polyol, sugar or amine on file. */
export type SolventId = (typeof SOLVENT_IDS)[number];

/** A substance on file, by its names. */
export interface SolventListing {
  readonly id: SolventId;
  readonly name: string;
  /** Ingredient name (INCI), recalled. */
  readonly inciName: string;
}

const NAMES: Readonly<Record<SolventId, readonly [name: string, inciName: string]>> = {
  water: ['Water', 'Aqua'],
  ethanol: ['Ethanol', 'Alcohol'],
  '2-propanol': ['2-Propanol', 'Isopropyl Alcohol'],
  glycerol: ['Glycerol', 'Glycerin'],
  'propylene-glycol': ['Propylene glycol', 'Propylene Glycol'],
  'dipropylene-glycol': ['Dipropylene glycol', 'Dipropylene Glycol'],
  '1-3-butanediol': ['1,3-Butanediol', 'Butylene Glycol'],
  sorbitol: ['Sorbitol', 'Sorbitol'],
  sucrose: ['Sucrose', 'Sucrose'],
  glucose: ['Glucose', 'Glucose'],
  'peg-400': ['Polyethylene glycol 400', 'PEG-8'],
  triethanolamine: ['Triethanolamine', 'Triethanolamine'],
};

/** The names of one. */
export function listingOf(id: SolventId): SolventListing {
  const [name, inciName] = NAMES[id];
  return frozen({ id, name, inciName });
}

/** The solvents, polyols and sugars on file, and triethanolamine. */
export const solvents: readonly SolventListing[] = /* @__PURE__ */ frozen(/* @__PURE__ */ SOLVENT_IDS.map(listingOf));
