import fc from 'fast-check';
import { alkaliDemandOf, fat, fatFromBlend, fatFromCertificate } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact, KOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { asFat, lots } from './model.js';

describe('alkaliDemandOf: worked by hand', () => {
  it('900 g of coconut oil, 248 to 265 mg KOH/g', () => {
    const { hydroxide, naoh, koh } = alkaliDemandOf([{ fat: fat('coconut-oil'), mass: { g: 900 } }]);
    expect(hydroxide.low.mol.toFixed(6)).toBe('3.978255'); // 900 * 248 / 56105
    expect(hydroxide.high.mol.toFixed(6)).toBe('4.250958'); // 900 * 265 / 56105
    expect(naoh.low.g.toFixed(6)).toBe('159.118268'); // * 39.997
    expect(naoh.high.g.toFixed(6)).toBe('170.025568');
    expect(koh.low.g.toFixed(6)).toBe('223.200000'); // 900 * 0.248
    expect(koh.high.g.toFixed(6)).toBe('238.500000');
  });

  it('several fats add up, a blend among them', () => {
    const of = (mgKohPerG: number) =>
      fatFromCertificate({ name: 'x', kind: 'triglyceride', saponificationValue: { mgKohPerG } });
    const blend = fatFromBlend({
      name: 'Half',
      parts: [
        { fat: of(250), mass: { g: 1 } },
        { fat: of(180), mass: { g: 1 } },
      ],
    });
    const { koh } = alkaliDemandOf([
      { fat: blend, mass: { kg: 1 } },
      { fat: of(200), mass: { g: 500 } },
    ]);
    expect(koh.likely.g.toFixed(6)).toBe('315.000000'); // 500 * 0.250 + 500 * 0.180 + 500 * 0.200
  });

  it('shows what was assumed of each fat, and its sources', () => {
    const { notes, basis, by, given } = alkaliDemandOf([{ fat: fat('babassu-oil'), mass: { g: 10 } }]);
    expect(notes.every(({ text }) => text.startsWith('Babassu oil: '))).toBe(true);
    expect(notes.map(({ code }) => code)).toContain('bounds-by-convention');
    expect(basis).toEqual(expect.arrayContaining([...fat('babassu-oil').basis]));
    expect(by).toBe('alkaliDemandOf');
    expect(given.fats[0]?.mass.g.toString()).toBe('10');
  });
});

describe('alkaliDemandOf: laws', () => {
  it('is Σ m·SV/(1000·M(KOH)) at each end', () => {
    fc.assert(
      fc.property(lots, (some) => {
        const { hydroxide } = alkaliDemandOf(some.map((one) => asFat(one)));
        for (const end of ['low', 'high'] as const) {
          const expected = some
            .reduce((sum, one) => sum.plus(new Exact(one.grams).times(one[end])), new Exact(0))
            .div(KOH.times(10000));
          expect(deviation(hydroxide[end].mol.toString(), expected).lte('1e-32')).toBe(true);
        }
      }),
    );
  });

  it('an empty weighing beside adds nothing', () => {
    fc.assert(
      fc.property(lots, (some) => {
        const fats = some.map((one) => asFat(one));
        const { hydroxide } = alkaliDemandOf([...fats, { fat: fat('tallow'), mass: { g: 0 } }]);
        expect(hydroxide.likely.mol.eq(alkaliDemandOf(fats).hydroxide.likely.mol)).toBe(true);
      }),
    );
  });
});

describe('alkaliDemandOf: refusals', () => {
  const tallow = { fat: fat('tallow'), mass: { g: 1 } };
  it.each<[string, unknown, string, string]>([
    ['no fats', [], 'bad-shape', 'fats'],
    ['nothing', undefined, 'missing', 'fats'],
    ['one fat without a list', tallow, 'bad-shape', 'fats'],
    ['fats that weigh nothing', [{ ...tallow, mass: { g: 0 } }], 'out-of-range', 'fats'],
    ['a negative mass', [tallow, { ...tallow, mass: { g: -1 } }], 'out-of-range', 'fats[1].mass.g'],
    ['a decimal comma', [{ ...tallow, mass: { g: '1,5' } }], 'not-a-number', 'fats[0].mass.g'],
    ['a fat by its name', [{ ...tallow, fat: 'tallow' }], 'bad-shape', 'fats[0].fat'],
    ['a mass without unit', [{ ...tallow, mass: 700 }], 'bad-shape', 'fats[0].mass'],
    ['no mass', [{ fat: fat('tallow') }], 'missing', 'fats[0].mass'],
    ['an unknown key', [{ ...tallow, grams: 1 }], 'unknown-key', 'fats[0].grams'],
    ['a hole in the list', Object.assign(new Array(2), { 1: tallow }), 'missing', 'fats[0]'],
  ])('%s', (_what, fats, code, path) => {
    expect(refusal(() => alkaliDemandOf(fats as never))).toMatchObject({ code, path });
  });
});
