import { frozen, readList, readShape, readText, refuse, ZERO } from '../numbers/index.js';
import { readMass, type MassInput } from '../quantities/index.js';
import { blendOf } from './blend.js';
import { expandedCharges, type FatCharge } from './fatCharges.js';
import type { Fat, FatBlend } from './fatType.js';
import { readFat } from './readFat.js';

/** Input of {@link fatFromBlend}. */
export interface FatFromBlendInput {
  readonly name: string;
  /** What is blended, by mass; a blend in a blend counts by its parts. */
  readonly parts: readonly { readonly fat: Fat; readonly mass: MassInput }[];
}

/**
 * A blend of fats, as one fat.
 *
 * Formula: `SV = Σ mᵢ·SVᵢ / Σ mᵢ`, each bound from the bounds of the parts. The blend keeps its parts, and every
 * calculation looks through it to them: blending first or charging them apart gives the same lye.
 *
 * @param input - name and parts with their masses
 * @returns a frozen fat; its saponification value in mg KOH/g, its parts as shares by mass
 * @throws CalculationError `missing`, `bad-shape`, `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const stock = fatFromBlend({
 *   name: 'Base stock',
 *   parts: [
 *     { fat: fat('coconut-oil'), mass: { g: 700 } },
 *     { fat: fat('castor-oil'), mass: { g: 300 } },
 *   ],
 * });
 * stock.parts.map((part) => part.share.percent.toFixed(0)); // => ['70', '30']
 * ```
 */
export function fatFromBlend(input: FatFromBlendInput): FatBlend {
  const fields = readShape('input', input, ['name', 'parts']);
  const name = readText('name', fields['name']);
  const charges = readList('parts', fields['parts']).map((part, at): FatCharge => {
    const path = `parts[${String(at)}]`;
    const { fat, mass } = readShape(path, part, ['fat', 'mass']);
    return { fat: readFat(fat, `${path}.fat`), grams: readMass(`${path}.mass`, mass) };
  });
  const singles = expandedCharges(charges);
  const total = singles.reduce((sum, { grams }) => sum.plus(grams), ZERO);
  if (total.isZero()) refuse('out-of-range', 'parts', 'parts that weigh more than 0 together', '0');
  return blendOf(
    name,
    singles.map(({ fat, grams }) => frozen({ fat, share: frozen({ percent: grams.times(100).div(total) }) })),
  );
}
