import { readFat, type Fat, type FatCharge } from '../fats/index.js';
import { ALKALIS, type Alkali, type LyeCharge } from '../lye/index.js';
import { frozen, ONE, readList, readShape, refuse, ZERO, type Decimal } from '../numbers/index.js';
import { readPercent, type Fraction, type FractionInput } from '../quantities/index.js';
import {
  lyeSumsAt,
  planLyeSteps,
  readReactingPot,
  type AlkaliChoice,
  type GivenAlkali,
  type Products,
} from '../saponification/index.js';

/** A fat of a blend and its share. */
export interface BlendedFatInput {
  readonly fat: Fat;
  /** Share of the fats by mass. */
  readonly share: FractionInput;
}

/** A fat of a blend, in a result. */
export interface BlendedFat {
  readonly fat: Fat;
  readonly share: Fraction;
}

/** Shares that are worked out in floating point miss a hundred by so much at most. */
const CLOSES_WITHIN = '1e-9';

/**
 * Reads the fats of a blend.
 *
 * @throws CalculationError `missing`, `bad-shape`, `out-of-range` for shares that do not add up to 100, and the faults of a
 *   fat or quantity
 */
export function readBlend(path: string, value: unknown): readonly BlendedFat[] {
  const fats = readList(path, value).map((entry, at) => {
    const here = `${path}[${String(at)}]`;
    const { fat, share } = readShape(here, entry, ['fat', 'share']);
    return frozen({
      fat: readFat(fat, `${here}.fat`),
      share: frozen({ percent: readPercent(`${here}.share`, share) }),
    });
  });
  const sum = sumOf(fats);
  if (sum.minus(100).abs().gt(CLOSES_WITHIN)) {
    refuse('out-of-range', path, 'shares that add up to 100 percent', `${sum.toString()} percent`);
  }
  return frozen(fats);
}

const sumOf = (fats: readonly BlendedFat[]): Decimal =>
  fats.reduce((sum: Decimal, { share }) => sum.plus(share.percent), ZERO);

/** A blend with its lye and what they become, all to one gram of fats; likely lots and assays, and no water added. */
export interface BaseBlend {
  readonly fats: readonly FatCharge[];
  readonly lye: readonly LyeCharge[];
  readonly hasSolid: boolean;
  /** Water of the lye as weighed. */
  readonly lyeWater: Decimal;
  readonly made: Products['grams'];
  readonly alkali: GivenAlkali;
}

/**
 * What one gram of a blend asks of an alkali, and what comes of it: soap made is proportional to the fats.
 *
 * @throws CalculationError the faults of the choice of alkali
 */
export function baseBlend(fats: readonly BlendedFat[], alkali: unknown, superfat: Decimal): BaseBlend {
  const sum = sumOf(fats);
  const charges = fats.map(({ fat, share }) => ({ fat, grams: weighable(share.percent.div(sum)) }));
  const plan = planLyeSteps({
    fats: charges.map(({ fat, grams }) => ({ fat, mass: { g: grams } })),
    // read there, under the same path
    alkali: alkali as AlkaliChoice,
    target: { superfat: { percent: superfat } },
    // it changes no alkali
    dilution: { water: { g: ONE } },
  });
  const weighed = plan.weigh as Readonly<Partial<Record<Alkali, { readonly g: Decimal }>>>;
  const lye = ALKALIS.flatMap((name) => {
    const [source, grams] = [plan.given.alkali[name], weighed[name]?.g];
    if (source === undefined || grams === undefined) return [];
    return [{ alkali: name, mass: { g: weighable(grams) }, ...source }];
  });
  const pot = readReactingPot('', { fats: charges.map(({ fat, grams }) => ({ fat, mass: { g: grams } })), lye });
  return {
    fats: charges,
    lye: pot.lye,
    hasSolid: pot.lye.some(({ source }) => source.state === 'solid'),
    lyeWater: lyeSumsAt(pot.lye, ZERO, 'likely').water,
    made: pot.at('likely').grams,
    alkali: plan.given.alkali,
  };
}

/** A mass as it can be read again: below 1e-24 g there is nothing to weigh. */
export function weighable(grams: Decimal): Decimal {
  return grams.lt('1e-24') ? ZERO : grams;
}
