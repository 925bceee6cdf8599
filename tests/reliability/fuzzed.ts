/**
 * Bounded inputs, drawn with fixed seeds, and what may not come of them: an error that is none of ours, a figure that is
 * none, a changed input. Half of what is drawn is lawful or nearly so, to reach beyond the readers.
 */
import fc from 'fast-check';
import { isCalculationError } from 'laurate';
import { textOf } from '../laws/exact.js';
import { isDecimal, type Example } from '../laws/examples.js';
import { placesIn, replaced } from '../laws/places.js';

/** What came of the inputs of one function. */
export interface Tally {
  readonly name: string;
  readonly tried: number;
  /** Answered with a result; an audit answers always. */
  readonly answered: number;
  /** Refused with the typed error. */
  readonly refused: number;
  readonly faults: readonly string[];
  readonly seconds: number;
}

const anything = fc.anything({ maxDepth: 2, maxKeys: 4, withBigInt: true, withDate: true, withMap: true, withNullPrototype: true, withSparseArray: true }); // prettier-ignore
const edges: readonly unknown[] = [
  0, -0, 1, -1, 100, 101, '0', '1e-40', '1e15', '1e-24', '1e12', '0e999999', '999999999999999', '0.000000000000000000000000001', `1.${'0'.repeat(60)}`,
  '.5', '+5', '1,5', '0x10', ' 1', '', Number.NaN, Number.POSITIVE_INFINITY, 1e300, 5e-324, null, undefined, true, [], {}, 'as-is', 'naoh', 'koh', 'ethanol', 'coconut-oil',
  '__proto__', 'constructor', { g: 1 }, { percent: 50 }, { low: { percent: 1 }, high: { percent: 2 } }, { low: 2, high: 1 }, { mgKohPerG: 200 }, { celsius: 60 }, 'x'.repeat(2000),
]; // prettier-ignore
/** Moves a figure: mostly a little, now and then by orders of magnitude. */
const factors = ['0', '0.001', '0.1', '0.5', '0.9', '0.999', '1.001', '1.1', '2', '10', '1000', '-1', '1e9', '1e-9'];

type Change = (args: unknown) => unknown;

const moved = (value: unknown, factor: string): unknown => {
  const number = Number(value);
  if (value === '' || typeof value === 'boolean' || value === null || !Number.isFinite(number)) return value;
  const product = Number((number * Number(factor)).toPrecision(12));
  return typeof value === 'number' ? product : String(product);
};

const at = (value: unknown, [key, ...rest]: readonly string[]): unknown =>
  key === undefined ? value : at((value as Record<string, unknown>)[key], rest);

/** A change at one place of what a function takes. */
function changesOf(args: readonly unknown[]): fc.Arbitrary<Change> {
  const places = placesIn(args).filter((path) => path.length > 0);
  const leaves = places.filter((path) => {
    const value = at(args, path);
    return typeof value === 'number' || (typeof value === 'string' && value !== '' && Number.isFinite(Number(value)));
  });
  const place = fc.constantFrom(...places);
  const another = (value: fc.Arbitrary<unknown>): fc.Arbitrary<Change> =>
    fc.tuple(place, value).map(
      ([path, by]) =>
        (whole) =>
          replaced(whole, path, by),
    );
  const move = fc.tuple(fc.constantFrom(...(leaves.length > 0 ? leaves : places)), fc.constantFrom(...factors)).map(
    ([path, factor]): Change =>
      (whole) =>
        replaced(whole, path, moved(at(whole, path), factor)),
  );
  const beside = place.map(
    (path): Change =>
      (whole) =>
        replaced(whole, [...path, 'besides'], 1),
  );
  return fc.oneof(
    { arbitrary: move, weight: 12 },
    { arbitrary: another(fc.constantFrom(...edges)), weight: 3 },
    { arbitrary: another(anything), weight: 2 },
    { arbitrary: beside, weight: 1 },
  );
}

/** Inputs of a function: its examples with one change or two. */
function inputsOf({ args }: Example): fc.Arbitrary<readonly unknown[]> {
  const taking = args.filter((set) => set.length > 0);
  const sets = taking.map((set) =>
    fc.array(changesOf(set), { minLength: 1, maxLength: 2 }).map((changes) =>
      changes.reduce<unknown>((whole, change) => {
        try {
          return change(whole);
        } catch {
          return whole; // a place that an earlier change took away
        }
      }, set),
    ),
  );
  return fc.oneof(...sets).map((some) => (Array.isArray(some) ? (some as readonly unknown[]) : [some]));
}

/** Freezes what can be frozen: a write to it would be a TypeError, and no refusal. */
function freeze(value: unknown): void {
  if (typeof value !== 'object' || value === null || isDecimal(value) || Object.isFrozen(value)) return;
  if (!Array.isArray(value) && ![Object.prototype, null].includes(Object.getPrototypeOf(value) as object | null))
    return;
  Object.freeze(value);
  Object.values(value).forEach(freeze);
}

/** The path of a figure that is none. */
function noFigure(value: unknown, path = ''): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : path;
  if (typeof value !== 'object' || value === null) return undefined;
  if (isDecimal(value)) return (value as { isFinite: () => boolean }).isFinite() ? undefined : path;
  for (const key of Object.keys(value)) {
    const found = noFigure((value as Record<string, unknown>)[key], `${path}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Every so many inputs are written out before and after: what freezing does not show. */
const WRITTEN_OUT = 50;
const shown = (value: unknown): string => {
  try {
    return textOf(value);
  } catch {
    return ''; // a big integer has no JSON
  }
};

/** Tries one function on so many inputs; `mayRefuse` is false for what has to answer whatever comes. */
export function tallyOf(example: Example, count: number, seed: number, mayRefuse: boolean): Tally {
  const { name, run } = example;
  let [tried, answered, refused] = [0, 0, 0];
  const faults: string[] = [];
  const fault = (what: string, args: readonly unknown[]): void => {
    if (faults.length < 5) faults.push(`${what}: ${shown(args).slice(0, 2000)}`);
  };
  const start = performance.now();
  fc.assert(
    fc.property(inputsOf(example), (args) => {
      tried += 1;
      freeze(args);
      const isWritten = tried % WRITTEN_OUT === 0;
      const before = isWritten ? shown(args) : '';
      try {
        const result = run(...args);
        answered += 1;
        const path = noFigure(result);
        if (path !== undefined) fault(`no figure at ${path}`, args);
      } catch (error) {
        refused += 1;
        if (!mayRefuse || !isCalculationError(error)) fault(String(error), args);
        else if (/NaN|undefined|\[object/.test(error.expected)) fault(`odd words, ${error.message}`, args);
      }
      if (isWritten && shown(args) !== before) fault('a changed input', args);
    }),
    { seed, numRuns: count },
  );
  return { name, tried, answered, refused, faults, seconds: (performance.now() - start) / 1000 };
}
