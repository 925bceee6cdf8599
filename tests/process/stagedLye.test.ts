import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { fat, fatFromCertificate, potHeatFromReaction, stagedLye, type StagedLyeInput } from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { codes, deviation, Exact } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const exact = fatFromCertificate({
  name: 'Exact',
  kind: 'triglyceride',
  saponificationValue: { mgKohPerG: '196.3675' },
});
const soda = (g: number | string) => ({
  alkali: 'naoh' as const,
  mass: { g },
  solution: { hydroxide: { percent: 50 } },
});
const staged = (more: Partial<StagedLyeInput> = {}) =>
  stagedLye({
    fats: [{ fat: exact, mass: { g: 1000 } }], // 3.5 mol
    lye: [soda('279.979')], // 3.5 mol
    start: { pot: { celsius: 50 }, lye: { celsius: 25 } },
    ...more,
  });
const grams = ({ portions }: { portions: readonly { mass: { g: Decimal } }[] }): number[] =>
  portions.map(({ mass }) => Number(mass.g));

describe('stagedLye: worked by hand', () => {
  it('three portions below 100 °C', () => {
    const { portions, lye, leftOver } = staged({ ceiling: { celsius: 100 } });
    // two: lye 0.4504 kJ/K at 25 °C into 2.24 at 50: 45.81; 1.75 · 77.4648 = 135.56 kJ over (1.67 + 2.6572)/2 = 2.1636: 62.66
    // up, 108.5 °C at the most. So three.
    expect(portions.map(({ mass }) => mass.g.toFixed(4))).toEqual(['93.3263', '93.3263', '93.3263']);
    expect([lye.g.toString(), leftOver.g.toString()]).toEqual(['279.979', '0']);
    // lye 0.30027 kJ/K into 2.0: 46.736; 3.5/3 · 54.3 = 63.35 kJ over 2.0 + 1.2232/3 = 2.40773: 26.311
    expect(portions[0]?.reaches.celsius.toFixed(2)).toBe('73.05');
    // into 2.24: 47.045; 3.5/3 · 77.4648 = 90.376 kJ over 1.67 + 0.9872/3 = 1.99907: 45.209
    expect(portions[0]?.reachesAtMost.celsius.toFixed(2)).toBe('92.25');
    // the second into 2.40773: 47.228; 63.35 kJ over 2.0 + 1.2232 · 2/3 = 2.81547: 22.501
    expect(portions[1]?.reaches.celsius.toFixed(2)).toBe('69.73');
  });

  it('65 °C unless another ceiling is given', () => {
    const r = staged();
    expect(r.given.ceiling.celsius.toString()).toBe('65');
    expect(r.portions).toHaveLength(10);
    expect(r.portions.map(({ mass }) => mass.g.toString())).toEqual(staged({ ceiling: { celsius: 65 } }).portions.map(({ mass }) => mass.g.toString())); // prettier-ignore
  });

  it('all at once where that stays below: as potHeatFromReaction has it', () => {
    const little = { lye: [soda(30)] };
    const { portions } = staged({ ...little, ceiling: { celsius: 70 } });
    const whole = potHeatFromReaction({
      fats: [{ fat: exact, mass: { g: 1000 } }],
      ...little,
      start: { pot: { celsius: 50 }, lye: { celsius: 25 } },
    });
    expect(portions).toHaveLength(1);
    expect(portions[0]?.reaches.celsius.toString()).toBe(whole.final.likely.celsius.toString());
    expect(portions[0]?.reachesAtMost.celsius.toString()).toBe(whole.final.high.celsius.toString());
  });

  it('alkali in excess gives no more heat than there is fat to take it', () => {
    const pot = {
      fats: [{ fat: exact, mass: { g: 100 } }], // 0.35 mol; the lye brings 1 mol
      lye: [soda(80)],
      additions: [{ solvent: 'glycerol' as const, mass: { g: 1000 }, assay: { percent: 100 } }],
      start: { pot: { celsius: 50 }, lye: { celsius: 25 } },
    };
    const { portions } = stagedLye({ ...pot, ceiling: { celsius: 65 } });
    expect(portions).toHaveLength(1);
    // 0.35 · 77.4648 = 27.11 kJ, not 77.46
    expect(portions[0]?.reachesAtMost.celsius.toString()).toBe(potHeatFromReaction(pot).final.high.celsius.toString());
  });

  it('to the step of a scale, the larger portions first, and what the step leaves out is said', () => {
    const r = staged({ scaleStep: { g: 2 } });
    // 279.979 down to 278, by ten 27.8 each: nine up, one down
    expect(grams(r)).toEqual([28, 28, 28, 28, 28, 28, 28, 28, 28, 26]);
    expect(r.leftOver.g.toString()).toBe('1.979');
    expect(r.given.scaleStep?.g.toString()).toBe('2');
  });

  it('one more where a portion rounded up would pass the ceiling', () => {
    // ten of 27.5 would be 30 and 25
    expect(grams(staged({ scaleStep: { g: 5 } }))).toEqual(Array.from({ length: 11 }, () => 25));
  });

  it('rests on portions that have reacted, and says so', () => {
    expect(codes(staged().notes)).toContain('brought-back-between-portions');
    expect(codes(staged().cautions)).toContain('reaction-can-run');
    expect(codes(staged().cautions)[0]).toBe('caustic-burns');
    expect(staged().basis).toContain('common-practice');
  });

  it('shows its working', () => {
    const steps = workingOf(staged({ ceiling: { celsius: 100 } }));
    const most = steps.find(({ figure }) => figure === 'portion 1: reaches at the most');
    expect([most?.value.toFixed(2), most?.unit]).toEqual(['92.25', '°C']);
  });
});

describe('stagedLye: laws', () => {
  const pots = fc.record({
    lye: fc.integer({ min: 20, max: 220 }),
    pot: fc.integer({ min: 20, max: 55 }),
    ofLye: fc.integer({ min: 5, max: 45 }),
    ceiling: fc.integer({ min: 60, max: 90 }),
  });
  interface Pot {
    readonly lye: number;
    readonly pot: number;
    readonly ofLye: number;
    readonly ceiling: number;
  }
  const of = ({ lye, pot, ofLye, ceiling }: Pot, times = 1, more: object = {}) =>
    stagedLye({
      fats: [{ fat: fat('coconut-oil'), mass: { g: 500 * times } }],
      lye: [soda(lye * times)],
      start: { pot: { celsius: pot }, lye: { celsius: ofLye } },
      ceiling: { celsius: ceiling },
      ...more,
    });

  it('no portion passes the ceiling, the likely heat stays below the most, and all of the lye goes in', () => {
    fc.assert(
      fc.property(pots, (pot) => {
        const { portions } = of(pot);
        for (const { reaches, reachesAtMost } of portions) {
          expect(reachesAtMost.celsius.lte(pot.ceiling)).toBe(true);
          expect(reaches.celsius.lte(reachesAtMost.celsius)).toBe(true);
        }
        const sum = portions.reduce((total, { mass }) => total.plus(mass.g.toString()), new Exact(0));
        expect(deviation(sum, pot.lye).lte('1e-28')).toBe(true);
      }),
    );
  });

  it('one portion fewer would pass it: the first alone, as potHeatFromReaction would have it', () => {
    fc.assert(
      fc.property(pots, (pot) => {
        const { portions } = of(pot);
        if (portions.length === 1) return;
        const larger = new Decimal(pot.lye).div(portions.length - 1).toString();
        const first = potHeatFromReaction({
          fats: [{ fat: fat('coconut-oil'), mass: { g: 500 } }],
          lye: [soda(larger)],
          start: { pot: { celsius: pot.pot }, lye: { celsius: pot.ofLye } },
        });
        // the heat capacity of the pot goes on a straight line here, and by the reaction there: the same but for the lots
        expect(Number(first.final.high.celsius)).toBeGreaterThan(pot.ceiling - 0.2);
      }),
    );
  });

  it('as many portions for any size of batch, and no more for a higher ceiling', () => {
    fc.assert(
      fc.property(pots, fc.integer({ min: 2, max: 100 }), fc.integer({ min: 1, max: 10 }), (pot, times, up) => {
        const one = of(pot);
        const many = of(pot, times);
        expect(many.portions.length).toBe(one.portions.length);
        for (const [at, { reachesAtMost }] of many.portions.entries()) {
          expect(deviation(reachesAtMost.celsius, String(one.portions[at]?.reachesAtMost.celsius)).lte('1e-28')).toBe(true);
        }
        expect(of({ ...pot, ceiling: pot.ceiling + up }).portions.length).toBeLessThanOrEqual(one.portions.length);
      }),
    );
  }); // prettier-ignore

  it('rounded portions are whole steps, differ by one step at most, and stay below the ceiling', () => {
    fc.assert(
      fc.property(pots, (pot) => {
        const r = of(pot, 1, { scaleStep: { g: '0.5' } });
        const masses = grams(r);
        expect(masses.every((g) => Number.isInteger(g * 2))).toBe(true);
        expect(Math.max(...masses) - Math.min(...masses)).toBeLessThanOrEqual(0.5);
        expect(r.portions.every(({ reachesAtMost }) => reachesAtMost.celsius.lte(pot.ceiling))).toBe(true);
        expect(r.leftOver.g.lt('0.5')).toBe(true);
      }),
    );
  });
});

describe('stagedLye: refusals', () => {
  it.each<[Partial<StagedLyeInput>, string, string, string]>([
    [{ start: { pot: { celsius: 65 }, lye: { celsius: 25 } } }, 'infeasible', 'start.pot', 'below the ceiling of 65 °C'],
    [{ start: { pot: { celsius: '64.9' }, lye: { celsius: 64 } } }, 'infeasible', 'start.pot', '100 portions'],
    [{ scaleStep: { g: 200 } }, 'infeasible', 'scaleStep', 'a step fine enough'],
    [{ scaleStep: { g: 300 } }, 'infeasible', 'scaleStep', 'received 300 g'],
    [{ scaleStep: { g: 0 } }, 'out-of-range', 'scaleStep.g', 'more than 0'],
    [{ ceiling: { celsius: 101 } }, 'out-of-range', 'ceiling.celsius', '0 to 100'],
  ])('%j', (more, code, path, said) => {
    const refused = refusal(() => staged(more));
    expect(refused).toMatchObject({ code, path });
    expect(refused.message).toContain(said);
  });
}); // prettier-ignore
