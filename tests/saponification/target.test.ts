import fc from 'fast-check';
import {
  fatFromCertificate,
  planLye,
  soapFromLye,
  superfatFromLye,
  type AlkaliChoice,
  type AlkaliSource,
  type ChargedFatInput,
  type Dilution,
  type LyeChargeInput,
  type LyePlan,
  type LyeTarget,
  type MassInput,
  type PlanLyeInput,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { readTarget } from '../../src/saponification/target.js';
import { Exact, KOH, NAOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const fat = (low: number | string, high: number | string, g: number): ChargedFatInput => ({
  fat: fatFromCertificate({
    name: 'A lot',
    kind: 'triglyceride',
    saponificationValue: { low: { mgKohPerG: low }, high: { mgKohPerG: high } },
  }),
  mass: { g },
});
const atMost = (percentNaoh: number | string): LyeTarget => ({ freeCausticAlkaliAtMost: { percentNaoh } });
const exact = (value: { toString(): string }): Exact => new Exact(value.toString());
type AnyPlan = LyePlan<'naoh' | 'koh'>;
const plan = (input: PlanLyeInput): AnyPlan => planLye(input as never) as AnyPlan;

/** A plan's alkalis as charged, with the assays of the store. */
function chargedBy({ weigh }: AnyPlan, alkali: AlkaliChoice): LyeChargeInput[] {
  const one = (name: 'naoh' | 'koh', source: AlkaliSource | undefined): LyeChargeInput[] =>
    source === undefined ? [] : [{ alkali: name, mass: weigh[name], ...source }];
  return [...one('naoh', alkali.naoh), ...one('koh', alkali.koh)];
}

describe('a limit of free caustic: worked by hand', () => {
  const coconut = fat(248, 265, 1000);

  it('no more than the leanest lot takes up, where none may be left', () => {
    const { weigh, superfat, freeCausticAlkali, given } = planLye({
      fats: [coconut],
      alkali: { naoh: { solid: { hydroxide: { percent: 100 } } } },
      target: atMost(0),
      dilution: { waterPerAlkali: 2 },
    });
    expect(weigh.naoh.g.toFixed(9)).toBe('176.798075038'); // 248000 / 56105 * 39.997
    expect(superfat.low.percent.abs().lte('1e-30')).toBe(true);
    expect(superfat.likely.percent.toFixed(6)).toBe('3.313840'); // 100 * (1 - 248 / 256.5)
    expect(freeCausticAlkali.high.percentNaoh.abs().lte('1e-30')).toBe(true);
    expect(given.target).toEqual({ freeCausticAlkaliAtMost: { percentNaoh: expect.anything() as unknown } });
  });

  it('and less of it, where the assay may be higher than is likely', () => {
    const { weigh } = planLye({
      fats: [coconut],
      alkali: { naoh: { solid: { hydroxide: { low: { percent: 96 }, high: { percent: 100 } } } } },
      target: atMost(0),
      dilution: { waterPerAlkali: 2 },
    });
    // at 100 % the same 176.798 g of hydroxide, so the same mass is weighed
    expect(weigh.naoh.g.toFixed(9)).toBe('176.798075038');
  });

  it('with a limit: of a batch whose mass is stated', () => {
    const { weigh, batch, freeCausticAlkali } = planLye({
      fats: [coconut],
      alkali: { koh: { solid: { hydroxide: { percent: 100 } } } },
      target: atMost('0.05'),
      dilution: { waterPerAlkali: 1 },
      batchMass: { g: 2000 },
    });
    expect(weigh.koh.g.toFixed(9)).toBe('249.402730205'); // 248 + 2000 * 0.0005 / 39.997 * 56.105
    expect(batch.is).toBe('as-stated');
    expect(freeCausticAlkali.high.percentNaoh.toFixed(25)).toBe(`0.05${'0'.repeat(23)}`);
  });

  it('with a limit: of fats, lye and water, which grow with the alkali', () => {
    const { weigh, freeCausticAlkali } = planLye({
      fats: [coconut],
      alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
      target: atMost(1),
      dilution: 'as-is',
    });
    // h - 176.798075038 = 0.01 * (1000 + 2h), so h = 186.798075038 / 0.98
    expect(weigh.naoh.g.toFixed(9)).toBe('381.220561302'); // 2h
    expect(freeCausticAlkali.high.percentNaoh.toFixed(25)).toBe(`1.${'0'.repeat(25)}`);
  });

  it('a limit in KOH is the same limit', () => {
    const input = (target: LyeTarget): PlanLyeInput => ({
      fats: [coconut],
      alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
      target,
      dilution: 'as-is',
    });
    const inKoh = plan(input({ freeCausticAlkaliAtMost: { percentKoh: '0.56105' } }));
    const inNaoh = plan(input(atMost('0.39997')));
    expect(inKoh.weigh.naoh.g.minus(inNaoh.weigh.naoh.g).abs().lte('1e-28')).toBe(true);
  });

  it('rounded, the alkali goes down', () => {
    const { weigh, freeCausticAlkali } = planLye({
      fats: [coconut],
      alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
      target: atMost(1),
      dilution: 'as-is',
      scaleStep: { g: 5 },
    });
    expect(weigh.naoh.g.toString()).toBe('380');
    expect(freeCausticAlkali.high.percentNaoh.toFixed(6)).toBe('0.956661'); // (190 - 176.798074) / 1380
  });

  it('rounded, two alkalis go down by the step of the one that brings less hydroxide with it', () => {
    const pot = { fats: [fat(250, 250, 1300)], water: { g: 3 } };
    const [soda, potash] = [{ solid: { hydroxide: { percent: 100 } } }, { solid: { hydroxide: { percent: 90 } } }];
    const { weigh } = planLye({
      fats: pot.fats,
      alkali: { naoh: soda, koh: potash, kohShare: { percent: 80 } },
      target: atMost(5),
      dilution: { water: { g: '3.4' } },
      scaleStep: { g: 1 },
    });
    // unrounded 64.0023 and 399.0133 g of 8.000882 mol, with 3.4 g of water; on the scale 64, 399 and 3
    const onTheScale = superfatFromLye({
      ...pot,
      lye: [{ alkali: 'naoh', mass: { g: 64 }, ...soda }, { alkali: 'koh', mass: { g: 399 }, ...potash }],
    }); // prettier-ignore
    expect(onTheScale.freeCausticAlkali.high.percentNaoh.toFixed(4)).toBe('5.0006'); // 2.207919 * 39.997 / 1766
    // a gram of potash is 0.016041 mol: 63.874 and 398.213 g. A gram of soda, 0.025002 mol, would take two grams of potash
    expect([weigh.naoh.g, weigh.koh.g, weigh.water.g].map(String)).toEqual(['63', '398', '3']);
  });
});

// Plans of every kind.
const tenths = (min: number, max: number): fc.Arbitrary<string> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((count) => `${String(count)}e-1`);
const percents = (min: number, max: number, width: number) =>
  fc
    .tuple(fc.integer({ min: min * 10, max: max * 10 }), fc.integer({ min: 0, max: width * 10 }))
    .map(([low, wide]) => ({ low: { percent: `${String(low)}e-1` }, high: { percent: `${String(low + wide)}e-1` } }));

const fats = fc.array(
  fc
    .record({
      value: fc.integer({ min: 90, max: 260 }),
      width: fc.integer({ min: 0, max: 20 }),
      g: fc.integer({ min: 2000, max: 9000 }),
    })
    .map(({ value, width, g }) => fat(value, value + width, g)),
  { minLength: 1, maxLength: 3 },
);
const source: fc.Arbitrary<AlkaliSource> = fc.oneof(
  percents(90, 99, 3).map((hydroxide) => ({ solid: { hydroxide } })),
  percents(30, 48, 3).map((hydroxide) => ({ solution: { hydroxide } })),
  fc
    .tuple(percents(85, 97, 3), percents(0, 2, 2))
    .map(([totalAlkali, carbonate]) => ({ solid: { totalAlkali, carbonate } })),
);
const alkali: fc.Arbitrary<AlkaliChoice> = fc.oneof(
  source.map((naoh) => ({ naoh })),
  source.map((koh) => ({ koh })),
  fc.record({ naoh: source, koh: source, kohShare: tenths(10, 90).map((percent) => ({ percent })) }),
);
const dilution: fc.Arbitrary<Dilution> = fc.oneof(
  tenths(22, 28).map((percent) => ({ strength: { percent } })),
  tenths(1, 3).map((waterPerAlkali) => ({ waterPerAlkali })),
  tenths(20, 60).map((percent) => ({ waterPerFat: { percent } })),
  fc.integer({ min: 20, max: 3000 }).map((g) => ({ water: { g } })),
);
const limit = fc.constantFrom('0', '0.01', '0.05', '0.3', '2');
// the batch, where it is stated: so much more than its fats
const besides = fc.oneof(fc.constant(undefined), fc.integer({ min: 500, max: 15000 }));
const plans = fc
  .record({ fats, alkali, limit, dilution, besides })
  .map(({ limit: percentNaoh, besides: more, ...rest }) => ({
    limit: percentNaoh,
    input: {
      ...rest,
      target: atMost(percentNaoh),
      ...(more === undefined
        ? {}
        : { batchMass: { g: rest.fats.reduce((sum, { mass }) => sum + (mass as { g: number }).g, more) } }),
    },
  }));
const step = fc.constantFrom<MassInput>({ g: 1 }, { g: '0.1' }, { g: 5 }, { oz: '0.25' });

type Weighed = AlkaliSource & { readonly alkali: 'naoh' | 'koh'; readonly grams: Exact };
const total = (parts: readonly Exact[]): Exact => parts.reduce((sum, part) => sum.plus(part), new Exact(0));
const gramsOf = (mass: MassInput): Exact => exact((mass as { g: number }).g);
const fatGramsOf = ({ fats: charged }: PlanLyeInput): Exact => total(charged.map(({ mass }) => gramsOf(mass)));

/** A plan's alkalis as weighed, each by so much more. */
const weighedBy = (made: AnyPlan, choice: AlkaliChoice, more: Exact | number = 0): Weighed[] =>
  chargedBy(made, choice).map(({ mass, ...rest }) => ({ ...rest, grams: gramsOf(mass).plus(more) }));

interface Range {
  readonly low: { readonly percent: string };
  readonly high: { readonly percent: string };
}

/** Hydroxide of an alkali by mass: the most its assay allows, or the middle. */
function shareOf({ alkali: name, solid, solution }: Weighed, of: 'likely' | 'high'): Exact {
  const { hydroxide, totalAlkali, carbonate } = { ...solid, ...solution } as Readonly<
    Record<string, Range | undefined>
  >;
  const middle = ({ low, high }: Range): Exact => exact(low.percent).plus(high.percent).div(2);
  if (hydroxide !== undefined) return (of === 'high' ? exact(hydroxide.high.percent) : middle(hydroxide)).div(100);
  if (totalAlkali === undefined || carbonate === undefined) throw new Error('an assay was wanted');
  const perCarbonate = name === 'naoh' ? NAOH.times(2).div('105.988') : KOH.times(2).div('138.204');
  const [all, salt] =
    of === 'high'
      ? [exact(totalAlkali.high.percent), exact(carbonate.low.percent)]
      : [middle(totalAlkali), middle(carbonate)];
  return all.minus(perCarbonate.times(salt)).div(100);
}

/** Free caustic in percent NaOH of the batch, for the leanest lots and the strongest assay: worked out here, in 60 digits. */
function worstOf(input: PlanLyeInput, lye: readonly Weighed[], water: Exact): Exact {
  const leanest = total(
    input.fats.map(({ fat: { saponificationValue }, mass }) =>
      gramsOf(mass).times(exact(saponificationValue.low.mgKohPerG)).div(KOH.times(1000)),
    ),
  );
  const most = total(lye.map((one) => one.grams.times(shareOf(one, 'high')).div(one.alkali === 'naoh' ? NAOH : KOH)));
  const batch =
    input.batchMass === undefined
      ? total([fatGramsOf(input), water, ...lye.map(({ grams }) => grams)])
      : gramsOf(input.batchMass);
  return Exact.max(0, most.minus(leanest)).times(NAOH).times(100).div(batch);
}

/** Grams of water by the dilution asked for, unrounded. */
function waterFor(input: PlanLyeInput, lye: readonly Weighed[]): Exact {
  const { dilution: by } = input;
  const alkaliGrams = total(lye.map(({ grams }) => grams));
  if (by === 'as-is') return new Exact(0);
  if (by.water !== undefined) return gramsOf(by.water);
  if (by.waterPerAlkali !== undefined) return alkaliGrams.times(by.waterPerAlkali.toString());
  if (by.waterPerFat !== undefined)
    return fatGramsOf(input)
      .times((by.waterPerFat as { percent: string }).percent)
      .div(100);
  const pure = total(lye.map((one) => one.grams.times(shareOf(one, 'likely'))));
  return pure
    .times(100)
    .div((by.strength as { percent: string }).percent)
    .minus(alkaliGrams);
}

describe('a limit of free caustic: laws', () => {
  it('unrounded, the worst lawful pot holds just so much', () => {
    fc.assert(
      fc.property(plans, ({ limit: wanted, input }) => {
        const made = plan(input);
        const worst = worstOf(input, weighedBy(made, input.alkali), exact(made.weigh.water.g));
        expect(worst.minus(wanted).abs().lte('1e-25'), worst.toString()).toBe(true);
        expect(exact(made.freeCausticAlkali.high.percentNaoh).minus(wanted).abs().lte('1e-25')).toBe(true);
      }),
      { numRuns: 150 },
    );
  });

  it('rounded, it never holds more', () => {
    fc.assert(
      fc.property(plans, step, ({ limit: wanted, input }, scaleStep) => {
        const made = plan({ ...input, scaleStep });
        const worst = worstOf(input, weighedBy(made, input.alkali), exact(made.weigh.water.g));
        expect(worst.lte(wanted), worst.toString()).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  it('and with a step more of every alkali it would hold more', () => {
    fc.assert(
      fc.property(plans, step, ({ limit: wanted, input }, scaleStep) => {
        const made = plan({ ...input, scaleStep });
        const one = 'oz' in scaleStep ? new Exact('7.08738078125') : gramsOf(scaleStep);
        const more = weighedBy(made, input.alkali, one);
        // the water that goes with it may come out half a step less by rounding, and the batch so much lighter
        const worst = worstOf(input, more, waterFor(input, more).minus(one.div(2)));
        expect(worst.gt(wanted), worst.toString()).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  it('a looser limit never takes less alkali', () => {
    fc.assert(
      fc.property(plans, ({ input }) => {
        const [strict, loose] = ['0.05', '0.5'].map((percentNaoh) => plan({ ...input, target: atMost(percentNaoh) }));
        expect(strict?.hydroxide.mol.lt(loose?.hydroxide.mol ?? 0)).toBe(true);
      }),
      { numRuns: 50 },
    );
  });

  it('what is then charged has that worst case, by superfatFromLye and soapFromLye as well', () => {
    fc.assert(
      fc.property(plans, ({ input }) => {
        const made = plan(input);
        const lye = chargedBy(made, input.alkali);
        const charge = { fats: input.fats, lye, water: made.weigh.water };
        const { freeCausticAlkali } = superfatFromLye({
          ...charge,
          ...(input.batchMass === undefined ? {} : { batchMass: input.batchMass }),
        });
        const off = exact(freeCausticAlkali.high.percentNaoh).minus(exact(made.freeCausticAlkali.high.percentNaoh));
        expect(off.abs().lte('1e-25')).toBe(true);

        // and no lot leaves more hydroxide in the pot than that, in whatever proportion
        const { products, charge: batch } = soapFromLye(charge);
        const stated = exact((input.batchMass as { g: number } | undefined)?.g ?? batch.g);
        const most = (product: 'freeNaoh' | 'freeKoh', molarMass: Exact): Exact =>
          exact(products[product].high.g).div(molarMass).times(NAOH).times(100).div(stated);
        const greatest = Exact.max(most('freeNaoh', NAOH), most('freeKoh', KOH));
        expect(greatest.minus(exact(freeCausticAlkali.high.percentNaoh)).lte('1e-25')).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});

describe('a limit that the lye itself does not exceed', () => {
  const dilute = (percentNaoh: string, by: Dilution) => () =>
    planLye({
      fats: [fat(200, 210, 1000)],
      alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
      target: atMost(percentNaoh),
      dilution: by,
    });

  it.each<[string, string, Dilution]>([
    ['weaker than the limit', '5', { strength: { percent: 4 } }],
    ['as strong as the limit', '5', { strength: { percent: 5 } }],
    ['with a hundred parts of water', '0.6', { waterPerAlkali: 100 }],
  ])('is refused for a lye %s: any amount of it would do', (_what, percentNaoh, by) => {
    expect(refusal(dilute(percentNaoh, by))).toEqual({
      code: 'infeasible',
      path: 'target.freeCausticAlkaliAtMost',
      message: `target.freeCausticAlkaliAtMost: expected a limit below what the lye itself holds, received ${percentNaoh} percent NaOH`,
    });
  });

  it('and is kept by one a little stronger', () => {
    const { freeCausticAlkali } = dilute('4.9', { strength: { percent: 5 } })();
    expect(freeCausticAlkali.high.percentNaoh.minus('4.9').abs().lte('1e-25')).toBe(true);
  });
});

describe('readTarget: refusals', () => {
  it.each<[string, unknown, string, string]>([
    ['superfat and a limit both', { superfat: { percent: 2 }, ...atMost(0) }, 'bad-shape', 'target'],
    ['a limit above 5 %', atMost('5.01'), 'out-of-range', 'target.freeCausticAlkaliAtMost.percentNaoh'],
    ['a limit below nothing', atMost('-0.01'), 'out-of-range', 'target.freeCausticAlkaliAtMost.percentNaoh'],
    ['a limit without its basis', { freeCausticAlkaliAtMost: { percent: '0.05' } }, 'unknown-unit', 'target.freeCausticAlkaliAtMost.percent'],
    ['a bare limit', { freeCausticAlkaliAtMost: '0.05' }, 'bad-shape', 'target.freeCausticAlkaliAtMost'],
    ['superfat of all', { superfat: { percent: 100 } }, 'out-of-range', 'target.superfat.percent'],
    ['neither', {}, 'missing', 'target.superfat'],
    ['an unknown key', { freeCaustic: { percentNaoh: 1 } }, 'unknown-key', 'target.freeCaustic'],
    ['nothing', undefined, 'missing', 'target'],
  ])('%s', (_what, value, code, path) => {
    const refused = refusal(() => readTarget('target', value));
    expect({ code: refused.code, path: refused.path }).toEqual({ code, path });
  }); // prettier-ignore

  it('5 % itself, 0 %, and superfat of 0 to less than 100 are taken', () => {
    const texts = [atMost(5), atMost(0), { superfat: { percent: 0 } }, { superfat: { percent: '99.9' } }];
    expect(texts.map((target) => JSON.stringify(readTarget('target', target)))).toEqual([
      '{"freeCausticAlkaliAtMost":{"percentNaoh":"5"}}',
      '{"freeCausticAlkaliAtMost":{"percentNaoh":"0"}}',
      '{"superfat":{"percent":"0"}}',
      '{"superfat":{"percent":"99.9"}}',
    ]);
  });
});
