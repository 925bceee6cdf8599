/** What holds of every audit, whatever the recipe. */
import fc from 'fast-check';
import { alkaliDemandOf, fat, fats as listings, planLye, toJson, valueIn, type PublishedFatId } from 'laurate';
import { auditRecipe } from 'laurate/audit';
import { describe, expect, it } from 'vitest';
import { Exact, KOH, NAOH } from '../laws/exact.js';

const ids = listings.map(({ id }) => id);

interface Row {
  readonly fat: PublishedFatId;
  /** Tenths of a gram. */
  readonly tenths: number;
  /** Where in the range of its lots the true one lies, thousandths. */
  readonly place: number;
}

const rows: fc.Arbitrary<readonly Row[]> = fc.uniqueArray(
  fc.record({
    fat: fc.constantFrom(...ids),
    tenths: fc.integer({ min: 500, max: 30_000 }),
    place: fc.integer({ min: 0, max: 1000 }),
  }),
  { minLength: 1, maxLength: 4, selector: (row) => row.fat },
);

const ofTenths = (tenths: number): string => new Exact(tenths).div(10).toFixed(1);

/** Moles of hydroxide that the true lots take up. */
function trueDemand(pot: readonly Row[]): Exact {
  return pot.reduce((sum, { fat: id, tenths, place }) => {
    const { low, high } = fat(id).saponificationValue;
    const [least, most] = [new Exact(low.mgKohPerG.toString()), new Exact(high.mgKohPerG.toString())];
    const value = least.plus(most.minus(least).times(place).div(1000));
    return sum.plus(value.times(tenths).div(10).div(KOH.times(1000)));
  }, new Exact(0));
}

const lye = fc.record({
  alkali: fc.constantFrom('naoh' as const, 'koh' as const),
  percent: fc.integer({ min: 20, max: 100 }),
  /** Superfat of the true lots, tenths of a percent. */
  superfat: fc.integer({ min: -300, max: 400 }),
  water: fc.integer({ min: 0, max: 20_000 }),
  /** Decimals that claims are printed with. */
  digits: fc.integer({ min: 0, max: 3 }),
});

type LyeOf = typeof lye extends fc.Arbitrary<infer T> ? T : never;

/** A recipe of which every claim is true of some lawful lots, printed with so many decimals, cut or rounded. */
function trueRecipe(pot: readonly Row[], made: LyeOf, isCut: boolean) {
  const { alkali, percent, superfat, water, digits } = made;
  const molar = alkali === 'naoh' ? NAOH : KOH;
  const mol = trueDemand(pot).times(new Exact(1000).minus(superfat)).div(1000);
  const grams = new Exact(mol.times(molar).div(percent).times(100).toFixed(1, Exact.ROUND_DOWN));
  const pure = grams.times(percent).div(100);
  const added = new Exact(water).div(10);
  const fatGrams = new Exact(pot.reduce((sum, { tenths }) => sum + tenths, 0)).div(10);
  const said = (figure: Exact): string => figure.toFixed(digits, isCut ? Exact.ROUND_DOWN : Exact.ROUND_HALF_UP);
  const whole = grams.plus(added);
  const trueSuperfat = new Exact(1).minus(pure.div(molar).div(trueDemand(pot))).times(100);
  return {
    version: 1,
    fats: pot.map(({ fat: id, tenths, place }) => {
      const { low, high } = fat(id).saponificationValue;
      const least = new Exact(low.mgKohPerG.toString());
      const value = new Exact(high.mgKohPerG.toString()).minus(least).times(place).div(1000).plus(least);
      return {
        fat: id,
        mass: { g: ofTenths(tenths) },
        claimed: {
          saponificationValue: { mgKohPerG: said(value) },
          share: { percent: said(new Exact(tenths).times(10).div(fatGrams)) },
        },
      };
    }),
    lye: [{ alkali, mass: { g: grams.toFixed(1) }, solid: { hydroxide: { percent } } }],
    water: { g: added.toFixed(1) },
    claimed: {
      superfat: { percent: said(trueSuperfat) },
      strength: { percent: said(pure.times(100).div(whole)) },
      waterPerFat: { percent: said(whole.minus(pure).times(100).div(fatGrams)) },
      kohShare: { percent: alkali === 'koh' ? '100' : '0' },
      total: { g: said(fatGrams.plus(whole)) },
    },
  };
}

describe('the law of an audit', () => {
  it('claims that are true of some lawful lots are never wrong', () => {
    fc.assert(
      fc.property(rows, lye, fc.boolean(), (pot, made, isCut) => {
        const { verdict, findings } = auditRecipe(trueRecipe(pot, made, isCut));
        expect(findings.filter(({ code }) => code.endsWith('-contradicted'))).toEqual([]);
        expect(verdict).not.toBe('wrong');
        expect(verdict).not.toBe('cannot-tell');
      }),
      { numRuns: 300 },
    );
  });

  it('it is dangerous if and only if the likely lots leave more free caustic than the limit', () => {
    fc.assert(
      fc.property(rows, lye, fc.integer({ min: 0, max: 200 }), (pot, made, limit) => {
        const recipe = trueRecipe(pot, made, false);
        const percentNaoh = new Exact(limit).div(100);
        const { verdict } = auditRecipe(recipe, { limit: { percentNaoh: percentNaoh.toString() } });
        const charge = pot.map((row) => ({ fat: fat(row.fat), mass: { g: ofTenths(row.tenths) } }));
        const { likely, low } = alkaliDemandOf(charge).hydroxide;
        const [weighed] = recipe.lye;
        const molar = made.alkali === 'naoh' ? NAOH : KOH;
        const charged = new Exact(weighed?.mass.g ?? 0).times(made.percent).div(100).div(molar);
        const batch = new Exact(weighed?.mass.g ?? 0)
          .plus(recipe.water.g)
          .plus(pot.reduce((sum, { tenths }) => sum + tenths, 0) / 10);
        const free = (demand: { toString: () => string }): Exact =>
          Exact.max(0, charged.minus(demand.toString())).times(NAOH).times(100).div(batch);
        expect(verdict === 'dangerous').toBe(free(likely.mol).gt(percentNaoh));
        if (verdict === 'sound') expect(free(low.mol).lte(percentNaoh)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('an assay left out never makes it worse than the lowest, nor better than the highest', () => {
    fc.assert(
      fc.property(rows, lye, (pot, made) => {
        const { fats, lye: weighed, water } = trueRecipe(pot, made, false);
        const bare = fats.map(({ fat: id, mass }) => ({ fat: id, mass }));
        const of = (solid: object) =>
          auditRecipe({
            version: 1,
            fats: bare,
            lye: weighed.map(({ alkali, mass }) => ({ alkali, mass, ...solid })),
            water,
          });
        const caustic = (solid: object): number => {
          const codes = of(solid).findings.map(({ code }) => code);
          if (codes.includes('free-caustic-above-limit')) return 3;
          if (codes.includes('free-caustic-above-limit-at-leanest-lot')) return 2;
          return codes.includes('free-caustic-hangs-on-assay') ? 1 : 0;
        };
        const at = (percent: number | string) => caustic({ solid: { hydroxide: { percent } } });
        const [lowest, highest] = made.alkali === 'naoh' ? [at(95), at('100.5')] : [at(82), at(100)];
        const unstated = caustic({});
        expect([unstated >= lowest, unstated <= highest]).toEqual([true, true]);
        if (lowest === 3) expect(unstated).toBe(3);
      }),
      { numRuns: 200 },
    );
  });
});

describe('what changes nothing', () => {
  const claiming = (pot: readonly Row[], made: LyeOf, claim: number) => {
    const recipe = trueRecipe(pot, made, false);
    return { ...recipe, claimed: { ...recipe.claimed, superfat: { percent: String(claim) } } };
  };

  it('ten times the masses, their text moved with them', () => {
    fc.assert(
      fc.property(rows, lye, fc.integer({ min: -5, max: 30 }), (pot, made, claim) => {
        // every mass with one decimal
        const recipe = claiming(pot, { ...made, digits: 1 }, claim);
        const tenfold = (value: unknown, key = ''): unknown => {
          if (key === 'g') return new Exact(String(value)).times(10).toFixed(0);
          if (Array.isArray(value)) return value.map((entry) => tenfold(entry));
          if (typeof value !== 'object' || value === null) return value;
          return Object.fromEntries(Object.entries(value).map(([name, field]) => [name, tenfold(field, name)]));
        };
        const [one, ten] = [auditRecipe(recipe), auditRecipe(tenfold(recipe))];
        expect(ten.verdict).toBe(one.verdict);
        expect(ten.findings.map(({ code }) => code)).toEqual(one.findings.map(({ code }) => code));
      }),
      { numRuns: 100 },
    );
  });

  it('the order of the rows', () => {
    fc.assert(
      fc.property(rows, lye, fc.integer({ min: -5, max: 30 }), (pot, made, claim) => {
        const recipe = claiming(pot, made, claim);
        const half = recipe.lye.map((row) => ({ ...row, mass: { g: '3.5' }, alkali: 'koh' as const }));
        const [one, other] = [
          auditRecipe({ ...recipe, lye: [...recipe.lye, ...half] }),
          auditRecipe({ ...recipe, fats: [...recipe.fats].reverse(), lye: [...half, ...recipe.lye] }),
        ];
        expect(other.verdict).toBe(one.verdict);
        expect(other.findings.map(({ code }) => code).sort()).toEqual(one.findings.map(({ code }) => code).sort());
        const superfat = (result: typeof one): string =>
          valueIn(result.implied?.superfat.low ?? { percent: 0 }, 'percent').toFixed(25);
        expect(superfat(other)).toBe(superfat(one));
      }),
      { numRuns: 100 },
    );
  });

  it('whether figures come as numbers or as text', () => {
    const recipe = (g: unknown, percent: unknown) => ({
      version: 1,
      fats: [{ fat: 'olive-oil', mass: { g } }],
      lye: [{ alkali: 'naoh', mass: { g: 130 }, solid: { hydroxide: { percent: 99 } } }],
      claimed: { superfat: { percent } },
    });
    expect(toJson(auditRecipe(recipe(900, 5)))).toEqual(toJson(auditRecipe(recipe('900', '5'))));
    expect(auditRecipe(recipe(900, '5.0')).verdict).toBe('dangerous');
  });
});

describe('a plan written down as a recipe', () => {
  it('is never wrong nor dangerous', () => {
    fc.assert(
      fc.property(
        rows,
        fc.integer({ min: 20, max: 80 }),
        fc.constantFrom('0.1', '1', '2'),
        fc.constantFrom(25, 33, 40, 49),
        fc.constantFrom({ naoh: { solid: { hydroxide: { percent: 98 } } } }, { koh: { solid: { hydroxide: { percent: 90 } } } }, { naoh: { solution: { hydroxide: { percent: 50 } } } }),
        (pot, tenths, step, percent, alkali) => {
          const charge = pot.map((row) => ({ fat: fat(row.fat), mass: { g: ofTenths(row.tenths) } }));
          const plan = planLye({
            fats: charge,
            alkali: alkali as { naoh: { solution: { hydroxide: { percent: number } } } },
            target: { superfat: { fraction: new Exact(tenths).div(1000).toString() } },
            dilution: { strength: { percent } },
            scaleStep: { g: step },
          });
          const weigh = plan.weigh as unknown as Readonly<Record<'naoh' | 'koh' | 'water', { readonly g: { toFixed: () => string } } | undefined>>;
          const [[name, source] = ['naoh', {}]] = Object.entries(alkali) as [string, object][];
          const { verdict, findings } = auditRecipe({
            version: 1,
            fats: pot.map((row) => ({ fat: row.fat, mass: { g: ofTenths(row.tenths) } })),
            lye: [{ alkali: name, mass: { g: weigh[name as 'naoh']?.g.toFixed() }, ...source }],
            water: { g: weigh.water?.g.toFixed() },
            claimed: {
              superfat: { percent: new Exact(plan.superfat.likely.percent.toString()).toFixed(1) },
              strength: { percent: new Exact(plan.lye.strength.likely.percent.toString()).toFixed(1) },
            },
          });
          expect(findings.filter(({ code }) => code.endsWith('-contradicted'))).toEqual([]);
          expect(['sound', 'doubtful']).toContain(verdict);
        },
      ),
      { numRuns: 300 },
    );
  }); // prettier-ignore
});
