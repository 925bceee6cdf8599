import { Decimal, ONE, refuse, ZERO } from '../numbers/index.js';
import { atomicWeights, type Element } from './data/atomicWeights.js';

const LONGEST = 64;
const TOKEN = /([A-Z][a-z]?)(\d{0,4})|(\()|\)(\d{0,4})|[·.](\d{0,2})/gy;

/** A number written after a symbol; none means one. */
const times = (digits: string): Decimal => (digits === '' ? ONE : new Decimal(digits));

/**
 * Mass of a formula in g/mol: symbols, numbers, brackets in brackets, and `·` or `.` before water of crystallisation.
 *
 * @throws CalculationError `bad-shape`, with the path
 */
export function formulaMass(path: string, formula: unknown): Decimal {
  // one sum for each open bracket, the outermost first
  let sums = [ZERO];
  let whole = ZERO;
  let factor = ONE;
  let read = 0;
  const add = (mass: Decimal): void => {
    sums.push((sums.pop() ?? ZERO).plus(mass));
  };
  const endPart = (): boolean => {
    const [part, ...unclosed] = sums;
    if (part === undefined || part.isZero() || unclosed.length > 0) return false;
    whole = whole.plus(part.times(factor));
    return true;
  };
  const tokens = typeof formula === 'string' && formula.length <= LONGEST ? formula.matchAll(TOKEN) : [];
  for (const [token, symbol, count = '', bracket, closing, multiple] of tokens) {
    if (symbol !== undefined) {
      if (!Object.hasOwn(atomicWeights, symbol)) break;
      add(times(count).times(atomicWeights[symbol as Element].value));
    } else if (bracket !== undefined) sums.push(ZERO);
    else if (closing !== undefined) {
      const inner = sums.pop();
      if (inner === undefined || inner.isZero() || sums.length === 0) break;
      add(inner.times(times(closing)));
    } else {
      if (!endPart()) break;
      [sums, factor] = [[ZERO], times(multiple ?? '')];
    }
    read += token.length;
  }
  if (typeof formula !== 'string' || read !== formula.length || !endPart()) {
    const elements = Object.keys(atomicWeights).join(', ');
    refuse('bad-shape', path, `a formula such as C3H5(OH)3 or Na2CO3·10H2O of ${elements}`, formula);
  }
  return whole;
}
