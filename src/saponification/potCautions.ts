import { expandedCharges, type FatCharge, type SingleFat } from '../fats/index.js';
import {
  alkaliCautions,
  BEYOND_KNOWN_FATS,
  CARBONATE_FOAMS,
  CONTRADICTED_CERTIFICATE,
  CRYSTALLISED_STOCK,
  DILUTING_WARMS,
  dissolvesTo,
  FREE_CAUSTIC_CERTAIN,
  FREE_CAUSTIC_LIKELY,
  FREE_CAUSTIC_POSSIBLE,
  FREE_FATTY_ACID,
  LYE_INTO_HOT_SOAP,
  mayFreezeInStore,
  NONE_LEFT_ON_PAPER,
  SOLID_INTO_COLD_WATER,
  STRONGER_THAN_DISSOLVES,
  PERCENT_LIKE_FRACTION,
  type LyeCharge,
} from '../lye/index.js';
import { frozen, type Decimal, type Remark } from '../numbers/index.js';
import type { Estimate, Fraction } from '../quantities/index.js';
import type { Balance } from './balance.js';

/** So much free acid, mg KOH/g, is felt when lye is added: some 5 % of the fat, a convention. */
const MUCH_FREE_ACID = 10;

/** What was asked for in percent. */
export interface AskedPercents {
  readonly superfat?: Decimal | undefined;
  readonly strength?: Decimal | undefined;
  readonly kohShare?: Decimal | undefined;
}

/** A lye still to be made: the water added to the alkali, and the strength that comes of it. */
export interface ToBeMade {
  readonly addsWater: boolean;
  readonly strength: Estimate<Fraction>;
  readonly asked?: AskedPercents;
}

/** What is left of caustic in the batch, as a caution. */
function causticCaution({ freeCausticAlkali: { low, likely, high } }: Balance): Remark {
  if (low.percentNaoh.gt(0)) return FREE_CAUSTIC_CERTAIN;
  if (likely.percentNaoh.gt(0)) return FREE_CAUSTIC_LIKELY;
  return high.percentNaoh.gt(0) ? FREE_CAUSTIC_POSSIBLE : NONE_LEFT_ON_PAPER;
}

const hasMuchFreeAcid = ({ fat: { acidValue } }: FatCharge<SingleFat>): boolean =>
  !acidValue.mgKohPerG.isZero() && acidValue.mgKohPerG.gte(MUCH_FREE_ACID);

/** What the making of the lye calls for. */
function lyeCautions(lye: readonly LyeCharge[], made: ToBeMade | undefined): readonly Remark[] {
  const solutions = lye.filter(({ source }) => source.state === 'solution');
  const mayFreeze = solutions.some(({ alkali, source }) => mayFreezeInStore(alkali, source.hydroxide.high.times(100)));
  const most = dissolvesTo(lye.map(({ alkali }) => alkali));
  const tooStrong = most !== undefined && made?.strength.high.percent.gt(most) === true;
  return [
    ...(solutions.length < lye.length ? [SOLID_INTO_COLD_WATER] : []),
    ...(solutions.length > 0 && made?.addsWater === true ? [DILUTING_WARMS] : []),
    ...(mayFreeze ? [CRYSTALLISED_STOCK] : []),
    ...(tooStrong ? [STRONGER_THAN_DISSOLVES] : []),
  ];
}

/** Percents that hardly anybody asks for, and that a fraction given as percent is; a lean superfat may well be 0.5 %. */
const [HARDLY_ANY, HARDLY_ANY_SUPERFAT] = ['1', '0.3'];

/** Whether something was read as hardly any percent: that is said before anything else, because all figures hang on it. */
function isLikeFraction(lye: readonly LyeCharge[], { superfat, strength, kohShare }: AskedPercents = {}): boolean {
  const isBelow = (percent: Decimal | undefined, least: string): boolean =>
    percent !== undefined && !percent.isZero() && percent.lt(least);
  return (
    isBelow(superfat, HARDLY_ANY_SUPERFAT) ||
    isBelow(strength, HARDLY_ANY) ||
    isBelow(kohShare, HARDLY_ANY) ||
    lye.some(({ source }) => isBelow(source.hydroxide.likely.times(100), HARDLY_ANY))
  );
}

const CONTRADICTIONS: readonly string[] = [
  'certificate-outside-published-range',
  'iodine-value-outside-published-range',
];

/** What notes of the fats say against their certificates. */
function certificateCautions(fats: readonly FatCharge<SingleFat>[]): readonly Remark[] {
  const isNoted = (is: (code: string) => boolean): boolean =>
    fats.some(({ fat }) => fat.notes.some(({ code }) => is(code)));
  return [
    ...(isNoted((code) => CONTRADICTIONS.includes(code)) ? [CONTRADICTED_CERTIFICATE] : []),
    ...(isNoted((code) => code === 'certificate-beyond-known-fats') ? [BEYOND_KNOWN_FATS] : []),
  ];
}

/** The cautions that fats and alkali about to meet call for, most urgent first. */
export function potCautions(
  charges: readonly FatCharge[],
  lye: readonly LyeCharge[],
  balance: Balance,
  made?: ToBeMade,
  ofAdditions: readonly Remark[] = [],
): readonly Remark[] {
  const singles = expandedCharges(charges);
  const hasFreeAcid = singles.some(hasMuchFreeAcid);
  const hasCarbonate = lye.some(({ source }) => source.carbonate?.high.gt(0) ?? false);
  const isDoubted = isLikeFraction(lye, made?.asked);
  const contradicted = certificateCautions(singles);
  const caustic = causticCaution(balance);
  const isUrgent = caustic === FREE_CAUSTIC_CERTAIN || caustic === FREE_CAUSTIC_LIKELY;
  // nothing reassures where the figures themselves are in doubt
  const isHollow = caustic === NONE_LEFT_ON_PAPER && (isDoubted || contradicted.length > 0);
  return frozen([
    ...(isDoubted ? [PERCENT_LIKE_FRACTION] : []),
    ...alkaliCautions(
      ...(isUrgent ? [caustic] : []),
      ...contradicted,
      ...lyeCautions(lye, made),
      ...ofAdditions,
      LYE_INTO_HOT_SOAP,
      ...(hasFreeAcid ? [FREE_FATTY_ACID] : []),
      ...(hasFreeAcid && hasCarbonate ? [CARBONATE_FOAMS] : []),
      ...(isUrgent || isHollow ? [] : [caustic]),
    ),
  ]);
}
