import type { Decimal } from '../numbers/index.js';
import { formulaMass } from './formulaMass.js';

// The formulas of this library are few; what callers bring beyond that is not kept, so that memory stays bounded.
const KEPT = 200;
const known = new Map<string, Decimal>();

/**
 * Molar mass of a formula in g/mol, worked out when first needed and then remembered.
 *
 * @throws CalculationError `bad-shape`, with the path
 */
export function molarMass(formula: string, path = 'formula'): Decimal {
  const mass = known.get(formula) ?? formulaMass(path, formula);
  if (known.size < KEPT) known.set(formula, mass);
  return mass;
}
