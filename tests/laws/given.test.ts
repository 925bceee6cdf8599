/** `given` is the inputs as read: run again, also after JSON, it gives the same result to the last digit. */
import fc from 'fast-check';
import { planLye, superfatFromLye, toJson, valueIn, type Quantity } from 'laurate';
import { describe, expect, it } from 'vitest';
import { asFat, asLye, charges, lots } from '../saponification/model.js';
import { textOf, throughJson } from './exact.js';
import { examples, objectsIn, results } from './examples.js';

interface Explained {
  readonly by: string;
  readonly given: Readonly<Record<string, unknown>>;
}
const isExplained = (result: unknown): result is Explained =>
  typeof result === 'object' && result !== null && 'by' in result;
const explained = results.flatMap(([, result]) => (isExplained(result) ? [[result.by, result] as const] : []));

/** The function that made a result, run on what is given. */
function again({ by, given }: Explained): unknown {
  const run = examples.find(({ name }) => name === by)?.run;
  // two functions take what is given apart: one its fats as they are, one the options beside the recipe
  if (by === 'alkaliDemandOf') return run?.(given['fats']);
  return by === 'planBatch' ? run?.(given['recipe'], given['options']) : run?.(given);
}

describe.each(explained)('%s, run again on what was given', (_by, result) => {
  it('gives the same result', () => {
    expect(textOf(again(result))).toBe(textOf(result));
  });

  it('gives the same result after JSON', () => {
    expect(textOf(again(throughJson(result) as Explained))).toBe(textOf(result));
  });
});

it('results with `by` and `given` are those of these functions', () => {
  expect([...new Set(explained.map(([by]) => by))].sort()).toEqual([
    'acidValueFromTitration',
    'acidityFromTitration',
    'alkaliAssayFromBariumChloride',
    'alkaliAssayFromTwoIndicators',
    'alkaliContentOf',
    'alkaliDemandOf',
    'batchVolumeOf',
    'compositionFrom',
    'correctFreeAlkali',
    'correctSuperfat',
    'dilutedLye',
    'esterValueFromTitrations',
    'freeAlkaliBehindPh',
    'freeCausticAlkaliFromTitration',
    'hydroxideFromOxideGrade',
    'iodineValueFromProfile',
    'judgeFreeAlkali',
    'kohFromNaoh',
    'kohShareFromMassShare',
    'lyeDensity',
    'lyeFreezingPoint',
    'lyeStrengthFromDensity',
    'lyeStrengthFromMixing',
    'lyeStrengthFromTitration',
    'lyeTemperatureFromDissolving',
    'mixtureDensity',
    'naohFromKoh',
    'placeAmongPublished',
    'planBatch',
    'planLye',
    'ratiosOf',
    'saponificationValueFromProfile',
    'saponificationValueFromTitration',
    'soapFromLye',
    'soapSolutionPhFrom',
    'soapStateFromTest',
    'solventDensity',
    'spiritStrengthFromVolume',
    'superfatFromLye',
    'titrantFromStandard',
    'totalFattyMatterOf',
    'totalFreeAlkaliFromTitration',
  ]);
});

describe('laws', () => {
  it('whatever fats and lye, what is given gives the same result', () => {
    fc.assert(
      fc.property(lots, charges, fc.integer({ min: 0, max: 99 }), (some, lye, percent) => {
        const fats = some.map((one) => asFat(one));
        const charged = superfatFromLye({ fats, lye: lye.map(asLye) });
        expect(textOf(superfatFromLye(throughJson(charged.given) as never))).toBe(textOf(charged));
        const plan = planLye({
          fats,
          alkali: { naoh: { solid: { hydroxide: { percent: 98 } } } },
          target: { superfat: { percent } },
          dilution: { strength: { percent: 30 } },
        });
        expect(textOf(planLye(throughJson(plan.given) as never))).toBe(textOf(plan));
      }),
    );
  });

  it('also of figures with as many digits as a text may have', () => {
    const digits = '3'.repeat(63);
    const plan = (g: string) =>
      planLye({ fats: [{ fat: asFat({ kind: 'triglyceride', grams: 1, low: 1900, high: 1900, acid: 0 }).fat, mass: { g } }], alkali: { naoh: { solid: { hydroxide: { percent: 98 } } } }, target: { superfat: { percent: 5 } }, dilution: { waterPerAlkali: 2 } });
    for (const g of [`.${digits}`, digits.slice(0, 12), `0.000001${digits.slice(0, 56)}`, `${digits.slice(0, 58)}e-47`]) {
      const once = plan(g);
      expect(textOf(planLye(throughJson(once.given) as never))).toBe(textOf(once));
    }
  }); // prettier-ignore

  it.each(['1e-24', '1e-20', '1', '1e12'])('also of %s g of fat, and every figure is accepted as input again', (g) => {
    const { fat } = asFat({ kind: 'triglyceride', grams: 1, low: 1900, high: 2000, acid: 0 });
    const plan = planLye({ fats: [{ fat, mass: { g } }, { fat, mass: { g } }], alkali: { naoh: { solid: { hydroxide: { percent: 98 } } } }, target: { superfat: { percent: 1 } }, dilution: { waterPerAlkali: 2 } });
    expect(textOf(plan)).not.toMatch(/NaN|Infinity/);
    expect(textOf(planLye(throughJson(plan.given) as never))).toBe(textOf(plan));
    for (const [path, object] of objectsIn(toJson(plan.weigh)).concat(objectsIn(toJson(plan.hydroxide)), objectsIn(toJson(plan.batch.mass)))) {
      const [key, ...others] = Object.keys(object);
      if (others.length > 0 || (key !== 'g' && key !== 'mol')) continue;
      expect([path, valueIn(object as Quantity, key as never).toString()]).toEqual([path, Object.values(object)[0]]);
    }
  }); // prettier-ignore
});
