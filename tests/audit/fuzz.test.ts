/**
 * Whatever comes in, an audit answers: with findings, in bounded number and text, and with figures that are figures. How the
 * cost grows with the rows is measured by `npm run fuzz`, since nothing in the tests is timed.
 */
import fc from 'fast-check';
import { toJson } from 'laurate';
import { auditRecipe, type AuditRecipeResult } from 'laurate/audit';
import { describe, expect, it } from 'vitest';
import { anything } from '../laws/anything.js';
import { textOf } from '../laws/exact.js';
import { placesIn, replaced } from '../laws/places.js';
import { fats as own, full, whole } from './recipes.js';

const SEED = { seed: 20261125, numRuns: 500 };
const VERDICTS = ['dangerous', 'wrong', 'doubtful', 'cannot-tell', 'sound'];
const MARK = '\u00A7';

/** What is wrong with a result, whatever it is of. */
function faultsIn(result: AuditRecipeResult): readonly string[] {
  const text = textOf(result);
  const texts = result.findings.flatMap((finding) => [
    finding.path,
    finding.explanation,
    ...finding.slips.flatMap(({ explanation, tell, words }) => [explanation, tell, ...Object.values(words)]),
  ]);
  // what could not be read is told as it came
  const ours = result.findings.flatMap(({ code, explanation }) => (code === 'unreadable' ? [] : [explanation]));
  const longest = Math.max(0, ...texts.map(({ length }) => length));
  const echoed = Math.max(0, ...[...texts.join('\n').matchAll(/\u00A7+/g)].map(([run]) => run.length));
  return [
    ...(VERDICTS.includes(result.verdict) ? [] : [`verdict ${result.verdict}`]),
    ...(result.findings.length > 0 ? [] : ['no findings']),
    ...(/"-?(?:NaN|Infinity)"/.test(text) ? ['a figure that is none'] : []),
    ...(ours.some((one) => /NaN|Infinity|undefined|\[object/.test(one)) ? ['odd words'] : []),
    ...(longest > 1200 ? [`a text of ${String(longest)}`] : []),
    ...(echoed > 80 ? [`an echo of ${String(echoed)}`] : []),
  ];
}

const faultsOf = (recipe: unknown, options: object = {}): readonly string[] =>
  faultsIn(auditRecipe(recipe, { fats: own, ...options }));

const places = placesIn(full);
const edges: readonly unknown[] = [
  0, '0', '0.0', '0e999999', '0e-999999', -1, '-0', 1e-40, '1e-40', '1e-24', 1e-7, '1e12', 1e15, '1e15', '999999999999999', 100, -100, '99.999999999999999999999999999999999', 110, 75,
  '0.0000000000000000000000000000000000000001', `1.${'0'.repeat(60)}`, '.5', '5.', '+5', '١', NaN, Infinity, '', ' ', null, undefined, true, [], {}, 'x'.repeat(1e6),
]; // prettier-ignore

describe('of anything', () => {
  it('at all', () => {
    fc.assert(
      fc.property(anything, anything, (value, options) => {
        expect(faultsIn(auditRecipe(value, options as object))).toEqual([]);
      }),
      SEED,
    );
  });

  it('at any place of a recipe', () => {
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.oneof(anything, fc.jsonValue()), (path, value) => {
        expect(faultsOf(replaced(full, path, value))).toEqual([]);
      }),
      SEED,
    );
  });

  it('with several edges at once', () => {
    const changes = fc.array(fc.tuple(fc.constantFrom(...places), fc.constantFrom(...edges)), { maxLength: 5 });
    fc.assert(
      fc.property(changes, (some) => {
        expect(faultsOf(some.reduce<unknown>((recipe, [path, by]) => replaced(recipe, path, by), full))).toEqual([]);
      }),
      SEED,
    );
  });

  it('each place by itself at some of the edges, left out, or with one field too many', () => {
    // each place takes every fourth edge, its neighbour the next ones: all of them at each would take half a minute
    const faults = places.flatMap((path, at) =>
      [...edges.filter((_, edge) => (edge + at) % 4 === 0), undefined, { besides: 1 }].flatMap((by) => {
        const found = faultsOf(replaced(full, path, by));
        return found.length === 0 ? [] : [`${path.join('.')} = ${String(by).slice(0, 20)}: ${found.join()}`];
      }),
    );
    expect(faults).toEqual([]);
  });
});

describe('numbers at the edges of what is read', () => {
  const masses = ['1e-24', '1e-12', '0.001', '1', '1e9', '1e12', '0'];
  const units = ['mg', 'g', 'kg', 'oz', 'lb'];

  it('each place of a whole pot at some of the edges', () => {
    const some = edges.filter((_, at) => at % 4 === 0);
    const faults = placesIn(whole).flatMap((path, at) =>
      [some[at % some.length], some[(at + 4) % some.length], undefined].flatMap((edge) =>
        faultsOf(replaced(whole, path, edge)).map((one) => `${path.join('.')} at ${String(edge).slice(0, 20)}: ${one}`),
      ),
    );
    expect(faults).toEqual([]);
    expect(faultsOf(whole)).toEqual([]);
  });

  it('huge and tiny ratios of every mass, with every claim', () => {
    const mass = fc
      .tuple(fc.constantFrom(...units), fc.constantFrom(...masses))
      .map(([unit, size]) => ({ [unit]: size }));
    const percent = fc
      .constantFrom('0', '1e-30', '-100', '100', '99.99', '50', '-0.5')
      .map((size) => ({ percent: size }));
    const value = fc.oneof(
      fc.constantFrom('1e-39', '1e-9', '19', '250', '701', '1e15').map((size) => ({ mgKohPerG: size })),
      fc.constantFrom('1e-39', '1e-9', '100', '220', '1e15').map((size) => ({ saponificationEquivalent: size })),
      fc.constantFrom('0.183', '1e12').map((size) => ({ gNaohPerG: size })),
    );
    const source = fc.oneof(
      fc.constantFrom('1e-30', '75', '50').map((size) => ({ solution: { hydroxide: { percent: size } } })),
      fc.constantFrom('1e-30', '110', '98').map((size) => ({ solid: { hydroxide: { percent: size } } })),
      fc.constant({ solid: { totalAlkali: { percent: '50' }, carbonate: { percent: '37' } } }),
      fc.constant({}),
    );
    const row = fc.record({
      fat: fc.constantFrom('olive-oil', 'Sour', 'Lot', 'beeswax', 'nobody knows'),
      mass,
      claimed: fc.record({ saponificationValue: value, share: percent }, { requiredKeys: [] }),
    });
    const recipe = fc.record({
      version: fc.constant(1),
      fats: fc.array(row, { minLength: 1, maxLength: 3 }),
      lye: fc.array(
        fc.tuple(fc.constantFrom('naoh', 'koh'), mass, source).map(([alkali, weighed, of]) => ({ alkali, mass: weighed, ...of })),
        { minLength: 1, maxLength: 2 },
      ),
      water: mass,
      additions: fc.constantFrom([], [{ name: 'clay', mass: { g: '1e12' } }]),
      target: fc.constantFrom({ superfat: { percent: '99' } }, { freeCausticAlkaliAtMost: { percentNaoh: '0' } }),
      claimed: fc.record(
        { superfat: percent, strength: percent, waterPerAlkali: fc.constantFrom('0', '1e15', '1e-39', '2'), waterPerFat: percent, kohShare: percent, total: mass },
        { requiredKeys: [] },
      ),
    }); // prettier-ignore
    fc.assert(
      fc.property(recipe, (some) => {
        expect(faultsOf(some)).toEqual([]);
      }),
      SEED,
    );
  });
});

describe('values made to break a reader', () => {
  const thrower = (): never => {
    throw new Error('read');
  };
  const cycle: Record<string, unknown> = {};
  cycle['g'] = cycle;
  const { proxy, revoke } = Proxy.revocable({}, {});
  const { proxy: list, revoke: revokeList } = Proxy.revocable([], {});
  revoke();
  revokeList();
  const deep = Array.from({ length: 100_000 }).reduce<unknown>((inner) => ({ g: inner }), 1);
  const hostile: readonly (readonly [string, unknown])[] = [
    ['a getter that throws', Object.defineProperty({}, 'g', { enumerable: true, get: thrower })],
    ['a proxy that throws', new Proxy({}, { ownKeys: thrower, get: thrower, getOwnPropertyDescriptor: thrower })],
    ['a revoked proxy', proxy],
    ['a revoked proxy of a list', list],
    ['a value that holds itself', cycle],
    ['data 100 000 deep', deep],
    ['text that throws', { toString: thrower, valueOf: thrower, toJSON: thrower }],
    ['a forged decimal', { toStringTag: '[object Decimal]', toString: thrower, constructor: thrower }],
    ['the prototype', JSON.parse('{"__proto__":{"g":1},"constructor":{"prototype":1},"toString":1}') as unknown],
    ['a symbol', Symbol('g')],
    ['a function', thrower],
    ['a big integer', 10n],
    ['a megabyte', MARK.repeat(1_000_000)],
    ['a name of a megabyte', { [MARK.repeat(1_000_000)]: { g: { g: 1 } } }],
    ['a list with holes', Object.assign(new Array<unknown>(3), { 2: 1 })],
  ];

  it.each(hostile)('%s, anywhere', (_, value) => {
    const faults = places.flatMap((path) => faultsOf(replaced(full, path, value)).map((one) => `${path.join('.')}: ${one}`));
    expect(faults).toEqual([]);
    expect(faultsOf(full, { fats: value })).toEqual([]);
    expect(faultsOf(full, { limit: value })).toEqual([]);
    expect(faultsOf(full, { fats: { Drum: value } })).toEqual([]);
    expect(faultsIn(auditRecipe(full, value as object))).toEqual([]);
  }); // prettier-ignore

  it('no prototype is touched by a recipe that names one', () => {
    auditRecipe(JSON.parse('{"version":1,"__proto__":{"polluted":1},"claimed":{"__proto__":{"polluted":1}}}'));
    expect('polluted' in {}).toBe(false);
  });
});

describe('much of it', () => {
  const lye = [{ alkali: 'naoh', mass: { g: '50' }, solid: { hydroxide: { percent: 99 } } }];
  const of = (count: number, row: unknown, more: object = {}) => ({
    version: 1,
    fats: Array.from({ length: count }, () => row),
    lye,
    ...more,
  });
  const claimed = { saponificationValue: { mgKohPerG: '300' }, share: { percent: '50' } };

  it.each<[string, object]>([
    ['100 000 fats', of(100_000, { fat: 'olive-oil', mass: { g: '1' } }, { claimed: { superfat: { percent: '5' } } })],
    ['20 000 fats with false claims', of(20_000, { fat: 'olive-oil', mass: { g: '1' }, claimed })],
    ['100 000 rows that cannot be read', of(100_000, { mass: 1, claimed: 1 })],
    ['5 000 fats that nobody knows', of(5_000, { fat: 'nobody knows', mass: { g: '1' } })],
    ['20 000 alkalis', { ...of(1, { fat: 'olive-oil', mass: { g: '1' } }), lye: Array.from({ length: 20_000 }, () => lye[0]), claimed: { superfat: { percent: '5' }, strength: { percent: '9' } } }],
    ['100 000 additions', of(1, { fat: 'olive-oil', mass: { g: '1' } }, { additions: Array.from({ length: 100_000 }, (_, at) => ({ name: `clay ${String(at)}`, mass: { g: '1' }, claimed: { share: { percent: '9' } } })), claimed: { total: { g: '3' }, shares: { soap: { percent: '90' } } } })],
  ])('%s are answered, with a bounded number of findings', (_, recipe) => {
    const result = auditRecipe(recipe);
    expect(faultsIn(result)).toEqual([]);
    expect(result.findings.length).toBeLessThan(200);
  }); // prettier-ignore

  it('names are cut, of fats known and unknown, and of additions', () => {
    const long = MARK.repeat(200);
    const fat = { ...toJson(own.Lot), name: long };
    const recipe = (named: unknown) => ({
      version: 1,
      fats: [
        { fat: named, mass: { g: '100' }, claimed },
        { fat: 'Second', mass: { g: '50' }, claimed },
      ],
      lye,
      additions: [{ name: long, mass: { g: '9' } }],
      claimed: { superfat: { percent: '5' }, total: { g: '200' } },
    });
    expect(faultsOf(recipe(fat))).toEqual([]);
    expect(faultsOf(recipe(long))).toEqual([]);
    expect(faultsOf(recipe(long), { fats: { ...own, [long]: fat } })).toEqual([]);
    expect(faultsOf(recipe(long), { fats: { ...own, [long]: { name: 1 } } })).toEqual([]);
  });
});
