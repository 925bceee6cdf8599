import { componentOfSolvent, SOLVENT_IDS, type ComponentName, type SolventId } from '../composition/index.js';

/** A component of a base that is bought: a solvent, polyol, sugar or amine by its name in a composition. */
export type BoughtSolvent = Exclude<
  ComponentName,
  | 'soapSodium'
  | 'soapPotassium'
  | 'water'
  | 'freeFat'
  | 'freeAcid'
  | 'freeCaustic'
  | 'carbonate'
  | 'unsaponifiable'
  | 'salts'
  | 'other'
>;

/** A component of a base that needs a supply. */
export type SuppliedComponent = BoughtSolvent | 'salts' | 'other';

/** A component that a target can name. Soap is anhydrous, of sodium and potassium together. */
export type BaseComponent = 'soap' | SuppliedComponent | 'water';

/** Each solvent that can be bought, under the name of its component. */
export function boughtSolvents(): readonly (readonly [BoughtSolvent, SolventId])[] {
  const bought = SOLVENT_IDS.filter((id) => id !== 'water');
  return bought.map((id) => [componentOfSolvent[id] as BoughtSolvent, id]);
}

/** All that a target can name. */
export function baseComponents(): readonly BaseComponent[] {
  return ['soap', ...boughtSolvents().map(([name]) => name), 'water', 'salts', 'other'];
}
