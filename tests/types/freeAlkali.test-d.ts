import {
  acidValueFromTitration,
  alkaliAssayFromTwoIndicators,
  correctFreeAlkali,
  correctSuperfat,
  fat,
  fatFromCertificate,
  freeAlkaliBehindPh,
  freeAlkaliLimits,
  freeCausticAlkaliFromTitration,
  judgeFreeAlkali,
  planLye,
  saponificationValueFromTitration,
  totalFreeAlkaliFromTitration,
  type AlkaliContent,
  type FreeAlkaliLimitId,
  type FreeAlkaliVerdict,
  type Mass,
} from 'laurate';
import { describe, expectTypeOf, it } from 'vitest';

const titrant = { eqPerL: '0.1' } as const;
const sample = { g: 10 } as const;
const volume = { mL: '2.4' } as const;

describe('titrations', () => {
  it('take one reading or a list of them', () => {
    const test = freeCausticAlkaliFromTitration({ sample, titrant, volume });
    expectTypeOf(test.freeCausticAlkali).toEqualTypeOf<AlkaliContent>();
    freeCausticAlkaliFromTitration({ readings: [{ sample, volume }], titrant });
    // @ts-expect-error one reading and a list of them
    freeCausticAlkaliFromTitration({ sample, volume, readings: [{ sample, volume }], titrant });
    // @ts-expect-error neither one reading nor a list
    expectTypeOf(freeCausticAlkaliFromTitration).toBeCallableWith({ titrant });
    // @ts-expect-error a titrant by the mole, whose equivalents are not told
    freeCausticAlkaliFromTitration({ sample, titrant: { molPerL: 1 }, volume });
  });

  it('back take a blank', () => {
    // @ts-expect-error there is no blank
    expectTypeOf(saponificationValueFromTitration).toBeCallableWith({ sample, titrant, volume });
    totalFreeAlkaliFromTitration({ sample, titrant, volume, acid: { titrant, volume: { mL: 30 } } });
    // @ts-expect-error blank and acid
    totalFreeAlkaliFromTitration({ sample, titrant, volume, blank: { mL: 30 }, acid: { titrant, volume: { mL: 30 } } });
  });
});

describe('what is measured goes on', () => {
  const test = freeCausticAlkaliFromTitration({ sample, titrant, volume });

  it('to the judgement', () => {
    expectTypeOf(
      judgeFreeAlkali({ measured: test, limit: 'soft-soap-usp' }).verdict,
    ).toEqualTypeOf<FreeAlkaliVerdict>();
    expectTypeOf(freeAlkaliLimits[0]?.id).toEqualTypeOf<FreeAlkaliLimitId | undefined>();
    // @ts-expect-error no such limit
    expectTypeOf(judgeFreeAlkali).toBeCallableWith({ measured: test, limit: 'soap' });
  });

  it('to the correction', () => {
    const pot = { batch: { kg: 5 }, alkali: 'naoh', measured: test, target: { percentNaoh: 0 } } as const;
    const r = correctFreeAlkali({ ...pot, corrector: { acid: 'citric', strength: { percent: 25 } } });
    expectTypeOf(r.add).toEqualTypeOf<Mass>();
    correctFreeAlkali({ ...pot, corrector: { fat: fat('stearic-acid-50') } });
    // @ts-expect-error an acid without its share
    expectTypeOf(correctFreeAlkali).toBeCallableWith({ ...pot, corrector: { acid: 'citric' } });
    const measured = acidValueFromTitration({ sample, titrant, volume });
    correctSuperfat({ batch: { kg: 5 }, measured, target: { mgKohPerG: 0 }, lye: { alkali: 'naoh', solution: { hydroxide: { percent: 30 } } } });
  }); // prettier-ignore

  it('with what the soap holds, and no field that no test has', () => {
    const pot = { batch: { kg: 5 }, alkali: 'naoh', target: { percentNaoh: 0 }, corrector: { fat: fat('oleic-acid') } } as const;
    const { decision } = correctFreeAlkali({ ...pot, measured: test, triethanolamine: true });
    expectTypeOf(decision).extract<'nothing-to-add' | 'too-much-to-correct' | 'cannot-tell'>().not.toBeNever();
    // @ts-expect-error a flag is true or false
    expectTypeOf(correctFreeAlkali).toBeCallableWith({ ...pot, measured: test, triethanolamine: 'yes' });
    const { freeCausticAlkali, standardUncertainty } = test;
    // @ts-expect-error no such field
    correctFreeAlkali({ ...pot, measured: { freeCausticAlkali, standardUncertainty, readings: 2 } });
  }); // prettier-ignore

  it('to the plan: an assay, a certificate', () => {
    const { range } = alkaliAssayFromTwoIndicators({ alkali: 'naoh', sample: { g: '1.5' }, titrant: { eqPerL: 1 }, phenolphthalein: { mL: '36.6' }, methylOrange: { mL: '0.2' } }); // prettier-ignore
    const { saponificationValue } = saponificationValueFromTitration({ sample: { g: 2 }, titrant: { eqPerL: '0.5' }, blank: { mL: '24.6' }, volume: { mL: '6.35' } }); // prettier-ignore
    const lot = fatFromCertificate({ name: 'lot', kind: 'triglyceride', saponificationValue });
    planLye({
      fats: [{ fat: lot, mass: { g: 900 } }],
      alkali: { naoh: { solid: { hydroxide: range } } },
      target: { superfat: { percent: 3 } },
      dilution: { waterPerAlkali: 2 },
    });
  });
});

describe('a pH', () => {
  it('has its unit, and a dilution or a wet bar', () => {
    const reading = { reading: { pH: 10 }, error: { pH: '0.5' }, temperature: { celsius: 25 } } as const;
    expectTypeOf(freeAlkaliBehindPh({ ...reading, on: 'wet-bar' }).atMost).toEqualTypeOf<AlkaliContent | undefined>();
    // @ts-expect-error soap without what it was made up to
    expectTypeOf(freeAlkaliBehindPh).toBeCallableWith({ ...reading, on: { soap: { g: 1 } } });
  });
});
