/** The soft soap of a pharmacopoeia as a whole case: from its formula to what is to be done with a pot of it. */
import { correctFreeAlkali, fatFromCertificate, freeCausticAlkaliFromTitration, judgeFreeAlkali, soapStateFromTest, superfatFromLye, valueIn } from 'laurate'; // prettier-ignore
import { describe, expect, it } from 'vitest';

// United States Pharmacopeia 28, Green Soap, for 1000 g: 380 g of vegetable oil (none of coconut or palm kernel), 20 g of oleic
// acid, 91.7 g of potassium hydroxide of 85 % total alkali, 50 mL of glycerin, water to 1000 g. The oil at 190, oleic acid
// at 198.6 mg KOH/g.
const oil = fatFromCertificate({ name: 'oil', kind: 'triglyceride', saponificationValue: { mgKohPerG: 190 } });
const oleic = fatFromCertificate({
  name: 'oleic',
  kind: 'free-fatty-acid',
  saponificationValue: { mgKohPerG: '198.6' },
});
const fats = [
  { fat: oil, mass: { g: 380 } },
  { fat: oleic, mass: { g: 20 } },
] as const;
const batchMass = { g: 1000 } as const;
const all = [{ alkali: 'koh', mass: { g: '91.7' }, solid: { hydroxide: { percent: 85 } } }] as const;
const allowance = { totalAlkali: { percent: 85 }, carbonate: { percent: '3.5' } } as const;

describe('soft soap by the pharmacopoeia', () => {
  it('is 2.3 % over its demand if all of the 85 % is hydroxide, 1.1 % under it with the carbonate allowed', () => {
    const over = superfatFromLye({ fats, lye: all, batchMass });
    expect(over.superfat.likely.percent.toFixed(1)).toBe('-2.3'); // 77.945 g against 76.172 g of KOH
    const under = superfatFromLye({ fats, lye: [{ alkali: 'koh', mass: { g: '91.7' }, solid: allowance }], batchMass });
    expect(under.superfat.likely.percent.toFixed(1)).toBe('1.1'); // 82.158 %, 75.339 g
  });

  it('so that by the sums alone it keeps the recalled limit of 0.25 % KOH either way', () => {
    const { freeCausticAlkali } = superfatFromLye({ fats, lye: all, batchMass });
    expect(valueIn(freeCausticAlkali.likely, 'percentKoh').toFixed(3)).toBe('0.177'); // 1.773 g in 1000 g
    const standardUncertainty = { percentKoh: '0.005' };
    const measured = { freeCausticAlkali: freeCausticAlkali.likely, standardUncertainty };
    expect(judgeFreeAlkali({ measured, limit: 'soft-soap-usp' }).verdict).toBe('below');
    expect(judgeFreeAlkali({ measured, limit: 'toilet-soap-is-2888' }).verdict).toBe('above');
  });

  it('a pot of it tested too early is told from one with an excess', () => {
    const test = (mL: string) =>
      freeCausticAlkaliFromTitration({ sample: { g: 10 }, titrant: { eqPerL: '0.1' }, volume: { mL }, method: 'barium-chloride' });
    // 10 mL of 0.1 N on 10 g are 0.56 % KOH, three times what the charge leaves
    const early = soapStateFromTest({ fats, lye: all, batchMass, measured: test('10') });
    expect(early.state).toBe('still-reacting');
    expect(early.extent.high.percent.toFixed(1)).toBe('95.2'); // (1.38927 − 0.1 + 1.645·0.002145)/1.35768
    const late = soapStateFromTest({ fats, lye: all, batchMass, measured: test('3.2') });
    expect(late.state).toBe('cannot-tell');

    const charge = { batch: batchMass, alkali: 'koh', target: { percentKoh: '0.05' }, corrector: { fat: oleic } } as const;
    expect(correctFreeAlkali({ ...charge, measured: test('10') }).decision).toBe('heat-and-test-again');
    const mended = correctFreeAlkali({ ...charge, measured: test('3.2'), reactionComplete: { earlier: test('3.3'), apart: { hours: 1 } } });
    expect(mended.decision).toBe('add');
    // 0.17954 − 0.05 % of 1000 g over 198.6 mg KOH/g and what the batch grows by
    expect(mended.add.g.toFixed(2)).toBe('6.51');
    expect(valueIn(mended.leaves.likely, 'percentKoh').toFixed(6)).toBe('0.050000');
    expect(mended.leaves.low.percentNaoh.gt(0)).toBe(true);
  }); // prettier-ignore
});
