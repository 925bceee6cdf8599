import { Decimal, refuse, type Limits } from '../../numbers/index.js';
import { canonical, readQuantity, scaled, type OneUnit, type Unit, type Units } from '../unit.js';
import { waterDensity } from '../waterDensity.js';

/**
 * Units of density. A specific gravity names the temperatures of liquid and water (°C, or °F where it says F); a
 * hydrometer scale has its own reference: Twaddell and modulus 145 at 60/60 °F, modulus 144.3 at 15/15 °C.
 */
export type DensityUnit =
  | 'gPerML'
  | 'kgPerM3'
  | 'specificGravity20_4'
  | 'specificGravity20_20'
  | 'specificGravity15_15'
  | 'specificGravity60F_60F'
  | 'twaddell'
  | 'baume145'
  | 'baume144_3';
/** A density in one of its units. */
export type DensityInput = OneUnit<DensityUnit>;
/** A density in a result, in g/mL. */
export interface Density {
  readonly gPerML: Decimal;
}

const at60F = (): Decimal => waterDensity(new Decimal(60 - 32).times(5).div(9));

/** A specific gravity is a density over that of water at the temperature named last. */
function overWater(water: () => Decimal): Unit {
  return scaled(water, 'tanaka-2001');
}

/** Degrees Twaddell: 200·(s − 1), s the specific gravity at 60/60 °F. */
function twaddell(): Unit {
  const gravity = overWater(at60F);
  return {
    toCanonical: (degrees, path) => gravity.toCanonical(degrees.div(200).plus(1), path),
    fromCanonical: (density, path) => gravity.fromCanonical(density, path).minus(1).times(200),
    source: 'simmons-appleton-1908',
  };
}

/** Degrees Baumé for liquids heavier than water: m·(1 − 1/s), with the modulus m of the scale. */
function baume(modulus: string, water: () => Decimal): Unit {
  const gravity = overWater(water);
  return {
    toCanonical: (degrees, path) => {
      if (degrees.gte(modulus)) refuse('out-of-range', path, `less than the modulus, ${modulus}`, degrees.toString());
      return gravity.toCanonical(new Decimal(modulus).div(new Decimal(modulus).minus(degrees)), path);
    },
    fromCanonical: (density, path) => {
      if (density.lte(0)) refuse('out-of-range', path, 'a density of more than 0', density.toString());
      return new Decimal(modulus).minus(new Decimal(modulus).div(gravity.fromCanonical(density, path)));
    },
    source: 'simmons-appleton-1908',
  };
}

export const densityUnits: Units<DensityUnit> = {
  gPerML: /* @__PURE__ */ canonical('si-brochure-2019'),
  kgPerM3: /* @__PURE__ */ scaled('0.001', 'si-brochure-2019'),
  specificGravity20_4: /* @__PURE__ */ overWater(() => waterDensity(4)),
  specificGravity20_20: /* @__PURE__ */ overWater(() => waterDensity(20)),
  specificGravity15_15: /* @__PURE__ */ overWater(() => waterDensity(15)),
  specificGravity60F_60F: /* @__PURE__ */ overWater(at60F),
  twaddell: /* @__PURE__ */ twaddell(),
  baume145: /* @__PURE__ */ baume('145', at60F),
  baume144_3: /* @__PURE__ */ baume('144.3', () => waterDensity(15)),
};

/** From the lightest liquids to molten metals: what lies outside is in another unit. */
const ANY_LIQUID: Limits = { min: '0.5', max: 14 };

/** Reads a density in g/mL; 0.5 to 14 unless other limits are given. */
export function readDensity(path: string, value: unknown, limits: Limits = ANY_LIQUID): Decimal {
  return readQuantity(path, value, densityUnits, limits);
}
