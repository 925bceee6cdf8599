import { frozen, readFields, readShape, readWord, type Decimal } from '../numbers/index.js';
import { readMass, type Mass, type MassInput } from '../quantities/index.js';
import { ALKALIS, type Alkali } from './alkali.js';
import { readAlkaliSource, type AlkaliSource, type ReadSource } from './alkaliSource.js';

/** An alkali as weighed: which, how much, and its assay (solid) or strength (solution). */
export type LyeChargeInput = { readonly alkali: Alkali; readonly mass: MassInput } & AlkaliSource;

/** An alkali as weighed, in a result. */
export type LyeChargeGiven = { readonly alkali: Alkali; readonly mass: Mass } & AlkaliSource;

/** An alkali as weighed, as read. */
export interface LyeCharge {
  readonly alkali: Alkali;
  readonly grams: Decimal;
  readonly source: ReadSource;
}

/**
 * Reads an alkali as weighed; fields of the caller's own may stand beside it.
 *
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key` and the faults of a source or a quantity
 */
export function readLyeCharge(path: string, value: unknown, beside: readonly string[] = []): LyeCharge {
  const fields = readShape(path, value, ['alkali', 'mass', 'solid', 'solution', ...beside]);
  const at = (key: string): string => (path === 'input' ? key : `${path}.${key}`);
  const alkali = readWord(at('alkali'), fields['alkali'], ALKALIS);
  const { solid, solution } = readFields(path, value);
  const source = readAlkaliSource(
    path,
    { ...(solid === undefined ? {} : { solid }), ...(solution === undefined ? {} : { solution }) },
    alkali,
  );
  return { alkali, grams: readMass(at('mass'), fields['mass']), source };
}

/** A charge as it stands in `given`. */
export function givenCharge({ alkali, grams, source }: LyeCharge): LyeChargeGiven {
  return frozen({ alkali, mass: frozen({ g: grams }), ...source.given });
}
