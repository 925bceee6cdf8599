import { frozen, noted, refuse, ZERO, type Decimal, type Steps } from '../numbers/index.js';
import { mapEnds, type Estimate, type Mass } from '../quantities/index.js';
import { ingredientsCalled, isCalled, type Ingredient } from './ingredients.js';
import type { Moulds } from './moulds.js';
import type { GivenBatchOptions, Price } from './readBatchOptions.js';

/** An amount of money, unrounded, in the currency of its prices. */
export interface Money {
  readonly amount: Decimal;
}

/** What one ingredient of a batch costs. */
export interface CostLine {
  readonly item: string;
  readonly mass: Mass;
  readonly cost: Money;
}

/** What a batch costs in ingredients; work, heat and moulds are not in it. */
export interface Cost {
  readonly currency: string;
  readonly lines: readonly CostLine[];
  readonly batch: Money;
  /** Of finished base; dearest where most has gone. */
  readonly perKilogram: Estimate<Money>;
  /** The whole batch over the moulds that are sure to be full; left out without moulds, or where none is. */
  readonly perMould?: Money;
}

/**
 * The cost of a batch.
 *
 * @throws CalculationError `missing` for an ingredient without price, `bad-shape` for one with two, `unknown-key` for a price of
 *   nothing in the batch
 */
export function costOf(
  ingredients: readonly Ingredient[],
  { currency, of }: NonNullable<GivenBatchOptions['prices']>,
  batchMass: Estimate<Mass>,
  moulds: Moulds | undefined,
  steps?: Steps,
): Cost {
  const prices = Object.entries(of);
  for (const [item] of prices) ingredientsCalled(`options.prices.of.${item}`, item, ingredients);
  const lines = ingredients.map((one): CostLine => {
    const [item] = one.names;
    const price = priceOf(one, prices);
    if (price === undefined && item !== 'water') {
      refuse('missing', `options.prices.of.${item}`, 'a price; 0 for what costs nothing', undefined);
    }
    const amount = price === undefined ? ZERO : one.grams.times(price.amount).div(price.per.g);
    return frozen({ item, mass: frozen({ g: one.grams }), cost: frozen({ amount }) });
  });
  const batch = lines.reduce((sum, { cost }) => sum.plus(cost.amount), ZERO);
  noted(steps, 'cost of the batch', 'Σ m·price', currency, batch);
  const perKilogram = (grams: Decimal): Money => frozen({ amount: batch.times(1000).div(grams) });
  const { low, likely, high } = mapEnds(batchMass, ({ g }) => perKilogram(g));
  return frozen({
    currency,
    lines: frozen(lines),
    batch: frozen({ amount: batch }),
    perKilogram: frozen({ low: high, likely, high: low }),
    ...(moulds === undefined || moulds.filled.isZero()
      ? {}
      : { perMould: frozen({ amount: batch.div(moulds.filled) }) }),
  });
}

/**
 * The price that names an ingredient, by whichever of its names.
 *
 * @throws CalculationError `bad-shape` for one with two
 */
function priceOf(one: Ingredient, prices: readonly (readonly [called: string, price: Price])[]): Price | undefined {
  let found: (typeof prices)[number] | undefined;
  for (const entry of prices) {
    const [called] = entry;
    if (!isCalled(one, called)) continue;
    if (found !== undefined) {
      refuse('bad-shape', `options.prices.of.${called}`, `one price of ${one.names[0]}`, `another as ${found[0]}`);
    }
    found = entry;
  }
  return found?.[1];
}
