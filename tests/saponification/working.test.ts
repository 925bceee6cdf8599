/** The working of a plan alone is enough to work the plan out again by hand, and tells what each value rests on. */
import { fat, fatFromCertificate, fatFromProfile, fats, planLye, type SingleFat } from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { Exact } from '../laws/exact.js';

const planned = (...charged: readonly SingleFat[]) =>
  workingOf(
    planLye({
      fats: charged.map((one) => ({ fat: one, mass: { g: 500 } })),
      alkali: { naoh: { solid: { hydroxide: { percent: 98 } } } },
      target: { superfat: { percent: 5 } },
      dilution: { waterPerAlkali: 2 },
    }),
  );

describe('the working of a plan', () => {
  it('holds every figure that the lye is worked out from', () => {
    const steps = planned(fat('coconut-oil'), fat('castor-oil'));
    const value = (figure: string): InstanceType<typeof Exact> => {
      const [found, second] = steps.filter((step) => step.figure === figure);
      expect(second).toBeUndefined();
      return new Exact(String(found?.value));
    };
    const mol = ['Coconut oil', 'Castor oil']
      .map((name) => value(`mass of ${name}`).times(value(`saponification value of ${name}, likely`)))
      .reduce((sum, one) => sum.plus(one))
      .div(value('molar mass of KOH').times(1000));
    const naoh = mol.times('0.95').times(value('molar mass of NaOH')).div('0.98');
    expect(naoh.toFixed(20)).toBe(value('naoh as it stands in the store').toFixed(20));
    expect([value('molar mass of KOH').toString(), value('molar mass of NaOH').toString()]).toEqual([
      '56.105',
      '39.997',
    ]);
  });

  const certified = fatFromCertificate({ name: 'Lot', kind: 'triglyceride', saponificationValue: { mgKohPerG: 256 } });
  const own = fatFromProfile({ name: 'Own', kind: 'triglyceride', profile: { 'C16:0': 60, 'C18:0': 40 } });
  const limits = ['lowest published limit', 'highest published limit'];
  const spread = '7 % about the likely value, or the bounds of the profile where wider; convention';
  it.each<[SingleFat, string, readonly string[]]>([
    [certified, 'as certified', ['as certified', 'as certified']],
    // a profile, and unsaponifiable matter of at most 1.5 %
    [fat('coconut-oil'), 'likely profile less half the maximum unsaponifiable matter; convention', limits],
    [fat('stearic-acid-50'), 'likely profile', limits],
    [fat('lanolin'), 'middle of the published range', limits],
    [fat('rosin-ww'), 'as observed', [spread, spread]],
    [own, 'likely profile', [spread, spread]],
  ])('$name: $1', (of, likely, ends) => {
    const steps = planned(of).filter(({ figure }) => figure.startsWith('saponification value of'));
    expect(steps.map(({ formula }) => formula)).toEqual([ends[0], likely, ends[1]]);
  });

  it('tells where the profile and the range disagree', () => {
    const disagreeing = fats
      .map(({ id }) => fat(id))
      .filter(({ notes }) => notes.some(({ code }) => code === 'profile-and-range-disagree'));
    expect(disagreeing.length).toBeGreaterThan(0);
    for (const one of disagreeing) {
      expect(planned(one).map(({ formula }) => formula)).toContain('the published limit nearest to the likely profile');
    }
  });
});
