import fc from 'fast-check';
import { fat } from 'laurate';
import { readRecipe } from 'laurate/recipe';
import { describe, expect, it } from 'vitest';
import { readParts } from '../../src/recipe/readParts.js';
import { lot, recipe, SMALL, WORKED } from './recipes.js';

const parts = (value: unknown, options: unknown = {}) => readParts(value, options);
const faultsOf = (value: unknown, options?: unknown) =>
  parts(value, options).faults.map(({ code, path }) => `${code} ${path}`);

describe('readParts: a recipe without fault', () => {
  it('is read as readRecipe reads it', () => {
    fc.assert(
      fc.property(fc.oneof(recipe, fc.constant(WORKED)), (value) => {
        const whole = readRecipe(value);
        const read = parts(value);
        expect(read.faults).toEqual([]);
        expect(read.fats.rows.map(({ row: { fat: found, mass, claimed } }) => ({ fat: found, mass, claimed }))).toEqual(
          whole.fats.map((row) => ({ claimed: {}, ...row })),
        );
        expect(read.lye.rows.map(({ row }) => row)).toEqual(whole.lye);
        expect(read.additions.rows.map(({ row }) => row)).toEqual(whole.additions ?? []);
        expect(read.temperatures.rows.map(({ row }) => row)).toEqual(whole.temperatures ?? []);
        expect([read.water, read.target, read.claimed]).toEqual([whole.water, whole.target, whole.claimed ?? {}]);
        const lists = [read.fats, read.lye, read.additions, read.temperatures];
        expect(lists.every(({ areAll }) => areAll)).toBe(true);
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it('says where each row stands', () => {
    const { fats, lye } = parts({ ...SMALL, fats: [...SMALL.fats, { fat: 'castor-oil', mass: { g: 1 } }] });
    expect([...fats.rows, ...lye.rows].map(({ path }) => path)).toEqual(['fats[0]', 'fats[1]', 'lye[0]']);
  });

  it('takes lye without assay, and tells it from a wrong one', () => {
    const lye = [
      { alkali: 'naoh', mass: { g: 158 } },
      { alkali: 'koh', mass: { g: 5 }, solid: {} },
    ];
    const read = parts({ ...SMALL, lye });
    expect(read.lye).toEqual({
      rows: [{ path: 'lye[0]', row: { alkali: 'naoh', mass: { g: '158' } } }],
      areAll: false,
    });
    expect(read.faults.map(({ path }) => path)).toEqual(['lye[1].solid']);
  });

  it('takes lye by one form only', () => {
    const solid = { hydroxide: { percent: 99 } };
    const both = { alkali: 'naoh', mass: { g: 158 }, solid, solution: { hydroxide: { percent: 50 } } };
    expect(faultsOf({ ...SMALL, lye: [both] })).toEqual(['bad-shape lye[0]']);
    expect(faultsOf({ ...SMALL, lye: [{ alkali: 'naoh', mass: { g: 158 }, solution: {} }] })).toEqual([
      'missing lye[0].solution.hydroxide',
    ]);
  });

  it('has no field for what was not printed, or cannot be read', () => {
    const fats = [{ fat: 'coconut-oil', mass: { g: 1 }, claimed: { share: { percent: 101 }, saponificationValue: 1 } }];
    const read = parts({ ...SMALL, fats, claimed: { superfat: 1, total: { g: 2 } } });
    expect(Object.keys(read.claimed)).toEqual(['total']);
    expect(read.fats.rows[0]?.row.claimed).toEqual({});
    expect(Object.keys(parts({ ...SMALL, claimed: undefined }).claimed)).toEqual([]);
  });

  it('knows own fats', () => {
    const value = { ...SMALL, fats: [{ fat: 'drum 7', mass: { g: 1 } }] };
    expect(parts(value, { fats: { 'drum 7': lot } }).fats.rows[0]?.row.fat).toBe(lot);
  });
});

describe('readParts: faults', () => {
  it('are all found, and the rest is read', () => {
    const read = parts({
      version: 2,
      title: '',
      fats: [
        { fat: 'coconut-oil', mass: { g: '900' }, claimed: { saponificationValue: 190 } },
        { fat: 'no such fat', mass: { g: 100 }, claimed: { share: { percent: 10 } } },
        { fat: 'castor-oil', mass: { g: -1 }, claimed: { share: { percent: -2 } } },
        'castor-oil',
      ],
      lye: [
        { alkali: 'naoh', mass: { g: 1 }, solution: { hydroxide: { percent: 99 } } },
        { alkali: 'naoh', mass: { g: 158 } },
      ],
      water: { cups: 1 },
      additions: [{ name: 'colour' }, { name: 'scent', mass: { g: 2 } }],
      target: {},
      claimed: { superfat: { percent: 4 }, ph: 15, total: 900, colour: 5, scent: 7 },
      temperatures: [{ stage: 'lye' }, { stage: 'lye', temperature: { celsius: 60 } }],
      notes: 'none',
      yield: 12,
    });
    expect(read.faults.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'unknown-key recipe.notes',
      'unknown-key recipe.yield',
      'out-of-range version',
      'bad-shape title',
      'bad-shape fats[0].claimed.saponificationValue',
      'unknown-fat fats[1].fat',
      'out-of-range fats[2].mass.g',
      'out-of-range fats[2].claimed.share.percent',
      'bad-shape fats[3]',
      'out-of-range lye[0].solution.hydroxide.percent',
      'unknown-unit water.cups',
      'missing additions[0]',
      'missing target.superfat',
      'unknown-key claimed.colour',
      'unknown-key claimed.scent',
      'bad-shape claimed.total',
      'out-of-range claimed.ph',
      'missing temperatures[0].temperature',
    ]);
    expect(read.fats).toEqual({
      rows: [
        { path: 'fats[0]', row: { named: 'coconut-oil', fat: fat('coconut-oil'), mass: { g: '900' }, claimed: {} } },
        { path: 'fats[1]', row: { named: 'no such fat', fat: undefined, mass: { g: '100' }, claimed: { share: { percent: '10' } } } },
      ],
      areAll: false,
    }); // prettier-ignore
    expect(read.lye).toEqual({
      rows: [{ path: 'lye[1]', row: { alkali: 'naoh', mass: { g: '158' } } }],
      areAll: false,
    });
    expect(read.additions).toEqual({
      rows: [{ path: 'additions[1]', row: { name: 'scent', mass: { g: '2' } } }],
      areAll: false,
    });
    expect(read.temperatures).toEqual({
      rows: [{ path: 'temperatures[1]', row: { stage: 'lye', temperature: { celsius: '60' } } }],
      areAll: false,
    });
    expect([read.water, read.target, read.claimed]).toEqual([undefined, undefined, { superfat: { percent: '4' } }]);
  });

  it.each([
    ['nothing', undefined, 'missing recipe'],
    ['null', null, 'missing recipe'],
    ['a text', '{}', 'bad-shape recipe'],
    ['a list', [SMALL], 'bad-shape recipe'],
  ])('of %s there is one', (_what, value, fault) => {
    expect(faultsOf(value)).toEqual([fault]);
    const { fats, lye, claimed } = parts(value);
    expect([fats, lye, claimed]).toEqual([{ rows: [], areAll: false }, { rows: [], areAll: false }, {}]);
  });

  it('name the lists that are missing or none', () => {
    expect(faultsOf({ version: 1 })).toEqual(['missing fats', 'missing lye']);
    expect(faultsOf({ version: 1, fats: [], lye: {}, additions: 'colour' })).toEqual([
      'bad-shape fats',
      'bad-shape lye',
      'bad-shape additions',
    ]);
    expect(parts({ ...SMALL, additions: 'colour' }).additions).toEqual({ rows: [], areAll: false });
    expect(parts(SMALL).additions).toEqual({ rows: [], areAll: true });
  });

  it('in options do not keep the recipe from being read', () => {
    const read = parts(SMALL, { fats: 7 });
    expect(read.faults.map(({ path }) => path)).toEqual(['options.fats']);
    expect(read.fats.areAll && read.lye.areAll).toBe(true);
  });

  it('are nought where readRecipe reads, and some where it refuses for more than a missing assay', () => {
    const wrong = fc.constantFrom(null, '', 'x', -1, [], {}, { g: 1, kg: 1 });
    fc.assert(
      fc.property(recipe, fc.constantFrom('version', 'title', 'fats', 'lye', 'water', 'target', 'claimed', 'extra'), wrong, (value, key, by) => {
        const changed = { ...value, [key]: by };
        let isRead = true;
        try {
          readRecipe(changed);
        } catch {
          isRead = false;
        }
        expect(parts(changed).faults.length === 0).toBe(isRead);
      }),
      { seed: 20261125, numRuns: 300 },
    ); // prettier-ignore
  });

  it('and nothing else come of anything', () => {
    const thing = fc.anything({ withBigInt: true, withDate: true, withMap: true, withSparseArray: true });
    const near = fc.dictionary(fc.constantFrom('version', 'fats', 'lye', 'claimed', 'additions', '__proto__'), thing);
    fc.assert(
      fc.property(fc.oneof(thing, near), thing, (value, options) => {
        expect(parts(value, options).faults.every(({ name }) => name === 'CalculationError')).toBe(true);
        expect(parts(value, options).faults.length).toBeGreaterThan(0);
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  it('of ten thousand rows, each with its own, are found', () => {
    const fats = Array.from({ length: 10_000 }, (_, at) => ({ fat: `fat no. ${String(at)}`, mass: { g: 1 } }));
    expect(parts({ ...SMALL, fats }).faults.length).toBe(10_000);
  });
});
