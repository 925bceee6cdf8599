import { fieldPath, frozen, readShape, readWord, type Decimal, type Fields } from '../numbers/index.js';
import { readMass, type Mass, type MassInput } from '../quantities/index.js';
import { ALKALIS, type Alkali } from './alkali.js';
import { alkaliSourceFrom, type AlkaliSource, type ReadSource } from './alkaliSource.js';

/** An alkali as weighed: which, how much, and its assay (solid) or strength (solution). */
export type LyeChargeInput = {
  /** Which alkali. */
  readonly alkali: Alkali;
  /** Mass as it is weighed: of a solution with its water. */
  readonly mass: MassInput;
} & AlkaliSource;

/** An alkali as weighed, in a result. */
export type LyeChargeGiven = { readonly alkali: Alkali; readonly mass: Mass } & AlkaliSource;

/** An alkali as weighed, as read. */
export interface LyeCharge {
  readonly alkali: Alkali;
  readonly grams: Decimal;
  readonly source: ReadSource;
}

/**
 * Reads an alkali as weighed.
 *
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key` and the faults of a source or a quantity
 */
export function readLyeCharge(path: string, value: unknown): LyeCharge {
  return lyeChargeFrom(path, readShape(path, value, LYE_CHARGE_KEYS));
}

/** The fields of an alkali as weighed. */
export const LYE_CHARGE_KEYS = ['alkali', 'mass', 'solid', 'solution'] as const;

/** Reads an alkali as weighed among the fields of something else; an empty path is that of the input itself. */
export function lyeChargeFrom(path: string, fields: Fields): LyeCharge {
  const alkali = readWord(fieldPath(path, 'alkali'), fields['alkali'], ALKALIS);
  return {
    alkali,
    grams: readMass(fieldPath(path, 'mass'), fields['mass']),
    source: alkaliSourceFrom(path, fields, alkali),
  };
}

/** A charge as it stands in `given`. */
export function givenCharge({ alkali, grams, source }: LyeCharge): LyeChargeGiven {
  return frozen({ alkali, mass: frozen({ g: grams }), ...source.given });
}
