import { describe, expectTypeOf, it } from 'vitest';
import {
  fat,
  fatFromCertificate,
  planLye,
  superfatFromLye,
  type AlkaliChoice,
  type ChosenAlkali,
  type Estimate,
  type Fraction,
  type KohAlone,
  type LyePlan,
  type Mass,
  type NaohAlone,
  type NaohWithKoh,
  type PlanFor,
  type PlanLyeBase,
  type Remark,
} from 'laurate';

const base = {
  fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
  target: { superfat: { percent: 2 } },
  dilution: { strength: { percent: 33 } },
} satisfies PlanLyeBase;
const solution = { solution: { hydroxide: { percent: 50 } } };
const solid = { solid: { hydroxide: { low: { percent: 85 }, high: { percent: 90 } } } };

describe('planLye: what is weighed', () => {
  it('is sodium hydroxide where that was chosen', () => {
    const { weigh } = planLye({ ...base, alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } } });
    expectTypeOf(weigh.naoh).toEqualTypeOf<Mass>();
    expectTypeOf(weigh.water).toEqualTypeOf<Mass>();
    expectTypeOf<keyof typeof weigh>().toEqualTypeOf<'naoh' | 'water'>();
    // @ts-expect-error: there is no potassium hydroxide to weigh
    expectTypeOf(weigh.koh);
  });

  it('is potassium hydroxide where that was chosen', () => {
    const { weigh } = planLye({ ...base, alkali: { koh: { solid: { hydroxide: { percent: 90 } } } } });
    expectTypeOf(weigh.koh).toEqualTypeOf<Mass>();
    expectTypeOf<keyof typeof weigh>().toEqualTypeOf<'koh' | 'water'>();
    // @ts-expect-error: there is no sodium hydroxide to weigh
    expectTypeOf(weigh.naoh);
  });

  it('is both with a share of potassium', () => {
    const { weigh } = planLye({ ...base, alkali: { naoh: solution, koh: solid, kohShare: { percent: 40 } } });
    expectTypeOf<keyof typeof weigh>().toEqualTypeOf<'naoh' | 'koh' | 'water'>();
    expectTypeOf(weigh.naoh).toEqualTypeOf<Mass>();
    expectTypeOf(weigh.koh).toEqualTypeOf<Mass>();
  });

  it('follows the declared type of a variable', () => {
    const alone: NaohAlone = { naoh: solution };
    expectTypeOf(planLye({ ...base, alkali: alone })).toEqualTypeOf<LyePlan<'naoh'>>();
    const both: NaohWithKoh = { naoh: solution, koh: solid, kohShare: { percent: 40 } };
    expectTypeOf(planLye({ ...base, alkali: both })).toEqualTypeOf<LyePlan<'naoh' | 'koh'>>();
  });

  it('is a union of plans for a choice made elsewhere', () => {
    const choose = (): AlkaliChoice => ({ naoh: solution });
    const plan = planLye({ ...base, alkali: choose() });
    expectTypeOf(plan).toEqualTypeOf<LyePlan<'naoh'> | LyePlan<'koh'> | LyePlan<'naoh' | 'koh'>>();
    expectTypeOf(plan.weigh.water).toEqualTypeOf<Mass>();
    // @ts-expect-error: it may be potassium hydroxide
    expectTypeOf(plan.weigh.naoh);
    if ('naoh' in plan.weigh) expectTypeOf(plan.weigh.naoh).toEqualTypeOf<Mass>();
  });

  it('has types of its own', () => {
    expectTypeOf<ChosenAlkali<NaohAlone>>().toEqualTypeOf<'naoh'>();
    expectTypeOf<ChosenAlkali<KohAlone>>().toEqualTypeOf<'koh'>();
    expectTypeOf<ChosenAlkali<NaohWithKoh>>().toEqualTypeOf<'naoh' | 'koh'>();
    // what every plan has, whatever was chosen
    expectTypeOf<LyePlan<'naoh'>>().toExtend<LyePlan>();
    expectTypeOf<PlanFor<AlkaliChoice>>().toExtend<LyePlan>();
    expectTypeOf<PlanFor<NaohAlone | KohAlone>>().toEqualTypeOf<LyePlan<'naoh'> | LyePlan<'koh'>>();
  });
});

describe('planLye: what does not compile', () => {
  it('an unknown option at the top', () => {
    // @ts-expect-error: no such option
    planLye({ ...base, alkali: { naoh: solution }, superFat: { percent: 5 } });
  });

  it('an unknown key in the alkali, at any depth', () => {
    // @ts-expect-error: purity of a solution is its hydroxide
    planLye({ ...base, alkali: { naoh: { solution: { hydroxide: { percent: 50 } }, purity: 3 } } });
    // @ts-expect-error: within the solution
    planLye({ ...base, alkali: { naoh: { solution: { hydroxide: { percent: 50 }, carbonate: { percent: 1 } } } } });
    // @ts-expect-error: within the range
    planLye({ ...base, alkali: { naoh: { solid: { hydroxide: { low: { percent: 98 }, top: { percent: 100 } } } } } });
    // @ts-expect-error: beside the alkali
    planLye({ ...base, alkali: { naoh: solution, lithium: solution } });
    // @ts-expect-error: a unit that is none
    planLye({ ...base, alkali: { naoh: { solution: { hydroxide: { percents: 50 } } } } });
    // @ts-expect-error: two units
    planLye({ ...base, alkali: { naoh: { solution: { hydroxide: { percent: 50, fraction: 0.5 } } } } });
  });

  it('an alkali without its assay, or with two', () => {
    // @ts-expect-error: nothing is said of the product
    planLye({ ...base, alkali: { naoh: {} } });
    // @ts-expect-error: no alkali at all
    planLye({ ...base, alkali: {} });
    // @ts-expect-error: either a solid or a solution
    planLye({ ...base, alkali: { naoh: { ...solution, ...solid } } });
    // @ts-expect-error: total alkali is nothing without its carbonate
    planLye({ ...base, alkali: { naoh: { solid: { totalAlkali: { percent: 95 } } } } });
    // @ts-expect-error: a number has no basis
    planLye({ ...base, alkali: { naoh: { solution: { hydroxide: 50 } } } });
  });

  it('two alkalis without a share, or a share of one', () => {
    // @ts-expect-error: in what proportion?
    planLye({ ...base, alkali: { naoh: solution, koh: solid } });
    // @ts-expect-error: a share of what?
    planLye({ ...base, alkali: { naoh: solution, kohShare: { percent: 40 } } });
  });

  it('anything left to a silent default', () => {
    // @ts-expect-error: no target
    planLye({ fats: base.fats, dilution: base.dilution, alkali: { naoh: solution } });
    // @ts-expect-error: no dilution
    planLye({ fats: base.fats, target: base.target, alkali: { naoh: solution } });
    // @ts-expect-error: no alkali
    planLye({ ...base });
    // @ts-expect-error: a superfat is a share
    planLye({ ...base, target: { superfat: 2 }, alkali: { naoh: solution } });
    // @ts-expect-error: two ways of dilution
    planLye({ ...base, dilution: { strength: { percent: 33 }, water: { g: 100 } }, alkali: { naoh: solution } });
    // @ts-expect-error: in code a fat is a value, not its name
    planLye({ ...base, fats: [{ fat: 'coconut-oil', mass: { g: 700 } }], alkali: { naoh: solution } });
    // @ts-expect-error: seven hundred of what?
    planLye({ ...base, fats: [{ fat: fat('coconut-oil'), mass: 700 }], alkali: { naoh: solution } });
  });
});

describe('a certificate', () => {
  it('has a saponification value with its basis', () => {
    fatFromCertificate({ name: 'Coconut oil, lot 7', saponificationValue: { mgKohPerG: '256.4' } });
    fatFromCertificate({ name: 'Coconut oil, lot 7', saponificationValue: { gNaohPerG: 0.183 } });
    // @ts-expect-error: a bare number: of potassium or of sodium hydroxide?
    fatFromCertificate({ name: 'Coconut oil, lot 7', saponificationValue: 0.183 });
    // @ts-expect-error: nor a text
    fatFromCertificate({ name: 'Coconut oil, lot 7', saponificationValue: '256.4' });
    // @ts-expect-error: "SAP" has no basis either
    fatFromCertificate({ name: 'Coconut oil, lot 7', saponificationValue: { sap: 0.183 } });
    // @ts-expect-error: both at once
    fatFromCertificate({ name: 'Coconut oil, lot 7', saponificationValue: { mgKohPerG: 256, gNaohPerG: 0.183 } });
  });
});

describe('results of a plan', () => {
  it('are readonly, and every quantity is named', () => {
    const plan = planLye({ ...base, alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } } });
    expectTypeOf(plan.superfat).toEqualTypeOf<Estimate<Fraction>>();
    expectTypeOf(plan.by).toEqualTypeOf<'planLye'>();
    // @ts-expect-error: readonly
    plan.weigh.naoh = plan.weigh.water;
    // @ts-expect-error: readonly within
    plan.superfat.low = plan.superfat.high;
    expectTypeOf(plan.cautions).toEqualTypeOf<readonly Remark[]>();
  });

  it('go in again as they stand', () => {
    const plan = planLye({ ...base, alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } } });
    const back = superfatFromLye({
      fats: base.fats,
      lye: [{ alkali: 'naoh', mass: plan.weigh.naoh, solution: { hydroxide: { percent: 50 } } }],
    });
    expectTypeOf(back.superfat).toEqualTypeOf<Estimate<Fraction>>();
  });
});
