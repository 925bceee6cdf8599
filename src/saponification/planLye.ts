import { gramsOf, notesOfFats, readFatCharges, type ChargedFatInput } from '../fats/index.js';
import { hydroxideMolarMass, type Alkali } from '../lye/index.js';
import { Decimal, frozen, readShape, type Remark, type Steps } from '../numbers/index.js';
import {
  mapEnds,
  readOptionalMass,
  type Amount,
  type Estimate,
  type Fraction,
  type Mass,
  type MassInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import {
  readAlkaliChoice,
  type AlkaliChoice,
  type ChosenAlkali,
  type Exact,
  type GivenAlkali,
} from './alkaliChoice.js';
import { basisOfFats, givenFats, notesOfLye, type ChargedFat } from './assumptions.js';
import { balanceOf, hydroxideCharged, type Balance } from './balance.js';
import { batchOf, type BatchMass } from './batch.js';
import { demandOf, type Demand } from './demand.js';
import { readDilution, strengthAsked, type Dilution, type GivenDilution } from './dilution.js';
import { potCautions } from './potCautions.js';
import { hydroxideFor, readTarget, type GivenTarget, type LyeTarget } from './target.js';
import { strengthOf, weighedLye, type LyeMakeUp, type WeighedLye } from './weighedLye.js';

/** Input of {@link planLye}, the choice of alkali apart. */
export interface PlanLyeBase {
  /** At least one fat with its mass. */
  readonly fats: readonly ChargedFatInput[];
  readonly target: LyeTarget;
  readonly dilution: Dilution;
  /** What the scale shows; alkali is rounded down to it, water to the nearest. Unrounded unless stated. */
  readonly scaleStep?: MassInput;
  /** Mass that free alkali is a share of; fats, lye and water unless stated. */
  readonly batchMass?: MassInput;
}

/** Input of {@link planLye}. */
export interface PlanLyeInput extends PlanLyeBase {
  readonly alkali: AlkaliChoice;
}

/** The lye of a plan: alkali and added water together. */
export interface PlannedLye {
  readonly mass: Mass;
  /** True hydroxide, share of the whole lye by mass. */
  readonly strength: Estimate<Fraction>;
}

/**
 * A plan; `weigh` has just the alkalis chosen, and the water. `LyePlan` by itself is what all plans share, so that every
 * plan fits it.
 */
export interface LyePlan<A extends Alkali = never> extends Balance {
  readonly by: 'planLye';
  /** The inputs as read. */
  readonly given: {
    readonly fats: readonly ChargedFat[];
    readonly alkali: GivenAlkali;
    readonly target: GivenTarget;
    readonly dilution: GivenDilution;
    readonly scaleStep?: Mass;
    readonly batchMass?: Mass;
  };
  /** What to weigh: each alkali as it stands in the store, and the water to add to it. */
  readonly weigh: { readonly [K in A | 'water']: Mass };
  /** Hydroxide charged at the likely assay. */
  readonly hydroxide: Amount;
  readonly lye: PlannedLye;
  /** Hydroxide that would split all of the fats. */
  readonly demand: Estimate<Amount>;
  /** What free alkali is a share of. */
  readonly batch: BatchMass;
  /** What was assumed of fats and alkali. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/** The plan for a choice of alkali; of a union of choices, a union of plans. */
export type PlanFor<A> = A extends unknown ? LyePlan<ChosenAlkali<A>> : never;

/**
 * The lye for a charge of fats: what to weigh, and what lots and assays do to it.
 *
 * Formula: `n = Σ m·SV/(1000·M(KOH))` for the likely lots, `A = n·(1 − s)`, each alkali `A·share·M/w`, with m the masses
 * (g), SV the saponification values (mg KOH/g), s the superfat (fraction), w the likely hydroxide by mass. One amount is
 * weighed; superfat and free caustic alkali are then worked out, from the masses as rounded, for the leanest lot of
 * every fat with the highest assay, and for the richest with the lowest. Water by strength: `m(pure)/strength − m`.
 *
 * Free alkali is after complete reaction; nothing left on paper still wants a test. Carbonate is not counted. Partial
 * glycerides are left out.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021; the values' own sources in `basis`.
 *
 * @param input - fats and masses; alkali by assay (solid) or strength (solution), by mass; target; dilution
 * @returns grams to weigh; percent by alkali and by mass of fat; percent NaOH of the batch; cautions
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range`, `infeasible` (a strength above the
 *   alkali's own, a solid without water, a scale step coarser than the alkali) and the faults of a fat or quantity
 *
 * @example
 * ```ts
 * const plan = planLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
 *   alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
 *   target: { superfat: { percent: 2 } },
 *   dilution: { strength: { percent: 33 } },
 *   scaleStep: { g: 1 },
 * });
 * [plan.weigh.naoh.g, plan.weigh.water.g]; // => ['246', '127']
 * plan.superfat.low.percent.toFixed(1); // => '0.6'
 * ```
 */
export function planLye<const A extends AlkaliChoice>(
  input: PlanLyeBase & { readonly alkali: A } & { readonly alkali: Exact<A, AlkaliChoice> },
): PlanFor<A> {
  // what is weighed has the keys of the alkalis read, which are those of A
  return planLyeSteps(input) as PlanFor<A>;
}

const KEYS = ['fats', 'alkali', 'target', 'dilution', 'scaleStep', 'batchMass'];

/** The kernel, with room for the working. */
export function planLyeSteps(input: PlanLyeInput, steps?: Steps): LyePlan {
  const fields = readShape('input', input, KEYS);
  const charges = readFatCharges('fats', fields['fats']);
  const { alkalis, given: alkali } = readAlkaliChoice('alkali', fields['alkali']);
  const target = readTarget('target', fields['target']);
  const dilution = readDilution('dilution', fields['dilution']);
  const scaleStep = readOptionalMass('scaleStep', fields['scaleStep'], { above: 0 });
  const fatGrams = gramsOf(charges);
  const batchMass = readOptionalMass('batchMass', fields['batchMass'], { min: fatGrams });
  const makeUp = { alkalis, dilution, fatGrams, scaleStep };

  const demand = demandOf(charges, steps);
  const aim = hydroxideFor(target, demand, makeUp, batchMass, steps);
  const weighed = weighedLye(roundable(aim, target, demand, makeUp, batchMass), makeUp, steps);
  const batch = batchOf(batchMass, makeUp.fatGrams.plus(weighed.grams));
  const balance = balanceOf(demand, hydroxideCharged(weighed.lye), makeUp.fatGrams, batch.mass.g, steps);
  const strength = strengthOf(weighed);
  return frozen({
    by: 'planLye',
    given: frozen({
      fats: givenFats(charges),
      alkali,
      target,
      dilution,
      ...(scaleStep === undefined ? {} : { scaleStep: frozen({ g: scaleStep }) }),
      ...(batchMass === undefined ? {} : { batchMass: batch.mass }),
    }),
    weigh: weigh(weighed),
    hydroxide: balance.charged.likely,
    lye: frozen({ mass: frozen({ g: weighed.grams }), strength }),
    demand: mapEnds(demand, ({ hydroxide }) => frozen({ mol: hydroxide })),
    ...balance,
    batch,
    notes: frozen([...notesOfFats(charges), ...notesOfLye(weighed.lye)]),
    cautions: potCautions(charges, weighed.lye, balance, {
      addsWater: weighed.water.gt(0),
      strength,
      asked: {
        superfat: target.superfat?.percent,
        strength: strengthAsked(dilution),
        kohShare: alkali.kohShare?.percent,
      },
    }),
    basis: frozen<readonly SourceId[]>([...basisOfFats(charges), 'ghs-naoh']),
    edition: EDITION,
  });
}

/**
 * Hydroxide whose masses, once rounded, still keep a limit: rounding the water down makes the batch lighter and lifts its
 * content of caustic. Then the alkali goes down by a step of the scale.
 */
function roundable(
  aim: Decimal,
  target: GivenTarget,
  demand: Estimate<Demand>,
  makeUp: LyeMakeUp,
  batchMass: Decimal | undefined,
): Decimal {
  const { scaleStep, alkalis, fatGrams } = makeUp;
  if (target.superfat !== undefined || scaleStep === undefined) return aim;
  const limit = target.freeCausticAlkaliAtMost.percentNaoh;
  const step = Decimal.min(
    ...alkalis.map(({ alkali, source }) => scaleStep.times(source.hydroxide.likely).div(hydroxideMolarMass(alkali))),
  );
  let hydroxide = aim;
  for (;;) {
    const { lye, grams } = weighedLye(hydroxide, makeUp);
    const batch = batchOf(batchMass, fatGrams.plus(grams)).mass.g;
    const { freeCausticAlkali } = balanceOf(demand, hydroxideCharged(lye), fatGrams, batch);
    if (freeCausticAlkali.high.percentNaoh.lte(limit)) return hydroxide;
    hydroxide = hydroxide.minus(step);
  }
}

function weigh({ lye, water }: WeighedLye): LyePlan['weigh'] {
  const masses = lye.map(({ alkali, grams }) => [alkali, frozen({ g: grams })] as const);
  return frozen({ ...Object.fromEntries(masses), water: frozen({ g: water }) });
}
