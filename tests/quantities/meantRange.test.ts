/** A range written otherwise is refused with the shape that is read. */
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/numbers/index.js';
import { refuseMeantRange } from '../../src/quantities/meantRange.js';
import { readPercent, readRanged, readSaponificationValueRange } from '../../src/quantities/index.js';
import { refusal } from '../laws/refusal.js';

const read = (value: unknown) => (): unknown => readSaponificationValueRange('sv', value);
const MEANT = '{ low: { mgKohPerG: 251 }, high: { mgKohPerG: 258 } }';
const EACH = 'each end a quantity such as { mgKohPerG: … } (or gKohPerG, gNaohPerG, saponificationEquivalent)';

describe('a range written otherwise', () => {
  it.each<[string, unknown, string]>([
    ['ends inside the unit', { mgKohPerG: { low: 251, high: 258 } }, MEANT],
    ['least and most inside the unit', { mgKohPerG: { min: '251', max: '258' } }, MEANT],
    ['a list inside the unit', { mgKohPerG: [251, 258] }, MEANT],
    ['a text inside the unit', { mgKohPerG: '251-258' }, MEANT],
    ['the same with blanks', { mgKohPerG: ' 251 – 258 ' }, MEANT],
    ['least and most', { min: { mgKohPerG: 251 }, max: { mgKohPerG: 258 } }, MEANT],
    ['a list of quantities', [{ mgKohPerG: 251 }, { mgKohPerG: 258 }], MEANT],
    ['a list of figures', [251, 258], `{ low: …, high: … }, ${EACH}`],
    ['a text', '251-258', `{ low: …, high: … }, ${EACH}`],
    ['a figure that is none', { mgKohPerG: ['about 251 I think', 258] }, '{ low: { mgKohPerG: … }, high: { mgKohPerG: 258 } }'],
  ])('%s', (_what, value, meant) => {
    const { path, message } = refusal(read(value));
    expect(path).toBe('sv');
    expect(message).toContain(`sv: expected one value, or a range as ${meant}, received `);
  }); // prettier-ignore

  it.each<[string, unknown]>([
    ['a list of three', [251, 255, 258]],
    ['a text that is no range', 'about 250'],
    ['one figure', { mgKohPerG: 'abc' }],
    ['two units', { mgKohPerG: [1, 2], gKohPerG: 1 }],
    ['nothing', {}],
    ['one end alone', { min: { mgKohPerG: 251 } }],
    ['null', null],
    ['true', true],
    ['what is outside limits', { mgKohPerG: 5 }],
  ])('but not %s', (_what, value) => {
    expect(refusal(read(value)).message).not.toContain('a range as');
  });

  it('leaves as it was what cannot be looked at, and what is no refusal of ours', () => {
    const closed = { mgKohPerG: new Proxy({}, { ownKeys: () => { throw new Error('closed'); } }) }; // prettier-ignore
    expect(refusal(read(closed))).toMatchObject({ code: 'not-a-number', path: 'sv.mgKohPerG' });
    const broken = new RangeError('not ours');
    const fails = (): never => {
      throw broken;
    };
    expect(() => readRanged('x', [1, 2], fails)).toThrow(broken);
  });

  it('keeps the code of the refusal', () => {
    expect(refusal(read([251, 258])).code).toBe('bad-shape');
    expect(refusal(read({ mgKohPerG: [251, 258] })).code).toBe('not-a-number');
    expect(refusal(() => readRanged('assay', { min: { percent: 97 }, max: { percent: 99 } }, readPercent)).code).toBe('unknown-unit');
  }); // prettier-ignore
});

const asRead = new CalculationError('bad-shape', 'x', 'a quantity', 'that');
/** What a value is refused with, that no reader takes. */
function expectedOf(value: unknown, error: unknown = asRead): string {
  try {
    return refuseMeantRange('x', value, error);
  } catch (thrown) {
    return thrown instanceof CalculationError ? thrown.expected : String(thrown);
  }
}

describe('what may have been meant', () => {
  it.each<[unknown, string]>([
    ['251-258', '{ low: …, high: … }, each end a quantity'],
    [' 251 – 258 ', '{ low: …, high: … }, each end a quantity'],
    [[251, 258], '{ low: …, high: … }, each end a quantity'],
    [{ min: { g: 1 }, max: { g: 2 } }, '{ low: { g: 1 }, high: { g: 2 } }'],
    [{ low: { g: 1 }, max: { g: '2' } }, '{ low: { g: 1 }, high: { g: 2 } }'],
    [{ low: 1, high: 2 }, '{ low: …, high: … }, each end a quantity'],
    [{ low: [1], high: { g: 1, kg: 2 } }, '{ low: …, high: … }, each end a quantity'],
    [{ low: {}, high: null }, '{ low: …, high: … }, each end a quantity'],
    [{ mgKohPerG: '251-258' }, '{ low: { mgKohPerG: 251 }, high: { mgKohPerG: 258 } }'],
    [{ mgKohPerG: '251 to 258.5' }, '{ low: { mgKohPerG: 251 }, high: { mgKohPerG: 258.5 } }'],
    [{ mgKohPerG: [251, '258'] }, '{ low: { mgKohPerG: 251 }, high: { mgKohPerG: 258 } }'],
    [{ mgKohPerG: { min: 251, max: 258 } }, '{ low: { mgKohPerG: 251 }, high: { mgKohPerG: 258 } }'],
    [{ g: ['1234567890123', true] }, '{ low: { g: … }, high: { g: … } }, each end a quantity'],
    [{ g: ['123456789012', '1234567890.5'] }, '{ low: { g: 123456789012 }, high: { g: 1234567890.5 } }'],
    [{ min: { g: [1] }, max: { g: null } }, '{ low: { g: … }, high: { g: … } }, each end a quantity'],
    [{ min: { ['u'.repeat(30)]: 1 }, max: { g: 2 } }, `{ low: { ${'u'.repeat(24)}: 1 }, high: { g: 2 } }`],
    [{ ['u'.repeat(30)]: [1, 2] }, `{ low: { ${'u'.repeat(24)}: 1 }, high: { ${'u'.repeat(24)}: 2 } }`],
  ])('%j is shown in the shape that is read', (value, shown) => {
    expect(expectedOf(value)).toBe(`one value, or a range as ${shown}`);
  });

  it.each<[unknown]>([['251'], ['a-b'], ['x251-258'], ['251-258x'], [[1]], [[1, 2, 3]], [5], [null], [{}], [{ g: 5 }], [{ min: 1 }], [{ max: 1 }], [{ g: [1, 2], kg: 1 }]])(
    '%j looks like none, and is refused as it was',
    (value) => {
      expect(expectedOf(value)).toBe('a quantity');
    },
  ); // prettier-ignore

  it('what cannot be looked at is refused as it was, and a foreign error goes through', () => {
    const thrower = new Proxy({}, { ownKeys: () => { throw new Error('read'); } }); // prettier-ignore
    expect(expectedOf(thrower)).toBe('a quantity');
    expect(expectedOf('251-258', new RangeError('no'))).toBe('RangeError: no');
    const list = Object.defineProperty([1, 2], 0, { get: () => { throw new Error('read'); } }); // prettier-ignore
    expect(expectedOf(list)).toBe('a quantity');
    const text = { toString: () => '251-258', g: 1 };
    expect(expectedOf(text)).toBe('a quantity');
    expect(expectedOf(Object.create(null))).toBe('a quantity');
    const other = new CalculationError('not-a-number', 'x', 'a number', 'that');
    expect(expectedOf('251-258', other)).toBe('one value, or a range as { low: …, high: … }');
  });
});
