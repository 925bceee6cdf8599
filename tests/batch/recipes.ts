/** Recipes to plan; their figures are invented. */
import fc from 'fast-check';
import { fatFromCertificate, fats as listings, type LyeTarget } from 'laurate';
import type { LyeToPlan, Recipe, RecipeAddition, RecipeToPlan } from 'laurate/recipe';

// Round values, so that sums can be made by hand: exact, without free acid in the oil, nothing unsaponifiable.
const oil = fatFromCertificate({
  name: 'Oil of the sums',
  kind: 'triglyceride',
  saponificationValue: { mgKohPerG: 256 },
});
const acid = fatFromCertificate({
  name: 'Acid of the sums',
  kind: 'free-fatty-acid',
  saponificationValue: { mgKohPerG: 200 },
});

/** A coconut and stearic base by the route without spirit, as a maker writes it down: how much lye is to be told. */
export const BASE = {
  version: 1,
  title: 'Base of the sums',
  fats: [
    { fat: 'oil', mass: { g: 800 } },
    { fat: 'acid', mass: { g: 200 } },
  ],
  lye: [{ alkali: 'naoh', solution: { hydroxide: { percent: 50 } } }],
  additions: [
    { solvent: 'glycerol', mass: { g: 300 }, assay: { percent: '99.5' } },
    { solvent: 'propylene-glycol', mass: { g: 300 }, assay: { percent: '99.5' } },
    { solvent: 'sorbitol', mass: { g: 400 }, assay: { percent: 70 } },
    { name: 'colour', mass: { g: 3 } },
  ],
  target: { superfat: { percent: 1 } },
} as const satisfies RecipeToPlan;

export const own = { oil, acid };

const tenths = (min: number, max: number): fc.Arbitrary<{ readonly g: string }> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((n) => ({ g: (n / 10).toFixed(1) }));

const percent = (min: number, max: number): fc.Arbitrary<{ readonly percent: string }> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((n) => ({ percent: (n / 10).toFixed(1) }));

const addition: fc.Arbitrary<RecipeAddition> = fc.oneof(
  fc.record({
    solvent: fc.constantFrom('glycerol' as const, 'propylene-glycol' as const, 'sorbitol' as const, 'sucrose' as const),
    mass: tenths(20, 400),
    assay: percent(60, 100),
  }),
  fc.record({ solvent: fc.constant('ethanol' as const), mass: tenths(20, 200), assay: percent(80, 99) }),
  fc.record({ name: fc.constantFrom('colour', 'scent'), mass: tenths(10, 20) }),
);

/** Published fats that take up alkali; between them one to four. */
const fatRows = fc.uniqueArray(
  fc.record({ fat: fc.constantFrom(...listings.map(({ id }) => id)), mass: tenths(100, 900) }),
  { minLength: 1, maxLength: 4, selector: ({ fat }) => fat },
);

const lyeToPlan: fc.Arbitrary<LyeToPlan> = fc.oneof(
  fc.record({
    alkali: fc.constantFrom('naoh' as const, 'koh' as const),
    solution: fc.record({ hydroxide: percent(30, 50) }),
  }),
  fc.record({
    alkali: fc.constantFrom('naoh' as const, 'koh' as const),
    solid: fc.record({ hydroxide: percent(85, 100) }),
  }),
);

/** Everything of a recipe but its lye. */
const rest = {
  version: fc.constant(1 as const),
  fats: fatRows,
  water: tenths(50, 300),
  additions: fc.array(addition, { maxLength: 4 }),
};

/** Any recipe that can be planned, whose lye leaves superfat or keeps a limit of free caustic. */
export const recipes: fc.Arbitrary<RecipeToPlan> = fc.record({
  ...rest,
  lye: lyeToPlan.map((lye) => [lye] as const),
  target: fc.oneof<fc.Arbitrary<LyeTarget>[]>(
    fc.record({ superfat: percent(0, 15) }),
    fc.constant({ freeCausticAlkaliAtMost: { percentNaoh: '0.04' } }),
  ),
});

/** Recipes with two alkalis, as much as is written. */
export const written: fc.Arbitrary<Recipe> = fc.record({
  ...rest,
  lye: fc.tuple(tenths(60, 200), tenths(60, 200)).map(([soda, potash]) => [
    { alkali: 'naoh' as const, mass: soda, solution: { hydroxide: { percent: 50 } } },
    { alkali: 'koh' as const, mass: potash, solid: { hydroxide: { low: { percent: 88 }, high: { percent: 92 } } } },
  ]),
});
