import { hydroxideMolarMass, type LyeCharge } from '../lye/index.js';
import { frozen, noted, refuse, toStep, ZERO, Decimal, type Steps } from '../numbers/index.js';
import type { Estimate, Fraction } from '../quantities/index.js';
import type { PlannedAlkali } from './alkaliChoice.js';
import { atAssays } from './balance.js';
import { addedWater, type GivenDilution } from './dilution.js';

/** How a plan's lye is made up. */
export interface LyeMakeUp {
  readonly alkalis: readonly PlannedAlkali[];
  readonly dilution: GivenDilution;
  readonly fatGrams: Decimal;
  /** What the scale shows, in grams; unrounded without one. */
  readonly scaleStep: Decimal | undefined;
}

/** The lye as it is to be weighed. */
export interface WeighedLye {
  readonly lye: readonly LyeCharge[];
  readonly water: Decimal;
  /** Alkali and water together, grams. */
  readonly grams: Decimal;
}

/** The lye that brings so many moles of hydroxide: alkali down to the scale's step, water to the nearest. */
export function weighedLye(
  aim: Decimal,
  { alkalis, dilution, fatGrams, scaleStep }: LyeMakeUp,
  steps?: Steps,
): WeighedLye {
  const lye = alkalis.map((one) => weighedAlkali(one, aim, scaleStep, steps));
  const alkali = lye.reduce((sum, { grams }) => sum.plus(grams), ZERO);
  const exact = addedWater(dilution, {
    alkali,
    hydroxide: pureGrams(lye, 'likely'),
    fats: fatGrams,
    hasSolid: lye.some(({ source }) => source.state === 'solid'),
  });
  const formula = dilution !== 'as-is' && 'strength' in dilution ? 'm(pure)/strength − m' : 'as stated';
  const water = scaleStep === undefined ? exact : toStep(exact, scaleStep, 'nearest');
  if (water.isZero() && lye.some(({ source }) => source.state === 'solid')) {
    refuse('infeasible', 'scaleStep', 'a step fine enough to weigh the water for solid alkali', String(scaleStep));
  }
  noted(steps, 'water to add', formula, 'g', water);
  return { lye, water, grams: alkali.plus(water) };
}

/** One alkali in grams as it stands in the store: rounded down, because a scale must not add caustic. */
function weighedAlkali(
  { alkali, source, share }: PlannedAlkali,
  aim: Decimal,
  step: Decimal | undefined,
  steps?: Steps,
): LyeCharge {
  const exact = aim.times(share).times(hydroxideMolarMass(alkali)).div(source.hydroxide.likely);
  if (steps !== undefined)
    noted(steps, `hydroxide in ${alkali}, likely`, 'w, as stated', 'percent', source.hydroxide.likely.times(100));
  noted(steps, `${alkali} as it stands in the store`, 'm = A·share·M/w', 'g', exact);
  if (step === undefined) return { alkali, grams: exact, source };
  const grams = toStep(exact, step, 'down');
  noted(steps, `${alkali} to weigh`, 'rounded down to the step of the scale', 'g', grams);
  if (grams.isZero()) {
    const least = exact.toSignificantDigits(3, Decimal.ROUND_DOWN);
    refuse('infeasible', 'scaleStep', `a step of at most ${least.toString()} g`, step.toString());
  }
  return { alkali, grams, source };
}

function pureGrams(lye: readonly LyeCharge[], end: keyof Estimate<unknown>): Decimal {
  return lye.reduce((sum, { grams, source }) => sum.plus(grams.times(source.hydroxide[end])), ZERO);
}

/** True hydroxide, share of the whole lye by mass. */
export function strengthOf({ lye, grams }: Pick<WeighedLye, 'lye' | 'grams'>): Estimate<Fraction> {
  return atAssays(lye, (end) => frozen({ percent: pureGrams(lye, end).times(100).div(grams) }));
}
