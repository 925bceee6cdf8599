import { gramsOf, notesOfFats, readFatCharges, type FatCharge } from '../fats/index.js';
import { givenCharge, readLyeCharge, type LyeCharge, type LyeChargeGiven } from '../lye/index.js';
import { fieldPath, frozen, readList, refuse, ZERO, type Decimal, type Fields, type Remark } from '../numbers/index.js';
import { readOptionalMass, type Mass } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';
import { basisOfFats, givenFats, notesOfLye, type ChargedFat } from './assumptions.js';

/** Fats, alkalis and water of a pot, in a result. */
export interface GivenPot {
  readonly fats: readonly ChargedFat[];
  readonly lye: readonly LyeChargeGiven[];
  readonly water: Mass;
}

/** What was weighed into a pot, as read. */
export interface Charge {
  readonly fats: readonly FatCharge[];
  readonly lye: readonly LyeCharge[];
  /** Water added besides, grams. */
  readonly water: Decimal;
  readonly fatGrams: Decimal;
  /** Fats, lye and water, grams. */
  readonly charge: Decimal;
  readonly given: GivenPot;
  readonly notes: readonly Remark[];
  readonly basis: readonly SourceId[];
}

/**
 * Reads fats, lye and water among the fields of a pot; an empty path is that of the input itself.
 *
 * @throws CalculationError `missing`, `bad-shape`, `out-of-range` and the faults of a fat, source or quantity
 */
export function readCharge(path: string, fields: Fields): Charge {
  const lyePath = fieldPath(path, 'lye');
  const fats = readFatCharges(fieldPath(path, 'fats'), fields['fats']);
  const lye = readList(lyePath, fields['lye']).map((entry, at) => readLyeCharge(`${lyePath}[${String(at)}]`, entry));
  if (lye.every(({ grams }) => grams.isZero())) refuse('out-of-range', lyePath, 'more than 0 g of alkali', '0 g');
  const water = readOptionalMass(fieldPath(path, 'water'), fields['water']) ?? ZERO;
  const fatGrams = gramsOf(fats);
  return {
    fats,
    lye,
    water,
    fatGrams,
    charge: lye.reduce((sum, { grams }) => sum.plus(grams), fatGrams.plus(water)),
    given: frozen({ fats: givenFats(fats), lye: frozen(lye.map(givenCharge)), water: frozen({ g: water }) }),
    notes: frozen([...notesOfFats(fats), ...notesOfLye(lye)]),
    basis: frozen<readonly SourceId[]>([...basisOfFats(fats), 'ghs-naoh']),
  };
}
