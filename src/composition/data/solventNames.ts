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

/** The names that stand on papers for each; ingredient names (INCI) are recalled. */
export const solventNames: Readonly<Record<SolventId, readonly [name: string, inciName: string]>> = {
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
