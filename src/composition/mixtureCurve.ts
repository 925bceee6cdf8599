import { waterDensityTo100 } from '../lye/index.js';
import { Decimal, knotsFrom, monotoneCubic, ZERO, type Knot } from '../numbers/index.js';
import type { SourceId } from '../sources/index.js';
import {
  glycerolAt20,
  glycerolByTemperature,
  propyleneGlycolByTemperature,
  sucroseAt20,
  type MixtureGrid,
} from './data/mixtureDensities.js';
import { ethanolWaterDensity } from './ethanolWater.js';
import { pureDensity } from './pureDensity.js';

/** What is on file mixed with water. */
export const MIXED_SOLVENTS = ['glycerol', 'propylene-glycol', 'ethanol', 'sucrose'] as const;
/** A substance whose mixtures with water are on file. */
export type MixedSolvent = (typeof MIXED_SOLVENTS)[number];

/** Density of a substance with water by share and temperature, within limits. */
export interface MixtureCurve {
  /** Percent by mass. */
  readonly most: number;
  /** °C. */
  readonly coldest: number;
  readonly hottest: number;
  /** g/mL of a share in percent by mass. */
  readonly at: (percent: Decimal, celsius: Decimal) => Decimal;
  readonly basis: readonly SourceId[];
}

const TWENTY = 20;

/** The curve of each. */
export function mixtureCurve(solvent: MixedSolvent): MixtureCurve {
  switch (solvent) {
    case 'ethanol':
      return {
        most: 100,
        coldest: -20,
        hottest: 40,
        at: (percent, celsius) => ethanolWaterDensity(percent.div(100), celsius),
        basis: ['oiml-r-22'],
      };
    case 'glycerol':
      return {
        most: 100,
        coldest: 15,
        hottest: 40,
        at: (percent, celsius) => glycerolCurve(celsius).at(percent),
        basis: [glycerolAt20.source, glycerolByTemperature.source, 'vdi-heat-atlas', 'kell-1975'],
      };
    case 'propylene-glycol':
      return {
        most: 60,
        coldest: 0,
        hottest: 60,
        at: (percent, celsius) => throughWater(knotsAt(propyleneGlycolByTemperature, celsius), celsius).at(percent),
        basis: [propyleneGlycolByTemperature.source, 'kell-1975'],
      };
    case 'sucrose':
      return {
        most: 84,
        coldest: TWENTY,
        hottest: TWENTY,
        at: (percent, celsius) => throughWater(knotsAt(sucroseAt20, celsius), celsius).at(percent),
        basis: [sucroseAt20.source, 'kell-1975'],
      };
  }
}

const throughWater = (knots: readonly Knot[], celsius: Decimal) =>
  monotoneCubic([{ x: ZERO, y: waterDensityTo100(celsius) }, ...knots]);

/** The figures of a grid at one temperature, by share. */
function knotsAt({ celsius: temperatures, rows }: MixtureGrid, celsius: Decimal): readonly Knot[] {
  return rows.map(([percent, ...figures]) => {
    const [first, second] = knotsFrom(temperatures, figures);
    const y = second === undefined ? first?.y : monotoneCubic(knotsFrom(temperatures, figures)).at(celsius);
    return { x: new Decimal(percent), y: y ?? ZERO };
  });
}

/**
 * Density of air, g/mL. The column of gravities was weighed in air: with it allowed for, the column meets a second
 * table within 0.0001 g/mL and a third within 0.0004; without it, it lies up to 0.0003 above the second.
 */
const AIR = '0.0012';

/** Gravities of one column, moved to a temperature by the differences of other tables. */
function glycerolCurve(celsius: Decimal) {
  const twenty = new Decimal(TWENTY);
  const pure = pureDensity('glycerol').at;
  const water = waterDensityTo100(twenty);
  const [there, at20] = [knotsAt(glycerolByTemperature, celsius), knotsAt(glycerolByTemperature, twenty)];
  const change = monotoneCubic([
    { x: ZERO, y: waterDensityTo100(celsius).minus(water) },
    ...there.map(({ x, y }, row) => ({ x, y: y.minus(at20[row]?.y ?? ZERO) })),
    { x: new Decimal(100), y: pure(celsius).minus(pure(twenty)) },
  ]);
  const gravities = knotsAt(glycerolAt20, twenty);
  return throughWater(
    gravities.map(({ x, y }) => ({ x, y: y.times(water.minus(AIR)).plus(AIR).plus(change.at(x)) })),
    celsius,
  );
}
