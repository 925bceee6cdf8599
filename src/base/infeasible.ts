import { Decimal, refuse, toStep, ZERO } from '../numbers/index.js';
import type { BaseComponent } from './components.js';
import {
  brokenBounds,
  gramsOf,
  madeOf,
  MOST_LOSS,
  solvedBase,
  type BaseProblem,
  type Bound,
  type SolvedBase,
} from './solved.js';

/** Figures are named to so many decimals of a percent or a gram, towards the feasible side. */
const DECIMALS = 4;

/** A feasible figure nearest to one that is not. */
interface Nearest {
  readonly side: 'at least' | 'at most';
  readonly figure: Decimal;
}

const slacksOf = (problem: BaseProblem): ReadonlyMap<string, Decimal> =>
  new Map(solvedBase(problem).bounds.map(({ kind, of, slack }) => [`${kind} ${of}`, slack]));

const isFeasible = (problem: BaseProblem): boolean => brokenBounds(problem, solvedBase(problem)).length === 0;

/**
 * The feasible figure nearest to one of a problem, all else being as it is. Every bound is a straight line over it, so that two
 * points tell where it meets nothing.
 */
function nearest(from: Decimal, withFigure: (figure: Decimal) => BaseProblem): Nearest | undefined {
  const step = new Decimal(10).pow(-DECIMALS);
  const [here, beyond] = [slacksOf(withFigure(from)), slacksOf(withFigure(from.plus(1)))];
  let [low, high] = [from, from];
  for (const [bound, slack] of here) {
    const slope = gramsOf(beyond, bound).minus(slack);
    if (slope.isZero()) continue;
    const root = from.minus(slack.div(slope));
    if (slope.gt(0)) low = Decimal.max(low, root);
    else high = Decimal.min(high, root);
  }
  const found: Nearest | undefined = low.gt(from)
    ? { side: 'at least', figure: toStep(low, step, 'up') }
    : high.lt(from)
      ? { side: 'at most', figure: toStep(high, step, 'down') }
      : undefined;
  // bounds on both sides may leave nothing between them
  return found !== undefined && found.figure.gte(0) && isFeasible(withFigure(found.figure)) ? found : undefined;
}

/** The nearest feasible share of a component that is given. */
function nearestShare(problem: BaseProblem, of: BaseComponent): Nearest | undefined {
  const { shares } = problem;
  return nearest(gramsOf(shares, of), (percent) => ({ ...problem, shares: new Map(shares).set(of, percent) }));
}

function nearestLoss(problem: BaseProblem): Nearest | undefined {
  return nearest(problem.evaporated, (evaporated) => ({ ...problem, evaporated }));
}

/**
 * Refuses a target that cannot be met, and names the bound and the nearest figure that can. Of several the first counts.
 *
 * @throws CalculationError `infeasible`, if a bound is broken
 */
export function checkFeasible(problem: BaseProblem, solved: SolvedBase): void {
  const [first] = brokenBounds(problem, solved);
  if (first === undefined) return;
  if (first.kind === 'share') refuseShares(problem, solved, first.of);
  if (first.of === 'water') refuseWater(problem, solved);
  refuseFormed(problem, solved, first);
}

/**
 * Refuses shares that do not add up to 100, where none is left out.
 *
 * @throws CalculationError `infeasible`, with the water that would close them
 */
export function checkClosing(problem: BaseProblem, solved: SolvedBase, stated: Decimal): void {
  const closing = percentOf(problem, gramsOf(solved.held, 'water'));
  const gap = stated.minus(closing);
  if (gap.abs().lte('0.00005')) return;
  const away = `${shown(gap.abs())} percent too ${gap.gt(0) ? 'much' : 'little'}`;
  refuse(
    'infeasible',
    'target',
    `shares that add up to 100 percent with the ${shown(percentOf(problem, solved.remainder))} percent that it does not name: water of ${closing.toDecimalPlaces(DECIMALS).toString()} percent, or one component left out`,
    `${shown(gap.plus(100))} percent, ${away}`,
  );
}

const percentOf = ({ batch }: BaseProblem, grams: Decimal): Decimal => grams.times(100).div(batch);
const shown = (percent: Decimal): string => percent.toDecimalPlaces(DECIMALS).toString();

/** The nearest feasible share of a component, as `soap of at most 31.2 percent with water making up the rest`. */
function shareInWords(problem: BaseProblem, of: BaseComponent): readonly string[] {
  const found = nearestShare(problem, of);
  if (found === undefined) return [];
  return [`${of} of ${found.side} ${found.figure.toString()} percent with ${problem.leftOut} making up the rest`];
}

function lossInWords(problem: BaseProblem): readonly string[] {
  const found = nearestLoss(problem);
  if (found === undefined || found.figure.gt(problem.batch.times(MOST_LOSS))) return [];
  return [`${found.side} ${found.figure.toString()} g evaporated`];
}

const expected = (ways: readonly string[], why: string): string =>
  `${ways.length === 0 ? 'another target' : ways.join(', or ')}: ${why}`;

function refuseShares(problem: BaseProblem, solved: SolvedBase, of: BaseComponent): never {
  const { leftOut, shares } = problem;
  if (of !== leftOut)
    refuse('infeasible', `target.${of}`, `more than 0 percent, because ${of} evaporates`, '0 percent');
  const sum = [...shares.values()].reduce((total, percent) => total.plus(percent), ZERO);
  const rest = percentOf(problem, Decimal.max(solved.remainder, ZERO));
  refuse(
    'infeasible',
    'target',
    expected(
      shareInWords(problem, leftOut === 'soap' ? 'water' : 'soap'),
      `all must fit into 100 percent, ${leftOut} and what the target does not name as well`,
    ),
    `${shown(sum)} percent, and ${shown(rest)} that it does not name, without any ${leftOut}`,
  );
}

function refuseWater(problem: BaseProblem, solved: SolvedBase): never {
  const { leftOut, blend, evaporated, spiritShare } = problem;
  const ofLye = solved.fats.times(blend.lyeWater);
  const percent = (grams: Decimal): string => percentOf(problem, grams).toDecimalPlaces(2).toString();
  const why = [
    `the lye alone brings ${percent(ofLye)} percent of the base`,
    `fats and reaction ${percent(solved.fats.times(madeOf(blend, 'water')).minus(ofLye))}`,
    `the additions ${percent(solved.additionsWater)}`,
    ...(evaporated.isZero() ? [] : [`${percent(evaporated.minus(evaporated.times(spiritShare)))} evaporates`]),
    ...(blend.hasSolid ? ['solid alkali must be dissolved'] : []),
  ];
  refuse(
    'infeasible',
    'target.water',
    expected(
      [...shareInWords(problem, leftOut === 'water' ? 'soap' : 'water'), ...lossInWords(problem)],
      why.join(', '),
    ),
    `${shown(percentOf(problem, gramsOf(solved.held, 'water')))} percent of water`,
  );
}

function refuseFormed(problem: BaseProblem, { held }: SolvedBase, { of, slack }: Bound): never {
  const share = percentOf(problem, gramsOf(held, of));
  refuse(
    'infeasible',
    `target.${of}`,
    expected(
      shareInWords(problem, of === problem.leftOut ? 'soap' : of),
      `fats, lye and other additions bring ${shown(share.minus(percentOf(problem, slack)))} percent of the base`,
    ),
    `${shown(share)} percent`,
  );
}
