import { frozen, refuse, suggestion, type Decimal } from '../numbers/index.js';
import { FATTY_ACIDS, type FattyAcid } from './data/fattyAcids.js';
import { molarMass } from './molarMass.js';

/** What the calculations need to know of a fatty acid. */
export interface FattyAcidFigures {
  readonly id: FattyAcid;
  readonly carbons: number;
  readonly doubleBonds: number;
  /** Whether it carries a hydroxyl group besides the acid's own. */
  readonly hydroxy: boolean;
  /** Formula of the free acid. */
  readonly formula: string;
  /** Molar mass of the free acid, g/mol. */
  readonly molarMass: Decimal;
}

const LIPID_NUMBER = /^C(\d+):(\d+)(?:-(iso|anteiso|oxo|conj|OH))?$/;
const known = new Map<FattyAcid, FattyAcidFigures>();

/**
 * Reads the name of a fatty acid.
 *
 * @throws CalculationError `unknown-acid`, with the path and a suggestion
 */
export function readFattyAcid(path: string, id: unknown): FattyAcid {
  const found = FATTY_ACIDS.find((acid) => acid === id);
  if (found !== undefined) return found;
  const near = typeof id === 'string' ? suggestion(id, FATTY_ACIDS) : '';
  return refuse('unknown-acid', path, `a fatty acid by lipid number, as C12:0 or C18:1-OH${near}`, id);
}

/**
 * Figures of a fatty acid, from its lipid number.
 *
 * A chain of n carbons with d double bonds is `CₙH₂ₙ₋₂dO₂`; a hydroxyl group adds one O, a keto group adds one O and
 * takes two H; branching and conjugation leave the formula as it is.
 */
export function fattyAcidFigures(id: FattyAcid): FattyAcidFigures {
  const kept = known.get(id);
  if (kept !== undefined) return kept;
  const [, carbonText, bondText, variant] = LIPID_NUMBER.exec(id) ?? [];
  const carbons = Number(carbonText);
  const doubleBonds = Number(bondText);
  const oxo = variant === 'oxo';
  const hydroxy = variant === 'OH';
  const hydrogens = 2 * carbons - 2 * doubleBonds - (oxo ? 2 : 0);
  const formula = `C${String(carbons)}H${String(hydrogens)}O${oxo || hydroxy ? '3' : '2'}`;
  const figures = frozen({ id, carbons, doubleBonds, hydroxy, formula, molarMass: molarMass(formula) });
  known.set(id, figures);
  return figures;
}
