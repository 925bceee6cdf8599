import { hydroxideMolarMass, readLyeCharge, type Alkali, type AlkaliSource, type LyeCharge } from '../lye/index.js';
import { Decimal, frozen, noted, refuse, toStep, ZERO, type Steps } from '../numbers/index.js';
import type { ReadRecipe } from '../recipe/index.js';
import {
  planLyeSteps,
  strengthOf,
  type AlkaliChoice,
  type LyeTarget,
  type PlannedLye,
} from '../saponification/index.js';
import type { WeighedRecipe, WeighedRest, Weighing } from './weighing.js';

/** Alkali and water as they are weighed, in grams. */
type Lye = Pick<WeighedRecipe, 'lye' | 'water'>;

/** The lye as the recipe charges it, scaled; alkali down to the step of the scale, water to the nearest. */
export function lyeAsCharged(recipe: ReadRecipe, water: Decimal, { factor, scaleStep }: Weighing, steps?: Steps): Lye {
  const lye = recipe.lye.map((row, at) => {
    const path = `lye[${String(at)}]`;
    const charge = readLyeCharge(path, row);
    const exact = charge.grams.times(factor);
    const grams = scaleStep === undefined ? exact : toStep(exact, scaleStep, 'down');
    if (grams.isZero() && !exact.isZero()) {
      const expected = `at least the step of the scale, ${String(scaleStep)} g`;
      refuse('infeasible', `${path}.mass`, expected, exact.toPrecision(3));
    }
    noted(steps, `${charge.alkali} to weigh`, 'as charged, scaled, rounded down', 'g', grams);
    return { ...charge, grams };
  });
  return { lye, water: scaleStep === undefined ? water : toStep(water, scaleStep, 'nearest') };
}

/** The lye that the target asks for. */
export function lyeAsPlanned(
  recipe: ReadRecipe,
  target: LyeTarget,
  { fats, additions, water }: WeighedRest,
  { factor, scaleStep, evaporated }: Weighing,
  steps?: Steps,
): Lye {
  const sources = recipe.lye.map((row, at) => readLyeCharge(`lye[${String(at)}]`, row));
  if (water.isZero() && sources.some(({ source }) => source.state === 'solid')) {
    refuse(
      'missing',
      'water',
      'water of the lye, apart from any among the additions: solid alkali must be dissolved',
      undefined,
    );
  }
  const alkali = choiceOf(sources);
  const sum = (rows: readonly { readonly grams: Decimal }[]): Decimal =>
    rows.reduce((total, { grams }) => total.plus(grams), ZERO);
  const besides = sum(fats).plus(sum(additions)).plus(water).minus(evaporated.times(factor));
  const planned = (lyeGrams: Decimal, working?: Steps): Lye => {
    const { weigh }: { readonly weigh: { readonly [K in Alkali | 'water']?: { readonly g: Decimal } } } = planLyeSteps(
      {
        fats: fats.map(({ fat, grams }) => ({ fat, mass: { g: grams } })),
        alkali,
        target,
        dilution: { water: { g: water } },
        ...(scaleStep === undefined ? {} : { scaleStep: { g: scaleStep } }),
        // a loss that is greater than all water is refused where the pot is put together
        batchMass: { g: Decimal.max(besides.plus(lyeGrams), sum(fats)) },
      },
      working,
    );
    return {
      lye: sources.map((charge) => ({ ...charge, grams: weigh[charge.alkali]?.g ?? ZERO })),
      water: weigh.water?.g ?? ZERO,
    };
  };
  // A content of caustic is a share of a batch that the lye is part of. Reckoned without it the lye comes out a little
  // short; reckoned with that short lye it is still within the limit, and next to all that the limit allows.
  const short = target.superfat === undefined ? sum(planned(ZERO).lye) : ZERO;
  return planned(short, steps);
}

/** Mass of the lye, alkali and water together, and its strength. */
export function lyeOf({ lye, water }: Lye): PlannedLye {
  const grams = lye.reduce((total, one) => total.plus(one.grams), water);
  return frozen({ mass: frozen({ g: grams }), strength: strengthOf({ lye, grams }) });
}

/** The alkalis of a recipe as a plan takes them; two share the hydroxide as the recipe charges them. */
function choiceOf(charges: readonly LyeCharge[]): AlkaliChoice {
  const sources: { [K in Alkali]?: AlkaliSource } = {};
  const moles = { naoh: ZERO, koh: ZERO };
  for (const [at, { alkali, grams, source }] of charges.entries()) {
    if (sources[alkali] !== undefined) {
      refuse('bad-shape', `lye[${String(at)}]`, 'one row for each alkali where a target is planned for', alkali);
    }
    sources[alkali] = source.given;
    moles[alkali] = grams.times(source.hydroxide.likely).div(hydroxideMolarMass(alkali));
  }
  const { naoh, koh } = sources;
  if (naoh !== undefined && koh !== undefined) {
    const all = moles.naoh.plus(moles.koh);
    if (all.isZero()) refuse('out-of-range', 'lye', 'masses that set the share of each alkali', '0 g');
    return frozen({ naoh, koh, kohShare: { percent: moles.koh.times(100).div(all) } });
  }
  // there is at least one alkali
  return (naoh === undefined ? { koh } : { naoh }) as AlkaliChoice;
}
