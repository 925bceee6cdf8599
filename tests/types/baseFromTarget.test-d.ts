import { describe, expectTypeOf, it } from 'vitest';
import {
  baseFromTarget,
  fat,
  type AlkaliChoice,
  type BaseFromTargetBase,
  type BasePlan,
  type BasePlanFor,
  type BaseWeights,
  type Mass,
} from 'laurate';

const base = {
  fats: [{ fat: fat('coconut-oil'), share: { percent: 100 } }],
  superfat: { percent: 1 },
  batchMass: { kg: 3 },
  target: { soap: { percent: 40 }, glycerol: { percent: 15 } },
  supplies: { glycerol: { assay: { percent: '99.5' } } },
} satisfies BaseFromTargetBase;
const solution = { solution: { hydroxide: { percent: 50 } } };

describe('baseFromTarget', () => {
  it('weighs the alkalis chosen, and no other', () => {
    const { weigh } = baseFromTarget({ ...base, alkali: { naoh: solution } });
    expectTypeOf(weigh.naoh).toEqualTypeOf<Mass>();
    expectTypeOf<keyof typeof weigh>().toEqualTypeOf<'naoh' | 'water' | 'fats' | 'additions'>();
    // @ts-expect-error: there is no potassium hydroxide to weigh
    expectTypeOf(weigh.koh);
    const both = baseFromTarget({ ...base, alkali: { naoh: solution, koh: solution, kohShare: { percent: 40 } } });
    expectTypeOf(both).toEqualTypeOf<BasePlan<'naoh' | 'koh'>>();
  });

  it('follows a declared type, and every plan fits BasePlan', () => {
    const choice = { naoh: solution } as AlkaliChoice;
    const plan = baseFromTarget({ ...base, alkali: choice });
    expectTypeOf(plan).toEqualTypeOf<BasePlanFor<AlkaliChoice>>();
    expectTypeOf(plan).toExtend<BasePlan>();
    expectTypeOf(plan.weigh).toExtend<BaseWeights>();
  });

  it('takes known components, supplies and keys only', () => {
    // @ts-expect-error: a component has its name in a composition
    baseFromTarget({ ...base, alkali: { naoh: solution }, target: { soap: { percent: 40 }, 'propylene-glycol': { percent: 5 } } });
    // @ts-expect-error: only spirit has a strength by volume
    baseFromTarget({ ...base, alkali: { naoh: solution }, supplies: { glycerol: { assay: { percentByVolume: 99 } } } });
    // @ts-expect-error: an assay is misspelt
    baseFromTarget({ ...base, alkali: { naoh: { solution: { hydroxid: { percent: 50 } } } } });
    expectTypeOf(base.target).toExtend<BaseFromTargetBase['target']>();
  }); // prettier-ignore
});
