import {
  batchVolumeOf,
  compositionFrom,
  ratiosOf,
  type AdditionInput,
  type Composition,
  type Ratios,
} from '../../composition/index.js';
import type { LyeChargeInput } from '../../lye/index.js';
import { unlessRefused, ONE, ZERO, type Decimal } from '../../numbers/index.js';
import { mapEnds, type Estimate } from '../../quantities/index.js';
import { soapFromLye } from '../../saponification/index.js';
import type { Pot } from '../pot.js';
import { pureIn, type PotAddition } from '../potAdditions.js';
import type { Points } from '../slips/diagnosis.js';

type End = keyof Estimate<unknown>;
/** At which end of its last digit, or of what its volume may weigh, a mass is. */
type Size = 'low' | 'value' | 'high';

/** What a pot is made of at one place of its masses, and at one end of its lots and assays. */
export interface PartValues {
  readonly composition: Composition;
  readonly ratios: Ratios;
  readonly end: End;
  /** Everything that goes in, g. */
  readonly all: Decimal;
  readonly fats: Decimal;
  /** What is left of it without the lye and its water, g. */
  readonly withoutLye: Decimal;
  /** Water as it goes in, g: without what forms when acids are neutralised, and what is not known of solids. */
  readonly waterCharged: Estimate<Decimal>;
  /** What of solid alkali is neither alkali nor known: some of it, or all, is water, g. */
  readonly unknownOfSolids: Decimal;
  /** Grams to a millilitre of the likely pot at 20 °C, worked out when it is first asked for; undefined where it cannot be. */
  readonly density: () => Estimate<Decimal> | undefined;
  /** The additions, each with its mass here, g. */
  readonly additions: readonly SizedAddition[];
}

/** An addition at one place of its mass. */
export interface SizedAddition {
  readonly addition: PotAddition;
  readonly grams: Decimal;
  /** Its solvent over its assay, g. */
  readonly pure: Estimate<Decimal>;
}

/** More additions by volume than this are not taken at all ends of what they may weigh. */
const MOST_BY_VOLUME = 3;

/** The points of a pot as weighed, over its lots and assays, which most figures meet; and all, worked out when first asked for. */
export interface PartPoints extends Points<PartValues> {
  readonly asWeighed: Points<PartValues>;
}

/** What a pot is made of over its lots, assays, volumes and last digits; undefined where it cannot be worked out. */
export function partPoints(pot: Pot): PartPoints | undefined {
  const byVolume = pot.additions.flatMap(({ isByVolume }, at) => (isByVolume ? [at] : []));
  if (!pot.hasAllMasses || pot.balance === undefined || byVolume.length > MOST_BY_VOLUME) return undefined;
  return unlessRefused(() => {
    const weighed = valuesAt(pot, 'value', () => 'value');
    const density = once(() => densityOf(weighed.composition));
    const likely = { ...weighed, density, end: 'likely' as const };
    const atEnds = (place: Place): readonly PartValues[] =>
      (['low', 'high'] as const).map((end) => ({ ...place, density, end }));
    const asWeighed = { corners: atEnds(weighed), likely };
    const others = (): readonly Place[] =>
      combinations(byVolume.length).flatMap((sizes) =>
        (['low', 'high'] as const).map((lye) => valuesAt(pot, lye, (at) => sizes[byVolume.indexOf(at)] ?? 'value')),
      );
    const corners = once(() => [...asWeighed.corners, ...(unlessRefused(others) ?? []).flatMap(atEnds)]);
    return {
      asWeighed,
      likely,
      get corners() {
        return corners();
      },
    };
  });
}

function densityOf(composition: Composition): Estimate<Decimal> | undefined {
  return unlessRefused(() => {
    const { density } = batchVolumeOf({ composition, temperature: { celsius: 20 } });
    return mapEnds(density, ({ gPerML }) => gPerML);
  });
}

/** What is worked out when it is first asked for, and then kept. */
function once<T>(work: () => T): () => T {
  let kept: { readonly value: T } | undefined;
  return () => (kept ??= { value: work() }).value;
}

/** Every way in which so many volumes may be heavy or light. */
function combinations(count: number): readonly (readonly Size[])[] {
  if (count === 0) return [[]];
  return combinations(count - 1).flatMap((sizes): readonly (readonly Size[])[] => [
    [...sizes, 'low'],
    [...sizes, 'high'],
  ]);
}

/** What a pot is made of at one place of its masses. */
type Place = Omit<PartValues, 'end' | 'density'>;

function valuesAt(pot: Pot, lyeSize: Size, sizeOf: (at: number) => Size): Place {
  const { fats, lye, water, additions, fatGrams } = pot;
  const sized = additions.map((addition, at): SizedAddition => {
    const grams = addition.grams[sizeOf(at)];
    return { addition, grams, pure: pureIn(addition, grams) };
  });
  const soap = soapFromLye({
    fats: fats.flatMap(({ fat, grams }) => (fat === undefined ? [] : [{ fat, mass: { g: grams.value } }])),
    lye: lye.map(({ input, grams }): LyeChargeInput => ({ ...input, mass: { g: grams[lyeSize] } })),
    water: { g: water.value },
  });
  const composition = compositionFrom({ soap, additions: sized.map(asInput) });
  const all = composition.charge.g;
  const lyeGrams = lye.reduce((sum, { grams }) => sum.plus(grams[lyeSize]), water.value);
  const unknownOfSolids = lye.reduce((sum, { grams, charge: { source } }) => {
    const known = source.totalAlkali.low;
    return source.state === 'solution' || known.gte(1) ? sum : sum.plus(grams[lyeSize].times(ONE.minus(known)));
  }, ZERO);
  const waterAt = (assays: End): Decimal =>
    sized.reduce(
      (sum, { addition: { holds }, grams, pure }) =>
        holds === undefined || holds.solvent === 'triethanolamine'
          ? sum
          : sum.plus(holds.solvent === 'water' ? grams : grams.minus(pure[assays])),
      lye.reduce(
        (sum, { grams, charge: { source } }) =>
          source.state === 'solid' ? sum : sum.plus(grams[lyeSize].times(ONE.minus(source.hydroxide[assays]))),
        water.value,
      ),
    );
  return {
    composition,
    ratios: ratiosOf(composition),
    all,
    fats: fatGrams,
    withoutLye: all.minus(lyeGrams),
    waterCharged: { low: waterAt('high'), likely: waterAt('likely'), high: waterAt('low') },
    unknownOfSolids,
    additions: sized,
  };
}

function asInput({ addition: { holds, name }, grams }: SizedAddition): AdditionInput {
  const mass = { g: grams };
  if (holds === undefined) return { name, mass };
  const assay = mapEnds(holds.share, (share) => ({ percent: share.times(100) }));
  return { solvent: holds.solvent, mass, assay };
}
