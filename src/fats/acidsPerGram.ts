import { glycerylResidueMass, molarMass } from '../chemistry/index.js';
import type { Decimal } from '../numbers/index.js';
import type { ProfileKind } from './fatKind.js';

/**
 * How grams of fatty acids become grams of fat: a fat of one gram of fatty acids, holding n mol of them, weighs
 * `a + b·n` grams. For free acids it is 1. A triglyceride adds `(M(glycerol) − 3·M(H2O))/3` to each acid. A wax is
 * taken as the ester of each acid with the alcohol of the same chain, `2·M(acid) − 2·M(O)`: a convention, because a
 * profile says nothing of the alcohols.
 */
export function fatMassOfAcids(kind: ProfileKind): { readonly a: number; readonly b: Decimal | number } {
  switch (kind) {
    case 'free-fatty-acid':
      return { a: 1, b: 0 };
    case 'triglyceride':
      return { a: 1, b: glycerylResidueMass().div(3) };
    case 'wax-ester':
      return { a: 2, b: molarMass('O').times(-2) };
  }
}
