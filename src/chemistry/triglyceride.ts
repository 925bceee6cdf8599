import type { Decimal } from '../numbers/index.js';
import { molarMass } from './molarMass.js';

let glycerylResidue: Decimal | undefined;

/**
 * What a triglyceride holds besides its three fatty acids, `M(glycerol) − 3·M(H2O)`, in g/mol: three acids and one
 * glycerol join and three waters leave.
 */
export function glycerylResidueMass(): Decimal {
  glycerylResidue ??= molarMass('C3H8O3').minus(molarMass('H2O').times(3));
  return glycerylResidue;
}

/** Molar mass of a triglyceride of mean acid molar mass M, `3·M + M(glycerol) − 3·M(H2O)`, in g/mol. */
export function triglycerideMolarMass(meanAcid: Decimal): Decimal {
  return meanAcid.times(3).plus(glycerylResidueMass());
}
