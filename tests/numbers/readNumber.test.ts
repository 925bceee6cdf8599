import { createRequire } from 'node:module';
import { Decimal as Base } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal, readNumber } from '../../src/numbers/index.js';
import { refusal } from '../laws/refusal.js';

// A require and an import of decimal.js load two files: two copies in one program, as an ESM and a CJS user have.
const OtherCopy = createRequire(import.meta.url)('decimal.js') as typeof Base;
const ThreeDigits = Base.clone({ precision: 3 });

const read = (value: unknown): Decimal => readNumber('x', value);

describe('readNumber: worked by hand', () => {
  it.each([
    [0.1, '0.1'], // by its shortest text, not the binary 0.1000000000000000055511151231257827…
    [0.1 + 0.2, '0.30000000000000004'],
    [-2.5, '-2.5'],
    [1e-40, '1e-40'],
    [1e15, '1000000000000000'],
    [0, '0'],
    ['1e3', '1000'],
    ['1E3', '1000'],
    ['1e+3', '1000'],
    ['+1', '1'],
    ['-1', '-1'],
    ['.5', '0.5'],
    ['5.', '5'],
    ['007', '7'],
    ['0.10', '0.1'],
    ['0e9', '0'],
    ['0.0000', '0'],
  ])('%s is %s', (given, expected) => {
    expect(read(given).toString()).toBe(expected);
  });

  it('takes a text of 64 characters', () => {
    const text = `0.${'1'.repeat(62)}`;
    // a figure of more than our 34 digits may be kept or rounded to them
    expect(read(text).toSignificantDigits(34).toString()).toBe(`0.${'1'.repeat(34)}`);
  });

  it('takes a Decimal of our own', () => {
    expect(read(new Decimal('0.183')).toString()).toBe('0.183');
  });

  it('takes a Decimal of another copy of decimal.js by its text', () => {
    const other = new OtherCopy('0.183');
    expect(other instanceof Base).toBe(false);
    const own = read(other);
    expect(own).toBeInstanceOf(Decimal);
    expect(own.constructor).toBe(Decimal);
    expect(own.toString()).toBe('0.183');
  });

  it('rounds a Decimal of another copy that has more than 34 digits', () => {
    const third = OtherCopy.clone({ precision: 100 }).div(1, 3);
    expect(read(third).toString()).toBe(`0.${'3'.repeat(34)}`);
  });

  // Clones of one copy share their prototype, so instanceof cannot tell them apart; their settings differ all the same.
  it.each([
    ['a clone of three digits', new ThreeDigits(2)],
    ['the global constructor', new Base(2)],
    ['another copy of three digits', new (OtherCopy.clone({ precision: 3 }))(2)],
  ])('reckons in 34 digits with a Decimal of %s', (_whose, two) => {
    expect(read(two).times('453.59237').toString()).toBe('907.18474');
    expect(read(two).div(3).toString()).toBe(`0.${'6'.repeat(33)}7`);
  });

  it('keeps closed ends and refuses an open one', () => {
    expect(readNumber('x', 0, { min: 0, max: 100 }).toString()).toBe('0');
    expect(readNumber('x', '100', { min: 0, max: 100 }).toString()).toBe('100');
    expect(readNumber('x', '1e-40', { above: 0 }).toString()).toBe('1e-40');
  });
});

describe('readNumber: laws', () => {
  const finite = fc
    .double({ noNaN: true, noDefaultInfinity: true, min: -1e15, max: 1e15 })
    .filter((x) => x === 0 || Math.abs(x) >= 1e-40);
  const digits = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 62 }).map((all) => all.join(''));
  // Any text of at most 64 characters: a sign or none, then digits with the point somewhere among the first fifteen.
  const text = fc
    .tuple(fc.constantFrom('', '-', '+'), digits, fc.integer({ min: 0, max: 15 }))
    .map(([sign, all, point]) => `${sign}${all.slice(0, point)}.${all.slice(point)}`)
    .filter((written) => /\d/.test(written) && (Number(written) === 0 || Math.abs(Number(written)) > 1e-40));

  it('loses nothing of a floating-point number', () => {
    fc.assert(
      fc.property(finite, (x) => {
        expect(read(x).toNumber()).toBe(x);
        expect(read(x).toSignificantDigits(17).eq(read(x))).toBe(true); // and no binary tail was taken along
      }),
    );
  });

  it('reads a number, its text and its Decimal alike', () => {
    fc.assert(
      fc.property(finite, (x) => {
        for (const same of [String(x), new Decimal(x), new Base(x), new ThreeDigits(x), new OtherCopy(x)]) {
          expect(read(same).eq(read(x))).toBe(true);
        }
      }),
    );
  });

  it('accepts what it has read again as text, to the last digit', () => {
    fc.assert(
      fc.property(text, (written) => {
        const once = read(written);
        expect(read(once.toString()).eq(once)).toBe(true);
      }),
      // the first is as long as a text may be, and longer once the zero before the point is written out
      { examples: [[`.${'1'.repeat(63)}`], [`-.${'1'.repeat(62)}`]] },
    );
  });

  it('gives a finite number or refuses, whatever it is given', () => {
    fc.assert(
      fc.property(
        fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true }),
        (value) => {
          let number: Decimal;
          try {
            number = read(value);
          } catch {
            expect(['missing', 'not-a-number', 'out-of-range']).toContain(refusal(() => read(value)).code);
            return;
          }
          expect(number.isFinite()).toBe(true);
        },
      ),
    );
  });
});

describe('readNumber: refusals', () => {
  const FINITE = 'x: expected a finite number or decimal text, received';

  it.each([
    [NaN, `${FINITE} NaN`],
    [Infinity, `${FINITE} Infinity`],
    [-Infinity, `${FINITE} -Infinity`],
    ['1,5', `x: expected a decimal point: '1.5', received '1,5'`],
    ['-1,500', `x: expected a decimal point: '-1.500', or no separator: '-1500', received '-1,500'`],
    ['12,5', `x: expected a decimal point: '12.5', received '12,5'`],
    ['1,5000', `x: expected a decimal point: '1.5000', received '1,5000'`],
    [`${'1'.repeat(62)},5`, `x: expected a decimal point: '${'1'.repeat(62)}.5', received '${'1'.repeat(62)},5'`],
    ['1,5 g', `${FINITE} '1,5 g'`],
    ['about 1,5', `${FINITE} 'about 1,5'`],
    [`${'1'.repeat(64)},5`, `${FINITE} '${'1'.repeat(64)},5'`],
    ['', `${FINITE} an empty text`],
    [' 1', `${FINITE} ' 1'`],
    ['1 ', `${FINITE} '1 '`],
    ['1\n', `${FINITE} '1\n'`],
    ['.', `${FINITE} '.'`],
    ['-', `${FINITE} '-'`],
    ['e3', `${FINITE} 'e3'`],
    ['1e', `${FINITE} '1e'`],
    ['1e1234567', `${FINITE} '1e1234567'`],
    ['0x10', `${FINITE} '0x10'`],
    ['0b1', `${FINITE} '0b1'`],
    ['1_000', `${FINITE} '1_000'`],
    ['1.2.3', `${FINITE} '1.2.3'`],
    ['Infinity', `${FINITE} 'Infinity'`],
    ['NaN', `${FINITE} 'NaN'`],
    ['١', `${FINITE} '١'`], // a digit, but not of ours
    ['1'.repeat(65), `${FINITE} '${'1'.repeat(65)}'`],
    [`0.${'0'.repeat(63)}`, `${FINITE} '0.${'0'.repeat(63)}'`],
    [true, `${FINITE} true`],
    [null, `${FINITE} null`],
    [{}, `${FINITE} an object`],
    [{ g: 1 }, `${FINITE} an object`],
    [[1], `${FINITE} a list of 1`],
    [10n, `${FINITE} 10`],
    [() => 1, `${FINITE} a function`],
    [Symbol('one'), `${FINITE} a symbol`],
    [Object(1), `${FINITE} an object`],
  ])('%o is not a number', (value, message) => {
    expect(refusal(() => read(value))).toEqual({ code: 'not-a-number', path: 'x', message });
  });

  it('undefined is missing', () => {
    expect(refusal(() => read(undefined))).toEqual({ code: 'missing', path: 'x', message: `${FINITE} nothing` });
  });

  it.each(['1.1e15', '-1.1e15', 1.1e15, '1e16', '1e-41', '-9.9e-41', 9e-41, '1e999999', '1e-999999'])(
    'a magnitude of %s is out of range',
    (value) => {
      expect(refusal(() => read(value))).toEqual({
        code: 'out-of-range',
        path: 'x',
        message: `x: expected a magnitude from 1e-40 to 1e15, received ${String(value)}`,
      });
    },
  );

  it.each([
    ['NaN', new Decimal(NaN)],
    ['an infinity', new Decimal(Infinity)],
    ["another copy's NaN", new OtherCopy(NaN)],
    ["another copy's infinity", new OtherCopy(-Infinity)],
  ])('a Decimal that is %s is not a number', (_what, value) => {
    expect(refusal(() => read(value))).toMatchObject({ code: 'not-a-number', path: 'x' });
  });

  const fault = (): never => {
    throw new Error('code of the value was run and its error came through');
  };
  const tag = '[object Decimal]';

  it.each<[string, unknown]>([
    ['throwing toString', { toStringTag: tag, toString: fault }],
    ['toString that is no function', { toStringTag: tag, toString: 5 }],
    ['toString that gives no number', { toStringTag: tag, toString: () => 'twelve' }],
    ['toString that gives no text', { toStringTag: tag, toString: () => ({}) }],
    ['no insides but our prototype', Object.create(Decimal.prototype)],
    ['insides of its own making', Object.assign(Object.create(Decimal.prototype) as object, { d: 'x', e: 0, s: 1 })],
    ['a throwing tag', Object.defineProperty({}, 'toStringTag', { get: fault })],
    ['a proxy whose fields throw', new Proxy({}, { get: fault })],
    ['a proxy whose prototype throws', new Proxy({}, { getPrototypeOf: fault })],
  ])('a forged Decimal with %s is not a number', (_forgery, value) => {
    expect(refusal(() => read(value))).toMatchObject({ code: 'not-a-number', path: 'x' });
  });

  it.each([
    [-1, { min: 0 }, 'x: expected at least 0, received -1'],
    [-1, { min: 0, max: 100 }, 'x: expected 0 to 100, received -1'],
    ['100.1', { min: 0, max: 100 }, 'x: expected 0 to 100, received 100.1'],
    ['100.1', { max: 100 }, 'x: expected at most 100, received 100.1'],
    [0, { above: 0 }, 'x: expected more than 0, received 0'],
    ['-1e-40', { above: 0, max: 110 }, 'x: expected more than 0, received -1e-40'],
    [111, { above: 0, max: 110 }, 'x: expected at most 110, received 111'],
    [100, { min: 0, below: 100 }, 'x: expected 0 to below 100, received 100'],
    [-1, { min: 0, below: 100 }, 'x: expected 0 to below 100, received -1'],
    [100, { above: 0, below: 100 }, 'x: expected less than 100, received 100'],
    [new Decimal('-1.5'), { min: 0 }, 'x: expected at least 0, received -1.5'],
  ])('%s outside %o is out of range', (value, limits, message) => {
    expect(refusal(() => readNumber('x', value, limits))).toEqual({ code: 'out-of-range', path: 'x', message });
  });
});
