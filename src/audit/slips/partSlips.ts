import { componentOfSolvent, POLYOLS, SPIRITS, SUGARS, type ComponentName } from '../../composition/components.js';
import { SOLVENT_IDS, type SolventId } from '../../composition/index.js';
import { ZERO, type Decimal } from '../../numbers/index.js';
import type { RecipeClaims } from '../../recipe/index.js';
import type { PartValues, SizedAddition } from '../checks/partValues.js';
import type { Held } from '../potAdditions.js';
import { COMMON, USUAL, type Hypothesis } from './hypothesis.js';

/** A part of the pot whose share may be printed. */
export type Part = keyof NonNullable<RecipeClaims['shares']>;

/** What syrups are sold at, percent of dry substance; common practice, no source. */
const USUAL_SYRUP = '70';
/** Sold dry and as syrups. */
const IN_SYRUPS: readonly SolventId[] = ['sorbitol', 'sucrose', 'glucose'];
/** An assay from which on a substance is dry. */
const DRY = '0.9';

/** The solvents that a part is made of; glycerol that forms comes besides. */
function solventsOf(part: Part): readonly SolventId[] {
  if (part === 'soap' || part === 'water') return [];
  if (part === 'glycerol') return ['glycerol'];
  const of = { polyol: POLYOLS, sugar: SUGARS, spirit: SPIRITS, clearingAgents: [...POLYOLS, ...SUGARS, ...SPIRITS] };
  const components: readonly ComponentName[] = of[part];
  return SOLVENT_IDS.filter((id) => components.includes(componentOfSolvent[id]));
}

/** The slips of syrups and of spirit by volume in a part that holds them: `withMore` says what so many grams more make of the figure. */
export function partSlips(
  part: Part,
  withMore: (values: PartValues, grams: Decimal) => Decimal | undefined,
): readonly Hypothesis<PartValues>[] {
  const solvents = solventsOf(part);
  /** By how much the part comes out otherwise, where one of its additions does. */
  const otherwise =
    (more: (held: Held, one: SizedAddition, values: PartValues) => Decimal | undefined) =>
    (values: PartValues): Decimal | undefined => {
      const grams = values.additions.flatMap((one) => {
        const { holds } = one.addition;
        return holds === undefined || !solvents.includes(holds.solvent) ? [] : (more(holds, one, values) ?? []);
      });
      if (grams.every((one) => one.isZero())) return undefined;
      return withMore(
        values,
        grams.reduce((sum, one) => sum.plus(one), ZERO),
      );
    };
  return [
    {
      code: 'percent-by-volume-as-by-mass',
      weight: COMMON,
      figure: otherwise(({ byVolume }, { grams, pure }) => byVolume && grams.times(byVolume).minus(pure.likely)),
    },
    {
      code: 'syrup-as-dry',
      weight: COMMON,
      figure: otherwise((_, { grams, pure }, { end }) => grams.minus(pure[end])),
    },
    {
      code: 'dry-as-syrup',
      words: { strength: USUAL_SYRUP },
      weight: USUAL,
      figure: otherwise(({ solvent, share }, { grams, pure }) =>
        IN_SYRUPS.includes(solvent) && share.low.gte(DRY)
          ? grams.times(USUAL_SYRUP).div(100).minus(pure.likely)
          : undefined,
      ),
    },
  ];
}
