import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  mapEstimate,
  readMass,
  readPercent,
  readRanged,
  readSaponificationValueRange,
  valueIn,
  type RangeOf,
} from '../../src/quantities/index.js';
import { toJson, type Decimal } from '../../src/numbers/index.js';
import { refusal } from '../laws/refusal.js';

const percents = (value: unknown): RangeOf<Decimal> =>
  readRanged('assay', value, (path, part) => readPercent(path, part));

describe('mapEstimate', () => {
  const estimate = { low: { g: 900 }, likely: { g: 1000 }, high: { g: 1100 } };

  it('puts each figure through the function, in its place', () => {
    const kilograms = mapEstimate(estimate, (mass) => valueIn(mass, 'kg'));
    expect(toJson(kilograms)).toEqual({ low: '0.9', likely: '1', high: '1.1' });
  });

  it('is frozen, and leaves the estimate untouched', () => {
    expect(Object.isFrozen(mapEstimate(estimate, (mass) => mass))).toBe(true);
    expect(estimate).toEqual({ low: { g: 900 }, likely: { g: 1000 }, high: { g: 1100 } });
  });

  it('does nothing if the function does nothing, and two steps as one', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer(), fc.integer(), (low, likely, high) => {
        const three = { low, likely, high };
        expect(mapEstimate(three, (n) => n)).toEqual(three);
        expect(
          mapEstimate(
            mapEstimate(three, (n) => n + 1),
            (n) => n * 2,
          ),
        ).toEqual(mapEstimate(three, (n) => (n + 1) * 2));
      }),
    );
  });
});

describe('mapEstimate: refusals', () => {
  it.each<[string, unknown, unknown, string, string]>([
    ['no low end', { likely: 1, high: 2 }, Number, 'missing', 'estimate.low'],
    ['no likely figure', { low: 1, high: 2 }, Number, 'missing', 'estimate.likely'],
    ['no high end', { low: 1, likely: 2 }, Number, 'missing', 'estimate.high'],
    ['one end too many', { low: 1, likely: 2, high: 3, mean: 2 }, Number, 'unknown-key', 'estimate.mean'],
    ['no function', { low: 1, likely: 2, high: 3 }, 'kg', 'bad-shape', 'change'],
  ])('%s', (_what, estimate, change, code, path) => {
    expect(refusal(() => mapEstimate(estimate as never, change as never))).toMatchObject({ code, path });
  });
});

describe('readRanged: worked by hand', () => {
  it.each<[unknown, string, string, string]>([
    [{ percent: 98 }, '98', '98', '98'],
    [{ low: { percent: 98 }, high: { percent: 100 } }, '98', '99', '100'], // likely the middle
    [{ low: { percent: 98 }, likely: { percent: 98 }, high: { percent: 100 } }, '98', '98', '100'],
    [{ low: { percent: 98 }, likely: undefined, high: { percent: 100 } }, '98', '99', '100'],
    [{ low: { percent: 98 }, high: { percent: 98 } }, '98', '98', '98'],
    [{ high: { fraction: '0.9' }, low: { percent: 80 } }, '80', '85', '90'], // each end in its own unit
    [{ low: { percent: 0 }, likely: { ppm: 500 }, high: { percent: 1 } }, '0', '0.05', '1'],
  ])('%o is %s, %s, %s', (value, low, likely, high) => {
    expect(toJson(percents(value))).toEqual({ low, likely, high });
  });

  it('turns a range of equivalents round: the higher the equivalent, the lower the value', () => {
    const range = { low: { saponificationEquivalent: '218.5' }, high: { saponificationEquivalent: '295' } };
    const { low, likely, high } = readSaponificationValueRange('sv', range);
    expect(low.toFixed(2)).toBe('190.19'); // 56105/295
    expect(high.toFixed(2)).toBe('256.77'); // 56105/218.5
    expect(likely.toFixed(2)).toBe('223.48'); // the middle of the values, not of the equivalents
  });

  it('takes a range of values the right way only one way round or the other', () => {
    const up = readSaponificationValueRange('sv', { low: { mgKohPerG: 248 }, high: { mgKohPerG: 265 } });
    expect(toJson(up)).toEqual({ low: '248', likely: '256.5', high: '265' });
  });
});

describe('readRanged: laws', () => {
  const hundredths = fc.integer({ min: 0, max: 10_000 }).map((n) => n / 100);
  const ordered = fc.tuple(hundredths, hundredths, hundredths).map((three) => three.sort((a, b) => a - b));

  it('takes any three figures in order as they are, and again as the result of itself', () => {
    fc.assert(
      fc.property(ordered, ([low, likely, high]) => {
        const value = { low: { percent: low }, likely: { percent: likely }, high: { percent: high } };
        const read = percents(value);
        expect(toJson(read)).toEqual({ low: String(low), likely: String(likely), high: String(high) });
        expect(percents(mapEstimate(read, (percent) => ({ percent })))).toEqual(read);
        expect(toJson(percents(toJson(mapEstimate(read, (percent) => ({ percent })))))).toEqual(toJson(read));
      }),
    );
  });

  it('keeps the likely figure between the ends where it is not given', () => {
    fc.assert(
      fc.property(hundredths, hundredths, (a, b) => {
        const [low, high] = a <= b ? [a, b] : [b, a];
        const read = percents({ low: { percent: low }, high: { percent: high } });
        expect(read.likely.minus(read.low).eq(read.high.minus(read.likely))).toBe(true);
      }),
    );
  });

  it('reads a range of equivalents and the same range of values alike', () => {
    const sv = fc.integer({ min: 21_000, max: 699_000 }).map((n) => ({ mgKohPerG: n / 1000 }));
    const equivalent = (value: { mgKohPerG: number }): { saponificationEquivalent: Decimal } => ({
      saponificationEquivalent: valueIn(value, 'saponificationEquivalent'),
    });
    fc.assert(
      fc.property(sv, sv, (a, b) => {
        const [low, high] = a.mgKohPerG <= b.mgKohPerG ? [a, b] : [b, a];
        const values = readSaponificationValueRange('sv', { low, high });
        const equivalents = readSaponificationValueRange('sv', { low: equivalent(high), high: equivalent(low) });
        for (const end of ['low', 'likely', 'high'] as const) {
          // twice over 56105: two roundings at the 34th digit of a figure of at most 700
          expect(equivalents[end].minus(values[end]).abs().lte('1e-29')).toBe(true);
        }
      }),
    );
  });

  it('is frozen, and leaves the range untouched', () => {
    const value = { low: { percent: 98 }, high: { percent: 100 } };
    expect(Object.isFrozen(percents(value))).toBe(true);
    expect(Object.isFrozen(percents({ percent: 98 }))).toBe(true);
    expect(value).toEqual({ low: { percent: 98 }, high: { percent: 100 } });
  });
});

describe('readRanged: refusals', () => {
  const UNITS = 'a quantity such as { percent: … } (or fraction, ppm)';

  it.each<[unknown, string, string, string]>([
    [undefined, 'missing', 'assay', `${UNITS}, received nothing`],
    [null, 'missing', 'assay', `${UNITS}, received null`],
    [98, 'bad-shape', 'assay', `${UNITS}, received 98`],
    [
      [98, 100],
      'bad-shape',
      'assay',
      `one value, or a range as { low: …, high: … }, each end ${UNITS}, received a list of 2`,
    ],
    [{ low: { percent: 98 } }, 'missing', 'assay.high', `${UNITS}, received nothing`],
    [{ high: { percent: 98 } }, 'missing', 'assay.low', `${UNITS}, received nothing`],
    [{ likely: { percent: 98 } }, 'missing', 'assay.low', `${UNITS}, received nothing`],
    [{ low: 98, high: 100 }, 'bad-shape', 'assay.low', `${UNITS}, received 98`],
    [
      { low: { percent: 98 }, high: { percent: 100 }, middle: 1 },
      'unknown-key',
      'assay.middle',
      "only the fields low, likely, high, received the unknown field 'middle'",
    ],
    [
      { low: { percent: 98 }, high: { percent: 100 }, percent: 99 },
      'unknown-key',
      'assay.percent',
      "only the fields low, likely, high, received the unknown field 'percent'",
    ],
    [
      { low: { percent: 98 }, high: { percents: 100 } },
      'unknown-unit',
      'assay.high.percents',
      `one of percent, fraction, ppm (did you mean "percent"?), received the unknown unit 'percents'`,
    ],
    [
      { low: { percent: 100 }, high: { percent: 98 } },
      'out-of-range',
      'assay',
      'low at most as high as high, received 100 to 98',
    ],
    [
      { low: { percent: 98 }, likely: { percent: 97 }, high: { percent: 100 } },
      'out-of-range',
      'assay.likely',
      '98 to 100, received 97',
    ],
    [
      { low: { percent: 98 }, likely: { percent: '99.5' }, high: { percent: 99 } },
      'out-of-range',
      'assay.likely',
      '98 to 99, received 99.5',
    ],
  ])('%o is refused with %s', (value, code, path, said) => {
    const refused = refusal(() => percents(value));
    expect({ code: refused.code, path: refused.path }).toEqual({ code, path });
    expect(refused.message.startsWith(`${path}: expected ${said}`)).toBe(true);
  });

  it('refuses a likely value outside a range of equivalents', () => {
    const range = {
      low: { saponificationEquivalent: 280 },
      likely: { saponificationEquivalent: 200 },
      high: { saponificationEquivalent: 290 },
    };
    expect(refusal(() => readSaponificationValueRange('sv', range))).toMatchObject({
      code: 'out-of-range',
      path: 'sv.likely',
    });
  });

  it('refuses masses below zero at the end they stand at', () => {
    const masses = (value: unknown): unknown => readRanged('mass', value, (path, part) => readMass(path, part));
    expect(refusal(() => masses({ low: { g: -1 }, high: { g: 1 } }))).toMatchObject({
      code: 'out-of-range',
      path: 'mass.low.g',
    });
  });
});
