import { gramsOf, type FatCharge, type SingleFat } from '../../fats/index.js';
import type { Decimal } from '../../numbers/index.js';
import { mapEnds, type Estimate } from '../../quantities/index.js';
import { balanceOf } from '../../saponification/balance.js';
import { demandOf } from '../../saponification/demand.js';

/** The superfat that one fat's lots, or the alkali's assay, can bring about by itself. */
export interface SuperfatAlone {
  readonly name: string;
  readonly superfat: Estimate<Decimal>;
}

/** The superfat as each fat and the alkali vary alone, the others at their likely values; the widest first. */
export function superfatsAlone(
  charged: Estimate<Decimal>,
  fats: readonly FatCharge<SingleFat>[],
): readonly SuperfatAlone[] {
  const grams = gramsOf(fats);
  const superfatOf = (some: readonly FatCharge<SingleFat>[], alkali: Estimate<Decimal>): Estimate<Decimal> =>
    // the share of free caustic is not asked for, so that any mass of the batch serves
    mapEnds(balanceOf(demandOf(some), alkali, grams, grams).superfat, ({ percent }) => percent);
  const fatsAlone = fats.map((varying) => ({
    name: varying.fat.name,
    superfat: superfatOf(
      fats.map((one) => (one === varying ? one : atLikely(one))),
      onlyLikely(charged),
    ),
  }));
  const alkaliAlone = { name: 'assay of the alkali', superfat: superfatOf(fats.map(atLikely), charged) };
  return [...fatsAlone, alkaliAlone].sort((a, b) => widthOf(b).cmp(widthOf(a)));
}

const onlyLikely = <Q>({ likely }: Estimate<Q>): Estimate<Q> => ({ low: likely, likely, high: likely });

function atLikely({ fat, grams }: FatCharge<SingleFat>): FatCharge<SingleFat> {
  return { fat: { ...fat, saponificationValue: onlyLikely(fat.saponificationValue) }, grams };
}

const widthOf = ({ superfat: { low, high } }: SuperfatAlone): Decimal => high.minus(low);
