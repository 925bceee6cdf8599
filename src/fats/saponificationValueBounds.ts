import { Decimal, frozen } from '../numbers/index.js';
import { mapEnds, type Estimate, type SaponificationValue } from '../quantities/index.js';

/**
 * How far lots of a fat without a published range are taken to stray from its likely value: 7 %, a convention. Of 45
 * published fats with both figures, 40 have their whole standard range inside it; a test counts them.
 */
const LOT_SPREAD = '0.07';

/** Bounds for a likely value without a published range: 7 % either way, or the profile's own bounds where wider. */
export function spreadOf(
  likely: SaponificationValue,
  exact?: Estimate<SaponificationValue>,
): Estimate<SaponificationValue> {
  const { mgKohPerG } = likely;
  const spread = mgKohPerG.times(LOT_SPREAD);
  const low = mgKohPerG.minus(spread);
  const high = mgKohPerG.plus(spread);
  return mapEnds(
    {
      low: exact === undefined ? low : Decimal.min(low, exact.low.mgKohPerG),
      likely: mgKohPerG,
      high: exact === undefined ? high : Decimal.max(high, exact.high.mgKohPerG),
    },
    (value) => frozen({ mgKohPerG: value }),
  );
}
