import { gramsOf, readFatCharges, type ChargedFatInput } from '../fats/index.js';
import { hydroxideMolarMass, type Alkali, type LyeCharge } from '../lye/index.js';
import {
  frozen,
  noted,
  ONE,
  readShape,
  refuse,
  toStep,
  ZERO,
  type Decimal,
  type Remark,
  type Steps,
} from '../numbers/index.js';
import {
  mapEnds,
  readMass,
  readPercent,
  type Amount,
  type Estimate,
  type Fraction,
  type FractionInput,
  type Mass,
  type MassInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { basisOfFats, givenFats, notesOfFats, type ChargedFat } from './alkaliDemandOf.js';
import {
  readAlkaliChoice,
  type AlkaliChoice,
  type ChosenAlkali,
  type Exact,
  type GivenAlkali,
  type PlannedAlkali,
} from './alkaliChoice.js';
import { atAssays, balanceOf, hydroxideCharged, type Balance } from './balance.js';
import { readBatch, type BatchMass } from './batch.js';
import { demandOf } from './demand.js';
import { addedWater, readDilution, type Dilution, type GivenDilution } from './dilution.js';
import { potCautions } from './potCautions.js';

/** What a plan aims at. */
export interface LyeTarget {
  /** Share of the likely alkali demand left out; 0 to less than 100 percent. */
  readonly superfat: FractionInput;
}

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
    readonly target: { readonly superfat: Fraction };
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
  /** What was assumed of the fats. */
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
  const superfat = readTarget(fields['target']);
  const dilution = readDilution('dilution', fields['dilution']);
  const scaleStep =
    fields['scaleStep'] === undefined ? undefined : readMass('scaleStep', fields['scaleStep'], { above: 0 });
  const fatGrams = gramsOf(charges);

  const demand = demandOf(charges, steps);
  const aim = noted(
    steps,
    'hydroxide to charge',
    'A = n·(1 − s)',
    'mol',
    demand.likely.hydroxide.times(ONE.minus(superfat.div(100))),
  );
  const lye = alkalis.map((one) => weighed(one, aim, scaleStep, steps));
  const water = weighedWater(dilution, lye, fatGrams, scaleStep, steps);

  const lyeGrams = lye.reduce((sum, { grams }) => sum.plus(grams), water);
  const batch = readBatch(fields['batchMass'], fatGrams.plus(lyeGrams), fatGrams);
  const charged = hydroxideCharged(lye);
  const balance = balanceOf(demand, charged, fatGrams, batch.mass.g, steps);
  const strength = strengthOf(lye, lyeGrams);
  return frozen({
    by: 'planLye',
    given: frozen({
      fats: givenFats(charges),
      alkali,
      target: frozen({ superfat: frozen({ percent: superfat }) }),
      dilution,
      ...(scaleStep === undefined ? {} : { scaleStep: frozen({ g: scaleStep }) }),
      ...(batch.is === 'as-stated' ? { batchMass: batch.mass } : {}),
    }),
    weigh: weigh(lye, water),
    hydroxide: frozen({ mol: charged.likely }),
    lye: frozen({ mass: frozen({ g: lyeGrams }), strength }),
    demand: mapEnds(demand, ({ hydroxide }) => frozen({ mol: hydroxide })),
    ...balance,
    batch,
    notes: frozen(notesOfFats(charges)),
    cautions: potCautions(charges, lye, balance, strength),
    basis: frozen<readonly SourceId[]>([...basisOfFats(charges), 'ghs-naoh']),
    edition: EDITION,
  });
}

function readTarget(value: unknown): Decimal {
  const { superfat } = readShape('target', value, ['superfat']);
  const percent = readPercent('target.superfat', superfat);
  return percent.eq(100) ? refuse('out-of-range', 'target.superfat', 'less than 100', '100') : percent;
}

/** One alkali in grams as it stands in the store, down to the scale's step: a scale must not add caustic. */
function weighed(
  { alkali, source, share }: PlannedAlkali,
  aim: Decimal,
  step: Decimal | undefined,
  steps?: Steps,
): LyeCharge {
  const exact = aim.times(share).times(hydroxideMolarMass(alkali)).div(source.hydroxide.likely);
  noted(steps, `${alkali} as it stands in the store`, 'm = A·share·M/w', 'g', exact);
  if (step === undefined) return { alkali, grams: exact, source };
  const grams = noted(
    steps,
    `${alkali} to weigh`,
    'rounded down to the step of the scale',
    'g',
    toStep(exact, step, 'down'),
  );
  if (grams.isZero()) refuse('infeasible', 'scaleStep', `a step of at most ${exact.toPrecision(3)} g`, step.toString());
  return { alkali, grams, source };
}

const pureGrams = (lye: readonly LyeCharge[], end: keyof Estimate<unknown>): Decimal =>
  lye.reduce((sum, { grams, source }) => sum.plus(grams.times(source.hydroxide[end])), ZERO);

function weighedWater(
  dilution: GivenDilution,
  lye: readonly LyeCharge[],
  fats: Decimal,
  step: Decimal | undefined,
  steps?: Steps,
): Decimal {
  const exact = addedWater(dilution, {
    alkali: lye.reduce((sum, { grams }) => sum.plus(grams), ZERO),
    hydroxide: pureGrams(lye, 'likely'),
    fats,
    hasSolid: lye.some(({ source }) => source.state === 'solid'),
  });
  const formula = dilution !== 'as-is' && 'strength' in dilution ? 'm(pure)/strength − m' : 'as stated';
  const water = step === undefined ? exact : toStep(exact, step, 'nearest');
  if (water.isZero() && lye.some(({ source }) => source.state === 'solid')) {
    refuse('infeasible', 'scaleStep', 'a step fine enough to weigh the water for solid alkali', String(step));
  }
  return noted(steps, 'water to add', formula, 'g', water);
}

function strengthOf(lye: readonly LyeCharge[], lyeGrams: Decimal): Estimate<Fraction> {
  return atAssays(lye, (end) => frozen({ percent: pureGrams(lye, end).times(100).div(lyeGrams) }));
}

function weigh(lye: readonly LyeCharge[], water: Decimal): LyePlan['weigh'] {
  const masses = lye.map(({ alkali, grams }) => [alkali, frozen({ g: grams })] as const);
  return frozen({ ...Object.fromEntries(masses), water: frozen({ g: water }) });
}
