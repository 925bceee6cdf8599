import { molarMass } from '../chemistry/index.js';
import { frozen, noted, type Decimal, type Steps } from '../numbers/index.js';
import type { Mass } from '../quantities/index.js';
import type { Cation } from './cation.js';

/** What a correction changes in the account of the pot. */
export type CorrectedComponent =
  | 'soapSodium'
  | 'soapPotassium'
  | 'glycerol'
  | 'water'
  | 'salts'
  | 'freeFat'
  | 'freeAcid'
  | 'freeCaustic'
  | 'carbonate'
  | 'unsaponifiable'
  | 'other';

/** By how much a component of the pot changes; below zero for what is used up. */
export interface ComponentChange {
  readonly component: CorrectedComponent;
  readonly mass: Mass;
}

/** Grams by which components change. */
export type Changes = Partial<Readonly<Record<CorrectedComponent, Decimal>>>;

/** Soap of some moles of fatty acid whose residues (the acid less one hydrogen) weigh so much. */
export function soapOf(residues: Decimal, mol: Decimal, { sodium, potassium }: Cation): Changes {
  return {
    soapSodium: sodium.times(residues.plus(mol.times(molarMass('Na')))),
    soapPotassium: potassium.times(residues.plus(mol.times(molarMass('K')))),
  };
}

/** Two sets of changes together. */
export function together(one: Changes, other: Changes): Changes {
  const sum: Partial<Record<CorrectedComponent, Decimal>> = { ...one };
  for (const [component, grams] of entriesOf(other)) sum[component] = sum[component]?.plus(grams) ?? grams;
  return sum;
}

function entriesOf(changes: Changes): readonly (readonly [CorrectedComponent, Decimal])[] {
  return Object.entries(changes) as [CorrectedComponent, Decimal][];
}

/** Changes as they stand in a result; what does not change is left out. */
export function changesFrom(changes: Changes, steps?: Steps): readonly ComponentChange[] {
  return frozen(
    entriesOf(changes)
      .filter(([, grams]) => !grams.isZero())
      .map(([component, grams]) => {
        noted(steps, `change of ${component}`, 'stoichiometry of the dose', 'g', grams);
        return frozen({ component, mass: frozen({ g: grams }) });
      }),
  );
}
