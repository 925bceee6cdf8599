import { createRequire } from 'node:module';
import { Decimal as Base } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal, readNumber, toJson } from '../../src/numbers/index.js';
import { splitToStep, valueIn } from '../../src/quantities/index.js';

const OtherCopy = createRequire(import.meta.url)('decimal.js') as typeof Base;
const throughJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('toJson: worked by hand', () => {
  it('turns every Decimal to text and leaves the rest', () => {
    const result = {
      weigh: { naoh: { g: new Decimal('246.5') } },
      range: [{ percent: new Decimal('0.6') }, { percent: new Decimal('1e-9') }],
      alkali: 'naoh',
      count: 3,
      whole: true,
      nothing: null,
    };
    expect(toJson(result)).toEqual({
      weigh: { naoh: { g: '246.5' } },
      range: [{ percent: '0.6' }, { percent: '1e-9' }],
      alkali: 'naoh',
      count: 3,
      whole: true,
      nothing: null,
    });
  });

  it('writes all 34 digits', () => {
    expect(toJson({ g: Decimal.div(1, 3) })).toEqual({ g: `0.${'3'.repeat(34)}` });
  });

  it('knows Decimals of other copies', () => {
    expect(toJson([new Base('1.5'), new OtherCopy('1.5'), new (Base.clone({ precision: 3 }))('1.5')])).toEqual([
      '1.5',
      '1.5',
      '1.5',
    ]);
  });

  it('leaves out what is not there, as JSON does', () => {
    expect(Object.keys(toJson({ a: undefined, b: 1 }))).toEqual(['b']);
  });

  it('takes a Decimal by itself', () => {
    expect(toJson(new Decimal('0.50'))).toBe('0.5');
  });
});

describe('toJson: laws', () => {
  const decimal = fc
    .tuple(fc.bigInt({ min: -(10n ** 34n) + 1n, max: 10n ** 34n - 1n }), fc.integer({ min: -40, max: -19 }))
    .map(([digits, exponent]) => new Decimal(`${digits.toString()}e${String(exponent)}`));
  const { result } = fc.letrec<{ result: unknown; leaf: unknown }>((tie) => ({
    leaf: fc.oneof(
      decimal,
      fc.string(),
      fc.boolean(),
      fc.constant(null),
      fc.integer(),
      fc.constant(undefined).map(() => ({ optional: undefined })),
    ),
    result: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      tie('leaf'),
      fc.array(tie('result'), { maxLength: 4 }),
      fc.dictionary(fc.string(), tie('result'), { maxKeys: 4 }),
    ),
  }));

  it('is what JSON writes and reads back unchanged', () => {
    fc.assert(
      fc.property(result, (value) => {
        expect(throughJson(toJson(value))).toEqual(toJson(value));
      }),
    );
  });

  it('leaves the result itself untouched', () => {
    fc.assert(
      fc.property(decimal, (d) => {
        const value = Object.freeze({ mass: Object.freeze({ g: d }), list: Object.freeze([d]) });
        expect(toJson(value)).toEqual({ mass: { g: d.toString() }, list: [d.toString()] });
        expect(value.mass.g).toBe(d);
      }),
    );
  });

  it('is accepted as input again, to the last digit', () => {
    fc.assert(
      fc.property(
        decimal.filter((d) => d.isZero() || d.abs().gte('1e-40')),
        (d) => {
          const { g } = throughJson(toJson({ g: d })) as { g: string };
          expect(readNumber('g', g).eq(d)).toBe(true);
        },
      ),
    );
  });

  it('holds for a result of the library, whose masses can be split again', () => {
    const parts = splitToStep([{ lb: 1 }, { oz: 7 }], { g: '0.1' });
    const read = throughJson(toJson(parts)) as { g: string }[];
    expect(read).toEqual([{ g: '453.6' }, { g: '198.4' }]);
    expect(toJson(splitToStep(read, { g: '0.1' }))).toEqual(read);
    expect(read.map((mass) => valueIn(mass, 'kg').toString())).toEqual(['0.4536', '0.1984']);
  });
});
