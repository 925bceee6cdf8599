/** The solvents that clear a soap, by the ids that recipes use. */
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

/** Id of a solvent. */
export type SolventId = (typeof SOLVENT_IDS)[number];
