/** A range written otherwise is refused with the shape that is read. */
import { describe, expect, it } from 'vitest';
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
