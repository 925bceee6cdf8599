import { frozen, type Decimal } from '../numbers/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { molarMass } from './molarMass.js';

/** A molar mass. */
export interface MolarMass {
  readonly gPerMol: Decimal;
}

/** Result of {@link molarMassOf}. */
export interface MolarMassResult {
  /** Molar mass of the formula unit. */
  readonly molarMass: MolarMass;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Molar mass of a chemical formula.
 *
 * Formula: `M = Σ nᵢ·Aᵢ`, with nᵢ the atoms of an element and Aᵢ its abridged standard atomic weight (g/mol).
 * Elements on file: H, C, N, O, Na, S, Cl, K, I. Brackets and water of crystallisation (`Na2CO3·10H2O`) are read.
 *
 * Source: IUPAC standard atomic weights 2021, abridged values.
 *
 * @param formula - a formula of at most 64 characters
 * @returns the molar mass in g/mol
 * @throws CalculationError `bad-shape` for what is not a formula of these elements
 *
 * @example
 * ```ts
 * molarMassOf('C12H24O2').molarMass; // => { gPerMol: '200.322' }
 * ```
 */
export function molarMassOf(formula: string): MolarMassResult {
  return frozen({ molarMass: frozen({ gPerMol: molarMass(formula) }), basis: BASIS, edition: EDITION });
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iupac-2021']);
