import { lyeDensity } from '../../lye/index.js';
import { Decimal, unlessRefused, ONE } from '../../numbers/index.js';
import { mapEnds, unitsByKind, type Estimate } from '../../quantities/index.js';
import type { PotLye } from '../pot.js';
import type { PotAddition } from '../potAdditions.js';
import { benchDensity } from '../solventDensities.js';

/** A unit that may have been meant, and how many of the printed unit one of it is. */
export interface MeantUnit {
  readonly meant: string;
  readonly factor: Estimate<Decimal>;
}

/** The units that are taken for one another at a bench; volumes stand for the mass of what they hold. */
const MASSES: Readonly<Record<string, readonly string[]>> = {
  mg: ['g'],
  g: ['oz', 'lb', 'kg'],
  kg: ['lb', 'g', 'oz'],
  oz: ['g', 'lb', 'kg'],
  lb: ['kg', 'oz', 'g'],
};
const VOLUMES: Readonly<Record<string, readonly ('mL' | 'usFlOz' | 'impFlOz')[]>> = {
  g: ['mL'],
  oz: ['usFlOz', 'impFlOz'],
};

/** The same the other way round. */
const COUNTED_AS: Readonly<Record<string, readonly string[]>> = { mL: ['g'], usFlOz: ['oz'], impFlOz: ['oz'] };
const UNIT_DENSITY: Estimate<Decimal> = { low: ONE, likely: ONE, high: ONE };

/** Oils, fats and fatty acids weigh so much, g/mL, melted or not: the published relative densities lie inside. */
const DENSITY_OF_FATS = { low: '0.85', likely: '0.92', high: '0.97' } as const;

/** Units that a fat may have been meant in. */
export function fatUnitFactors(printed: string): readonly MeantUnit[] {
  return [
    ...massFactors(printed),
    ...volumeFactors(
      printed,
      mapEnds(DENSITY_OF_FATS, (density) => new Decimal(density)),
    ),
  ];
}

/** Units that a lye may have been meant in; a volume only of a solution, whose density is known. */
export function lyeUnitFactors({ alkali, grams: { unit }, charge: { source } }: PotLye): readonly MeantUnit[] {
  const densityOf = (share: Decimal): Decimal =>
    lyeDensity({ alkali, strength: { fraction: share }, temperature: { celsius: 20 } }).density.gPerML;
  // it may be stronger than the table goes, as every solid is
  const density = unlessRefused(() => mapEnds(source.hydroxide, densityOf));
  return [...massFactors(unit), ...(density === undefined ? [] : volumeFactors(unit, density))];
}

/** Masses that stand for volumes, and volumes that were counted as masses: of a liquid whose density is known. */
export function liquidUnitFactors({ holds, isByVolume, grams: { unit } }: PotAddition): readonly MeantUnit[] {
  const density = holds === undefined ? undefined : benchDensity(holds.solvent, holds.share);
  if (density === undefined) return [];
  if (!isByVolume) return volumeFactors(unit, density);
  const { low, likely, high } = density;
  const perVolume = { low: ONE.div(high), likely: ONE.div(likely), high: ONE.div(low) };
  return (COUNTED_AS[unit] ?? []).map((meant) => {
    const ofUnits = ONE.div(volumeFactors(meant, UNIT_DENSITY).find((one) => one.meant === unit)?.factor.likely ?? ONE);
    return { meant, factor: mapEnds(perVolume, (factor) => factor.times(ofUnits)) };
  });
}

function massFactors(printed: string): readonly MeantUnit[] {
  const { mass } = unitsByKind();
  return (MASSES[printed] ?? []).map((meant) => {
    const factor = mass[meant as keyof typeof mass]
      .toCanonical(ONE, meant)
      .div(mass[printed as keyof typeof mass].toCanonical(ONE, printed));
    return { meant, factor: { low: factor, likely: factor, high: factor } };
  });
}

function volumeFactors(printed: string, density: Estimate<Decimal>): readonly MeantUnit[] {
  const { mass, volume } = unitsByKind();
  return (VOLUMES[printed] ?? []).map((meant) => {
    const mL = volume[meant].toCanonical(ONE, meant);
    const grams = mass[printed as keyof typeof mass].toCanonical(ONE, printed);
    return { meant, factor: mapEnds(density, (gPerML) => mL.times(gPerML).div(grams)) };
  });
}
