import { isSpiritComponent, SPIRITS } from '../composition/index.js';
import { ONE, ZERO, type Decimal } from '../numbers/index.js';
import { LEAST_SOAP, type Supplies } from './target.js';
import type { BaseBlend } from './blend.js';
import type { BaseComponent, SuppliedComponent } from './components.js';

/** A target to be solved; masses in grams, shares in percent. */
export interface BaseProblem {
  readonly blend: BaseBlend;
  readonly batch: Decimal;
  readonly shares: ReadonlyMap<BaseComponent, Decimal>;
  readonly leftOut: BaseComponent;
  readonly supplies: Supplies;
  readonly evaporated: Decimal;
  /** Spirit in what evaporates, a fraction of one. */
  readonly spiritShare: Decimal;
}

/** What a solution must keep to: nothing of it below zero. */
export interface Bound {
  readonly of: BaseComponent;
  /** A share of the base, or what is weighed of it, as pure substance. */
  readonly kind: 'share' | 'weighed';
  /** Grams above the bound; below zero it is broken. */
  readonly slack: Decimal;
}

/** A solution, feasible or not; grams. */
export interface SolvedBase {
  readonly fats: Decimal;
  /** Each component of the finished base. */
  readonly held: ReadonlyMap<BaseComponent, Decimal>;
  /** Each addition as weighed. */
  readonly weighed: ReadonlyMap<SuppliedComponent, Decimal>;
  /** Water to add. */
  readonly water: Decimal;
  /** Water that the additions bring. */
  readonly additionsWater: Decimal;
  /** What is in the base and not in the target. */
  readonly remainder: Decimal;
  readonly bounds: readonly Bound[];
}

/** What the fats and lye make of each component, grams to a gram of fats. */
export function madeOf({ made }: BaseBlend, name: BaseComponent): Decimal {
  switch (name) {
    case 'soap':
      return made.soapSodium.plus(made.soapPotassium);
    case 'glycerol':
    case 'water':
    case 'other':
      return made[name];
    default:
      return ZERO;
  }
}

/** Grams to a gram of fats that a target never names. */
function unnamedOf({ made }: BaseBlend): Decimal {
  const { freeFat, freeAcid, freeNaoh, freeKoh, sodiumCarbonate, potassiumCarbonate, unsaponifiable } = made;
  return [freeFat, freeAcid, freeNaoh, freeKoh, sodiumCarbonate, potassiumCarbonate, unsaponifiable].reduce(
    (sum, grams) => sum.plus(grams),
  );
}

/** Grams of one of several things; none of what is not there. */
export const gramsOf = <K>(grams: ReadonlyMap<K, Decimal>, name: K): Decimal => grams.get(name) ?? ZERO;

const assayOf = (supplies: Supplies, name: SuppliedComponent): Decimal => {
  const holds = supplies.get(name)?.holds;
  return typeof holds === 'object' ? holds.share.likely : ONE;
};

/**
 * Solves a target; what comes of it need not be feasible. All of it is a straight line over each share and over the loss.
 */
export function solvedBase(problem: BaseProblem): SolvedBase {
  const { batch, supplies, evaporated, spiritShare } = problem;
  const { fats, held, remainder } = heldIn(problem);

  const spiritGone = evaporated.times(spiritShare);
  const waterGone = evaporated.minus(spiritGone);
  const spirit = SPIRITS.reduce((sum, name) => sum.plus(gramsOf(held, name)), ZERO);
  /** Grams before the loss; two spirits leave in the proportion they are there. */
  const before = (name: SuppliedComponent): Decimal => {
    const grams = gramsOf(held, name);
    return isSpiritComponent(name) && !spirit.isZero() ? grams.plus(spiritGone.times(grams.div(spirit))) : grams;
  };
  const weighed = new Map<SuppliedComponent, Decimal>();
  let [additionsWater, amines] = [ZERO, ZERO];
  // other comes last: it may hold the rest of an amine
  for (const name of inOrder(supplies)) {
    const formed = fats.times(madeOf(problem.blend, name)).plus(name === 'other' ? amines : ZERO);
    const pure = before(name).minus(formed);
    const grams = pure.div(assayOf(supplies, name));
    weighed.set(name, grams);
    if (name === 'triethanolamine') amines = grams.minus(pure);
    else additionsWater = additionsWater.plus(grams.minus(pure));
  }
  const brought = fats.times(problem.blend.made.water).plus(additionsWater);
  const water = gramsOf(held, 'water').plus(waterGone).minus(brought);

  const trace = batch.times('1e-20');
  /** What evaporates is not gone to the last trace; of two spirits one can be none. */
  const least = (name: BaseComponent, grams: Decimal): Decimal => {
    if (name === 'soap') return batch.times(LEAST_SOAP).div(100);
    if (name === 'water') return waterGone.isZero() ? ZERO : trace;
    const isLast = isSpiritComponent(name) && !spiritGone.isZero() && spirit.minus(grams).lt(trace);
    return isLast ? trace : ZERO;
  };
  return {
    fats,
    held,
    weighed,
    water,
    additionsWater,
    remainder,
    bounds: [
      // what must be weighed follows from the shares, and the water from all else
      ...[...held].map(([of, grams]) => ({ of, kind: 'share' as const, slack: grams.minus(least(of, grams)) })),
      ...[...weighed].map(([of, grams]) => ({
        of,
        kind: 'weighed' as const,
        slack: grams.times(assayOf(supplies, of)),
      })),
      // a solid must be dissolved
      { of: 'water', kind: 'weighed', slack: problem.blend.hasSolid ? water.minus(trace) : water },
    ],
  };
}

function inOrder(supplies: Supplies): ReadonlySet<SuppliedComponent> {
  const names = new Set(supplies.keys());
  // what is put in anew comes last
  if (names.delete('other')) names.add('other');
  return names;
}

/** The fats and every component of the finished base: what is left out makes up the rest. */
function heldIn({
  blend,
  batch,
  shares,
  leftOut,
  supplies,
}: BaseProblem): Pick<SolvedBase, 'fats' | 'held' | 'remainder'> {
  const held = new Map([...shares].map(([name, percent]) => [name, batch.times(percent).div(100)] as const));
  const isNamed = (name: BaseComponent): boolean => held.has(name) || name === leftOut;
  /** Of each gram of amine so much comes with it that the target does not name. */
  const amines = isNamed('other') ? ZERO : ONE.div(assayOf(supplies, 'triethanolamine')).minus(1);
  const unasked = (['glycerol', 'other'] as const).filter((name) => !isNamed(name));
  const loose = unasked.reduce((sum, name) => sum.plus(madeOf(blend, name)), unnamedOf(blend));

  const perSoap = madeOf(blend, 'soap');
  const amineRest = gramsOf(held, 'triethanolamine').times(amines);
  const room = [...held.values()].reduce((left, grams) => left.minus(grams), batch).minus(amineRest);
  const soap = held.get('soap');
  const fats = soap === undefined ? room.div(perSoap.plus(loose)) : soap.div(perSoap);
  const rest = room.minus(fats.times(loose));
  held.set(leftOut, leftOut === 'triethanolamine' ? rest.div(amines.plus(1)) : rest);
  const remainder = fats.times(loose).plus(gramsOf(held, 'triethanolamine').times(amines));
  return { fats, held, remainder };
}

/** So many times the batch can evaporate, a bound of what is read as a mass. */
export const MOST_LOSS = 100;

/** Rounding leaves so much of a batch; it is nothing. */
const DUST = '1e-28';

/** The bounds that a solution breaks. */
export function brokenBounds({ batch }: BaseProblem, { bounds }: SolvedBase): readonly Bound[] {
  return bounds.filter(({ slack }) => slack.lt(batch.times(DUST).neg()));
}

/** What is in the base beside the target; what rounding leaves is nothing. */
export function remainderOf({ remainder }: SolvedBase): Decimal {
  return remainder.abs().lt('1e-24') ? ZERO : remainder;
}
