/** The pH of soap in water, and what free caustic a pH can have behind it. */
import fc from 'fast-check';
import { freeAlkaliBehindPh, soapSolutionPhFrom, type FreeAlkaliBehindPhInput } from 'laurate';
import { describe, expect, it } from 'vitest';
import { activityCoefficient, pKwAt } from '../../src/freeAlkali/soapSolution.js';
import { Decimal } from '../../src/numbers/index.js';
import { codes } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const solution = { soap: { g: 1 }, solution: { mL: 100 } } as const;
const at25 = { temperature: { celsius: 25 } } as const;
const behind = (pH: number | string, change: Partial<FreeAlkaliBehindPhInput> = {}) =>
  freeAlkaliBehindPh({ reading: { pH }, error: { pH: 0 }, on: solution, ...at25, ...change });

describe('soapSolutionPhFrom: worked by hand', () => {
  it('sodium laurate of 0.045 mol/L at pKa 8.5, potassium stearate of 0.031 at pKa 4.8', () => {
    const { ph } = soapSolutionPhFrom({ ...solution, soapContent: { percent: 100 }, ...at25 });
    // c 10/222.304 = 0.044983: x = √(10^−5.496·c) = 3.783e-4 less 1.6e-6; γ 0.826: pH 13.996 + lg 3.113e-4
    expect(ph.high.pH.toFixed(2)).toBe('10.49');
    // c 10/322.574 = 0.031000: x = √(10^−9.196·c + 10^−13.996) = 4.443e-6; γ 0.849: pH 13.996 + lg 3.772e-6
    expect(ph.low.pH.toFixed(2)).toBe('8.57');
  });

  it('of soap whose content is not told, from 30 percent on', () => {
    const r = soapSolutionPhFrom({ ...solution, ...at25 });
    const known = soapSolutionPhFrom({ ...solution, soapContent: { low: { percent: 30 }, high: { percent: 100 } }, ...at25 });
    expect([r.ph.low.pH.eq(known.ph.low.pH), r.ph.high.pH.eq(known.ph.high.pH)]).toEqual([true, true]);
    expect(codes(r.notes)).toEqual(['band-is-no-test']);
  }); // prettier-ignore

  it('pKw by temperature, at the figures on file and between them', () => {
    const at = (celsius: number) => pKwAt(new Decimal(celsius)).toFixed(3);
    expect([at(20), at(25), at(50)]).toEqual(['14.166', '13.996', '13.263']);
    expect(pKwAt(new Decimal(35)).toFixed(2)).toBe('13.68'); // tables of the same formulation
  });

  it('activity by Davies: 0.77 to 0.79 at a tenth molar, one in no salt', () => {
    expect(activityCoefficient(new Decimal(0)).toString()).toBe('1');
    // −0.509·(0.316228/1.316228 − 0.03) = −0.107019
    expect(activityCoefficient(new Decimal('0.1')).toFixed(4)).toBe('0.7816');
  });
});

describe('freeAlkaliBehindPh: worked by hand', () => {
  it('pH 10.05 at 1 %: at most 0.055 % of NaOH', () => {
    const r = behind('10.05', { on: { ...solution, soapContent: { percent: 100 } } });
    // 10^(10.05 − 13.996)/0.8276 = 1.3684e-4 mol/L, 40 g each, in 10 g
    expect(r.atMost?.percentNaoh.toFixed(3)).toBe('0.055');
    expect(r.finding).toBe('as-soap');
    expect(codes(r.cautions)).toContain('ph-is-no-assay');
  });

  it('the error of a strip counts against the soap', () => {
    const exact = behind(9).atMost?.percentNaoh ?? new Decimal(0);
    const strip = behind(9, { error: { pH: 1 } }).atMost?.percentNaoh ?? new Decimal(0);
    expect(strip.div(exact).toFixed(10)).toBe('10.0000000000');
  });

  it.each([
    ['7', '0.5', 'below-soap', 'lower-than-soap', 'low-ph-is-not-safe'],
    ['8', '0.5', 'as-soap', 'as-soap-without-caustic', 'ph-is-no-assay'],
    ['10', '0.2', 'as-soap', 'as-soap-without-caustic', 'ph-is-no-assay'],
    ['11', '0.6', 'as-soap', 'as-soap-without-caustic', 'ph-is-no-assay'],
    ['11', '0.4', 'above-soap', 'higher-than-soap', 'caustic-not-ruled-out'],
  ])('pH %s ± %s: %s', (pH, error, finding, note, caution) => {
    const r = behind(pH, { error: { pH: error } });
    expect([r.finding, codes(r.notes)[0]]).toEqual([finding, note]);
    expect(codes(r.cautions)).toContain(caution);
  });

  it('a wet bar, and triethanolamine, tell nothing; and nothing is ever called safe', () => {
    const wet = behind(7, { on: 'wet-bar' });
    expect([wet.finding, wet.atMost, wet.band]).toEqual(['cannot-tell', undefined, undefined]);
    expect(codes(wet.cautions)).toContain('low-ph-is-not-safe');
    const amine = behind(11, { triethanolamine: true });
    expect([amine.finding, codes(amine.notes)]).toEqual(['cannot-tell', ['triethanolamine-reads-as-alkali']]);
    expect(codes(wet.notes)).toEqual(['reading-tells-nothing']);
    const both = behind(9, { on: 'wet-bar', triethanolamine: true });
    expect(codes(both.notes)).toEqual(['reading-tells-nothing', 'triethanolamine-reads-as-alkali']);
    for (const { text } of [...wet.notes, ...behind(7).notes, ...behind(9).notes]) expect(text).not.toMatch(/\bsafe\b/);
  });

  it('above what any soap shows it is said whatever the dilution, and to keep it off skin', () => {
    for (const change of [{}, { on: 'wet-bar' }, { triethanolamine: true }, { on: 'wet-bar', triethanolamine: true }] as const) {
      const r = behind(14, { error: { pH: '0.5' }, ...change });
      expect(r.finding).toBe('above-soap');
      expect(codes(r.notes).slice(0, 2)).toEqual(['higher-than-soap', 'higher-than-any-soap']);
      expect(codes(r.cautions)[1]).toBe('caustic-not-ruled-out');
      expect(codes(r.cautions)).not.toContain('low-ph-is-not-safe');
    }
    expect(behind('12', { error: { pH: '0.5' }, on: 'wet-bar' }).finding).toBe('cannot-tell'); // 11.5 itself
    // the band itself stays below that, however strong and cold the solution
    const coldest = soapSolutionPhFrom({ soap: { g: 100 }, solution: { L: 1 }, temperature: { celsius: 10 } });
    expect(coldest.ph.high.pH.toFixed(1)).toBe('11.2');
  }); // prettier-ignore

  it('a cap over a tenth of the soap is none', () => {
    // 10^(12.3 − 13.996)/0.8276 = 0.024333 mol/L of 39.997 g in 10 g
    expect(behind('12.3').atMost?.percentNaoh.toFixed(1)).toBe('9.7');
    const r = behind('12.32');
    expect([r.atMost, codes(r.notes)]).toEqual([undefined, ['higher-than-soap', 'higher-than-any-soap', 'no-cap']]);
    expect(r.band).toBeDefined();
  });
});

describe('laws', () => {
  // where none is told
  const NO_CAP = new Decimal(100);
  const pH = fc.integer({ min: 0, max: 1399 }).map((hundredths) => hundredths / 100);
  const celsius = fc.integer({ min: 10, max: 50 });
  const grams = fc.integer({ min: 1, max: 100 });

  it('the cap rises with pH', () => {
    fc.assert(
      fc.property(pH, fc.integer({ min: 1, max: 100 }), grams, celsius, (low, more, g, temperature) => {
        const at = (reading: number) =>
          freeAlkaliBehindPh({ reading: { pH: reading.toFixed(2) }, error: { pH: 0 }, on: { soap: { g }, solution: { L: 1 } }, temperature: { celsius: temperature } }).atMost?.percentNaoh ?? NO_CAP;
        const [one, other] = [at(low), at(Math.min(14, low + more / 100))];
        expect(one.lt(other) || other.eq(NO_CAP)).toBe(true);
      }),
    );
  }); // prettier-ignore

  it('it falls with the soap that makes the same pH, and rises with the warmth', () => {
    fc.assert(
      fc.property(pH, fc.integer({ min: 1, max: 99 }), fc.integer({ min: 10, max: 49 }), (reading, g, temperature) => {
        const at = (soap: number, warmth: number) =>
          freeAlkaliBehindPh({ reading: { pH: reading.toFixed(2) }, error: { pH: 0 }, on: { soap: { g: soap }, solution: { L: 1 } }, temperature: { celsius: warmth } }).atMost?.percentNaoh ?? NO_CAP;
        expect(at(g + 1, temperature).lte(at(g, temperature))).toBe(true);
        expect(at(g, temperature + 1).gte(at(g, temperature))).toBe(true);
      }),
    );
  }); // prettier-ignore

  it('the caustic of a solution worked out from its charges is never above the cap', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 0, max: 500 }), fc.integer({ min: 480, max: 850 }), (g, milli, pKa) => {
        // soap of 250 g/mol without activities: c + f = x + [A⁻], [HA] = x − f, Kb = [HA]·x/[A⁻]
        const [c, f, kb] = [g / 250, (g * milli) / 1e5 / 39.997, 10 ** (pKa / 100 - 13.996)];
        const b = kb - f;
        const x = (-b + Math.sqrt(b * b + 4 * kb * (c + f))) / 2;
        const { atMost } = freeAlkaliBehindPh({ reading: { pH: (13.996 + Math.log10(x)).toFixed(9) }, error: { pH: 0 }, on: { soap: { g }, solution: { L: 1 } }, ...at25 });
        expect(atMost?.percentNaoh.toNumber()).toBeGreaterThan((milli / 1000) * (1 - 1e-6));
      }),
    );
  }); // prettier-ignore

  it('the band rises with the soap, and its ends stay in order', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99 }), celsius, (g, temperature) => {
        const at = (soap: number) => soapSolutionPhFrom({ soap: { g: soap }, solution: { L: 1 }, temperature: { celsius: temperature } }).ph; // prettier-ignore
        const [one, more] = [at(g), at(g + 1)];
        expect(more.low.pH.gt(one.low.pH) && more.high.pH.gt(one.high.pH) && one.low.pH.lt(one.high.pH)).toBe(true);
      }),
    );
  });
});

describe('refusals', () => {
  it.each<[string, () => unknown, string, string]>([
    ['too dilute', () => soapSolutionPhFrom({ soap: { g: 1 }, solution: { L: 2 }, ...at25 }), 'outside-table', 'solution'],
    ['too strong', () => soapSolutionPhFrom({ soap: { g: 11 }, solution: { mL: 100 }, ...at25 }), 'outside-table', 'solution'],
    ['too strong behind a pH', () => behind(9, { on: { soap: { g: 11 }, solution: { mL: 100 } } }), 'outside-table', 'on.solution'],
    ['no soap', () => soapSolutionPhFrom({ soap: { g: 0 }, solution: { mL: 100 }, ...at25 }), 'out-of-range', 'soap.g'],
    ['too hot', () => soapSolutionPhFrom({ ...solution, temperature: { celsius: 51 } }), 'out-of-range', 'temperature.celsius'],
    ['pH over 14', () => behind('14.1'), 'out-of-range', 'reading.pH'],
    ['an error that is none', () => behind(9, { error: { pH: 4 } }), 'out-of-range', 'error.pH'],
    ['a bare pH', () => freeAlkaliBehindPh({ reading: 9, error: { pH: 0 }, on: solution, ...at25 } as never), 'bad-shape', 'reading'],
    ['a reading on something else', () => behind(9, { on: 'bar' as never }), 'bad-shape', 'on'],
    ['a reading on nothing', () => freeAlkaliBehindPh({ reading: { pH: 9 }, error: { pH: 0 }, ...at25 } as never), 'missing', 'on'],
  ])('%s', (_what, call, code, path) => {
    expect(refusal(call)).toMatchObject({ code, path });
  }); // prettier-ignore
});
