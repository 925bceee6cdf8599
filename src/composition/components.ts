import type { SolventId } from './data/solventNames.js';

/**
 * What a pot is made of. Each component that is a solvent on file has the camelCase of its id; an id that begins with a
 * number, or names one grade, has the common word instead: `isopropanol`, `butanediol`, `polyethyleneGlycol`.
 */
export const COMPONENTS = [
  'soapSodium',
  'soapPotassium',
  'glycerol',
  'ethanol',
  'isopropanol',
  'propyleneGlycol',
  'dipropyleneGlycol',
  'butanediol',
  'sorbitol',
  'sucrose',
  'glucose',
  'polyethyleneGlycol',
  'triethanolamine',
  'water',
  'freeFat',
  'freeAcid',
  'freeCaustic',
  'carbonate',
  'unsaponifiable',
  'salts',
  'other',
] as const;

/** One of the things a pot is made of. */
export type ComponentName = (typeof COMPONENTS)[number];

/** The component that each solvent on file is. */
export const componentOfSolvent: Readonly<Record<SolventId, ComponentName>> = {
  water: 'water',
  ethanol: 'ethanol',
  '2-propanol': 'isopropanol',
  glycerol: 'glycerol',
  'propylene-glycol': 'propyleneGlycol',
  'dipropylene-glycol': 'dipropyleneGlycol',
  '1-3-butanediol': 'butanediol',
  sorbitol: 'sorbitol',
  sucrose: 'sucrose',
  glucose: 'glucose',
  'peg-400': 'polyethyleneGlycol',
  triethanolamine: 'triethanolamine',
};

export const SOAPS = ['soapSodium', 'soapPotassium'] as const;
export const SPIRITS = ['ethanol', 'isopropanol'] as const;
export const SUGARS = ['sucrose', 'glucose'] as const;
/** Alcohols of several hydroxyl groups, sugars apart. */
export const POLYOLS = [
  'glycerol',
  'propyleneGlycol',
  'dipropyleneGlycol',
  'butanediol',
  'sorbitol',
  'polyethyleneGlycol',
] as const;

/** Whether a component is a spirit. */
export const isSpiritComponent = (name: string): boolean => SPIRITS.some((spirit) => spirit === name);
/** Whether a solvent is a spirit. */
export const isSpirit = (solvent: SolventId): boolean => isSpiritComponent(componentOfSolvent[solvent]);
