import { molarMass } from '../chemistry/index.js';
import { ALKALIS, hydroxideMolarMass, type Alkali } from '../lye/index.js';
import { frozen, ONE, readWord, readShape, ZERO, type Decimal } from '../numbers/index.js';
import { readPercent, type Fraction, type FractionInput } from '../quantities/index.js';

/** The alkali that a soap was made with; of both, potassium's share by mole. */
export type SoapAlkali = Alkali | { readonly kohShare: FractionInput };

/** The same in a result. */
export type SoapAlkaliGiven = Alkali | { readonly kohShare: Fraction };

/** Sodium and potassium of a soap: shares by mole, and what one mole of its metal or hydroxide weighs. */
export interface Cation {
  readonly sodium: Decimal;
  readonly potassium: Decimal;
  readonly metal: Decimal;
  readonly hydroxide: Decimal;
  readonly given: SoapAlkaliGiven;
}

function mixed(potassium: Decimal, given: SoapAlkaliGiven): Cation {
  const sodium = ONE.minus(potassium);
  const mean = (ofSodium: Decimal, ofPotassium: Decimal): Decimal =>
    sodium.times(ofSodium).plus(potassium.times(ofPotassium));
  return {
    sodium,
    potassium,
    metal: mean(molarMass('Na'), molarMass('K')),
    hydroxide: mean(hydroxideMolarMass('naoh'), hydroxideMolarMass('koh')),
    given,
  };
}

/** The cation of one alkali. */
export function cationOf(alkali: Alkali): Cation {
  return mixed(alkali === 'koh' ? ONE : ZERO, alkali);
}

/** Reads the alkali of a soap. */
export function readSoapAlkali(path: string, value: unknown): Cation {
  if (typeof value !== 'object' || value === null) return cationOf(readWord(path, value, ALKALIS));
  const { kohShare } = readShape(path, value, ['kohShare']);
  const percent = readPercent(`${path}.kohShare`, kohShare);
  return mixed(percent.div(100), frozen({ kohShare: frozen({ percent }) }));
}
