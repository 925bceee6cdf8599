import fc from 'fast-check';
import {
  compositionFrom,
  fatFromCertificate,
  heatOfEvaporation,
  heatOfWarming,
  soapFromLye,
  type AdditionInput,
} from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { codes, deviation } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const exact = fatFromCertificate({
  name: 'Exact',
  kind: 'triglyceride',
  saponificationValue: { mgKohPerG: '196.3675' },
});
const pot = (additions: readonly AdditionInput[] = [], times = 1) =>
  compositionFrom({
    soap: soapFromLye({
      fats: [{ fat: exact, mass: { g: 1000 * times } }],
      lye: [{ alkali: 'naoh', mass: { g: 279.979 * times }, solution: { hydroxide: { percent: 50 } } }],
    }),
    additions,
  });
const warmed = (from: number, to: number, additions: readonly AdditionInput[] = [], times = 1) =>
  heatOfWarming({ composition: pot(additions, times), from: { celsius: from }, to: { celsius: to } });

describe('heatOfWarming: worked by hand', () => {
  it('soap, glycerol and water', () => {
    // 1032.546 g · (1.76, 2.3, 2.35) + 107.443 · (2.371, 2.45, 2.553) + 139.9895 · 4.18 = 2657.2, 3223.2, 3285.9 J/K
    const r = warmed(20, 60);
    expect(r.heatPerCelsiusDegree.low.kJ.toFixed(4)).toBe('2.6572');
    expect(r.heatPerCelsiusDegree.likely.kJ.toFixed(4)).toBe('3.2232');
    expect(r.heatPerCelsiusDegree.high.kJ.toFixed(4)).toBe('3.2859');
    expect(r.heat.likely.kJ.toFixed(1)).toBe('128.9');
  });

  it.each<[AdditionInput, string]>([
    // what 100 g bring, kJ: 40 degrees of 0.1 kg · c, likely
    [{ solvent: 'water', mass: { g: 100 } }, '16.72'], // 4.18
    [{ solvent: 'glycerol', mass: { g: 100 }, assay: { percent: 100 } }, '9.80'],
    [{ solvent: 'propylene-glycol', mass: { g: 100 }, assay: { percent: 100 } }, '10.36'],
    [{ solvent: 'dipropylene-glycol', mass: { g: 100 }, assay: { percent: 100 } }, '8.72'],
    [{ solvent: '1-3-butanediol', mass: { g: 100 }, assay: { percent: 100 } }, '10.12'],
    [{ solvent: 'sorbitol', mass: { g: 100 }, assay: { percent: 70 } }, '8.77'], // 70 · 1.34 + 30 · 4.18 = 219.2
    [{ solvent: 'sucrose', mass: { g: 100 }, assay: { percent: 100 } }, '4.98'],
    [{ solvent: 'glucose', mass: { g: 100 }, assay: { percent: 100 } }, '4.98'],
    [{ solvent: 'ethanol', mass: { g: 100 }, assay: { percent: 100 } }, '10.29'],
    [{ solvent: '2-propanol', mass: { g: 100 }, assay: { percent: 100 } }, '11.14'],
    [{ solvent: 'peg-400', mass: { g: 100 }, assay: { percent: 100 } }, '8.20'],
    [{ solvent: 'triethanolamine', mass: { g: 100 }, assay: { percent: 85 } }, '9.21'], // 85 · 2.445 + 15 · 1.49 = 230.2
    [{ salt: 'Sodium chloride', mass: { g: 100 } }, '5.96'],
    [{ name: 'Colour', mass: { g: 100 } }, '5.96'],
  ])('%j', (addition, kJ) => {
    const more = warmed(20, 60, [addition]).heat.likely.kJ.minus(warmed(20, 60).heat.likely.kJ);
    expect(more.toFixed(2)).toBe(kJ);
  });

  it('assays that vary reach both ends', () => {
    // 100 g of glycerol of 50 to 100 %: all of it 2.371; three quarters 2.45, one water; half 2.553, half water
    const range = { low: { percent: 50 }, high: { percent: 100 } };
    const { low, likely, high } = warmed(20, 60, [
      { solvent: 'glycerol', mass: { g: 100 }, assay: range },
    ]).heatPerCelsiusDegree;
    expect([low, likely, high].map(({ kJ }) => kJ.toFixed(3))).toEqual(['2.894', '3.511', '3.623']);
  });

  it('says what is left out, and that hot soap scalds', () => {
    const r = warmed(20, 60);
    expect(codes(r.notes)).toEqual(expect.arrayContaining(['nothing-melts-or-boils', 'heat-capacities-near-use']));
    expect(codes(r.cautions).slice(0, 2)).toEqual(['caustic-burns', 'hot-soap-scalds']);
    expect(
      workingOf(r)
        .find(({ figure }) => figure === 'heat, likely')
        ?.value.toFixed(1),
    ).toBe('128.9');
  });
});

describe('heatOfWarming: what is warmed', () => {
  it('spirit catches fire, also by its name, and sugar browns', () => {
    const of = (addition: AdditionInput): string[] => codes(warmed(20, 60, [addition]).cautions).slice(0, 3);
    const mass = { g: 100 };
    for (const spirit of [{ solvent: 'ethanol', mass, assay: { percent: 95 } }, { name: 'denatured spirit', mass }] as const) {
      expect(of(spirit)).toEqual(['caustic-burns', 'spirit-catches-fire', 'hot-soap-scalds']);
    }
    expect(of({ solvent: 'sucrose', mass, assay: { percent: 100 } })).toEqual(['caustic-burns', 'sugar-in-hot-lye', 'hot-soap-scalds']);
  });
}); // prettier-ignore

describe('heatOfWarming: laws', () => {
  const celsius = fc.integer({ min: 0, max: 100 });
  it('adds up along the way, goes with the size of the batch, and low is at most likely, likely at most high', () => {
    fc.assert(
      fc.property(celsius, celsius, celsius, fc.integer({ min: 2, max: 50 }), (a, b, c, times) => {
        const [from, middle, to] = [a, b, c].sort((x, y) => x - y) as [number, number, number];
        const whole = warmed(from, to);
        for (const end of ['low', 'likely', 'high'] as const) {
          const parts = warmed(from, middle).heat[end].kJ.plus(warmed(middle, to).heat[end].kJ);
          expect(deviation(parts, whole.heat[end].kJ).lte('1e-28')).toBe(true);
          expect(deviation(warmed(from, to, [], times).heat[end].kJ, whole.heat[end].kJ.times(times)).lte('1e-12')).toBe(true);
        }
        expect(whole.heat.low.kJ.lte(whole.heat.likely.kJ) && whole.heat.likely.kJ.lte(whole.heat.high.kJ)).toBe(true);
      }), // the masses of lye are doubles: 1e-12
      { numRuns: 20 },
    );
  }); // prettier-ignore
});

describe('heatOfEvaporation: worked by hand', () => {
  it('at a temperature of the table, and between two', () => {
    const at = (solvent: 'water' | 'ethanol', celsius: number | string) =>
      heatOfEvaporation({ solvent, mass: { g: 100 }, temperature: { celsius } }).heat.kJ.toString();
    expect(at('water', 80)).toBe('230.73');
    expect(at('water', 70)).toBe('233.175'); // (2356.2 + 2307.3)/2
    expect(at('water', 100)).toBe('225.66');
    expect(at('ethanol', 25)).toBe('92.1');
    expect(at('ethanol', '78.3')).toBe('85.05');
  });

  it('warns of spirit', () => {
    const codesOf = (solvent: 'water' | 'ethanol') =>
      codes(heatOfEvaporation({ solvent, mass: { g: 1 }, temperature: { celsius: 60 } }).cautions);
    expect(codesOf('ethanol').slice(0, 2)).toEqual(['caustic-burns', 'spirit-catches-fire']);
    expect(codesOf('water')).not.toContain('spirit-catches-fire');
  });

  it('goes with the mass, and falls as it gets warmer', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 77 }), fc.integer({ min: 1, max: 999 }), (celsius, grams) => {
        for (const solvent of ['water', 'ethanol'] as const) {
          const of = (g: number, t: number) =>
            heatOfEvaporation({ solvent, mass: { g }, temperature: { celsius: t } }).heat.kJ;
          expect(deviation(of(grams, celsius), of(1, celsius).times(grams)).lte('1e-28')).toBe(true);
          expect(of(grams, celsius + 1).lt(of(grams, celsius))).toBe(true);
        }
      }),
    );
  });
});

describe('refusals', () => {
  it.each<[object, string, string]>([
    [{ solvent: 'water', mass: { g: 1 }, temperature: { celsius: '100.1' } }, 'outside-table', 'temperature'],
    [{ solvent: 'water', mass: { g: 1 }, temperature: { celsius: '19.9' } }, 'outside-table', 'temperature'],
    [{ solvent: 'ethanol', mass: { g: 1 }, temperature: { celsius: 79 } }, 'outside-table', 'temperature'],
    [{ solvent: 'glycerol', mass: { g: 1 }, temperature: { celsius: 79 } }, 'bad-shape', 'solvent'],
    [{ solvent: 'water', mass: { g: -1 }, temperature: { celsius: 79 } }, 'out-of-range', 'mass.g'],
  ])('heatOfEvaporation %j', (input, code, path) => {
    expect(refusal(() => heatOfEvaporation(input as never))).toMatchObject({ code, path });
  });

  it.each<[object, string, string]>([
    [{ from: { celsius: 60 }, to: { celsius: 20 } }, 'out-of-range', 'to'],
    [{ from: { celsius: -1 }, to: { celsius: 20 } }, 'out-of-range', 'from.celsius'],
    [{ from: { celsius: 20 }, to: { celsius: 101 } }, 'out-of-range', 'to.celsius'],
    [{ from: { celsius: 20 } }, 'missing', 'to'],
    [{ composition: {}, from: { celsius: 20 }, to: { celsius: 60 } }, 'missing', 'composition.by'],
  ])('heatOfWarming %j', (more, code, path) => {
    expect(refusal(() => heatOfWarming({ composition: pot(), ...more } as never))).toMatchObject({ code, path });
  });
});
