import { Decimal, refuse } from '../numbers/index.js';
import { atomicWeights } from './data/atomicWeights.js';
import { parsedFormula } from './parsedFormula.js';

// The formulas of this library are few; what callers bring is not kept, so that memory stays bounded.
const KEPT = 200;
const known = new Map<string, Decimal>();

/**
 * Molar mass of a formula in g/mol, worked out when first needed and then remembered.
 *
 * @throws CalculationError `bad-shape`, with the path
 */
export function molarMass(formula: string, path = 'formula'): Decimal {
  const kept = known.get(formula);
  if (kept !== undefined) return kept;
  let mass = new Decimal(0);
  for (const [element, count] of parsedFormula(path, formula)) {
    mass = mass.plus(new Decimal(atomicWeights[element].value).times(count));
  }
  if (mass.isZero()) refuse('bad-shape', path, 'a formula with at least one atom', formula);
  if (known.size < KEPT) known.set(formula, mass);
  return mass;
}
