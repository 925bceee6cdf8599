import { ZERO, type Decimal } from '../../numbers/index.js';
import type { Estimate } from '../../quantities/index.js';
import type { Pot, PotLye } from '../pot.js';
import type { Points } from '../slips/diagnosis.js';

/** What a lye is made of, g. */
export interface LyeValues {
  /** Alkali as weighed. */
  readonly weighed: Decimal;
  /** Pure hydroxide in it. */
  readonly pure: Decimal;
  /** Water added to it. */
  readonly added: Decimal;
  readonly fats: Decimal;
}

/** The mass of the whole lye. */
export const wholeLye = ({ weighed, added }: LyeValues): Decimal => weighed.plus(added);
/** Everything in the lye that is not hydroxide: it counts as its water. */
export const waterOfLye = (lye: LyeValues): Decimal => wholeLye(lye).minus(lye.pure);

/** A quotient, where there is something to divide by. */
export const ratio = (part: Decimal, of: Decimal): Decimal | undefined => (of.lte(0) ? undefined : part.div(of));
/** The same in percent. */
export const percentOf = (part: Decimal, of: Decimal): Decimal | undefined => ratio(part.times(100), of);

/** The lye of a pot over its assays and the last digits of its masses. */
export function lyePoints({ lye, water, fatGrams }: Pot): Points<LyeValues> {
  const at = (end: keyof Estimate<unknown>, size: 'low' | 'value' | 'high', added: Decimal): LyeValues => ({
    weighed: sumOf(lye, ({ grams }) => grams[size]),
    pure: sumOf(lye, ({ grams, charge }) => grams[size].times(charge.source.hydroxide[end])),
    added,
    fats: fatGrams,
  });
  const ends = ['low', 'high'] as const;
  return {
    corners: ends.flatMap((end) => [at(end, 'low', water.high), at(end, 'high', water.low)]),
    likely: at('likely', 'value', water.value),
  };
}

function sumOf(lye: readonly PotLye[], of: (one: PotLye) => Decimal): Decimal {
  return lye.reduce((sum, one) => sum.plus(of(one)), ZERO);
}
