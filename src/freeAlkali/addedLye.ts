import { glycerylResidueMass, molarMass } from '../chemistry/index.js';
import { ALKALIS, carbonateMolarMass, readAlkaliSource, type Alkali, type ReadSource } from '../lye/index.js';
import { readShape, readWord, ZERO, type Decimal } from '../numbers/index.js';
import { lyeSumsAt } from '../saponification/index.js';
import { cationOf } from './cation.js';
import { soapOf, together, type Changes } from './changes.js';
import { conventionalAcids } from './data/titration.js';
import type { MeasuredSuperfatKind } from './measuredSuperfat.js';

/** Lye to be added, as read. */
export interface AddedLye {
  readonly alkali: Alkali;
  readonly source: ReadSource;
}

/** Reads the lye that is to be added. */
export function readAddedLye(value: unknown): AddedLye {
  const { alkali: named, ...source } = readShape('lye', value, ['alkali', 'solid', 'solution']);
  const alkali = readWord('lye.alkali', named, ALKALIS);
  return { alkali, source: readAlkaliSource('lye', source, alkali) };
}

/** Lye that becomes soap whole, with acid or with fat; the rest of it as it is. */
export function lyeChanges({ alkali, source }: AddedLye, grams: Decimal, kind: MeasuredSuperfatKind): Changes {
  const sums = lyeSumsAt([{ alkali, grams, source }], ZERO, 'likely');
  const { hydroxide: mol, carbonate } = sums[alkali];
  const acid = mol.times(conventionalAcids.oleic.gPerMol);
  const soap = soapOf(acid.minus(mol.times(molarMass('H'))), mol, cationOf(alkali));
  const lye: Changes = { water: sums.water, carbonate: carbonate.times(carbonateMolarMass(alkali)), other: sums.other };
  if (kind === 'acidValue') {
    return together(lye, { ...soap, freeAcid: acid.neg(), water: mol.times(molarMass('H2O')) });
  }
  return together(lye, {
    ...soap,
    freeFat: acid.plus(mol.times(glycerylResidueMass()).div(3)).neg(),
    glycerol: mol.times(molarMass('C3H8O3')).div(3),
  });
}
