import { molarMass } from '../../chemistry/index.js';
import { namedAcid } from '../../composition/namedAdditions.js';
import { namedAlkali, type NamedAlkali } from '../../composition/namedAlkalis.js';
import { correctingAcids, type CorrectingAcidId } from '../../freeAlkali/data/correctingAcids.js';
import { hydroxideMolarMass, readLyeCharge, type LyeChargeInput } from '../../lye/index.js';
import { Decimal, ONE, ZERO } from '../../numbers/index.js';
import type { SuperfatFromLyeResult } from '../../saponification/index.js';
import { balanceOfLye, type Pot, type PotLye } from '../pot.js';
import type { ReadAddition } from '../potAdditions.js';

/** An addition that looks like an acid by its name. */
export interface AcidAddition {
  readonly addition: ReadAddition;
  /** Which it is, where it is one that takes a known amount. */
  readonly acid: CorrectingAcidId | undefined;
}

type Added = Pick<Pot, 'additions' | 'unweighed'>;

/** The additions that look like acids: they take up lye, and are named only. */
export function namedAcids({ additions, unweighed }: Added): readonly AcidAddition[] {
  return [...additions, ...unweighed].flatMap((addition): readonly AcidAddition[] => {
    const acid = addition.holds === undefined ? namedAcid(addition.name) : undefined;
    return acid === undefined ? [] : [{ addition, acid: acid === 'other' ? undefined : acid }];
  });
}

/** Hydroxide that an acid takes up if it is pure, mol; undefined where its kind or its mass is not known. */
export function takenBy({ addition: { grams }, acid }: AcidAddition): Decimal | undefined {
  if (acid === undefined || grams === undefined) return undefined;
  const { formula, takes } = correctingAcids[acid];
  return grams.value.div(molarMass(formula)).times(takes);
}

/** The same of all acids together. */
export const takenByAcids = (pot: Added): Decimal =>
  namedAcids(pot).reduce((sum, one) => sum.plus(takenBy(one) ?? ZERO), ZERO);

/** An addition that goes by the name of an alkali. */
export interface AlkaliAddition {
  readonly addition: ReadAddition;
  readonly alkali: NamedAlkali;
}

export function namedAlkalis({ additions, unweighed }: Added): readonly AlkaliAddition[] {
  return [...additions, ...unweighed].flatMap((addition): readonly AlkaliAddition[] => {
    const alkali = addition.holds === undefined ? namedAlkali(addition.name) : undefined;
    return alkali === undefined ? [] : [{ addition, alkali }];
  });
}

/** The named hydroxides of known mass, as if they were pure. */
export function hydroxidesAmong(pot: Added): readonly LyeChargeInput[] {
  return namedAlkalis(pot).flatMap(({ addition: { grams }, alkali }): readonly LyeChargeInput[] =>
    alkali === 'other' || grams === undefined || grams.value.isZero()
      ? []
      : [{ alkali, mass: { g: grams.value }, solid: { hydroxide: { fraction: 1 } } }],
  );
}

/** Less of a lye is none: what is left of it must be weighed in something. */
const LEAST_LEFT = '1e-9';

/**
 * The balance with additions counted that are named only: hydroxides go with the lye, and every alkali is less by the share
 * of all that the acids take up. Undefined where there is neither, or nothing to balance.
 */
export function balanceCounting(
  pot: Pot,
  change: (one: PotLye) => LyeChargeInput,
  hydroxides: readonly LyeChargeInput[] = [],
): SuperfatFromLyeResult | undefined {
  const taken = takenByAcids(pot);
  if (taken.isZero() && hydroxides.length === 0) return undefined;
  const lye = [...pot.lye.map(change), ...hydroxides];
  const charges = lye.map((input) => readLyeCharge('lye', input));
  const charged = charges.reduce(
    (sum, { alkali, grams, source }) => sum.plus(grams.times(source.hydroxide.likely).div(hydroxideMolarMass(alkali))),
    ZERO,
  );
  if (charged.isZero()) return undefined;
  const left = Decimal.max(ONE.minus(taken.div(charged)), LEAST_LEFT);
  return balanceOfLye(
    pot,
    lye.map((input, at) => ({ ...input, mass: { g: left.times(charges[at]?.grams ?? ZERO) } })),
  );
}
