import { spiritStrengthFromVolume, type SolventId } from '../composition/index.js';
import { ONE, type Decimal } from '../numbers/index.js';
import { mapEnds, readPercent, unitsByKind, type Estimate, type VolumeInput } from '../quantities/index.js';
import type { RecipeAddition } from '../recipe/index.js';
import type { Row } from '../recipe/readParts.js';
import { legible } from './legible.js';
import { printedQuantity, weighedMass, type Printed } from './printed.js';
import { benchDensity, unstatedAssay } from './solventDensities.js';

/** An addition whose mass is known. */
export interface PotAddition {
  readonly path: string;
  readonly name: string;
  /** What it is, and what of it is that, a fraction of one by mass, as stated or as it is sold; neither where it has only a name. */
  readonly holds: Held | undefined;
  /** Of a volume, over what the liquid may weigh. */
  readonly grams: Printed;
  readonly isByVolume: boolean;
  readonly claimed: NonNullable<RecipeAddition['claimed']>;
}

/** A solvent in an addition. */
export interface Held {
  readonly solvent: SolventId;
  readonly share: Estimate<Decimal>;
  /** Whether the recipe says how much of it. */
  readonly isStated: boolean;
  /** The same as printed by volume, a fraction of one. */
  readonly byVolume?: Decimal;
}

/** An addition as it goes into the pot; its mass is missing where it is given by volume and no density is on file. */
export interface ReadAddition extends Omit<PotAddition, 'grams'> {
  readonly grams: Printed | undefined;
}

/** Reads an addition of a recipe. */
export function potAddition({ path, row }: Row<RecipeAddition>): ReadAddition {
  const { solvent, name = solvent, mass, volume, claimed = {} } = row;
  const holds = heldBy(row);
  return {
    path,
    name: legible(name ?? 'an addition'),
    holds,
    grams: mass === undefined ? measured(volume, holds) : weighedMass(mass),
    isByVolume: mass === undefined,
    claimed,
  };
}

function heldBy({ solvent, assay }: RecipeAddition): Held | undefined {
  if (solvent === undefined) return undefined;
  if (assay === undefined) return { solvent, share: unstatedAssay(solvent), isStated: false };
  if (!('percentByVolume' in assay))
    return { solvent, share: exactly(readPercent('assay', assay).div(100)), isStated: true };
  const { given, strength } = spiritStrengthFromVolume({ strength: assay as { percentByVolume: string } });
  return {
    solvent,
    share: exactly(strength.percent.div(100)),
    isStated: true,
    byVolume: given.strength.percentByVolume.div(100),
  };
}

const exactly = (share: Decimal): Estimate<Decimal> => ({ low: share, likely: share, high: share });

/** The mass of a volume, g. */
function measured(volume: VolumeInput | undefined, holds: Held | undefined): Printed | undefined {
  if (volume === undefined) return undefined;
  const { value, text, unit } = printedQuantity(volume, unitsByKind().volume);
  const density = holds === undefined ? undefined : benchDensity(holds.solvent, holds.share);
  if (density === undefined) return undefined;
  return {
    low: value.times(density.low),
    value: value.times(density.likely),
    high: value.times(density.high),
    text,
    unit,
  };
}

/** The solvent in so many grams of an addition, over its assay; all of it where it has only a name. */
export function pureIn({ holds }: PotAddition, grams: Decimal): Estimate<Decimal> {
  return mapEnds(holds?.share ?? exactly(ONE), (share) => grams.times(share));
}
