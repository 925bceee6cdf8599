import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/numbers/index.js';
import { refuseMeantRange } from '../../src/quantities/meantRange.js';

const asRead = new CalculationError('bad-shape', 'x', 'a quantity', 'that');
/** What a value is refused with, that no reader takes. */
function expectedOf(value: unknown, error: unknown = asRead): string {
  try {
    return refuseMeantRange('x', value, error);
  } catch (thrown) {
    return thrown instanceof CalculationError ? thrown.expected : String(thrown);
  }
}

describe('a range written otherwise', () => {
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
    [{ ['u'.repeat(30)]: [1, 2] }, `{ low: { ${'u'.repeat(24)}: 1 }, high: { ${'u'.repeat(24)}: 2 } }`],
  ])('%j is shown in the shape that is read', (value, shown) => {
    expect(expectedOf(value)).toBe(`one value, or a range as ${shown}`);
  });

  it.each<[unknown]>([['251'], ['a-b'], [[1]], [[1, 2, 3]], [5], [null], [{}], [{ g: 5 }], [{ min: 1 }], [{ max: 1 }], [{ g: [1, 2], kg: 1 }]])(
    '%j looks like none, and is refused as it was',
    (value) => {
      expect(expectedOf(value)).toBe('a quantity');
    },
  ); // prettier-ignore

  it('what cannot be looked at is refused as it was, and a foreign error goes through', () => {
    const thrower = new Proxy({}, { ownKeys: () => { throw new Error('read'); } }); // prettier-ignore
    expect(expectedOf(thrower)).toBe('a quantity');
    expect(expectedOf('251-258', new RangeError('no'))).toBe('RangeError: no');
    const other = new CalculationError('not-a-number', 'x', 'a number', 'that');
    expect(expectedOf('251-258', other)).toBe('one value, or a range as { low: …, high: … }');
  });
});
