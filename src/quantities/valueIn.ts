import { isDecimal, readFields, refuse, refuseKey, type Decimal } from '../numbers/index.js';
import { unitsByKind, type UnitsByKind } from './kinds/index.js';
import { readQuantity, type OneUnit, type Unit } from './unit.js';

/** Any quantity this library knows, in any of its units. */
export type Quantity = OneUnit<UnitsByKind[keyof UnitsByKind]>;

/** The units a quantity can be told in: those of its own kind. */
export type UnitFor<Q> = {
  [K in keyof UnitsByKind]: Q extends OneUnit<UnitsByKind[K]> ? UnitsByKind[K] : never;
}[keyof UnitsByKind];

/**
 * The number of a quantity in another unit of its kind.
 *
 * Factors are exact definitions where such exist (1 lb = 453.59237 g); those between NaOH, KOH and Na2O come from the
 * atomic weights, those of specific gravities from the density of water.
 *
 * @param quantity - one unit key with one number
 * @param unit - a unit of the same kind; any other does not compile
 * @returns the number, unrounded
 * @throws CalculationError `unknown-unit`, `two-units`, `missing`, `not-a-number` or `out-of-range`
 *
 * @example
 * ```ts
 * valueIn({ lb: 2 }, 'g'); // => '907.18474'
 * valueIn({ gNaohPerG: '0.183' }, 'mgKohPerG').toFixed(2); // => '256.70'
 * ```
 */
export function valueIn<const Q extends Quantity>(quantity: Q, unit: UnitFor<Q>): Decimal {
  const kinds: Readonly<Record<keyof UnitsByKind, Readonly<Record<string, Unit>>>> = unitsByKind();
  const expected = 'a quantity such as { g: … }';
  if (isDecimal(quantity)) refuse('bad-shape', 'quantity', expected, String(quantity));
  const [first] = Object.keys(readFields('quantity', quantity, expected));
  if (first === undefined) refuse('missing', 'quantity', 'one unit key with a number', 'an empty object');
  const units = Object.values(kinds).find((candidates) => Object.hasOwn(candidates, first));
  if (units === undefined)
    return refuseKey('unknown-unit', 'quantity', first, Object.values(kinds).flatMap(Object.keys));
  const value = readQuantity('quantity', quantity, units);
  if (typeof unit !== 'string') refuse('bad-shape', 'unit', 'the name of a unit', unit);
  const wanted = Object.hasOwn(units, unit) ? units[unit] : undefined;
  if (wanted === undefined) return refuseKey('unknown-unit', 'unit', unit, Object.keys(units));
  return wanted.fromCanonical(value, 'quantity');
}
