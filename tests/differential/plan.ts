/** The lye plan. */
import type { Alkali } from 'laurate';
import { balanceOf, type Balance } from './balance.js';
import { demandOf, M, massOf, sourceOf, type Charge, type Lot, type Source } from './charge.js';
import type { DrawnPlan } from './drawn.js';
import type { Fraction } from './rational.js';
import { most, of, ONE, part, percent, sum, threeOf, ZERO, type Three } from './rational.js';

export interface Plan extends Balance {
  readonly lye: readonly Charge[];
  readonly water: Fraction;
  readonly strength: Three;
  readonly batch: Fraction;
}

interface Weighed {
  readonly alkali: Alkali;
  readonly source: Source;
  /** The part of all hydroxide, by mole. */
  readonly share: Fraction;
}

/** Water to alkalis of these masses. */
function waterTo(lye: readonly Charge[], fats: Fraction, [way, figure]: DrawnPlan['dilution']): Fraction {
  if (way === 'as-is') return ZERO;
  if (way === 'water') return of(figure);
  if (way === 'waterPerFat') return fats.mul(percent(figure));
  if (way === 'waterPerAlkali') return massOf(lye).mul(of(figure));
  const hydroxide = sum(lye.map(({ mass, hydroxide: { likely } }) => mass.mul(likely)));
  return hydroxide.div(percent(figure)).sub(massOf(lye));
}

/** Alkalis that bring so much hydroxide at their likely assays. */
const lyeOf = (weighed: readonly Weighed[], hydroxide: Fraction): readonly Charge[] =>
  weighed.map(({ alkali, source, share }) => ({
    ...source,
    alkali,
    mass: hydroxide.mul(share).mul(M[alkali]).div(source.hydroxide.likely),
  }));

/** The hydroxide at which the worst lot just keeps a limit of free caustic, λ in moles to a gram of the batch. */
function hydroxideWithin(
  limit: Fraction,
  lots: readonly Lot[],
  weighed: readonly Weighed[],
  plan: DrawnPlan,
): Fraction {
  const strongest = sum(
    weighed.map(({ source, share }) => share.mul(source.hydroxide.high).div(source.hydroxide.likely)),
  );
  const fats = massOf(lots);
  const batchWith = (hydroxide: Fraction): Fraction => {
    if (plan.batchMass !== undefined) return of(plan.batchMass);
    const lye = lyeOf(weighed, hydroxide);
    return fats.add(massOf(lye)).add(waterTo(lye, fats, plan.dilution));
  };
  const fixed = batchWith(ZERO);
  const perMole = batchWith(ONE).sub(fixed);
  return demandOf(lots)
    .low.add(limit.mul(fixed))
    .div(strongest.sub(limit.mul(perMole)));
}

/** To the nearest step, from midway to the even one. */
function toNearest(mass: Fraction, step: Fraction): Fraction {
  const steps = mass.div(step);
  const up = steps.sub(steps.floor()).compare('1/2');
  const isUp = up > 0 || (up === 0 && !steps.floor().mod(2).equals(0));
  return (isUp ? steps.floor().add(1) : steps.floor()).mul(step);
}

/** Undefined where the step of the scale is more than there is to weigh of an alkali, or leaves a solid one without water. */
export function planOf(lots: readonly Lot[], plan: DrawnPlan): Plan | undefined {
  const { naoh, koh } = plan.sources;
  const kohShare = koh === undefined ? ZERO : naoh === undefined ? ONE : percent(plan.kohShare);
  const weighed = (['naoh', 'koh'] as const).flatMap((alkali): readonly Weighed[] => {
    const drawn = plan.sources[alkali];
    const share = alkali === 'koh' ? kohShare : ONE.sub(kohShare);
    return drawn === undefined ? [] : [{ alkali, source: sourceOf(alkali, drawn), share }];
  });
  const hydroxide =
    'superfat' in plan.target
      ? demandOf(lots).likely.mul(ONE.sub(percent(plan.target.superfat)))
      : hydroxideWithin(percent(plan.target.freeCaustic).div(M.naoh), lots, weighed, plan);
  const exact = lyeOf(weighed, hydroxide);
  if (plan.scaleStep === undefined) return weighing(exact, waterTo(exact, massOf(lots), plan.dilution), lots, plan);
  const step = of(plan.scaleStep);
  const isSolid = weighed.some(({ alkali }) => plan.sources[alkali]?.form !== 'solution');
  let lye = exact.map((charge) => ({ ...charge, mass: charge.mass.div(step).floor().mul(step) }));
  for (;;) {
    if (lye.some(({ mass }) => mass.lte(0))) return undefined;
    const water = toNearest(waterTo(lye, massOf(lots), plan.dilution), step);
    if (isSolid && water.equals(0)) return undefined;
    const found = weighing(lye, water, lots, plan);
    // water rounded down may make the batch so much smaller that a limit is passed
    if ('superfat' in plan.target || found.freeCaustic.high.lte(of(plan.target.freeCaustic))) return found;
    lye = withStepLess(lye, exact, step);
  }
}

/** The alkali that is nearest to what it would be exactly gives way first. */
function withStepLess(lye: readonly Charge[], exact: readonly Charge[], step: Fraction): Charge[] {
  const reached = lye.map(({ mass }, at) => part(mass, exact[at]?.mass ?? ZERO));
  const furthest = reached.reduce(most, ZERO);
  const first = reached.findIndex((each) => each.equals(furthest));
  return lye.map((charge, at) => (at === first ? { ...charge, mass: charge.mass.sub(step) } : charge));
}

/** What comes of these masses. */
function weighing(lye: readonly Charge[], water: Fraction, lots: readonly Lot[], plan: DrawnPlan): Plan {
  const whole = massOf(lye).add(water);
  const batch = plan.batchMass === undefined ? massOf(lots).add(whole) : of(plan.batchMass);
  const hydroxide = (at: keyof Three): Fraction => sum(lye.map(({ mass, hydroxide: w }) => mass.mul(w[at])));
  const strength = threeOf((at) => hydroxide(at).div(whole).mul(100));
  return { ...balanceOf(lots, lye, batch), lye, water, strength, batch };
}
