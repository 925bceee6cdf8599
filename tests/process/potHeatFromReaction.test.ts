import fc from 'fast-check';
import {
  fat,
  fatFromCertificate,
  potHeatFromReaction,
  stagedLye,
  type AdditionInput,
  type Estimate,
  type PotHeatFromReactionInput,
  type Quantity,
} from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { codes, deviation } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const ends = ({ low, likely, high }: Estimate<Quantity>, digits: number): string[] =>
  [low, likely, high].map((quantity) => Number(Object.values(quantity)[0]).toFixed(digits));

/** A fat of one exact value and nothing besides. */
const exact = (
  mgKohPerG: number | string,
  kind: 'triglyceride' | 'free-fatty-acid' = 'triglyceride',
  more: object = {},
) => fatFromCertificate({ name: 'Exact', kind, saponificationValue: { mgKohPerG }, ...more });
const soda = (g: number | string, percent: number | string = 50) => ({
  alkali: 'naoh' as const,
  mass: { g },
  solution: { hydroxide: { percent } },
});
const heated = (more: Partial<PotHeatFromReactionInput>) =>
  potHeatFromReaction({
    fats: [{ fat: exact('196.3675'), mass: { g: 1000 } }], // 3.5 mol
    lye: [soda('279.979')], // 3.5 mol
    start: { pot: { celsius: 50 }, lye: { celsius: 25 } },
    ...more,
  });

describe('potHeatFromReaction: worked by hand', () => {
  it('3.5 mol of ester with as much hydroxide', () => {
    const r = heated({});
    // 3.5 · 35.6, 3.5 · 54.3, 3.5 · 272·56.105/197 = 3.5 · 77.4648
    expect(ends(r.heat, 2)).toEqual(['124.60', '190.05', '271.13']);
    // soap 1000 + 139.9895 − glycerol 3.5/3 · 92.094 = 1032.546 g, glycerol 107.443, water 139.9895 g:
    // 1032.546·(1.76, 2.3, 2.35) + 107.443·(2.371, 2.45, 2.553) + 139.9895·4.18 = 2657.2, 3223.2, 3285.9 J/K
    expect(ends(r.heatPerCelsiusDegree, 4)).toEqual(['2.6572', '3.2232', '3.2859']);
    expect(ends(r.rise, 1)).toEqual(['37.9', '59.0', '102.0']);
    // lye of 50 %: the mean of 3.224 (20 to 40 °C), 3.219 and 3.2095 is 3.2175; 279.979 · 3.2175 = 900.8 J/K at 25 °C;
    // fat 1670, 2000, 2240 J/K at 50 °C
    expect(ends(r.mixed, 2)).toEqual(['41.24', '42.24', '42.83']);
    expect(ends(r.final, 1)).toEqual(['79.2', '101.2', '144.9']);
  });

  it('free acid gives its own heat, and takes the hydroxide first', () => {
    // 1 mol of acid in 56.105 mg/g · 1000 g, no ester
    const acid = heated({ fats: [{ fat: exact('196.3675', 'free-fatty-acid'), mass: { g: 1000 } }] });
    expect(ends(acid.heat, 2)).toEqual(['195.30', '201.25', '271.13']); // 3.5 · 55.8, 57.5, 77.4648
    // 0.5 mol free of 3.5; hydroxide for 1.5: 0.5 · 57.5 + 1 · 54.3
    const some = heated({
      fats: [{ fat: exact('196.3675', 'triglyceride', { acidValue: { mgKohPerG: '28.0525' } }), mass: { g: 1000 } }],
      lye: [soda('119.991')],
    });
    expect(ends(some.heat, 2)).toEqual(['63.50', '83.05', '116.20']);
  });

  it('alkali in excess gives no more heat', () => {
    const more = heated({ lye: [soda(400)] });
    expect(ends(more.heat, 2)).toEqual(['124.60', '190.05', '271.13']);
    expect(more.rise.likely.celsiusDegrees.lt(heated({}).rise.likely.celsiusDegrees)).toBe(true);
  });

  it('what stands in the pot with the fats takes part of the heat', () => {
    // 200 g of glycerol, 2.371 to 2.553 kJ/(kg·K)
    const r = heated({ additions: [{ solvent: 'glycerol', mass: { g: 200 }, assay: { percent: 100 } }] });
    expect(ends(r.heat, 2)).toEqual(ends(heated({}).heat, 2));
    expect(ends(r.heatPerCelsiusDegree, 4)).toEqual(['3.1314', '3.7132', '3.7965']);
    // (2000 + 490) · 50 + 900.8 · 25 over 3390.8
    expect(r.mixed.likely.celsius.toFixed(2)).toBe('43.36');
  });

  it('lots and assays that vary widen the heat', () => {
    const range = { low: { percent: 45 }, high: { percent: 50 } };
    const r = heated({ lye: [{ alkali: 'naoh', mass: { g: '279.979' }, solution: { hydroxide: range } }] });
    expect(ends(r.heat, 2)).toEqual(['112.14', '180.55', '271.13']); // 3.15 · 35.6, 3.325 · 54.3, 3.5 · 77.4648
    const lots = heated({ fats: [{ fat: exact('196.3675', 'triglyceride', { uncertainty: { mgKohPerG: '5.6105' } }), mass: { g: 1000 } }] });
    expect(ends(lots.heat, 2)).toEqual(['121.04', '190.05', '271.13']); // 3.4 · 35.6; no more than 3.5 mol of hydroxide
  }); // prettier-ignore

  it('two alkalis, one solid with water: a lye of both', () => {
    const r = heated({
      lye: [
        { alkali: 'naoh', mass: { g: 70 }, solid: { hydroxide: { percent: 100 } } },
        { alkali: 'koh', mass: { g: 98 }, solid: { hydroxide: { percent: 100 } } },
      ],
      water: { g: 392 },
      start: { pot: { celsius: 50 }, lye: { celsius: 20 } },
    });
    // 30 % in all. naoh 30 %: (3.606 + 3.606)/2·5 + 3.607·15 + 3.6095·20 + 3.6125·20 over 60 = 3.6092; koh 30 %: 2.95 to 3.03, 2.9933
    // (70 · 3.6092 + 98 · 2.9933)/168 · 560 = 1819.5 J/K; (2000 · 50 + 1819.5 · 20)/3819.5
    expect(r.mixed.likely.celsius.toFixed(1)).toBe('35.7');
    expect(r.basis).toEqual(expect.arrayContaining(['olsson-1997', 'laliberte-2009']));
  });

  it('a small pot of coconut oil lifts itself by 50 to 75 degrees with the heats of the model esters', () => {
    const r = heated({ fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }], lye: [soda(246)] });
    expect(ends(r.rise, 0)).toEqual(['44', '69', '118']);
  });
});

describe('potHeatFromReaction: cautions, notes, working', () => {
  it('says that a pot may boil, and that the reaction can run', () => {
    expect(codes(heated({}).cautions).slice(0, 1)).toEqual(['caustic-burns']);
    expect(codes(heated({}).cautions)).toEqual(expect.arrayContaining(['pot-may-boil', 'reaction-can-run', 'hot-soap-scalds']));
    const little = heated({ lye: [soda(40)] });
    expect(little.final.high.celsius.lt(100)).toBe(true);
    expect(codes(little.cautions)).not.toContain('pot-may-boil');
    expect(codes(little.cautions)).not.toContain('spirit-may-boil');
  }); // prettier-ignore

  it('warns of spirit in a pot that heats itself', () => {
    const r = heated({ additions: [{ solvent: 'ethanol', mass: { g: 100 }, assay: { percent: 95 } }] });
    expect(codes(r.cautions)).toEqual(expect.arrayContaining(['spirit-may-boil', 'spirit-catches-fire']));
  });

  it('warns of spirit by its name, of sugar, which hot lye breaks down, and of an alkali by its name', () => {
    const of = (addition: AdditionInput): string[] => {
      const lacking = codes(heated({}).cautions);
      return codes(heated({ additions: [addition] }).cautions).filter((code) => !lacking.includes(code));
    };
    const mass = { g: 100 };
    expect(of({ name: 'methylated spirit', mass })).toEqual(['spirit-may-boil', 'spirit-catches-fire']);
    expect(of({ solvent: 'glucose', mass, assay: { percent: 91 } })).toEqual(['sugar-in-hot-lye']);
    expect(of({ solvent: 'sucrose', mass, assay: { percent: 100 } })).toEqual(['sugar-in-hot-lye']);
    expect(of({ name: 'caustic soda', mass })).toEqual(['alkali-among-additions']);
    expect(of({ solvent: 'sorbitol', mass, assay: { percent: 70 } })).toEqual([]);
    const { fats, lye, start } = heated({}).given;
    const parted = stagedLye({ fats, lye, start, additions: [{ solvent: 'glucose', mass, assay: { percent: 91 } }] });
    expect(codes(parted.cautions)).toContain('sugar-in-hot-lye');
  });

  it('warns of a lye that stays partly solid, and parts none of it unwarned', () => {
    const flakes = { alkali: 'naoh', mass: { g: 130 }, solid: { hydroxide: { percent: 100 } } } as const;
    const of = (g: number): boolean[] => {
      const { fats, start } = heated({}).given;
      const charge = { fats, start, lye: [flakes], water: { g } };
      return [potHeatFromReaction(charge), stagedLye(charge)].map(({ cautions }) =>
        codes(cautions).includes('stronger-than-dissolves'),
      );
    };
    expect(of(0)).toEqual([true, true]);
    expect(of(119)).toEqual([true, true]); // 130/249 is 52.209 %
    expect(of(120)).toEqual([false, false]); // 52.0 %, and 52.2 dissolve
  });

  it('says what is not known', () => {
    expect(codes(heated({}).notes)).toEqual(expect.arrayContaining(['no-measured-heat', 'all-at-once', 'heat-of-dilution-not-apart', 'heat-capacities-near-use'])); // prettier-ignore
    expect(heated({}).basis).toEqual(expect.arrayContaining(['handbooks-recalled', 'crc-aqueous-ions']));
  });

  it('shows its working', () => {
    const steps = workingOf(heated({}));
    const rise = steps.find(({ figure }) => figure === 'rise, likely');
    expect([rise?.value.toFixed(1), rise?.unit, rise?.formula]).toEqual(['59.0', 'Celsius degrees', 'Q / Σ m·c']);
  });
});

describe('potHeatFromReaction: laws', () => {
  const grams = fc.integer({ min: 50, max: 400 });
  const start = fc.record({ pot: fc.integer({ min: 20, max: 80 }), lye: fc.integer({ min: 0, max: 80 }) });
  const at = (lye: number, { pot, lye: ofLye }: { pot: number; lye: number }, times = 1) =>
    potHeatFromReaction({
      fats: [{ fat: fat('coconut-oil'), mass: { g: 500 * times } }, { fat: fat('stearic-acid-50'), mass: { g: 60 * times } }],
      lye: [soda(lye * times)],
      start: { pot: { celsius: pot }, lye: { celsius: ofLye } },
    }); // prettier-ignore

  it('the rise does not depend on the size of the batch', () => {
    fc.assert(
      fc.property(grams, start, fc.integer({ min: 2, max: 1000 }), (lye, from, times) => {
        const [one, many] = [at(lye, from), at(lye, from, times)];
        for (const end of ['low', 'likely', 'high'] as const) {
          expect(deviation(many.rise[end].celsiusDegrees, one.rise[end].celsiusDegrees).lte('1e-28')).toBe(true);
          expect(deviation(many.final[end].celsius, one.final[end].celsius).lte('1e-28')).toBe(true);
        }
      }),
    );
  });

  it('low, likely and high stand in this order, and the mixed pot between its parts', () => {
    fc.assert(
      fc.property(grams, start, (lye, from) => {
        const r = at(lye, from);
        const inOrder = [
          [r.heat.low.kJ, r.heat.likely.kJ, r.heat.high.kJ],
          [r.heatPerCelsiusDegree.low.kJ, r.heatPerCelsiusDegree.likely.kJ, r.heatPerCelsiusDegree.high.kJ],
          [r.mixed.low.celsius, r.mixed.likely.celsius, r.mixed.high.celsius],
          [r.rise.low.celsiusDegrees, r.rise.likely.celsiusDegrees, r.rise.high.celsiusDegrees],
          [r.final.low.celsius, r.final.likely.celsius, r.final.high.celsius],
        ];
        for (const [low, likely, high] of inOrder) {
          expect(low?.lte(String(likely)) === true && likely?.lte(String(high)) === true).toBe(true);
        }
        expect(r.mixed.low.celsius.gte(Math.min(from.pot, from.lye))).toBe(true);
        expect(r.mixed.high.celsius.lte(Math.max(from.pot, from.lye))).toBe(true);
      }),
    );
  });

  it('more lye gives at least as much heat; a warmer start ends warmer and rises the same', () => {
    fc.assert(
      fc.property(
        grams,
        fc.integer({ min: 0, max: 100 }),
        start,
        fc.integer({ min: 1, max: 20 }),
        (lye, more, from, up) => {
          const [less, greater] = [at(lye, from), at(lye + more, from)];
          const warmer = at(lye, { pot: from.pot + up, lye: from.lye });
          for (const end of ['low', 'likely', 'high'] as const) {
            expect(greater.heat[end].kJ.gte(less.heat[end].kJ)).toBe(true);
            expect(warmer.final[end].celsius.gt(less.final[end].celsius)).toBe(true);
            expect(warmer.rise[end].celsiusDegrees.toString()).toBe(less.rise[end].celsiusDegrees.toString());
          }
        },
      ),
    );
  });
});

describe('potHeatFromReaction: refusals', () => {
  it.each<[object, string, string]>([
    [{ start: undefined }, 'missing', 'start'],
    [{ start: { pot: { celsius: 50 } } }, 'missing', 'start.lye'],
    [{ start: { pot: { celsius: 101 }, lye: { celsius: 20 } } }, 'out-of-range', 'start.pot.celsius'],
    [{ start: { pot: { celsius: 50 }, lye: { celsius: -1 } } }, 'out-of-range', 'start.lye.celsius'],
    [{ start: { pot: { celsius: 50 }, lye: { celsius: 20 }, air: 1 } }, 'unknown-key', 'start.air'],
    [{ fats: [] }, 'bad-shape', 'fats'],
    [{ lye: [soda(0)] }, 'out-of-range', 'lye'],
    [{ additions: [{ solvent: 'glycerol', mass: { g: 1 } }] }, 'missing', 'additions[0].assay'],
    [{ ceiling: { celsius: 65 } }, 'unknown-key', 'input.ceiling'],
  ])('%j', (more, code, path) => {
    expect(refusal(() => heated(more))).toMatchObject({ code, path });
  });
});
