/** Values that no JSON holds, and sizes that no maker needs: each ends in a recipe or a short refusal, in bounded time. */
import { fat } from 'laurate';
import { readRecipe } from 'laurate/recipe';
import { describe, expect, it } from 'vitest';
import { plainData } from '../../src/recipe/plainData.js';
import { refusal } from '../laws/refusal.js';
import { SMALL } from './recipes.js';

const [row] = SMALL.fats;
const parsed = (json: string): unknown => JSON.parse(json);
const refused = (value: unknown) => refusal(() => readRecipe(value));
const revoked = (target: object): object => {
  const { proxy, revoke } = Proxy.revocable(target, {});
  revoke();
  return proxy;
};
const throwing = new Proxy(
  {},
  {
    ownKeys: () => {
      throw new Error('run');
    },
  },
);
const holdingItself: Record<string, unknown> = {};
holdingItself['claimed'] = holdingItself;
const listOfItself: unknown[] = [];
listOfItself.push(listOfItself);
const deep = (levels: number): unknown => parsed('{"claimed":'.repeat(levels) + '1' + '}'.repeat(levels));

describe('plainData', () => {
  it('copies data, frozen, with Decimals as text and without fields of undefined', () => {
    const value = {
      list: [1, 'x', null, { g: fat('coconut-oil').saponificationValue.low.mgKohPerG }],
      none: undefined,
    };
    const copy = plainData('', value) as typeof value;
    expect(JSON.stringify(copy)).toBe('{"list":[1,"x",null,{"g":"248"}]}');
    expect(Object.keys(copy)).toEqual(['list']);
    expect([copy, copy.list, copy.list[3]].every(Object.isFrozen)).toBe(true);
  });

  it('leaves a fat of this library as it is', () => {
    const oil = fat('coconut-oil');
    expect((plainData('', { fat: oil }) as { fat: unknown }).fat).toBe(oil);
  });

  it('reads each getter once', () => {
    let count = 0;
    const mass = {
      get g() {
        count += 1;
        return count;
      },
    };
    expect(readRecipe({ ...SMALL, fats: [{ fat: 'castor-oil', mass }] }).fats[0]?.mass).toEqual({ g: '1' });
    expect(count).toBe(1);
  });
});

describe('readRecipe: values that are no data', () => {
  it.each<[string, unknown, string, string]>([
    ['a getter that throws', { ...SMALL, fats: [{ fat: 'castor-oil', get mass() { throw new Error('run'); } }] }, 'bad-shape', 'fats[0]'],
    ['a proxy that throws', { ...SMALL, claimed: throwing }, 'bad-shape', 'claimed'],
    ['a proxy that throws as a whole', throwing, 'bad-shape', 'recipe'],
    ['a revoked proxy', { ...SMALL, water: revoked({}) }, 'bad-shape', 'water'],
    ['a revoked proxy of a list', { ...SMALL, fats: revoked([]) }, 'bad-shape', 'fats'],
    ['a revoked proxy of a function', { ...SMALL, title: revoked(() => 1) }, 'bad-shape', 'title'],
    ['a revoked proxy as a whole', revoked({}), 'bad-shape', 'recipe'],
    ['a recipe that holds itself', holdingItself, 'bad-shape', `${'claimed.'.repeat(16)}claimed`],
    ['a list that holds itself', { ...SMALL, fats: listOfItself }, 'bad-shape', `fats${'[0]'.repeat(16)}`],
    ['a thousand levels', deep(1000), 'bad-shape', `${'claimed.'.repeat(16)}claimed`],
    ['a function', { ...SMALL, water: () => ({ g: 1 }) }, 'bad-shape', 'water'],
    ['a symbol', { ...SMALL, title: Symbol('x') }, 'bad-shape', 'title'],
    ['a symbol as number', { ...SMALL, water: { g: Symbol('x') } }, 'not-a-number', 'water.g'],
    ['a date', { ...SMALL, water: new Date(0) }, 'missing', 'water'],
    ['a map', { ...SMALL, fats: new Map([[0, row]]) }, 'bad-shape', 'fats'],
    ['an array of bytes', { ...SMALL, fats: new Uint8Array(3) }, 'bad-shape', 'fats'],
    ['a boxed text', { ...SMALL, title: Object('x') as unknown }, 'bad-shape', 'title'],
    ['a sparse list', { ...SMALL, fats: [row, , row] }, 'missing', 'fats[1]'],
    ['a field `__proto__`', parsed('{"version":1,"__proto__":{"fats":[]}}'), 'unknown-key', 'recipe.__proto__'],
    ['a field `constructor`', parsed('{"version":1,"constructor":{}}'), 'unknown-key', 'recipe.constructor'],
    ['a unit `__proto__`', { ...SMALL, water: parsed('{"__proto__":1}') }, 'unknown-unit', 'water.__proto__'],
    ['a unit `toString`', { ...SMALL, water: { toString: 1 } }, 'unknown-unit', 'water.toString'],
    ['a claim `__proto__`', { ...SMALL, claimed: parsed('{"__proto__":{}}') }, 'unknown-key', 'claimed.__proto__'],
    ['a fat with `__proto__`', { ...SMALL, fats: [{ ...row, fat: parsed('{"__proto__":{}}') }] }, 'unknown-key', 'fats[0].fat.__proto__'],
  ])('%s is refused', (_what, value, code, path) => {
    expect(refused(value)).toMatchObject({ code, path });
  }); // prettier-ignore

  it('what is hidden is not read: symbols, inherited fields, fields that are not enumerable', () => {
    const value = Object.assign(Object.create({ title: 'inherited' }) as object, SMALL, { [Symbol('x')]: 1 });
    Object.defineProperty(value, 'water', { value: { g: 1 }, enumerable: false });
    expect(readRecipe(value)).toEqual(readRecipe(SMALL));
  });

  it('objects without prototype are data', () => {
    expect(readRecipe(Object.assign(Object.create(null) as object, SMALL))).toEqual(readRecipe(SMALL));
  });
});

describe('readRecipe: sizes', () => {
  const long = 'x'.repeat(1_000_000);

  it.each<[string, unknown]>([
    ['title', { ...SMALL, title: long }],
    ['name of a fat', { ...SMALL, fats: [{ ...row, fat: long }] }],
    ['name of an addition', { ...SMALL, additions: [{ name: long, mass: { g: 1 } }] }],
    ['number', { ...SMALL, water: { g: '1'.repeat(1_000_000) } }],
    ['word', { ...SMALL, lye: [{ ...SMALL.lye[0], alkali: long }] }],
    ['version', { ...SMALL, version: long }],
    ['field', { ...SMALL, [long]: 1 }],
    ['unit', { ...SMALL, water: { [long]: 1 } }],
    ['claim', { ...SMALL, claimed: { [long]: { [long]: 1 } } }],
    ['field of a whole fat', { ...SMALL, fats: [{ ...row, fat: { [long]: 1 } }] }],
    ['acid of a whole fat', { ...SMALL, fats: [{ ...row, fat: { ...fat('coconut-oil'), profile: { [long]: {} } } }] }],
    ['recipe', long],
  ])('of a long %s no more is told than 80 characters', (_what, value) => {
    const { message } = refused(value);
    expect(/x{81}|1{81}/.exec(message)).toBeNull();
    expect(message.length).toBeLessThan(500);
  });

  const many = (count: number) => ({
    ...SMALL,
    fats: Array.from({ length: count }, (_, at) => ({ fat: 'coconut-oil', mass: { g: at } })),
    additions: Array.from({ length: count }, () => ({ name: 'colour', mass: { g: '1.50' } })),
  });

  it('a hundred thousand fats and additions are read', () => {
    const read = readRecipe(many(100_000));
    expect([read.fats.length, read.additions?.length]).toEqual([100_000, 100_000]);
  });

  it('a hundred thousand unknown fields are one refusal', () => {
    const fields = Object.fromEntries(Array.from({ length: 100_000 }, (_, at) => [`field${String(at)}`, at]));
    expect(refused({ ...SMALL, ...fields }).path).toBe('recipe.field0');
  });

  it('a fault in the last of a hundred thousand rows is found', () => {
    const value = many(100_000);
    expect(refused({ ...value, fats: [...value.fats, { fat: 'coconut-oil', mass: { g: -1 } }] })).toMatchObject({
      code: 'out-of-range',
      path: 'fats[100000].mass.g',
    });
  });
});
