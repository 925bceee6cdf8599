import { refuse } from '../numbers/index.js';
import { atomicWeights, type Element } from './data/atomicWeights.js';

/** Atoms of each element in one formula unit. */
export type AtomCounts = ReadonlyMap<Element, number>;

const LONGEST = 64;
const TOKEN = /([A-Z][a-z]?)(\d{0,4})|(\()|\)(\d{0,4})|([·.])(\d{0,2})/gy;
const EXPECTED = `a formula such as C3H5(OH)3 or Na2CO3·10H2O of ${Object.keys(atomicWeights).join(', ')}`;

/** A number written after a symbol; none means one. */
const times = (digits: string | undefined): number => (digits === undefined || digits === '' ? 1 : Number(digits));

/**
 * Counts the atoms of a formula: symbols, numbers, brackets in brackets, and `·` or `.` before water of crystallisation.
 *
 * @throws CalculationError `bad-shape`, with the path
 */
export function parsedFormula(path: string, formula: unknown): AtomCounts {
  if (typeof formula !== 'string' || formula === '' || formula.length > LONGEST)
    refuse('bad-shape', path, EXPECTED, formula);
  const total = new Map<Element, number>();
  let open = [new Map<Element, number>()];
  let factor = 1;
  let read = 0;
  const refuseFormula = (): never => refuse('bad-shape', path, EXPECTED, formula);

  const add = (into: Map<Element, number>, element: Element, count: number): void => {
    into.set(element, (into.get(element) ?? 0) + count);
  };
  const endPart = (): void => {
    const [part, ...unclosed] = open;
    if (part === undefined || unclosed.length > 0 || part.size === 0) return refuseFormula();
    for (const [element, count] of part) add(total, element, count * factor);
  };

  for (const [token, symbol, count, bracket, closing, dot, multiple] of formula.matchAll(TOKEN)) {
    read += token.length;
    const inner = open.at(-1);
    if (inner === undefined) refuseFormula();
    else if (symbol !== undefined) {
      if (!Object.hasOwn(atomicWeights, symbol)) refuseFormula();
      add(inner, symbol as Element, times(count));
    } else if (bracket !== undefined) open.push(new Map<Element, number>());
    else if (closing !== undefined) {
      open.pop();
      const outer = open.at(-1);
      if (outer === undefined) refuseFormula();
      else for (const [element, n] of inner) add(outer, element, n * times(closing));
    } else if (dot !== undefined) {
      endPart();
      open = [new Map<Element, number>()];
      factor = times(multiple);
    }
  }
  if (read !== formula.length) refuseFormula();
  endPart();
  return total;
}
