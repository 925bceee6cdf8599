import fc from 'fast-check';
import { fat, fatFromBlend, fatFromCertificate, fats, planLye, readFat, type FatFromCertificateInput } from 'laurate';
import { publishedRecordOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { deviation, Exact, KOH, NAOH, textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

type Value = FatFromCertificateInput['saponificationValue'];
type Rest = Omit<FatFromCertificateInput, 'name' | 'saponificationValue' | 'kind'>;
const lot = (saponificationValue: Value, rest: Rest = {}) =>
  fatFromCertificate({ name: 'A lot', kind: 'triglyceride', saponificationValue, ...rest });
const bounds = (value: Value, rest: Rest = {}): string[] => {
  const { low, likely, high } = lot(value, rest).saponificationValue;
  return [low, likely, high].map(({ mgKohPerG }) => mgKohPerG.toFixed(4));
};

describe('fatFromCertificate: worked by hand', () => {
  it.each<[string, Value, string[]]>([
    ['mg KOH', { mgKohPerG: '256.4' }, ['256.4000', '256.4000', '256.4000']],
    ['g KOH', { gKohPerG: '0.2564' }, ['256.4000', '256.4000', '256.4000']],
    ['g NaOH', { gNaohPerG: '0.183' }, ['256.6996', '256.6996', '256.6996']], // 183 * 56.105 / 39.997
    ['an equivalent', { saponificationEquivalent: '218.8' }, ['256.4214', '256.4214', '256.4214']], // 56105 / 218.8
    ['a range', { low: { mgKohPerG: 250 }, high: { mgKohPerG: 260 } }, ['250.0000', '255.0000', '260.0000']],
    ['a range with its likely value', { low: { mgKohPerG: 250 }, likely: { mgKohPerG: 258 }, high: { mgKohPerG: 260 } }, ['250.0000', '258.0000', '260.0000']],
    ['a range of mixed units', { low: { gNaohPerG: '0.183' }, high: { mgKohPerG: 260 } }, ['256.6996', '258.3498', '260.0000']],
    // an equivalent runs the other way: 56105/215 = 260.9535, 56105/225 = 249.3556, middle of the two values
    ['a range of equivalents', { low: { saponificationEquivalent: 215 }, high: { saponificationEquivalent: 225 } }, ['249.3556', '255.1545', '260.9535']],
  ])('%s', (_unit, value, expected) => {
    expect(bounds(value)).toEqual(expected);
  }); // prettier-ignore

  it.each<[string, Rest['uncertainty'] & object, string[]]>([
    ['mg KOH', { mgKohPerG: '1.2' }, ['255.2000', '256.4000', '257.6000']],
    ['g KOH', { gKohPerG: '0.0012' }, ['255.2000', '256.4000', '257.6000']],
    ['g NaOH', { gNaohPerG: '0.001' }, ['254.9973', '256.4000', '257.8027']], // 56.105 / 39.997 = 1.40273
  ])('an uncertainty in %s', (_unit, uncertainty, expected) => {
    expect(bounds({ mgKohPerG: '256.4' }, { uncertainty })).toEqual(expected);
  });

  it('says what was assumed', () => {
    const codes = (value: Value, rest: Rest = {}): string[] => lot(value, rest).notes.map(({ code }) => code);
    expect(codes({ mgKohPerG: 190 })).toEqual(['no-uncertainty-stated', 'acid-value-taken-as-zero']);
    expect(codes({ mgKohPerG: 190 }, { uncertainty: { mgKohPerG: 1 }, acidValue: { mgKohPerG: 2 } })).toEqual([]);
    expect(codes({ low: { mgKohPerG: 190 }, high: { mgKohPerG: 195 } }, { acidValue: { mgKohPerG: 0 } })).toEqual([]);
  });

  it('takes from `like` what the certificate leaves out, and keeps what it states', () => {
    const coconut = fat('coconut-oil');
    const like = fatFromCertificate({ name: 'Drum 7', like: coconut, saponificationValue: { mgKohPerG: 257 } });
    expect(like).toMatchObject({ name: 'Drum 7', kind: 'triglyceride', from: 'certificate' });
    expect(like.id).toBeUndefined();
    expect(like.profile).toBe(coconut.profile);
    expect(like.iodineValue).toBe(coconut.iodineValue);
    expect(like.unsaponifiable).toBe(coconut.unsaponifiable);
    expect(like.basis).toEqual(expect.arrayContaining([...coconut.basis]));
    const stated = fatFromCertificate({
      name: 'Drum 8',
      like: coconut,
      saponificationValue: { mgKohPerG: 257 },
      iodineValue: { gI2Per100g: 9 },
      unsaponifiable: { percent: '0.4' },
      moisture: { ppm: 500 },
    });
    expect(stated.iodineValue?.high.gI2Per100g.toString()).toBe('9');
    expect(stated.unsaponifiable.low.percent.toString()).toBe('0.4');
    expect(stated.moisture.likely.percent.toString()).toBe('0.05');
  });

  it('takes the acid value of `like` too: a lot of beeswax is not without free acid', () => {
    const wax = fatFromCertificate({ name: 'A wax', like: fat('beeswax'), saponificationValue: { mgKohPerG: 95 } });
    expect(wax.acidValue.mgKohPerG.toString()).toBe('20.5'); // "what the certificate leaves out comes from that fat"
  });

  it('counts an acid value as its middle, and all acid as its saponification value', () => {
    const acidValue = { low: { mgKohPerG: 2 }, high: { mgKohPerG: 4 } };
    expect(lot({ mgKohPerG: 190 }, { acidValue }).acidValue.mgKohPerG.toString()).toBe('3');
    const acid = fatFromCertificate({ name: 'Acid', kind: 'free-fatty-acid', saponificationValue: { mgKohPerG: 208 } });
    expect(acid.acidValue.mgKohPerG.toString()).toBe('208');
    expect(acid.notes.map(({ code }) => code)).toEqual(['no-uncertainty-stated']);
  });

  it('says so where an acid value is stated of what is all acid, and its saponification value is used instead', () => {
    const stated = {
      kind: 'free-fatty-acid',
      saponificationValue: { mgKohPerG: 208 },
      acidValue: { mgKohPerG: 100 },
    } as const;
    const { acidValue, notes } = fatFromCertificate({ name: 'Acid', ...stated });
    expect(acidValue.mgKohPerG.toString()).toBe('208');
    expect(notes.some(({ text }) => /acid value/i.test(text))).toBe(true);
  });

  it('takes an acid value as equivalents, also a range of them', () => {
    const range = { low: { saponificationEquivalent: 5000 }, high: { saponificationEquivalent: 6000 } };
    // 56105/5000 = 11.221, 56105/6000 = 9.3508: the middle is 10.2859
    expect(lot({ mgKohPerG: 190 }, { acidValue: range }).acidValue.mgKohPerG.toFixed(4)).toBe('10.2859');
  });
});

describe('fatFromCertificate: what speaks against a certificate', () => {
  const noted = (more: object): string[] =>
    fatFromCertificate({ name: 'Drum', ...more } as FatFromCertificateInput)
      .notes.map(({ code }) => code)
      .filter((code) => code.includes('certificate-') || code.includes('iodine-'));
  const mg = (mgKohPerG: number | string): object => ({ saponificationValue: { mgKohPerG } });

  it('a triglyceride outside the limits of all published ones: 160 (shea butter) to 265 (coconut oil)', () => {
    const limits = fats
      .filter(({ kind }) => kind === 'triglyceride')
      .flatMap(({ id }) => publishedRecordOf(id).cells.filter(({ of }) => of === 'saponificationValue'))
      .flatMap(({ low, high }) => (low === null || high === null ? [] : [Number(low), Number(high)]));
    expect([Math.min(...limits), Math.max(...limits)]).toEqual([160, 265]);
    const kind = 'triglyceride';
    for (const within of [160, 265]) expect(noted({ kind, ...mg(within) })).toEqual([]);
    for (const beyond of ['159.9', '265.1', 356, 600]) {
      expect(noted({ kind, ...mg(beyond) })).toEqual(['certificate-beyond-known-fats']);
    }
    // what is no triglyceride has no such span
    expect(noted({ kind: 'wax-ester', ...mg(95) })).toEqual([]);
  });

  it('an iodine value that is farther outside than the published range is wide: 6.3 to 10.6 of coconut oil', () => {
    const of = (gI2Per100g: string): string[] =>
      noted({ like: fat('coconut-oil'), ...mg(256), iodineValue: { gI2Per100g } });
    for (const near of ['2', '6', '10.7', '14.9']) expect(of(near)).toEqual([]);
    for (const far of ['1.9', '15', '90']) expect(of(far)).toEqual(['iodine-value-outside-published-range']);
  });

  it('an iodine value within a limit that is printed on one side only speaks against nothing', () => {
    // a standard allows stearic acid 50 up to 4, castor oil once hydrogenated up to 5, and asks of tung oil at least 163;
    // their profiles alone would say 0, 0 and 212 to 236
    for (const [id, value, gI2Per100g] of [
      ['stearic-acid-50', 207, '0.5'],
      ['stearic-acid-50', 207, 4],
      ['castor-oil-hydrogenated', 180, 5],
      ['tung-oil', 192, 163],
    ] as const) {
      expect([id, noted({ like: fat(id), ...mg(value), iodineValue: { gI2Per100g } })]).toEqual([id, []]);
    }
    // oleic acid sold as stearic acid
    expect(noted({ like: fat('stearic-acid-50'), ...mg(201), iodineValue: { gI2Per100g: 90 } })).toEqual([
      'iodine-value-outside-published-range',
    ]);
  });

  it('says how to go on where neither `like` nor `kind` is given', () => {
    expect(refusal(() => fatFromCertificate({ name: 'Drum', ...mg(190) } as never))).toMatchObject({
      code: 'missing',
      path: 'kind',
      message:
        'kind: expected `like`, a published fat that it resembles (then its values are checked), or `kind`: one of triglyceride, free-fatty-acid, wax-ester, rosin, received neither',
    });
  });
});

describe('fatFromCertificate: laws', () => {
  const value = fc.integer({ min: 21000, max: 699000 }).map((n) => `${String(n)}e-3`);

  it('one lot is one value in every unit', () => {
    fc.assert(
      fc.property(value, (mgKohPerG) => {
        const mg = new Exact(mgKohPerG);
        const units: Value[] = [
          { gKohPerG: mg.div(1000).toString() },
          { gNaohPerG: mg.times(NAOH).div(KOH).div(1000).toPrecision(34) },
          { saponificationEquivalent: KOH.times(1000).div(mg).toPrecision(34) },
        ];
        for (const unit of units) {
          // the unit is written with 34 digits and turned once
          expect(deviation(lot(unit).saponificationValue.likely.mgKohPerG.toString(), mg).lte('1e-32')).toBe(true);
        }
      }),
    );
  });

  it('bounds are the value and its uncertainty either way', () => {
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 6000 }), fc.integer({ min: 0, max: 99 }), (tenths, half) => {
        const made = lot({ mgKohPerG: `${String(tenths)}e-1` }, { uncertainty: { mgKohPerG: `${String(half)}e-1` } });
        const { low, likely, high } = made.saponificationValue;
        expect(likely.mgKohPerG.minus(low.mgKohPerG).times(10).toNumber()).toBe(half);
        expect(high.mgKohPerG.minus(likely.mgKohPerG).times(10).toNumber()).toBe(half);
      }),
    );
  });

  it('whatever certificate it takes, the fat survives JSON', () => {
    fc.assert(
      fc.property(value, fc.integer({ min: 0, max: 100 }), (mgKohPerG, half) => {
        const input = {
          name: 'A lot',
          kind: 'triglyceride',
          saponificationValue: { mgKohPerG },
          uncertainty: { mgKohPerG: half },
        } as const;
        let made;
        try {
          made = fatFromCertificate(input);
        } catch {
          return; // refused: there is no fat to store
        }
        expect(textOf(readFat(throughJson(made)))).toBe(textOf(made));
      }),
    );
  });
});

describe('fatFromCertificate: refusals', () => {
  const good = { name: 'A lot', kind: 'triglyceride', saponificationValue: { mgKohPerG: 190 } } as const;
  it.each<[string, object, string, string]>([
    ['no name', { name: undefined }, 'missing', 'name'],
    ['an empty name', { name: ' ' }, 'bad-shape', 'name'],
    ['neither kind nor like', { kind: undefined }, 'missing', 'kind'],
    ['an unknown kind', { kind: 'oil' }, 'bad-shape', 'kind'],
    ['like by name', { like: 'coconut-oil' }, 'bad-shape', 'like'],
    ['like a blend', { like: fatFromBlend({ name: 'B', parts: [{ fat: fat('tallow'), mass: { g: 1 } }] }) }, 'bad-shape', 'like'],
    ['no value', { saponificationValue: undefined }, 'missing', 'saponificationValue'],
    ['a bare number', { saponificationValue: 190 }, 'bad-shape', 'saponificationValue'],
    ['a value under 20', { saponificationValue: { mgKohPerG: '19.9' } }, 'out-of-range', 'saponificationValue.mgKohPerG'],
    ['a value over 700', { saponificationValue: { mgKohPerG: '700.1' } }, 'out-of-range', 'saponificationValue.mgKohPerG'],
    ['grams taken for milligrams', { saponificationValue: { mgKohPerG: '0.19' } }, 'out-of-range', 'saponificationValue.mgKohPerG'],
    ['an equivalent of nothing', { saponificationValue: { saponificationEquivalent: 0 } }, 'out-of-range', 'saponificationValue.saponificationEquivalent'],
    ['two units', { saponificationValue: { mgKohPerG: 190, gKohPerG: '0.19' } }, 'two-units', 'saponificationValue'],
    ['an unknown unit', { saponificationValue: { mgKohPerKg: 190 } }, 'unknown-unit', 'saponificationValue.mgKohPerKg'],
    ['a range upside down, mg', { saponificationValue: { low: { mgKohPerG: 195 }, high: { mgKohPerG: 190 } } }, 'out-of-range', 'saponificationValue'],
    ['a likely value outside', { saponificationValue: { low: { mgKohPerG: 190 }, likely: { mgKohPerG: 196 }, high: { mgKohPerG: 195 } } }, 'out-of-range', 'saponificationValue.likely'],
    ['a range with an uncertainty', { saponificationValue: { low: { mgKohPerG: 190 }, high: { mgKohPerG: 195 } }, uncertainty: { mgKohPerG: 1 } }, 'bad-shape', 'uncertainty'],
    ['a negative uncertainty', { uncertainty: { mgKohPerG: -1 } }, 'out-of-range', 'uncertainty.mgKohPerG'],
    ['an uncertainty as equivalent', { uncertainty: { saponificationEquivalent: 1 } }, 'unknown-unit', 'uncertainty.saponificationEquivalent'],
    ['an acid value above the saponification value', { acidValue: { mgKohPerG: 191 } }, 'out-of-range', 'acidValue'],
    ['a negative acid value', { acidValue: { mgKohPerG: -1 } }, 'out-of-range', 'acidValue.mgKohPerG'],
    ['an iodine value over 500', { iodineValue: { gI2Per100g: 501 } }, 'out-of-range', 'iodineValue.gI2Per100g'],
    ['unsaponifiable over 99 %', { unsaponifiable: { percent: 100 } }, 'out-of-range', 'unsaponifiable.percent'],
    ['moisture with a comma', { moisture: { percent: '0,1' } }, 'not-a-number', 'moisture.percent'],
    ['an unknown option', { acidvalue: { mgKohPerG: 1 } }, 'unknown-key', 'input.acidvalue'],
  ])('%s', (_what, change, code, path) => {
    expect(refusal(() => fatFromCertificate({ ...good, ...change }))).toMatchObject({ code, path });
  }); // prettier-ignore

  it('an acid value above the lowest saponification value of a range', () => {
    const range = { low: { mgKohPerG: 190 }, high: { mgKohPerG: 200 } };
    expect(refusal(() => lot(range, { acidValue: { mgKohPerG: 195 } }))).toMatchObject({ code: 'out-of-range' });
  });

  it('tells what came, in the unit it came in', () => {
    expect(refusal(() => lot({ gNaohPerG: 183 })).message).toMatch(/received 183$/);
    expect(refusal(() => lot({ mgKohPerG: 800 })).message).toBe(
      'saponificationValue.mgKohPerG: expected 20 to 700, received 800',
    );
  });

  it('an uncertainty that takes the value out of 20 to 700, and so to lots without any demand', () => {
    const wide = (mgKohPerG: number, half: number) => () => lot({ mgKohPerG }, { uncertainty: { mgKohPerG: half } });
    expect(refusal(wide(20, 20))).toMatchObject({ code: 'out-of-range', path: 'uncertainty' });
    expect(refusal(wide(50, 60))).toMatchObject({ code: 'out-of-range', path: 'uncertainty' });
    expect(refusal(wide(690, 11))).toMatchObject({ code: 'out-of-range', path: 'uncertainty' });
  });

  it('no plan comes out infinite', () => {
    const none = () => {
      const nothing = lot({ mgKohPerG: 20 }, { uncertainty: { mgKohPerG: 20 } });
      return planLye({
        fats: [{ fat: nothing, mass: { g: 100 } }],
        alkali: { naoh: { solid: { hydroxide: { percent: 98 } } } },
        target: { superfat: { percent: 5 } },
        dilution: { strength: { percent: 30 } },
      });
    };
    expect(refusal(none)).toMatchObject({ code: 'out-of-range' });
  });
});
