import { Decimal, fieldPath, frozen, refuse, ZERO, type Fields } from '../numbers/index.js';
import {
  mapEnds,
  readMass,
  readPercent,
  readRanged,
  type Estimate,
  type Fraction,
  type Mass,
} from '../quantities/index.js';
import { valueAt, type Place } from '../saponification/index.js';

/** What has left the pot, as stated in an input. */
export interface Loss {
  /** Grams gone; or grams that the pot holds now. */
  readonly stated: { readonly evaporated: Decimal } | { readonly potMass: Decimal };
  /** Spirit in what is gone, a fraction of one, where it is stated. */
  readonly spiritShare: Estimate<Decimal> | undefined;
  readonly given: GivenLoss;
}

/** What has left the pot, in a result. */
export interface GivenLoss {
  readonly evaporated?: Mass;
  readonly potMass?: Mass;
  readonly spiritShareOfLoss?: Estimate<Fraction>;
}

/** What a pot holds that can leave it, and all that it holds; grams. */
export interface Volatile {
  readonly water: Decimal;
  readonly spirit: Decimal;
  readonly all: Decimal;
}

/** What is gone, grams. */
export interface Gone {
  readonly water: Decimal;
  readonly spirit: Decimal;
}

/**
 * Reads what has left the pot; nothing stated is nothing gone. An empty path is that of the input itself.
 *
 * @throws CalculationError `bad-shape` for both ways at once, `missing` for a share of no loss, and the faults of a quantity
 */
export function readLoss(path: string, { evaporated, potMass, spiritShareOfLoss }: Fields): Loss {
  if (evaporated !== undefined && potMass !== undefined) {
    refuse('bad-shape', path === '' ? 'input' : path, 'either evaporated or potMass', 'both');
  }
  const grams = potMass === undefined ? evaporated : potMass;
  if (grams === undefined && spiritShareOfLoss !== undefined) {
    refuse(
      'missing',
      fieldPath(path, 'evaporated'),
      'evaporated or potMass, for spiritShareOfLoss to be a share of',
      undefined,
    );
  }
  const key = potMass === undefined ? 'evaporated' : 'potMass';
  const read = grams === undefined ? ZERO : readMass(fieldPath(path, key), grams);
  const percents =
    spiritShareOfLoss === undefined
      ? undefined
      : readRanged(fieldPath(path, 'spiritShareOfLoss'), spiritShareOfLoss, readPercent);
  return {
    stated: key === 'potMass' ? { potMass: read } : { evaporated: read },
    spiritShare: percents && mapEnds(percents, (percent) => percent.div(100)),
    given: frozen({
      ...(grams === undefined ? {} : { [key]: frozen({ g: read }) }),
      ...(percents === undefined ? {} : { spiritShareOfLoss: mapEnds(percents, (percent) => frozen({ percent })) }),
    }),
  };
}

/** The grams that are gone of a pot, going by what is stated. */
function statedLoss({ stated }: Loss, { all }: Volatile): Decimal {
  return 'potMass' in stated ? all.minus(stated.potMass) : stated.evaporated;
}

/** The least and the most of a loss that can be spirit. */
function spiritIn(grams: Decimal, { water, spirit }: Volatile): readonly [least: Decimal, most: Decimal] {
  return [Decimal.max(grams.minus(water), ZERO), Decimal.min(grams, spirit)];
}

const held = (value: Decimal, least: Decimal, most: Decimal): Decimal => Decimal.min(Decimal.max(value, least), most);

/** From all that can be water to all that can be spirit; the middle is likely, a convention. */
const FROM_WATER_TO_SPIRIT: Estimate<Decimal> = /* @__PURE__ */ frozen({
  low: ZERO,
  likely: /* @__PURE__ */ new Decimal('0.5'),
  high: /* @__PURE__ */ new Decimal(1),
});

/**
 * What is gone of one pot. Lots that a loss rules out, because they hold less than is gone or weigh less than the pot,
 * lose what they can: bounds are then a little wide, never narrow.
 */
export function goneAt(loss: Loss, pot: Volatile, place: Place): Gone {
  const grams = held(statedLoss(loss, pot), ZERO, pot.water.plus(pot.spirit));
  const [least, most] = spiritIn(grams, pot);
  const spirit =
    loss.spiritShare === undefined
      ? least.plus(most.minus(least).times(valueAt(FROM_WATER_TO_SPIRIT, place, 'loss')))
      : held(grams.times(valueAt(loss.spiritShare, place, 'loss')), least, most);
  // what rounding leaves must not take more water than there is
  return { water: Decimal.min(grams.minus(spirit), pot.water), spirit };
}

/**
 * Refuses a loss that the likely pot cannot have had.
 *
 * @throws CalculationError `infeasible`
 */
export function checkLoss(path: string, loss: Loss, pot: Volatile): void {
  const grams = statedLoss(loss, pot);
  const [least, most] = spiritIn(grams, pot);
  const isWeighed = 'potMass' in loss.stated;
  if (grams.lt(0)) {
    refuse(
      'infeasible',
      fieldPath(path, 'potMass'),
      `at most ${pot.all.toPrecision(6)} g, what was charged less gas`,
      shown(loss),
    );
  }
  const volatile = pot.water.plus(pot.spirit);
  if (grams.gt(volatile)) {
    const expected = isWeighed
      ? `at least ${pot.all.minus(volatile).toPrecision(6)} g, what cannot evaporate`
      : `at most ${volatile.toPrecision(6)} g, the water and spirit of the pot`;
    refuse('infeasible', fieldPath(path, isWeighed ? 'potMass' : 'evaporated'), expected, shown(loss));
  }
  if (loss.spiritShare === undefined || grams.isZero()) return;
  const { low, likely, high } = mapEnds(loss.spiritShare, (share) => share.times(grams));
  if (likely.lt(least) || likely.gt(most)) {
    const percent = (part: Decimal): string => part.times(100).div(grams).toPrecision(4);
    const expected = `${percent(least)} to ${percent(most)} percent of a loss of ${grams.toPrecision(6)} g`;
    refuse('infeasible', fieldPath(path, 'spiritShareOfLoss'), expected, `${percent(low)} to ${percent(high)}`);
  }
}

const shown = ({ stated }: Loss): string =>
  `${('potMass' in stated ? stated.potMass : stated.evaporated).toString()} g`;
