/**
 * Whatever comes in, a function answers or refuses by the one typed error; nothing else is ever thrown.
 *
 * `toJson` is tried on data only: it writes out results of this library, and a value that holds itself has no JSON.
 */
import fc from 'fast-check';
import { isCalculationError, toJson } from 'laurate';
import { describe, expect, it } from 'vitest';
import { anything } from './anything.js';
import { textOf } from './exact.js';
import { examples, type Example } from './examples.js';
import { placesIn, replaced } from './places.js';

const SEED = { seed: 20261125, numRuns: 500 };

/** What a call ends in, where it is neither an answer, with figures that are figures, nor a refusal. */
function fault(run: Example['run'], args: readonly unknown[]): string | undefined {
  try {
    const none = /"-?(?:NaN|Infinity)"/.exec(textOf(run(...args)));
    if (none !== null) return `a figure that is ${none[0]}`;
  } catch (error) {
    if (!isCalculationError(error)) return String(error);
  }
  return undefined;
}

/** Near misses reach further in than anything at random. */
const nearMiss = fc.oneof(
  anything,
  fc.constantFrom(-1, 0, 1e300, -0, 1e-300, Number.NaN, '', ' ', '1e15', '-1e-40', '0x10', 'as-is', '__proto__', 'constructor', null, undefined),
  fc.double(),
  fc.record({ low: anything, high: anything }),
  fc.dictionary(fc.constantFrom('g', 'percent', 'mgKohPerG', 'solid', 'fat', 'kind', '__proto__'), anything),
); // prettier-ignore

// a function that takes nothing has no place to put anything
const taking = examples.filter(({ args }) => args.some((set) => set.length > 0));

describe.each(taking)('$name', ({ run, args }) => {
  const places = args.flatMap((set) =>
    placesIn(set)
      .filter((path) => path.length > 0)
      .map((path) => [set, path] as const),
  );

  it('of anything, at any place of what it takes', () => {
    const wholly = fc.array(anything, { minLength: 1, maxLength: 3 });
    const partly = fc
      .tuple(fc.constantFrom(...places), nearMiss)
      .map(([[set, path], value]) => replaced(set, path, value) as unknown[]);
    fc.assert(
      fc.property(fc.oneof(wholly, partly, partly), (some) => {
        expect(fault(run, some)).toBeUndefined();
      }),
      SEED,
    );
  });

  it('with any field left out, or one too many', () => {
    const faults = args.flatMap((set) =>
      placesIn(set).flatMap((path) => {
        const beside = replaced(set, [...path, 'besides'], 1);
        const without = replaced(set, path, undefined);
        return [beside, without].flatMap((some) => fault(run, Array.isArray(some) ? some : []) ?? []);
      }),
    );
    expect(faults).toEqual([]);
  });

  it('of values made to break a reader', () => {
    // one line a kind of value: where it breaks first
    const faults = new Map<string, string>();
    for (const [set, path] of places) {
      for (const [kind, value] of Object.entries(hostile())) {
        const found = fault(run, replaced(set, path, value) as unknown[]);
        if (found !== undefined && !faults.has(kind)) faults.set(kind, `${path.join('.')}: ${found}`);
      }
    }
    expect(Object.fromEntries(faults)).toEqual({});
  });
});

function hostile(): Record<string, unknown> {
  const thrower = (): never => {
    throw new Error('read');
  };
  const cycle: Record<string, unknown> = { kind: 'blend', low: { g: 1 } };
  cycle['parts'] = [{ fat: cycle, share: { percent: 100 } }];
  cycle['high'] = cycle;
  const { proxy, revoke } = Proxy.revocable({}, {});
  revoke();
  return {
    'a getter that throws': Object.defineProperty({}, 'g', { enumerable: true, get: thrower }),
    'a list whose entry throws': Object.defineProperty([1], 0, { enumerable: true, get: thrower }),
    'a proxy that throws': new Proxy({}, { ownKeys: thrower, get: thrower, getOwnPropertyDescriptor: thrower }),
    'a proxy without prototype': new Proxy({}, { getPrototypeOf: thrower }),
    'a revoked proxy': proxy,
    'a proxy of a list': new Proxy([1], { get: thrower }),
    'a forged decimal': { toStringTag: '[object Decimal]', toString: thrower },
    'a decimal with a getter': Object.defineProperty({}, 'toStringTag', { enumerable: true, get: thrower }),
    'an object whose text throws': { toString: thrower, valueOf: thrower },
    'an object without prototype': Object.create(null) as unknown,
    'a value that holds itself': cycle,
    'a symbol': Symbol('g'),
    ['a function']: thrower,
    'a big integer': 10n,
    'a wrapped number': new Number(1),
    'a list with holes': Object.assign(new Array<unknown>(3), { 2: 1 }),
  };
}

describe('toJson and isCalculationError', () => {
  it('of anything that is data', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(fault(toJson, [value])).toBeUndefined();
        expect(isCalculationError(value)).toBe(false);
      }),
      SEED,
    );
  });

  it('an error is recognised by what it says of itself, and by nothing less', () => {
    expect(isCalculationError(new Error('CalculationError'))).toBe(false);
    expect(isCalculationError({ name: 'CalculationError', code: 'missing', path: 'x' })).toBe(false);
  });
});
