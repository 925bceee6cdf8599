import { compositionFromSteps, type Composition, type GivenAddition, type GivenLoss } from '../composition/index.js';
import { frozen, noted, type Decimal, type Remark, type Steps } from '../numbers/index.js';
import type { Mass } from '../quantities/index.js';
import {
  potCautions,
  soapFromLyeSteps,
  strengthOf,
  type ChargedFat,
  type SoapFromLyeResult,
} from '../saponification/index.js';
import { weighable, type BaseBlend } from './blend.js';
import { GLYCEROL_AS_FORMED, REMAINDER_FOLLOWS_FATS, SOLVED_FOR_LIKELY, UNROUNDED, WATER_TO_ADD } from './notes.js';
import { gramsOf, remainderOf, type BaseProblem, type SolvedBase } from './solved.js';

/** What to weigh for a base, and what that makes. */
export interface WeighedBase {
  readonly weigh: {
    readonly fats: readonly ChargedFat[];
    readonly additions: readonly GivenAddition[];
    readonly water: Mass;
  };
  readonly soap: SoapFromLyeResult;
  readonly composition: Composition;
}

const mass = (grams: Decimal): Mass => frozen({ g: weighable(grams) });

/** The weights of a solution, and their composition worked through from the start. */
export function weighedBase(
  { blend, supplies }: BaseProblem,
  solved: SolvedBase,
  loss: GivenLoss,
  steps?: Steps,
): WeighedBase {
  const fats = blend.fats.map(({ fat, grams }) => frozen({ fat, mass: mass(solved.fats.times(grams)) }));
  for (const {
    fat,
    mass: { g },
  } of fats)
    noted(steps, `${fat.name} to weigh`, 'm(fats)·share', 'g', g);
  const lye = blend.lye.map(({ alkali, grams, source }) => ({
    alkali,
    mass: mass(noted(steps, `${alkali} to weigh`, 'm(fats)·m(lye) to one gram', 'g', solved.fats.times(grams))),
    ...source.given,
  }));
  const additions = [...supplies].map(([name, { given }]) => {
    const grams = noted(
      steps,
      `${name} to weigh`,
      '(B·w + lost − p·m(fats))/assay',
      'g',
      gramsOf(solved.weighed, name),
    );
    return frozen({ ...given, mass: mass(grams) });
  });
  const water = mass(noted(steps, 'water to add', 'B·w + lost − p·m(fats) − Σ m·(1 − assay)', 'g', solved.water));
  const soap = soapFromLyeSteps({ fats, lye, water });
  const composition = compositionFromSteps({ soap, additions, ...loss }, steps);
  const alkalis = Object.fromEntries(lye.map(({ alkali, mass: weighed }) => [alkali, weighed]));
  return { weigh: frozen({ fats: frozen(fats), ...alkalis, water, additions: frozen(additions) }), soap, composition };
}

/** What was assumed, of the composition and of the target. */
export function notesOfBase(
  { shares, leftOut, blend }: BaseProblem,
  solved: SolvedBase,
  { composition }: WeighedBase,
): readonly Remark[] {
  const hasGlycerol = shares.has('glycerol') || leftOut === 'glycerol';
  return frozen([
    ...composition.notes,
    SOLVED_FOR_LIKELY,
    WATER_TO_ADD,
    ...(remainderOf(solved).isZero() ? [] : [REMAINDER_FOLLOWS_FATS]),
    ...(hasGlycerol || blend.made.glycerol.isZero() ? [] : [GLYCEROL_AS_FORMED]),
    UNROUNDED,
  ]);
}

/** The cautions of making the lye, of the pot, and of what is added. */
export function cautionsOfBase(
  { lye, fats }: BaseBlend,
  solved: SolvedBase,
  { soap, composition }: WeighedBase,
): readonly Remark[] {
  const ofAdditions = composition.cautions.filter((remark) => !soap.cautions.includes(remark));
  const weighed = lye.map((one) => ({ ...one, grams: one.grams.times(solved.fats) }));
  const strength = strengthOf({
    lye: weighed,
    grams: weighed.reduce((sum, { grams }) => sum.plus(grams), solved.water),
  });
  return potCautions(fats, lye, soap, { addsWater: solved.water.gt(0), strength }, ofAdditions);
}
