/** A single likely plan by a general units library, which has never heard of soap. */
import { createRequire } from 'node:module';

/** What is used of js-quantities, which has no types of its own. */
interface Quantity {
  readonly scalar: number;
  readonly mul: (by: Quantity | number) => Quantity;
  readonly div: (by: Quantity | number) => Quantity;
  readonly add: (other: Quantity) => Quantity;
  readonly sub: (other: Quantity) => Quantity;
  readonly to: (unit: string) => Quantity;
}

const require = createRequire(import.meta.url);
const quantity = require('js-quantities') as (text: string) => Quantity;

const KOH = quantity('56.105 g/mol');
const NAOH = quantity('39.997 g/mol');

/** A saponification value in milligrams of KOH to the gram. */
export function unitsValue(mgKohPerG: number): Quantity {
  return quantity(`${String(mgKohPerG)} mg/g`);
}

/** The likely plan alone: no lots, no worst case. */
export function unitsPlan(
  masses: readonly (number | string)[],
  values: readonly Quantity[],
  stock: number,
  superfat: number | string,
  strength: number,
): Record<string, number> {
  let demand = quantity('0 mol');
  for (let at = 0; at < masses.length; at += 1) {
    const value = values[at];
    if (value === undefined) continue;
    demand = demand.add(
      quantity(`${String(masses[at])} g`)
        .mul(value)
        .div(KOH),
    );
  }
  const naoh = demand
    .mul(1 - Number(superfat) / 100)
    .mul(NAOH)
    .div(stock / 100);
  const water = naoh.mul(stock / strength).sub(naoh);
  return { demandLikely: demand.to('mol').scalar, naoh: naoh.to('g').scalar, water: water.to('g').scalar };
}
