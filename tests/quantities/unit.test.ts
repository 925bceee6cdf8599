import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/numbers/index.js';
import {
  readAlkaliContent,
  readIodineValue,
  readMass,
  readPercent,
  readQuantity,
  readSaponificationValue,
  saponificationValueUnits,
} from '../../src/quantities/index.js';
import { massUnits } from '../../src/quantities/kinds/mass.js';
import { refusal } from '../laws/refusal.js';

const grams = (value: unknown): string => readQuantity('x', value, massUnits).toString();
const fault = (): never => {
  throw new Error('an error of the value came through');
};

describe('readQuantity: worked by hand', () => {
  it.each([
    [{ g: 500 }, '500'],
    [{ g: '0.1' }, '0.1'],
    [{ kg: new Decimal('2.5') }, '2500'],
    [{ oz: 16 }, '453.59237'],
    [{ g: -1 }, '-1'], // limits are the affair of who reads what
    [Object.assign(Object.create(null) as object, { g: 1 }), '1'],
    [Object.freeze({ g: 1 }), '1'],
  ])('%o is %s g', (value, expected) => {
    expect(grams(value)).toBe(expected);
  });

  it('keeps limits in the canonical unit', () => {
    expect(readQuantity('x', { kg: '0.1' }, massUnits, { min: 100 }).toString()).toBe('100');
    expect(refusal(() => readQuantity('x', { kg: '0.0999' }, massUnits, { min: 100 }))).toMatchObject({
      code: 'out-of-range',
      path: 'x.kg',
    });
  });

  it('reads each kind within limits of its own', () => {
    expect(readMass('x', { g: 0 }).toString()).toBe('0');
    expect(readPercent('x', { fraction: 1 }).toString()).toBe('100');
    expect(readAlkaliContent('x', { percentNaoh: '0.05' }).toString()).toBe('0.05');
    expect(readIodineValue('x', { gI2Per100g: 500 }).toString()).toBe('500');
    expect(readSaponificationValue('x', { mgKohPerG: 20 }).toString()).toBe('20');
    expect(readSaponificationValue('x', { gKohPerG: '0.7' }).toString()).toBe('700');
    expect(readSaponificationValue('x', { saponificationEquivalent: '280.525' }).toString()).toBe('200'); // 56105/280.525
  });
});

describe('readQuantity: laws', () => {
  it('leaves the quantity untouched', () => {
    const value = { lb: 2 };
    readQuantity('x', value, massUnits);
    expect(value).toEqual({ lb: 2 });
  });

  it('reads a getter once, so that it cannot say one thing and do another', () => {
    let reads = 0;
    const value = {
      get g(): number {
        reads += 1;
        return reads;
      },
    };
    expect(grams(value)).toBe('1');
    expect(reads).toBe(1);
  });
});

describe('readQuantity: refusals', () => {
  const KNOWN = 'one of mg, g, kg, oz, lb';
  const QUANTITY = 'a quantity such as { g: … } (or mg, kg, oz, lb)';

  it.each<[unknown, string, string, string]>([
    [undefined, 'missing', 'x', `${QUANTITY}, received nothing`],
    [null, 'missing', 'x', `${QUANTITY}, received null`],
    [{}, 'missing', 'x', `${QUANTITY}, received an empty object`],
    [{ g: undefined }, 'missing', 'x.g', 'a finite number or decimal text, received nothing'],
    [500, 'bad-shape', 'x', `${QUANTITY}, received 500`],
    ['500 g', 'bad-shape', 'x', `${QUANTITY}, received '500 g'`],
    [new Decimal(5), 'bad-shape', 'x', `${QUANTITY}, received 5`],
    [true, 'bad-shape', 'x', `${QUANTITY}, received true`],
    [[], 'bad-shape', 'x', `${QUANTITY}, received a list of 0`],
    [[{ g: 1 }], 'bad-shape', 'x', `${QUANTITY}, received a list of 1`],
    [{ g: 1, kg: 1 }, 'two-units', 'x', 'exactly one unit, received g and kg'],
    [{ g: 1, kg: undefined }, 'two-units', 'x', 'exactly one unit, received g and kg'],
    [{ kgs: 1 }, 'unknown-unit', 'x.kgs', `${KNOWN} (did you mean "kg"?), received the unknown unit 'kgs'`],
    [{ G: 1 }, 'unknown-unit', 'x.G', `${KNOWN} (did you mean "g"?), received the unknown unit 'G'`],
    [{ pounds: 1 }, 'unknown-unit', 'x.pounds', `${KNOWN} (did you mean "lb"?), received the unknown unit 'pounds'`],
    [{ percent: 1 }, 'unknown-unit', 'x.percent', `${KNOWN}, received the unknown unit 'percent'`],
    [{ g: 1, note: 'by eye' }, 'unknown-unit', 'x.note', `${KNOWN}, received the unknown unit 'note'`],
    [{ constructor: 1 }, 'unknown-unit', 'x.constructor', `${KNOWN}, received the unknown unit 'constructor'`],
    [JSON.parse('{"__proto__": 1}'), 'unknown-unit', 'x.__proto__', `${KNOWN}, received the unknown unit '__proto__'`],
    [{ g: NaN }, 'not-a-number', 'x.g', 'a finite number or decimal text, received NaN'],
    [{ g: '1,5' }, 'not-a-number', 'x.g', "a decimal point: '1.5', received '1,5'"],
    [{ g: { g: 1 } }, 'not-a-number', 'x.g', 'a finite number or decimal text, received an object'],
    [{ g: '1e16' }, 'out-of-range', 'x.g', 'a magnitude from 1e-40 to 1e15, received 1e16'],
  ])('%o is refused with %s', (value, code, path, said) => {
    expect(refusal(() => grams(value))).toEqual({ code, path, message: `${path}: expected ${said}` });
  });

  it('names no other unit where there is none', () => {
    expect(refusal(() => readQuantity('x', 5, { g: massUnits.g })).message).toBe(
      'x: expected a quantity such as { g: … }, received 5',
    );
  });

  it.each([
    [
      'g',
      {
        g: 1,
        get kg(): number {
          return fault();
        },
      },
    ],
    ['a proxy', new Proxy({ g: 1 }, { ownKeys: fault })],
    ['a Decimal that is none', { g: { toStringTag: '[object Decimal]', toString: fault } }],
    ['a number that throws', { g: new Proxy({}, { get: fault }) }],
  ])('%s with code that throws is refused by our own error', (_what, value) => {
    expect(['bad-shape', 'not-a-number']).toContain(refusal(() => grams(value)).code);
  });

  // Limits are in the canonical unit; the message shows them, and what the maker wrote, in the unit that came.
  it.each([
    [(): unknown => readMass('mass', { g: -1 }), 'mass.g', 'at least 0', '-1'],
    [(): unknown => readMass('mass', { lb: '-1' }), 'mass.lb', 'at least 0', '-1'],
    [(): unknown => readMass('step', { g: 0 }, { above: 0 }), 'step.g', 'more than 0', '0'],
    [(): unknown => readPercent('assay', { percent: 101 }), 'assay.percent', '0 to 100', '101'],
    [(): unknown => readPercent('assay', { percent: '-0.1' }), 'assay.percent', '0 to 100', '-0.1'],
    [(): unknown => readPercent('assay', { percent: 0 }, { above: 0, max: 110 }), 'assay.percent', 'more than 0', '0'],
    [(): unknown => readPercent('assay', { fraction: 90 }), 'assay.fraction', '0 to 1,', '90'],
    [
      (): unknown => readPercent('superfat', { fraction: 5 }, { min: 0, below: 100 }),
      'superfat.fraction',
      '0 to below 1,',
      '5',
    ],
    [
      (): unknown => readPercent('superfat', { percent: 150 }, { min: 0, below: 100 }),
      'superfat.percent',
      '0 to below 100,',
      '150',
    ],
    [
      (): unknown => readPercent('superfat', { percent: -1 }, { min: 0, below: 100 }),
      'superfat.percent',
      '0 to below 100,',
      '-1',
    ],
    [
      (): unknown => readPercent('share', { ppm: 1e6 }, { above: 0, below: 100 }),
      'share.ppm',
      'less than 1000000,',
      '1000000',
    ],
    [
      (): unknown => readSaponificationValue('sv', { saponificationEquivalent: 5000 }),
      'sv.saponificationEquivalent',
      '20 to 700 mgKohPerG,',
      '5000',
    ],
    [(): unknown => readAlkaliContent('limit', { percentNaoh: 101 }), 'limit.percentNaoh', '0 to 100', '101'],
    [(): unknown => readIodineValue('iv', { gI2Per100g: 501 }), 'iv.gI2Per100g', '0 to 500', '501'],
    [(): unknown => readSaponificationValue('sv', { mgKohPerG: 19.9 }), 'sv.mgKohPerG', '20 to 700', '19.9'],
    [(): unknown => readSaponificationValue('sv', { mgKohPerG: 701 }), 'sv.mgKohPerG', '20 to 700', '701'],
    [(): unknown => readSaponificationValue('sv', { gNaohPerG: 183 }), 'sv.gNaohPerG', '0.0142579 to 0.499027,', '183'],
  ])('out of limits: case %#', (call, path, expected, received) => {
    const { code, path: at, message } = refusal(call);
    expect({ code, at }).toEqual({ code: 'out-of-range', at: path });
    expect(message.startsWith(`${path}: expected ${expected}`)).toBe(true); // a unit may follow
    expect(message.endsWith(`, received ${received}`)).toBe(true);
  });

  it.each([{ kg: '1e13' }, { mg: '1e-38' }])('%o is out of range in grams, so that no result is too', (mass) => {
    expect(refusal(() => readMass('mass', mass))).toMatchObject({
      code: 'out-of-range',
      path: `mass.${Object.keys(mass).join('')}`,
    });
  });

  it.each([0, '-200'])('an equivalent of %s is out of range, with the whole path', (value) => {
    const quantity = { saponificationEquivalent: value };
    expect(refusal(() => readQuantity('certificate.value', quantity, saponificationValueUnits))).toMatchObject({
      code: 'out-of-range',
      path: 'certificate.value.saponificationEquivalent',
    });
  });
});
