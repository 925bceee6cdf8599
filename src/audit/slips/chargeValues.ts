import { ONE, ZERO, type Decimal } from '../../numbers/index.js';
import type { Estimate } from '../../quantities/index.js';
import type { Pot } from '../pot.js';
import type { Points } from './diagnosis.js';

/** What the mass of a lye is worked out from. */
export interface ChargeValues {
  /** Hydroxide that splits each fat, mol, in the order of the recipe. */
  readonly fats: readonly Decimal[];
  readonly all: Decimal;
  /** Superfat aimed at, as a fraction of one. */
  readonly superfat: Decimal;
  /** What that leaves: `1 − s`. */
  readonly kept: Decimal;
  /** At which end of lots and assays this is. */
  readonly end: keyof Estimate<unknown>;
  /** Whether these are the recipe's own claimed values, which are exact. */
  readonly areOwn: boolean;
}

/** The hydroxide that a recipe calls for, mol: that of the fats less the superfat. */
export const calledFor = ({ all, kept }: ChargeValues): Decimal => all.times(kept);

function valuesAt(fats: readonly Decimal[], percent: Decimal, end: ChargeValues['end'], areOwn = false): ChargeValues {
  const superfat = percent.div(100);
  return {
    fats,
    all: fats.reduce((sum, mol) => sum.plus(mol), ZERO),
    superfat,
    kept: ONE.minus(superfat),
    end,
    areOwn,
  };
}

/** The values of a pot whose fats are all known, for a superfat that is printed or assumed, percent. */
export function chargePoints(pot: Pot, superfat: Estimate<Decimal>, isClaimed: boolean): Points<ChargeValues> {
  const at = (end: keyof Estimate<unknown>): readonly Decimal[] => pot.fats.map(({ demand }) => demand?.[end] ?? ZERO);
  const own = pot.fats.flatMap(({ ownDemand }) => ownDemand?.likely ?? []);
  const ends = ['low', 'high'] as const;
  return {
    corners: ends.flatMap((end) => ends.map((other) => valuesAt(at(end), superfat[other], end))),
    likely: valuesAt(at('likely'), superfat.likely, 'likely'),
    own: isClaimed && own.length === pot.fats.length ? valuesAt(own, superfat.likely, 'likely', true) : undefined,
  };
}
