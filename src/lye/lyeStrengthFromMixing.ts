import { frozen, noted, readShape, refuse, type Remark, type Steps } from '../numbers/index.js';
import {
  mapEnds,
  readMass,
  type Amount,
  type Estimate,
  type Fraction,
  type Mass,
  type MassInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { hydroxideMolarMass } from './alkali.js';
import { DILUTING_WARMS } from './benchCautions.js';
import { alkaliCautions, SOLID_INTO_COLD_WATER, STRONGER_THAN_DISSOLVES } from './cautions.js';
import { dissolvesTo } from './dissolvesTo.js';
import { givenCharge, LYE_CHARGE_KEYS, lyeChargeFrom, type LyeChargeGiven, type LyeChargeInput } from './lyeCharge.js';

/** Input of {@link lyeStrengthFromMixing}: the alkali as weighed, and the water it is mixed with. */
export type LyeStrengthFromMixingInput = LyeChargeInput & { readonly water: MassInput };

/** Result of {@link lyeStrengthFromMixing}. */
export interface LyeStrengthFromMixingResult {
  readonly by: 'lyeStrengthFromMixing';
  /** The inputs as read. */
  readonly given: LyeChargeGiven & { readonly water: Mass };
  /** True hydroxide, share of the whole lye by mass. */
  readonly strength: Estimate<Fraction>;
  /** Mass of the lye. */
  readonly lye: Mass;
  /** Hydroxide in it. */
  readonly hydroxide: Estimate<Amount>;
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iupac-2021', 'ghs-naoh']);

/**
 * Strength of the lye that comes of an alkali and water.
 *
 * Formula: `strength = m·w/(m + m(water))`, with m the alkali as weighed (g) and w its hydroxide by mass (fraction):
 * solid or a stronger lye alike.
 *
 * Source: conservation of mass; amounts in moles by the IUPAC 2021 atomic weights.
 *
 * @param input - the alkali, its mass, `solid` or `solution`, and the water
 * @returns strength in percent by mass, the mass of the lye in g, its hydroxide in mol; bounds follow the assay's range
 * @throws CalculationError `missing`, `bad-shape`, `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const { strength } = lyeStrengthFromMixing({
 *   alkali: 'naoh',
 *   mass: { g: 200 },
 *   solution: { hydroxide: { percent: 50 } },
 *   water: { g: 100 },
 * });
 * strength.likely.percent.toFixed(2); // => '33.33'
 * ```
 */
export function lyeStrengthFromMixing(input: LyeStrengthFromMixingInput): LyeStrengthFromMixingResult {
  return lyeStrengthFromMixingSteps(input);
}

/** The kernel, with room for the working. */
export function lyeStrengthFromMixingSteps(
  input: LyeStrengthFromMixingInput,
  steps?: Steps,
): LyeStrengthFromMixingResult {
  const fields = readShape('input', input, [...LYE_CHARGE_KEYS, 'water']);
  const charge = lyeChargeFrom('', fields);
  const water = readMass('water', fields['water']);
  const lye = noted(steps, 'lye', 'm = m(alkali) + m(water)', 'g', charge.grams.plus(water));
  if (lye.isZero()) refuse('out-of-range', 'mass', 'more than 0 g of lye', '0 g');
  const grams = mapEnds(charge.source.hydroxide, (share) => share.times(charge.grams));
  noted(steps, 'hydroxide in it', 'm·w', 'g', grams.likely);
  const strength = mapEnds(grams, (pure) => frozen({ percent: pure.times(100).div(lye) }));
  noted(steps, 'strength', 'm·w/(m + m(water))', 'percent', strength.likely.percent);
  return frozen({
    by: 'lyeStrengthFromMixing',
    given: frozen({ ...givenCharge(charge), water: frozen({ g: water }) }),
    strength,
    lye: frozen({ g: lye }),
    hydroxide: mapEnds(grams, (pure) => frozen({ mol: pure.div(hydroxideMolarMass(charge.alkali)) })),
    cautions: alkaliCautions(
      charge.source.state === 'solid' ? SOLID_INTO_COLD_WATER : DILUTING_WARMS,
      ...(strength.high.percent.gt(dissolvesTo([charge.alkali])) ? [STRONGER_THAN_DISSOLVES] : []),
    ),
    basis: BASIS,
    edition: EDITION,
  });
}
