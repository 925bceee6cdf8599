import fc from 'fast-check';
import {
  fat,
  fatFromBlend,
  fatFromCertificate,
  fatFromProfile,
  fats,
  readFat,
  saponificationValueOf,
  type Fat,
  type FatFromCertificateInput,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const published = fc.constantFrom(...fats.map(({ id }) => id)).map((id): Fat => fat(id));
const quantity = (unit: string, from: number, to: number) =>
  fc.integer({ min: from * 1000, max: to * 1000 }).map((n) => ({ [unit]: `${String(n)}e-3` }));
const ranged = (unit: string, from: number, to: number) =>
  fc.oneof(
    quantity(unit, from, to),
    fc
      .tuple(fc.integer({ min: from * 1000, max: to * 1000 }), fc.integer({ min: from * 1000, max: to * 1000 }))
      .map(([a, b]) => ({
        low: { [unit]: `${String(Math.min(a, b))}e-3` },
        high: { [unit]: `${String(Math.max(a, b))}e-3` },
      })),
  );

/** Certificates with any of their options, in any unit. */
const certificate = fc
  .record(
    {
      name: fc.string({ minLength: 1, maxLength: 200 }).filter((name) => name.trim() !== ''),
      kind: fc.constantFrom('triglyceride', 'free-fatty-acid', 'wax-ester', 'rosin'),
      saponificationValue: fc.oneof(
        ranged('mgKohPerG', 100, 500),
        ranged('gKohPerG', 1, 1).map(() => ({ gKohPerG: '0.1957' })),
        ranged('saponificationEquivalent', 120, 500),
        fc.constantFrom({ gNaohPerG: '0.1341' }, { low: { gNaohPerG: '0.132' }, high: { gNaohPerG: '0.137' } }),
      ),
      like: published,
      acidValue: ranged('mgKohPerG', 0, 30),
      iodineValue: ranged('gI2Per100g', 0, 300),
      unsaponifiable: ranged('percent', 0, 20),
      moisture: ranged('ppm', 0, 9999),
    },
    { requiredKeys: ['name', 'kind', 'saponificationValue'] },
  )
  .map((input): Fat => fatFromCertificate(input as unknown as FatFromCertificateInput));

describe('readFat: worked by hand', () => {
  it('gives back what went through JSON, to the last digit', () => {
    const stored = throughJson(fat('castor-oil'));
    const again = readFat(stored);
    expect(again).not.toBe(fat('castor-oil'));
    expect(textOf(again)).toBe(textOf(fat('castor-oil')));
    expect(again).toMatchObject({ id: 'castor-oil', from: 'standard' });
  });

  it('takes a fat that the library made as it is', () => {
    const lot = fatFromCertificate({ name: 'A', kind: 'triglyceride', saponificationValue: { mgKohPerG: 190 } });
    expect(readFat(lot)).toBe(lot);
    const again = readFat(throughJson(lot));
    expect(readFat(again)).toBe(again);
  });

  it('keeps the figures of another edition, and its sources', () => {
    const stored = throughJson(fat('tallow')) as object;
    const old = readFat({ ...stored, edition: '1908.1', basis: ['a-book-of-another-edition'] });
    expect(old).toMatchObject({ edition: '1908.1', basis: ['a-book-of-another-edition'] });
  });
});

describe('readFat: laws', () => {
  it.each(fats)('$id survives JSON', ({ id }) => {
    expect(textOf(readFat(throughJson(fat(id))))).toBe(textOf(fat(id)));
  });

  it('every certificate survives JSON', () => {
    fc.assert(
      fc.property(certificate, (made) => {
        expect(textOf(readFat(throughJson(made)))).toBe(textOf(made));
      }),
      { numRuns: 500 },
    );
  });

  it('every blend of them does', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(published, certificate), { minLength: 1, maxLength: 4 }), (made) => {
        const blend = fatFromBlend({
          name: 'Stock',
          parts: made.map((one, at) => ({ fat: one, mass: { g: at + 1 } })),
        });
        expect(textOf(readFat(throughJson(blend)))).toBe(textOf(blend));
      }),
    );
  });

  it('also where a note is as long as one may be', () => {
    const long = readFat({
      ...(throughJson(fat('tallow')) as object),
      notes: [{ code: 'told', text: 'x'.repeat(1000) }],
    });
    const blend = fatFromBlend({ name: 'Stock', parts: [{ fat: long, mass: { g: 1 } }] });
    expect(textOf(readFat(throughJson(blend)))).toBe(textOf(blend));
  });

  it('a copy without JSON is read the same', () => {
    fc.assert(
      fc.property(published, (one) => {
        expect(textOf(readFat({ ...one }))).toBe(textOf(one));
      }),
    );
  });
});

describe('readFat: refusals', () => {
  const stored = (of: Fat): Record<string, unknown> => throughJson(of) as Record<string, unknown>;
  const profiled = fatFromProfile({ name: 'P', kind: 'triglyceride', profile: { 'C12:0': 100 } });

  it.each<[string, Record<string, unknown>, string, string]>([
    ['an unknown key', { colour: 'white' }, 'unknown-key', 'fat.colour'],
    ['an unknown kind', { kind: 'oil' }, 'bad-shape', 'fat.kind'],
    ['no kind', { kind: undefined }, 'missing', 'fat.kind'],
    ['an empty name', { name: '' }, 'bad-shape', 'fat.name'],
    ['a value under 20', { saponificationValue: { mgKohPerG: 19 } }, 'out-of-range', 'fat.saponificationValue.mgKohPerG'],
    ['a low of nothing', { saponificationValue: { low: { mgKohPerG: 0 }, likely: { mgKohPerG: 190 }, high: { mgKohPerG: 195 } } }, 'out-of-range', 'fat.saponificationValue.low.mgKohPerG'],
    ['an acid value above the saponification value', { acidValue: { mgKohPerG: 300 } }, 'out-of-range', 'fat.acidValue.mgKohPerG'],
    ['an acid value above the lowest saponification value', { saponificationValue: { low: { mgKohPerG: 180 }, likely: { mgKohPerG: 190 }, high: { mgKohPerG: 200 } }, acidValue: { mgKohPerG: 185 } }, 'out-of-range', 'fat.acidValue.mgKohPerG'],
    ['no acid value', { acidValue: undefined }, 'missing', 'fat.acidValue'],
    ['no moisture', { moisture: undefined }, 'missing', 'fat.moisture'],
    ['more than all unsaponifiable', { unsaponifiable: { percent: 101 } }, 'out-of-range', 'fat.unsaponifiable.percent'],
    ['an unknown acid', { profile: { 'C12:9': { percent: 100 } } }, 'unknown-acid', 'fat.profile.C12:9'],
    ['an open profile', { profile: { 'C12:0': { percent: 90 } } }, 'profile-does-not-close', 'fat.profile'],
    ['an origin that single fats do not have', { from: 'blend' }, 'bad-shape', 'fat.from'],
    ['notes that are no list', { notes: 'none' }, 'bad-shape', 'fat.notes'],
    ['a note without text', { notes: [{ code: 'x' }] }, 'missing', 'fat.notes[0].text'],
    ['a basis that is no list', { basis: {} }, 'bad-shape', 'fat.basis'],
    ['a basis of numbers', { basis: [1] }, 'bad-shape', 'fat.basis[0]'],
    ['an iodine value over 500', { iodineValue: { gI2Per100g: 501 } }, 'out-of-range', 'fat.iodineValue.gI2Per100g'],
  ])('%s', (_what, change, code, path) => {
    expect(refusal(() => readFat({ ...stored(profiled), ...change }))).toMatchObject({ code, path });
  }); // prettier-ignore

  it.each<[unknown, string]>([
    [undefined, 'missing'],
    [null, 'missing'],
    ['coconut-oil', 'bad-shape'],
    [[], 'bad-shape'],
    [{}, 'missing'],
    [1, 'bad-shape'],
  ])('%o', (value, code) => {
    expect(refusal(() => readFat(value)).code).toBe(code);
  });

  it('all acid whose acid value is not its saponification value', () => {
    const change = { ...stored(fat('oleic-acid')), acidValue: { mgKohPerG: 150 } };
    expect(refusal(() => readFat(change))).toMatchObject({ code: 'out-of-range', path: 'fat.acidValue' });
  });

  it('names the place it was told', () => {
    expect(refusal(() => readFat({}, 'recipe.fats[3].fat')).path).toBe('recipe.fats[3].fat.kind');
  });

  describe('blends', () => {
    const blend = fatFromBlend({
      name: 'Stock',
      parts: [
        { fat: fat('coconut-oil'), mass: { g: 700 } },
        { fat: fat('castor-oil'), mass: { g: 300 } },
      ],
    });
    const tampered = (change: (parts: Record<string, unknown>[]) => unknown) => {
      const json = stored(blend);
      return () => readFat({ ...json, parts: change(json['parts'] as Record<string, unknown>[]) });
    };

    it.each<[string, (parts: Record<string, unknown>[]) => unknown, string, string]>([
      ['shares that do not sum to 100', ([a, b]) => [a, { ...b, share: { percent: 29 } }], 'out-of-range', 'fat.parts'],
      ['no parts', () => [], 'bad-shape', 'fat.parts'],
      ['a negative share', ([a, b]) => [{ ...a, share: { percent: 130 } }, { ...b, share: { percent: -30 } }], 'out-of-range', 'fat.parts[0].share.percent'],
      ['an unknown key in a part', ([a, b]) => [a, { ...b, mass: { g: 1 } }], 'unknown-key', 'fat.parts[1].mass'],
      ['a blend in a blend', ([a]) => [{ ...a, share: { percent: 100 }, fat: stored(blend) }], 'bad-shape', 'fat.parts[0].fat'],
    ])('%s', (_what, change, code, path) => {
      expect(refusal(tampered(change))).toMatchObject({ code, path });
    }); // prettier-ignore

    it('a value that is not the mean of its parts: planning looks at the parts', () => {
      const high = { low: { mgKohPerG: 230 }, likely: { mgKohPerG: 250 }, high: { mgKohPerG: 260 } };
      expect(
        refusal(() => saponificationValueOf(readFat({ ...stored(blend), saponificationValue: high }))),
      ).toMatchObject({ code: 'out-of-range', path: 'fat.saponificationValue' });
    });

    it('one that holds itself', () => {
      const cycle = stored(blend);
      cycle['parts'] = [{ fat: cycle, share: { percent: 100 } }];
      expect(refusal(() => readFat(cycle))).toMatchObject({ code: 'bad-shape', path: 'fat.parts[0].fat' });
    });

    it('blends in blends without end', () => {
      const outer = stored(blend);
      let nested = outer;
      for (let depth = 0; depth < 20_000; depth++)
        nested = { ...outer, parts: [{ fat: nested, share: { percent: 100 } }] };
      expect(refusal(() => readFat(nested))).toMatchObject({ code: 'bad-shape', path: 'fat.parts[0].fat' });
    });
  });

  it('fields that cannot be read', () => {
    const hostile = Object.defineProperty({ ...stored(profiled) }, 'name', {
      enumerable: true,
      get() {
        throw new TypeError('no');
      },
    });
    expect(refusal(() => readFat(hostile))).toMatchObject({ code: 'bad-shape', path: 'fat' });
  });

  it('a key named __proto__', () => {
    const json = JSON.stringify(profiled).replace('{', '{"__proto__":{"kind":"rosin"},');
    expect(refusal(() => readFat(JSON.parse(json)))).toMatchObject({ code: 'unknown-key', path: 'fat.__proto__' });
  });
});
