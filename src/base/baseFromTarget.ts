import type { Composition, GivenAddition } from '../composition/index.js';
import type { Alkali } from '../lye/index.js';
import { Decimal, frozen, noted, ZERO, type Remark, type Steps } from '../numbers/index.js';
import type { Estimate, Fraction, FractionInput, Mass, MassInput, Ranged } from '../quantities/index.js';
import type { AlkaliChoice, ChargedFat, ChosenAlkali, Exact } from '../saponification/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import type { BlendedFatInput } from './blend.js';
import { sharesOf, type BaseShares, type BaseSupplies, type BaseTarget } from './target.js';
import { checkClosing, checkFeasible } from './infeasible.js';
import { readBaseProblem, type GivenBase } from './readProblem.js';
import { gramsOf, madeOf, remainderOf, solvedBase, type BaseProblem, type SolvedBase } from './solved.js';
import { cautionsOfBase, notesOfBase, weighedBase } from './weighed.js';

/** Input of {@link baseFromTarget}, the choice of alkali apart. */
export interface BaseFromTargetBase {
  /** At least one fat with its share; together 100 percent. */
  readonly fats: readonly BlendedFatInput[];
  /** Share of the likely alkali demand that is left out; 0 to less than 100 percent. */
  readonly superfat: FractionInput;
  /** The finished base, after what evaporates; 1 g to a thousand tonnes. */
  readonly batchMass: MassInput;
  /** Shares of the finished base. Of soap, water and all that has a supply, one may be left out and makes up the rest. */
  readonly target: BaseTarget;
  /** What each component is weighed from, soap and water apart. */
  readonly supplies: BaseSupplies;
  /** Loss that is expected, of water unless there is spirit; none unless stated. */
  readonly evaporated?: MassInput;
  /** Spirit in that loss, share by mass; to be stated where there is spirit. */
  readonly spiritShareOfLoss?: Ranged<FractionInput>;
}

/** Input of {@link baseFromTarget}. */
export interface BaseFromTargetInput extends BaseFromTargetBase {
  readonly alkali: AlkaliChoice;
}

/** What to weigh for a base. `BaseWeights` by itself is what all have in common. */
export type BaseWeights<A extends Alkali = never> = { readonly [K in A | 'water']: Mass } & {
  readonly fats: readonly ChargedFat[];
  /** Each as it is bought. */
  readonly additions: readonly GivenAddition[];
};

/** A base worked out from its target; `weigh` has just the alkalis chosen. */
export interface BasePlan<A extends Alkali = never> {
  readonly by: 'baseFromTarget';
  /** The inputs as read; assays by mass. */
  readonly given: GivenBase;
  /** What to weigh: unrounded; alkali and additions as they stand in the store, and the water that they do not bring. */
  readonly weigh: BaseWeights<A>;
  /** The target with what was left out worked out; together with `remainder` 100 percent. */
  readonly shares: BaseShares;
  /** What the base holds that the target does not name: superfat, unsaponifiable matter, carbonate and the like. */
  readonly remainder: { readonly mass: Mass; readonly share: Fraction };
  /** Alkali demand left unmet over all lots and assays; negative is alkali in excess. */
  readonly superfat: Estimate<Fraction>;
  /** What these weights make, with the bounds of all lots and assays. */
  readonly composition: Composition;
  /** What was assumed. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/** The plan of a base for a choice of alkali; of a union of choices, a union of plans. */
export type BasePlanFor<A> = A extends unknown ? BasePlan<ChosenAlkali<A>> : never;

/**
 * What to weigh for a base of a given composition: fats, lye, water, and each addition as it is bought.
 *
 * Formula, masses in g, shares as fractions of the finished base B: soap made is proportional to the fats, so that
 * `m(fats) = B·w(soap)/s`, with s the soap that one gram of the blend and its lye make; of each component k the fats and
 * lye bring `pₖ` to a gram, and `mₖ = (B·wₖ + lostₖ − pₖ·m(fats))/assayₖ` is weighed; the water to add is
 * `B·w(water) + lost − p(water)·m(fats) − Σ mₖ·(1 − assayₖ)`. What is left out makes up the rest, less what the target
 * does not name (`remainder`), which goes with the fats.
 *
 * `compositionFrom` of the answer is the target at the likely lots and assays; where all shares are given and miss 100 by
 * no more than 0.00005 percent, water takes the difference. Shares at the ends of lots and assays are in `composition`.
 * Weights are unrounded; `planBatch` rounds. Left out: all that `compositionFrom` leaves out.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021; the values' own sources in `basis`.
 *
 * @param input - the blend, alkali and superfat; mass and shares of the finished base; what is bought; the loss expected
 * @returns grams to weigh, the shares, and the whole composition; cautions
 * @throws CalculationError `infeasible` (more water, glycerol or shares than there is room for; the bound and the nearest
 *   feasible figure are named), `missing` (a supply, more than one share, the spirit in a loss), `bad-shape`, `unknown-key`,
 *   `out-of-range` and the faults of a fat, source or quantity
 *
 * @example
 * ```ts
 * const { weigh, shares } = baseFromTarget({
 *   fats: [{ fat: fat('coconut-oil'), share: { percent: 100 } }],
 *   alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
 *   superfat: { percent: 1 },
 *   batchMass: { kg: 3 },
 *   target: { soap: { percent: 40 }, glycerol: { percent: 15 }, propyleneGlycol: { percent: 12 }, sorbitol: { percent: 12 } },
 *   supplies: {
 *     glycerol: { assay: { percent: '99.5' } },
 *     propyleneGlycol: { assay: { percent: '99.5' } },
 *     sorbitol: { assay: { percent: 70 } },
 *   },
 * });
 * weigh.naoh.g.toFixed(0); // => '417'
 * shares.water?.percent.toFixed(1); // => '20.3'
 * ```
 */
export function baseFromTarget<const A extends AlkaliChoice>(
  input: BaseFromTargetBase & { readonly alkali: A } & { readonly alkali: Exact<A, AlkaliChoice> },
): BasePlanFor<A> {
  // what is weighed has the keys of the alkalis read, which are those of A
  return baseFromTargetSteps(input) as BasePlanFor<A>;
}

/** The kernel, with room for the working. */
export function baseFromTargetSteps(input: BaseFromTargetInput, steps?: Steps): BasePlan {
  const { problem, closing, loss, given } = readBaseProblem(input);
  const solved = solvedBase(problem);
  checkFeasible(problem, solved);
  if (closing !== undefined) checkClosing(problem, solved, closing);
  if (steps !== undefined) noteSolution(problem, solved, steps);

  const made = weighedBase(problem, solved, loss, steps);
  const percentOf = (grams: Decimal): Decimal => grams.times(100).div(problem.batch);
  const { weigh, soap, composition } = made;
  const remainder = remainderOf(solved);
  return frozen({
    by: 'baseFromTarget',
    given,
    weigh,
    shares: sharesOf(new Map([...solved.held].map(([name, grams]) => [name, percentOf(Decimal.max(grams, ZERO))]))),
    remainder: frozen({
      mass: frozen({ g: remainder }),
      share: frozen({ percent: percentOf(remainder) }),
    }),
    superfat: soap.superfat,
    composition,
    notes: notesOfBase(problem, solved, made),
    cautions: cautionsOfBase(problem.blend, solved, made),
    basis: composition.basis,
    edition: EDITION,
  });
}

function noteSolution({ blend, batch, leftOut }: BaseProblem, solved: SolvedBase, steps: Steps): void {
  noted(steps, 'soap to one gram of fats', 's', 'g', madeOf(blend, 'soap'));
  noted(steps, 'glycerol formed to one gram of fats', 'p(glycerol)', 'g', madeOf(blend, 'glycerol'));
  noted(steps, 'water of the lye to one gram of fats', 'Σ m·(1 − w)', 'g', blend.lyeWater);
  noted(steps, 'fats', 'm(fats) = B·w(soap)/s', 'g', solved.fats);
  noted(steps, 'what the target does not name', 'what fats, lye and additions bring besides', 'g', solved.remainder);
  const rest = gramsOf(solved.held, leftOut).times(100).div(batch);
  noted(steps, `${leftOut}, which makes up the rest`, '100 − Σ w − remainder', 'percent', rest);
}
