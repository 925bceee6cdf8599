import fc from 'fast-check';
import {
  fat,
  fatFromBlend,
  fatFromCertificate,
  planLye,
  superfatFromLye,
  type AlkaliSource,
  type ChargedFatInput,
  type Dilution,
  type FatKind,
  type LyeChargeInput,
  type LyePlan,
  type PlanLyeInput,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact, NAOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { asFat, lots } from './model.js';

const certified = (mgKohPerG: number | string, kind: FatKind = 'triglyceride', g = 1000): ChargedFatInput => ({
  fat: fatFromCertificate({ name: 'A lot', kind, saponificationValue: { mgKohPerG } }),
  mass: { g },
});
const solid = (percent: number | string): AlkaliSource => ({ solid: { hydroxide: { percent } } });
const solution = (percent: number | string): AlkaliSource => ({ solution: { hydroxide: { percent } } });
const superfat = (percent: number | string) => ({ superfat: { percent } });

describe('planLye: worked by hand', () => {
  it('soda from 50 % stock, to a lye of 33 %', () => {
    const plan = planLye({
      fats: [certified(250, 'triglyceride', 700)],
      alkali: { naoh: solution(50) },
      target: superfat(2),
      dilution: { strength: { percent: 33 } },
    });
    expect(plan.demand.likely.mol.toFixed(9)).toBe('3.119151591'); // 700 * 250 / 56105
    expect(plan.hydroxide.mol.toFixed(9)).toBe('3.056768559'); // * 0.98
    expect(plan.weigh.naoh.g.toFixed(9)).toBe('244.523144105'); // * 39.997 / 0.5
    expect(plan.weigh.water.g.toFixed(9)).toBe('125.966468175'); // 122.261572052 / 0.33 - 244.523144105
    expect(plan.superfat.likely.percent.toFixed(20)).toBe('2.00000000000000000000');
    expect(plan.superfatByMass.likely.percent.toFixed(20)).toBe('2.00000000000000000000');
    expect(plan.lye.strength.likely.percent.toFixed(20)).toBe('33.00000000000000000000');
    expect(Object.keys(plan.weigh)).toEqual(['naoh', 'water']);
  });

  it('potash as a solid of 88 to 92 %, with one and a half parts of water', () => {
    const plan = planLye({
      fats: [certified(190)],
      alkali: { koh: { solid: { hydroxide: { low: { percent: 88 }, high: { percent: 92 } } } } },
      target: superfat(5),
      dilution: { waterPerAlkali: '1.5' },
    });
    expect(plan.weigh.koh.g.toFixed(9)).toBe('200.555555556'); // 1000 * 0.190 * 0.95 / 0.90
    expect(plan.weigh.water.g.toFixed(9)).toBe('300.833333333'); // * 1.5
    expect(plan.lye.mass.g.toFixed(9)).toBe('501.388888889');
    expect(plan.lye.strength.likely.percent.toFixed(9)).toBe('36.000000000'); // 90 / 2.5
    expect(plan.lye.strength.low.percent.toFixed(9)).toBe('35.200000000'); // 88 / 2.5
    expect(plan.superfat.low.percent.toFixed(9)).toBe('2.888888889'); // 100 * (1 - 0.95 * 92 / 90)
    expect(plan.superfat.high.percent.toFixed(9)).toBe('7.111111111'); // 100 * (1 - 0.95 * 88 / 90)
    expect(Object.keys(plan.weigh)).toEqual(['koh', 'water']);
  });

  it('both, 40 % of the hydroxide by mole as potash', () => {
    const plan = planLye({
      fats: [certified(200)],
      alkali: { naoh: solid(98), koh: solid(90), kohShare: { percent: 40 } },
      target: superfat(5),
      dilution: { water: { g: 300 } },
    });
    // A = 1000 * 200 / 56105 * 0.95 = 3.386507441
    expect(plan.weigh.naoh.g.toFixed(9)).toBe('82.928656000'); // A * 0.6 * 39.997 / 0.98
    expect(plan.weigh.koh.g.toFixed(9)).toBe('84.444444444'); // A * 0.4 * 56.105 / 0.90
    expect(plan.lye.strength.likely.percent.toFixed(9)).toBe('33.649793437'); // 157.270083 / 467.373100
    expect(plan.superfat.likely.percent.toFixed(20)).toBe('5.00000000000000000000');
  });

  it('with stearic acid: superfat by alkali and by mass are not the same', () => {
    const plan = planLye({
      fats: [certified(250, 'triglyceride', 800), certified(208, 'free-fatty-acid', 200)],
      alkali: { naoh: solid(98) },
      target: superfat(5),
      dilution: { waterPerFat: { percent: 30 } },
    });
    expect(plan.demand.likely.mol.toFixed(9)).toBe('4.306211568'); // (800 * 250 + 200 * 208) / 56105
    expect(plan.weigh.naoh.g.toFixed(9)).toBe('166.963027414'); // * 0.95 * 39.997 / 0.98
    expect(plan.weigh.water.g.toString()).toBe('300');
    // the acid takes 0.741466892 mol; of 3.564744675 mol ester 0.215310578 are left: 800 g * 6.04 %, of 1000 g
    expect(plan.superfatByMass.likely.percent.toFixed(9)).toBe('4.832000000');
  });

  it('total alkali with carbonate: only hydroxide counts', () => {
    const plan = planLye({
      fats: [certified(190)],
      alkali: { naoh: { solid: { totalAlkali: { percent: '95.0' }, carbonate: { percent: '3.0' } } } },
      target: superfat(0),
      dilution: { waterPerAlkali: 2 },
    });
    expect(plan.weigh.naoh.g.toFixed(9)).toBe('146.060305566'); // 190000 / 56105 * 39.997 / 0.927357625
  });

  it('a blend, with the stock as it is', () => {
    const blend = fatFromBlend({
      name: 'Stock',
      parts: [certified(250, 'triglyceride', 700), certified(180, 'triglyceride', 300)],
    });
    const plan = planLye({
      fats: [{ fat: blend, mass: { kg: 1 } }],
      alkali: { naoh: solution(50) },
      target: superfat(3),
      dilution: 'as-is',
    });
    expect(plan.weigh.naoh.g.toFixed(9)).toBe('316.710938776'); // 229000 / 56105 * 0.97 * 39.997 / 0.5
    expect(plan.weigh.water.g.isZero()).toBe(true);
    expect(plan.lye.strength.likely.percent.toFixed(20)).toBe('50.00000000000000000000');
  });

  it('lots of a published oil: the worst of them is told', () => {
    const plan = planLye({
      fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
      alkali: { naoh: solution(50) },
      target: superfat(2),
      dilution: { strength: { percent: 33 } },
    });
    const n = new Exact(String(plan.hydroxide.mol));
    const lean = new Exact(700 * 248).div(56105);
    expect(
      deviation(String(plan.superfat.low.percent), new Exact(100).times(new Exact(1).minus(n.div(lean)))).lte('1e-30'),
    ).toBe(true);
    expect(plan.superfat.high.percent.gt(2)).toBe(true);
    expect(plan.given.fats[0]?.fat).toBe(fat('coconut-oil'));
  });
});

describe('planLye: laws', () => {
  const source = fc.oneof(
    fc.integer({ min: 700, max: 1005 }).map((n) => solid(`${String(n)}e-1`)),
    fc.integer({ min: 350, max: 750 }).map((n) => solution(`${String(n)}e-1`)),
    fc
      .tuple(fc.integer({ min: 850, max: 1005 }), fc.integer({ min: 0, max: 50 }))
      .map(([total, carbonate]): AlkaliSource => ({ solid: { totalAlkali: { fraction: `${String(total)}e-3` }, carbonate: { fraction: `${String(carbonate)}e-3` } } })),
  ); // prettier-ignore
  const alkali = fc.oneof(
    source.map((naoh) => ({ naoh })),
    source.map((koh) => ({ koh })),
    fc.tuple(source, source, fc.integer({ min: 1, max: 999 })).map(([naoh, koh, n]) => ({ naoh, koh, kohShare: { fraction: `${String(n)}e-3` } })),
  ) as fc.Arbitrary<PlanLyeInput['alkali']>; // prettier-ignore
  const target = fc.integer({ min: 0, max: 500 }).map((n) => ({ superfat: { percent: `${String(n)}e-1` } }));
  const dilution: fc.Arbitrary<Dilution> = fc.oneof(
    fc.integer({ min: 50, max: 300 }).map((n) => ({ strength: { percent: `${String(n)}e-1` } })),
    fc.integer({ min: 1, max: 40 }).map((n) => ({ waterPerAlkali: `${String(n)}e-1` })),
    fc.integer({ min: 1, max: 100 }).map((percent) => ({ waterPerFat: { percent } })),
  );
  const input: fc.Arbitrary<PlanLyeInput> = fc
    .record({ some: lots, alkali, target, dilution })
    .map(({ some, ...rest }) => ({ fats: some.map((one, at) => asFat(one, `Lot ${String(at)}`)), ...rest }));
  const planned = (of: PlanLyeInput) =>
    // of whichever alkalis were chosen; those that were not are not weighed
    planLye(of) as LyePlan<'naoh' | 'koh'>;
  /** The masses of a plan charged as weighed. */
  const asCharged = (of: PlanLyeInput): Parameters<typeof superfatFromLye>[0] => {
    const { weigh } = planned(of);
    const lye = (['naoh', 'koh'] as const).flatMap((one): LyeChargeInput[] => {
      const from = of.alkali[one];
      return from === undefined ? [] : [{ alkali: one, mass: weigh[one], ...from }];
    });
    return { fats: of.fats, lye, water: weigh.water };
  };
  const figuresOf = ({
    superfat: s,
    superfatByMass: m,
    freeCausticAlkali: f,
  }: Pick<ReturnType<typeof superfatFromLye>, 'superfat' | 'superfatByMass' | 'freeCausticAlkali'>) =>
    (['low', 'likely', 'high'] as const).flatMap((end) =>
      [s[end].percent, m[end].percent, f[end].percentNaoh].map(String),
    );
  const agree = (one: readonly string[], other: readonly string[], tolerance: string): void => {
    expect(other).toHaveLength(one.length);
    for (const [at, figure] of one.entries()) expect(deviation(other[at] ?? 'NaN', figure).lte(tolerance)).toBe(true);
  };
  const grams = (weigh: object): string[] => Object.values(weigh).map((mass: { g: unknown }) => String(mass.g));

  it('charged as planned, the target superfat comes back', () => {
    fc.assert(
      fc.property(input, (of) => {
        const { superfat: back } = superfatFromLye(asCharged(of));
        // 34 digits through some twenty operations, and a difference that costs two digits at most
        expect(deviation(String(back.likely.percent), String(of.target.superfat?.percent)).lte('1e-25')).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('what a plan foresees is what its masses lead to, rounded or not', () => {
    fc.assert(
      fc.property(input, fc.option(fc.constantFrom({ g: 1 }, { g: '0.1' }, { oz: '0.05' }), { nil: undefined }), (of, step) => {
        const full = step === undefined ? of : { ...of, scaleStep: step };
        let charged;
        try {
          charged = asCharged(full);
        } catch {
          return; // a step coarser than the alkali or the water: refused
        }
        const plan = planned(full);
        agree(figuresOf(superfatFromLye(charged)), figuresOf(plan), '1e-28');
        // the same masses, added up in another order
        agree([String(plan.batch.mass.g)], [String(superfatFromLye(charged).batch.mass.g)], '1e-32');
      }),
      { numRuns: 300 },
    ); // prettier-ignore
  });

  it('scales with the batch', () => {
    fc.assert(
      fc.property(input, fc.integer({ min: 2, max: 50 }), (of, times) => {
        const many = {
          ...of,
          fats: of.fats.map(({ fat: one, mass }) => ({
            fat: one,
            mass: { g: (mass as { g: number }).g * times },
          })),
        };
        agree(
          grams(planned(of).weigh).map((g) => new Exact(g).times(times).toString()),
          grams(planned(many).weigh),
          '1e-28',
        );
        agree(figuresOf(planned(of)), figuresOf(planned(many)), '1e-28');
      }),
    );
  });

  it('does not depend on the order of the fats', () => {
    fc.assert(
      fc.property(input, (of) => {
        const turned = { ...of, fats: [...of.fats].reverse() };
        agree(grams(planned(of).weigh), grams(planned(turned).weigh), '1e-28');
        agree(figuresOf(planned(of)), figuresOf(planned(turned)), '1e-28');
      }),
    );
  });

  it('blended first or charged apart is the same plan', () => {
    fc.assert(
      fc.property(input, fc.integer({ min: 1, max: 4 }), (of, some) => {
        const inBlend = of.fats.slice(0, some);
        const total = inBlend.reduce((sum, { mass }) => sum + (mass as { g: number }).g, 0);
        const blend = fatFromBlend({ name: 'Stock', parts: inBlend });
        const blended = { ...of, fats: [{ fat: blend, mass: { g: total } }, ...of.fats.slice(some)] };
        agree(grams(planned(of).weigh), grams(planned(blended).weigh), '1e-28');
        agree(figuresOf(planned(of)), figuresOf(planned(blended)), '1e-28');
      }),
    );
  });

  it('solid and solution of the same hydroxide weigh the same', () => {
    fc.assert(
      fc.property(lots, target, fc.integer({ min: 310, max: 750 }), fc.constantFrom('naoh', 'koh'), (some, at, n, one) => {
        const of = (from: AlkaliSource): PlanLyeInput => ({
          fats: some.map((each) => asFat(each)),
          alkali: { [one]: from } as never,
          target: at,
          dilution: { strength: { percent: 30 } },
        });
        const [dry, wet] = [of(solid(`${String(n)}e-1`)), of(solution(`${String(n)}e-1`))];
        expect(grams(planned(dry).weigh)).toEqual(grams(planned(wet).weigh));
        expect(figuresOf(planned(dry))).toEqual(figuresOf(planned(wet)));
      }),
    ); // prettier-ignore
  });

  it('more superfat takes less alkali', () => {
    fc.assert(
      fc.property(lots, fc.integer({ min: 0, max: 98 }), (some, percent) => {
        const need = (of: number) =>
          planLye({
            fats: some.map((one) => asFat(one)),
            alkali: { naoh: solid(98) },
            target: superfat(of),
            dilution: { waterPerAlkali: 2 },
          }).weigh.naoh.g;
        expect(need(percent + 1).lt(need(percent))).toBe(true);
      }),
    );
  });
});

describe('planLye: the scale', () => {
  const steps = fc.constantFrom('0.001', '0.01', '0.1', '0.5', '1', '2', '5');

  it('alkali is a whole number of steps, never more than the exact figure, and less than a step below it', () => {
    fc.assert(
      fc.property(lots, steps, fc.integer({ min: 0, max: 30 }), (some, step, percent) => {
        const base = {
          fats: some.map((one) => asFat({ ...one, grams: one.grams + 100 })),
          alkali: { naoh: solid(98) },
          target: superfat(percent),
          dilution: { waterPerAlkali: 2 },
        } as const;
        const exact = new Exact(String(planLye(base).weigh.naoh.g));
        fc.pre(exact.gte(step)); // less than a step is refused
        const plan = planLye({ ...base, scaleStep: { g: step } });
        const weighed = new Exact(String(plan.weigh.naoh.g));
        expect(weighed.div(step).isInteger()).toBe(true);
        // a figure that is a whole number of steps but for its last digits counts as such
        expect(weighed.lte(exact.times('1.0000000000000000000000000001'))).toBe(true);
        expect(exact.minus(weighed).lt(step)).toBe(true);
        expect(plan.superfat.likely.percent.gte(new Exact(percent).minus('1e-25').toString())).toBe(true);
        expect(new Exact(String(plan.weigh.water.g)).div(step).isInteger()).toBe(true);
      }),
    );
  });

  it('what comes to a whole number of steps is weighed as that: no step is lost in the last digit', () => {
    const short: string[] = [];
    for (let value = 120; value < 200; value++) {
      for (const grams of [700, 1000, 2450]) {
        for (const percent of [0, 5, 10]) {
          // m · SV · (1 − s), SV in g NaOH per g of fat: a whole number of steps of 0.01 g
          const exact = new Exact(grams).times(value).times(100 - percent).div(100_000);
          if (!exact.times(100).isInteger()) continue;
          const one = fatFromCertificate({ name: 'A', kind: 'triglyceride', saponificationValue: { gNaohPerG: `0.${String(value)}` } });
          const { weigh } = planLye({
            fats: [{ fat: one, mass: { g: grams } }],
            alkali: { naoh: solid(100) },
            target: superfat(percent),
            dilution: { waterPerAlkali: 2 },
            scaleStep: { g: '0.01' },
          });
          if (!weigh.naoh.g.eq(exact.toString())) short.push(`${exact.toString()} g weighed as ${weigh.naoh.g.toString()} g`);
        }
      }
    }
    expect(short).toEqual([]);
  }); // prettier-ignore

  it('by hand: 244.523 g down to 244 g, water 125.966 g to the nearest, superfat worked out anew', () => {
    const plan = planLye({
      fats: [certified(250, 'triglyceride', 700)],
      alkali: { naoh: solution(50) },
      target: superfat(2),
      dilution: { strength: { percent: 33 } },
      scaleStep: { g: 1 },
    });
    expect(plan.weigh.naoh.g.toString()).toBe('244');
    // 122 / 0.33 - 244 = 125.697: water goes with the alkali as weighed
    expect(plan.weigh.water.g.toString()).toBe('126');
    expect(plan.superfat.likely.percent.toFixed(6)).toBe('2.209666'); // 100 * (1 - 122 / 39.997 / 3.119151591)
    expect(plan.given.scaleStep?.g.toString()).toBe('1');
  });

  it('of two alkalis each goes down', () => {
    const plan = planLye({
      fats: [certified(200)],
      alkali: { naoh: solid(98), koh: solid(90), kohShare: { percent: 40 } },
      target: superfat(5),
      dilution: { water: { g: 300 } },
      scaleStep: { g: 5 },
    });
    // 82.93 and 84.44
    expect([plan.weigh.naoh, plan.weigh.koh, plan.weigh.water].map(({ g }) => g.toString())).toEqual([
      '80',
      '80',
      '300',
    ]);
  });

  it('refuses a step coarser than the alkali, and one that would leave a solid dry', () => {
    const base = { fats: [certified(250)], alkali: { naoh: solid(100) }, target: superfat(0) } as const; // 178.2 g
    const coarse = () => planLye({ ...base, dilution: { waterPerAlkali: 2 }, scaleStep: { g: 500 } });
    expect(refusal(coarse)).toMatchObject({ code: 'infeasible', path: 'scaleStep' });
    const dry = () => planLye({ ...base, dilution: { water: { g: 40 } }, scaleStep: { g: 100 } }); // 40 g round to none
    expect(refusal(dry).code).toBe('infeasible');
    expect(refusal(() => planLye({ ...base, dilution: { waterPerAlkali: 2 }, scaleStep: { g: 0 } }))).toMatchObject({
      code: 'out-of-range',
      path: 'scaleStep.g',
    });
  });
});

describe('planLye: free caustic alkali', () => {
  const plan = (mgKohPerG: number, half: number, rest: Partial<PlanLyeInput> = {}) =>
    planLye({
      fats: [
        {
          fat: fatFromCertificate({
            name: 'A lot',
            kind: 'triglyceride',
            saponificationValue: { mgKohPerG },
            uncertainty: { mgKohPerG: half },
          }),
          mass: { g: 1000 },
        },
      ],
      alkali: { naoh: solution(50) },
      target: superfat(2),
      dilution: 'as-is',
      ...(rest as object),
    });

  it('of the leanest lot, by hand', () => {
    // A = 0.98 * 250000 / 56105 = 4.366812227; at 240: n = 4.277693610; 0.089118617 * 39.997 g in 1000 + 349.318 g
    const { freeCausticAlkali, batch } = plan(250, 10);
    expect(batch.mass.g.toFixed(6)).toBe('1349.318777');
    expect(freeCausticAlkali.high.percentNaoh.toFixed(6)).toBe('0.264169');
    expect(freeCausticAlkali.likely.percentNaoh.isZero()).toBe(true);
  });

  it('goes by the mass of the batch that is stated', () => {
    const { freeCausticAlkali, batch } = plan(250, 10, { batchMass: { kg: 2 } });
    expect(freeCausticAlkali.high.percentNaoh.toFixed(6)).toBe('0.178224'); // 0.264169 * 1349.318777 / 2000
    expect(batch).toMatchObject({ is: 'as-stated' });
    expect(plan(250, 10).batch.is).toBe('fats-lye-and-water');
  });

  it('is of the whole batch: fats, alkali and water', () => {
    fc.assert(
      fc.property(lots, fc.integer({ min: 0, max: 20 }), (some, percent) => {
        const made = planLye({
          fats: some.map((one) => asFat(one)),
          alkali: { naoh: solid(98) },
          target: superfat(percent),
          dilution: { waterPerAlkali: 2 },
        });
        const fats = some.reduce((sum, { grams }) => sum + grams, 0);
        const whole = made.weigh.naoh.g.plus(made.weigh.water.g).plus(fats);
        expect(deviation(String(made.batch.mass.g), String(whole)).lte('1e-32')).toBe(true);
        const lean = new Exact(String(made.charged.high.mol)).minus(String(made.demand.low.mol));
        const expected = Exact.max(0, lean).times(NAOH).times(100).div(String(whole));
        expect(deviation(String(made.freeCausticAlkali.high.percentNaoh), expected).lte('1e-28')).toBe(true);
      }),
    );
  });
});

describe('planLye: refusals', () => {
  const good = {
    fats: [certified(250)],
    alkali: { naoh: solution(50) },
    target: superfat(2),
    dilution: { strength: { percent: 33 } },
  };
  it.each<[string, object, string, string]>([
    ['no fats', { fats: [] }, 'bad-shape', 'fats'],
    ['no alkali', { alkali: {} }, 'missing', 'alkali'],
    ['alkali left out', { alkali: undefined }, 'missing', 'alkali'],
    ['an unknown alkali', { alkali: { lioh: solid(98) } }, 'unknown-key', 'alkali.lioh'],
    ['two alkalis without a share', { alkali: { naoh: solid(98), koh: solid(90) } }, 'missing', 'alkali.kohShare'],
    ['a share without two alkalis', { alkali: { naoh: solid(98), kohShare: { percent: 40 } } }, 'bad-shape', 'alkali.kohShare'],
    ['a share of nothing', { alkali: { naoh: solid(98), koh: solid(90), kohShare: { percent: 0 } } }, 'out-of-range', 'alkali.kohShare.percent'],
    ['a share of all', { alkali: { naoh: solid(98), koh: solid(90), kohShare: { percent: 100 } } }, 'out-of-range', 'alkali.kohShare.percent'],
    ['zero assay', { alkali: { naoh: solid(0) } }, 'out-of-range', 'alkali.naoh.solid.hydroxide.percent'],
    ['an assay of 111 %', { alkali: { koh: solid(111) } }, 'out-of-range', 'alkali.koh.solid.hydroxide.percent'],
    ['a solution of 76 %', { alkali: { naoh: solution(76) } }, 'out-of-range', 'alkali.naoh.solution.hydroxide.percent'],
    ['solid and solution', { alkali: { naoh: { ...solid(98), ...solution(50) } } }, 'bad-shape', 'alkali.naoh'],
    ['neither', { alkali: { naoh: {} } }, 'missing', 'alkali.naoh'],
    ['no target', { target: {} }, 'missing', 'target.superfat'],
    ['superfat of 100', { target: superfat(100) }, 'out-of-range', 'target.superfat.percent'],
    ['superfat over 100', { target: superfat(101) }, 'out-of-range', 'target.superfat.percent'],
    ['negative superfat', { target: superfat(-1) }, 'out-of-range', 'target.superfat.percent'],
    ['superfat as a number', { target: { superfat: 5 } }, 'bad-shape', 'target.superfat'],
    ['both targets', { target: { superfat: { percent: 5 }, freeCausticAlkaliAtMost: { percentNaoh: '0.05' } } }, 'bad-shape', 'target'],
    ['a batch of nothing', { batchMass: { g: 0 } }, 'out-of-range', 'batchMass.g'],
    ['an unknown option', { water: { g: 100 } }, 'unknown-key', 'input.water'],
    ['a misspelt unit', { batchMass: { gr: 100 } }, 'unknown-unit', 'batchMass.gr'],
  ])('%s', (_what, change, code, path) => {
    expect(refusal(() => planLye({ ...good, ...change }))).toMatchObject({ code, path });
  }); // prettier-ignore
});
