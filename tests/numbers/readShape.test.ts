import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFields, readList, readShape, readText, readWord, refuseKey, suggestion } from '../../src/numbers/index.js';
import { refusal } from '../laws/refusal.js';

const fault = (): never => {
  throw new Error('an error of the value came through');
};
const revoked = (target: object): unknown => {
  const { proxy, revoke } = Proxy.revocable(target, {});
  revoke();
  return proxy;
};

describe('suggestion: worked by hand', () => {
  const units = ['mg', 'g', 'kg', 'oz', 'lb'];

  it.each([
    ['kgs', units, ' (did you mean "kg"?)'], // one letter too many
    ['OZ', units, ' (did you mean "oz"?)'], // capitals apart they are the same
    ['c18:1', ['C18:1-OH', 'C18:1'], ' (did you mean "C18:1"?)'], // though another begins with it
    ['saponi', ['saponificationValue', 'saponin'], ' (did you mean "saponificationValue" or "saponin"?)'], // both begin so
    // what others call them
    ['grams', units, ' (did you mean "g"?)'],
    ['Ounces', units, ' (did you mean "oz"?)'],
    ['ml', ['mL', 'L'], ' (did you mean "mL"?)'],
    ['assay', ['hydroxide', 'totalAlkali'], ' (did you mean "hydroxide"?)'],
    ['purity', ['hydroxide', 'totalAlkali'], ' (did you mean "hydroxide"?)'],
    ['min', ['low', 'likely', 'high'], ' (did you mean "low"?)'],
    ['max', ['low', 'likely', 'high'], ' (did you mean "high"?)'],
    ['superfat', ['fats', 'target'], ' (did you mean "target.superfat"?)'],
    ['superfatt', ['superfat', 'strength'], ' (did you mean "superfat"?)'],
    ['naho', ['naoh', 'koh'], ' (did you mean "naoh"?)'], // two letters exchanged count as two changes
    ['saponificaton vale', ['saponificationValue'], ' (did you mean "saponificationValue"?)'], // long words: a third
    ['coconut oil', ['coconut-oil', 'palm-oil'], ' (did you mean "coconut-oil"?)'],
    ['c18:1OH', ['C18:1', 'C18:1-OH'], ' (did you mean "C18:1-OH"?)'],
  ])('"%s" among %j gives "%s"', (written, known, expected) => {
    expect(suggestion(written, known)).toBe(expected);
  });

  it.each([
    ['assay', ['low', 'likely', 'high']], // a name for what is not here
    ['superfat', ['low', 'likely', 'high']],
    ['constructor', ['hydroxide']],
    ['grain', units], // more changes than a short word is allowed, and no other name of ours
    ['temperature', ['superfat', 'strength']],
    ['g', []],
    ['superfat'.repeat(6), ['superfat'.repeat(6)]], // over 40 letters it is no slip of the pen
  ])('"%s" among %j gives nothing', (written, known) => {
    expect(suggestion(written, known)).toBe('');
  });
});

describe('readFields: worked by hand', () => {
  it('reads own enumerable fields and nothing inherited', () => {
    const value = Object.assign(Object.create({ kg: 1 }) as object, { g: 5 });
    Object.defineProperty(value, 'hidden', { value: 1, enumerable: false });
    expect({ ...readFields('x', value) }).toEqual({ g: 5 });
  });

  it('reads an object without prototype, and one that holds itself', () => {
    const cycle: Record<string, unknown> = Object.assign(Object.create(null) as object, { g: 5 });
    cycle['self'] = cycle;
    expect(readFields('x', cycle)['self']).toBe(cycle);
  });

  it('keeps __proto__, constructor and toString as plain fields', () => {
    const hostile: unknown = JSON.parse('{ "__proto__": { "g": 1 }, "constructor": 2, "toString": 3 }');
    const fields = readFields('x', hostile);
    expect(Object.getPrototypeOf(fields)).toBeNull();
    expect(Object.keys(fields)).toEqual(['__proto__', 'constructor', 'toString']);
    expect(fields['g']).toBeUndefined();
    expect(({} as Record<string, unknown>)['g']).toBeUndefined();
  });
});

describe('readFields: laws', () => {
  it('reads every field once, so that a clever getter has one answer', () => {
    let reads = 0;
    const value = {
      get g(): number {
        reads += 1;
        return reads;
      },
    };
    const fields = readShape('x', value, ['g']);
    expect([fields['g'], fields['g'], reads]).toEqual([1, 1, 1]);
  });

  it('takes a copy: later changes do not reach it', () => {
    const value = { g: 1 };
    const fields = readFields('x', value);
    value.g = 2;
    expect(fields['g']).toBe(1);
  });

  it('gives back the own fields of any plain object, untouched', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.integer()), (value) => {
        const before = JSON.stringify(value);
        const fields = readFields('x', value);
        expect(Object.entries(fields)).toEqual(Object.entries(value));
        expect(JSON.stringify(value)).toBe(before);
      }),
    );
  });

  it('refuses 100 000 unknown keys after reading each at most once', () => {
    const many = Object.fromEntries(Array.from({ length: 100_000 }, (_, at) => [`key${String(at)}`, at]));
    let reads = 0;
    const counted = new Proxy(many, {
      get: (target, key, receiver): unknown => {
        reads += 1;
        return Reflect.get(target, key, receiver);
      },
    });
    expect(refusal(() => readShape('x', counted, ['g', 'kg']))).toMatchObject({ code: 'unknown-key', path: 'x.key0' });
    expect(reads).toBeLessThanOrEqual(100_000);
  });
});

describe('readFields and readShape: refusals', () => {
  it.each([
    [undefined, 'missing', 'x: expected an object, received nothing'],
    [null, 'missing', 'x: expected an object, received null'],
    [[], 'bad-shape', 'x: expected an object, received a list of 0'],
    [[{ g: 1 }], 'bad-shape', 'x: expected an object, received a list of 1'],
    [5, 'bad-shape', 'x: expected an object, received 5'],
    ['g', 'bad-shape', "x: expected an object, received 'g'"],
    [true, 'bad-shape', 'x: expected an object, received true'],
    [() => ({ g: 1 }), 'bad-shape', 'x: expected an object, received a function'],
  ])('%o is refused with %s', (value, code, message) => {
    expect(refusal(() => readFields('x', value))).toEqual({ code, path: 'x', message });
    expect(refusal(() => readShape('x', value, ['g']))).toEqual({ code, path: 'x', message });
  });

  it.each<[string, unknown]>([
    ['a getter that throws', Object.defineProperty({}, 'g', { get: fault, enumerable: true })],
    ['a proxy that will not tell its keys', new Proxy({}, { ownKeys: fault })],
    ['a proxy that will not give a field', new Proxy({ g: 1 }, { get: fault })],
    ['a proxy that will not describe a field', new Proxy({ g: 1 }, { getOwnPropertyDescriptor: fault })],
    ['a proxy that was revoked', revoked({})],
    ['a list behind a proxy that was revoked', revoked([])],
  ])('%s is refused', (_what, value) => {
    expect(refusal(() => readFields('x', value))).toMatchObject({ code: 'bad-shape', path: 'x' });
  });

  it.each<[string, unknown, string, string]>([
    [
      'a slip',
      { kgs: 1 },
      'x.kgs',
      'x.kgs: expected only the fields g, kg (did you mean "kg"?), received the unknown field \'kgs\'',
    ],
    [
      'a stranger',
      { temperature: 1 },
      'x.temperature',
      "x.temperature: expected only the fields g, kg, received the unknown field 'temperature'",
    ],
    [
      '__proto__',
      JSON.parse('{"__proto__": 1}'),
      'x.__proto__',
      "x.__proto__: expected only the fields g, kg, received the unknown field '__proto__'",
    ],
    [
      'constructor',
      { constructor: 1 },
      'x.constructor',
      "x.constructor: expected only the fields g, kg, received the unknown field 'constructor'",
    ],
  ])('%s among the keys is refused', (_what, value, path, message) => {
    expect(refusal(() => readShape('x', value, ['g', 'kg']))).toEqual({ code: 'unknown-key', path, message });
  });

  it('names a key at the top by itself', () => {
    expect(refusal(() => refuseKey('unknown-key', '', 'superfatt', ['superfat']))).toEqual({
      code: 'unknown-key',
      path: 'superfatt',
      message:
        'superfatt: expected only the fields superfat (did you mean "superfat"?), received the unknown field \'superfatt\'',
    });
  });
});

describe('readWord', () => {
  const words = ['nearest', 'down', 'up'] as const;

  it.each(words)('reads %s', (word) => {
    expect(readWord('x', word, words)).toBe(word);
  });

  it.each([
    [undefined, 'missing', 'x: expected one of nearest, down, up, received nothing'],
    ['Down', 'bad-shape', 'x: expected one of nearest, down, up (did you mean "down"?), received \'Down\''],
    ['sideways', 'bad-shape', "x: expected one of nearest, down, up, received 'sideways'"],
    ['constructor', 'bad-shape', "x: expected one of nearest, down, up, received 'constructor'"],
    [null, 'bad-shape', 'x: expected one of nearest, down, up, received null'],
    [['down'], 'bad-shape', 'x: expected one of nearest, down, up, received a list of 1'],
  ])('%o is refused with %s', (value, code, message) => {
    expect(refusal(() => readWord('x', value, words))).toEqual({ code, path: 'x', message });
  });
});

describe('readText', () => {
  it('reads a text as it stands, to the longest allowed', () => {
    expect(readText('x', ' Coconut, lot 7 ')).toBe(' Coconut, lot 7 ');
    expect(readText('x', 'y'.repeat(200))).toHaveLength(200);
    expect(readText('x', 'abc', 3)).toBe('abc');
  });

  it.each([
    [undefined, 'missing', 'nothing'],
    ['', 'bad-shape', 'an empty text'],
    ['  \n', 'bad-shape', "'  \n'"],
    ['y'.repeat(201), 'bad-shape', `'${'y'.repeat(77)}…'`],
    [5, 'bad-shape', '5'],
    [null, 'bad-shape', 'null'],
    [Object('abc'), 'bad-shape', 'an object'],
  ])('%o is refused with %s', (value, code, received) => {
    const message = `x: expected a text of 1 to 200 characters, received ${received}`;
    expect(refusal(() => readText('x', value))).toEqual({ code, path: 'x', message });
  });
});

describe('readList', () => {
  it('reads a list', () => {
    expect(readList('x', [1, 2])).toEqual([1, 2]);
  });

  it.each([
    [undefined, 'missing', 'nothing'],
    [[], 'bad-shape', 'a list of 0'],
    [{ 0: 1, length: 1 }, 'bad-shape', 'an object'],
    ['abc', 'bad-shape', "'abc'"],
    [null, 'bad-shape', 'null'],
  ])('%o is refused with %s', (value, code, received) => {
    const message = `x: expected a list with at least one entry, received ${received}`;
    expect(refusal(() => readList('x', value))).toEqual({ code, path: 'x', message });
  });

  it.each<[string, unknown]>([
    ['that was revoked', revoked([])],
    ['whose fields throw', new Proxy([1], { get: fault })],
  ])('refuses a list behind a proxy %s', (_what, value) => {
    expect(refusal(() => readList('x', value))).toMatchObject({ code: 'bad-shape', path: 'x' });
  });
});

describe('suggestion and refuseKey: what is offered, and how much of it', () => {
  const four = ['longa', 'longb', 'longc', 'longd'];

  it('offers three words at most, and of two letters none that begin with them', () => {
    expect(suggestion('lon', four)).toBe(' (did you mean "longa" or "longb" or "longc"?)');
    expect(suggestion('lo', four)).toBe('');
    expect(suggestion('oil in grams', ['fats', 'target'])).toBe('');
    expect(suggestion('constructor', ['fats', 'target'])).toBe('');
  });

  it('of three letters offers no neighbour, but the plural of a unit', () => {
    expect(suggestion('kgm', ['kg', 'mgm'])).toBe('');
    expect(suggestion('kgs', ['kg', 'g'])).toBe(' (did you mean "kg"?)');
  });

  it('looks at words up to the longest, and cuts longer ones where they stand in a path', () => {
    const longest = 'x'.repeat(40);
    expect(suggestion(longest, [`${longest}y`])).toContain('did you mean');
    expect(suggestion(`${longest}x`, [`${longest}xy`])).toBe('');
    expect(refusal(() => refuseKey('unknown-key', 'it', longest, four)).path).toBe(`it.${longest}`);
    expect(refusal(() => refuseKey('unknown-key', 'it', `${longest}x`, four)).path).toBe(`it.${longest.slice(1)}…`);
  });
});
