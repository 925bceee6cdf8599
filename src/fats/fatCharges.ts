import { frozen, readList, readShape, refuse, ZERO, type Decimal } from '../numbers/index.js';
import { readMass, type MassInput } from '../quantities/index.js';
import type { Fat, SingleFat } from './fatType.js';
import { readFat } from './readFat.js';

/** A fat and how much of it is charged, as a caller gives it. */
export interface ChargedFatInput {
  readonly fat: Fat;
  readonly mass: MassInput;
  /** What a recipe prints of it, so that its fats can be given as they are; nothing is worked out from it. */
  readonly claimed?: unknown;
}

/** A fat and how much of it is charged, as read, in grams. */
export interface FatCharge<F extends Fat = Fat> {
  readonly fat: F;
  readonly grams: Decimal;
}

const EXPECTED = "a list such as [{ fat: fat('coconut-oil'), mass: { g: 500 } }], with at least one entry";

/**
 * Reads the fats of a charge: at least one, and together more than nothing.
 *
 * @throws CalculationError `missing`, `bad-shape`, `out-of-range` and the faults of a fat or a quantity
 */
export function readFatCharges(path: string, value: unknown): readonly FatCharge[] {
  const charges = readList(path, value, 1, EXPECTED).map((entry, at) => {
    const here = `${path}[${String(at)}]`;
    const { fat, mass } = readShape(here, entry, ['fat', 'mass', 'claimed']);
    return frozen({ fat: readFat(fat, `${here}.fat`), grams: readMass(`${here}.mass`, mass) });
  });
  if (charges.every(({ grams }) => grams.isZero())) refuse('out-of-range', path, 'more than 0 g of fat', '0 g');
  return charges;
}

/** Grams of fat in a charge. */
export function gramsOf(charges: readonly FatCharge[]): Decimal {
  return charges.reduce((sum, { grams }) => sum.plus(grams), ZERO);
}

/** The charge with every blend replaced by its parts. */
export function expandedCharges(charges: readonly FatCharge[]): readonly FatCharge<SingleFat>[] {
  return charges.flatMap(({ fat, grams }) =>
    fat.kind === 'blend'
      ? fat.parts.map((part) => ({ fat: part.fat, grams: grams.times(part.share.percent).div(100) }))
      : { fat, grams },
  );
}
