/** Acid value, acidity, saponification value and ester value: one kernel, four ways of saying it. */
import fc from 'fast-check';
import {
  acidityFromTitration,
  acidValueFromTitration,
  esterValueFromTitrations,
  fatFromCertificate,
  saponificationValueFromTitration,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact, KOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const titrant = { eqPerL: '0.1' } as const;
const once = { sample: { g: 10 }, titrant, volume: { mL: '1.8' } } as const;
const back = { sample: { g: 2 }, titrant: { eqPerL: '0.5' }, blank: { mL: '24.6' }, volume: { mL: '6.35' } } as const;

describe('worked by hand', () => {
  it('acid value: 1.8 mL of 0.1 N on 10 g', () => {
    const r = acidValueFromTitration(once);
    expect(r.acidValue.mgKohPerG.toString()).toBe('1.00989'); // 0.018 · 56.105
    // single: (0.01)²·0.0018 + 0.018²·(0.005² + 0.001²) = 1.88424e-7; shared: (0.005·0.018)² + (0.01·0.04)² = 1.681e-7
    expect(r.standardUncertainty.mgKohPerG.toFixed(8)).toBe('0.03350009'); // √3.56524e-7 · 56.105
    expect(r.cautions.map(({ code }) => code).slice(0, 2)).toEqual(['caustic-burns', 'spirit-catches-fire']);
  });

  it.each([
    ['oleic', '0.5076'],
    ['lauric', '0.36'],
    ['palmitic', '0.4608'],
    ['erucic', '0.6084'],
  ] as const)('acidity as %s acid: 0.018 mmol/g of the molar mass that the method fixes', (as, percent) => {
    expect(acidityFromTitration({ ...once, as }).acidity.percent.toString()).toBe(percent);
  });

  it('saponification value: 18.25 mL of 0.5 N on 2 g', () => {
    const r = saponificationValueFromTitration(back);
    expect(r.saponificationValue.mgKohPerG.toString()).toBe('255.9790625'); // 4.5625 · 56.105
  });

  it('ester value: the difference, with both uncertainties', () => {
    const r = esterValueFromTitrations({
      saponification: { saponificationValue: { mgKohPerG: 196 }, standardUncertainty: { mgKohPerG: 3 } },
      acid: { acidValue: { mgKohPerG: 15 }, standardUncertainty: { mgKohPerG: 4 } },
    });
    expect([r.esterValue.mgKohPerG, r.standardUncertainty.mgKohPerG].map(String)).toEqual(['181', '5']);
  });

  it('the results of the two titrations fit as they are', () => {
    const r = esterValueFromTitrations({
      saponification: saponificationValueFromTitration(back),
      acid: acidValueFromTitration(once),
    });
    expect(r.esterValue.mgKohPerG.toFixed(4)).toBe('254.9692');
  });

  it('and a measured saponification value makes a certificate', () => {
    const { saponificationValue, standardUncertainty } = saponificationValueFromTitration(back);
    const lot = fatFromCertificate({
      name: 'measured',
      kind: 'triglyceride',
      saponificationValue,
      uncertainty: { mgKohPerG: standardUncertainty.mgKohPerG.times(2) },
    });
    expect(lot.saponificationValue.low.mgKohPerG.lt(saponificationValue.mgKohPerG)).toBe(true);
  });
});

describe('laws', () => {
  it('acidity is the acid value by M/561.05 whatever the reading', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90000 }), fc.integer({ min: 100, max: 90000 }), (uL, mg) => {
        const input = { titrant, sample: { mg }, volume: { mL: `${String(uL)}e-3` } };
        const value = acidValueFromTitration(input);
        const acidity = acidityFromTitration({ ...input, as: 'oleic' });
        for (const [one, other] of [
          [acidity.acidity.percent, value.acidValue.mgKohPerG],
          [acidity.standardUncertainty.percent, value.standardUncertainty.mgKohPerG],
        ] as const) {
          expect(deviation(one.toString(), new Exact(other.toString()).times(282).div(KOH.times(10))).lte('1e-30')).toBe(true);
        }
      }),
    );
  }); // prettier-ignore

  it('the nearer the reading to the blank the lower the saponification value', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 24000 }), (uL) => {
        const at = (volume: number) => saponificationValueFromTitration({ ...back, volume: { mL: `${String(volume)}e-3` } });
        expect(at(uL).saponificationValue.mgKohPerG.gt(at(uL + 100).saponificationValue.mgKohPerG)).toBe(true);
      }),
    );
  }); // prettier-ignore
});

describe('refusals', () => {
  it.each<[string, () => unknown, string, string]>([
    ['a blank below the reading', () => saponificationValueFromTitration({ ...back, blank: { mL: 6 } }), 'out-of-range', 'volume'],
    ['no blank', () => saponificationValueFromTitration({ ...back, blank: undefined } as never), 'missing', 'blank'],
    ['a titrant of no strength', () => acidValueFromTitration({ ...once, titrant: { eqPerL: 0 } }), 'out-of-range', 'titrant.eqPerL'],
    ['an unknown conventional acid', () => acidityFromTitration({ ...once, as: 'stearic' } as never), 'bad-shape', 'as'],
    ['an acid value above the whole', () => esterValueFromTitrations({ saponification: { saponificationValue: { mgKohPerG: 10 } }, acid: { acidValue: { mgKohPerG: 11 } } }), 'out-of-range', 'acid.acidValue'],
    ['a field that no titration has', () => esterValueFromTitrations({ saponification: { saponificationValue: { mgKohPerG: 10 } }, acid: { acidValue: { mgKohPerG: 1 }, uncertainty: { mgKohPerG: 1 } } } as never), 'unknown-key', 'acid.uncertainty'],
    ['no acid value', () => esterValueFromTitrations({ saponification: { saponificationValue: { mgKohPerG: 10 } }, acid: {} } as never), 'missing', 'acid.acidValue'],
  ])('%s', (_what, call, code, path) => {
    expect(refusal(call)).toMatchObject({ code, path });
  }); // prettier-ignore
});
