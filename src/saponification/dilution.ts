import { STRENGTH } from '../lye/index.js';
import { Decimal, frozen, readNumber, readShape, refuse, refuseKey, ZERO, type Numeric } from '../numbers/index.js';
import {
  readMass,
  readPercent,
  type Fraction,
  type FractionInput,
  type Mass,
  type MassInput,
  type OneChoice,
} from '../quantities/index.js';

/**
 * Water of a plan, all of it added to the alkali as weighed: to a strength of the whole lye; so many parts to one part of
 * alkali as weighed; as percent of the fats; as a mass; or none, where the alkali is a lye already.
 */
export type Dilution =
  | OneChoice<{
      readonly strength: FractionInput;
      readonly waterPerAlkali: Numeric;
      readonly waterPerFat: FractionInput;
      readonly water: MassInput;
    }>
  | 'as-is';

/** A dilution as it stands in `given`. */
export type GivenDilution =
  | { readonly strength: Fraction }
  | { readonly waterPerAlkali: Decimal }
  | { readonly waterPerFat: Fraction }
  | { readonly water: Mass }
  | 'as-is';

/** What the water is worked out from, in grams. */
export interface Undiluted {
  /** Alkali as weighed. */
  readonly alkali: Decimal;
  /** Pure hydroxide in it, likely. */
  readonly hydroxide: Decimal;
  readonly fats: Decimal;
  /** Whether any alkali is a solid, which must be dissolved. */
  readonly hasSolid: boolean;
}

const WAYS = ['strength', 'waterPerAlkali', 'waterPerFat', 'water'] as const;
const EXPECTED =
  "'as-is', { strength: { percent: 33 } }, { waterPerAlkali: 2 }, { waterPerFat: { percent: 38 } } or { water: { g: 300 } }";

/**
 * Reads a dilution.
 *
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` and the faults of a quantity
 */
export function readDilution(path: string, value: unknown): GivenDilution {
  if (value === 'as-is') return value;
  const fields = readShape(path, value, WAYS, EXPECTED);
  const [way, second] = Object.keys(fields);
  if (way === undefined) refuse('missing', path, EXPECTED, 'an empty object');
  if (second !== undefined) refuse('bad-shape', path, 'exactly one way of dilution', `${way} and ${second}`);
  const at = `${path}.${way}`;
  const field = fields[way];
  switch (way) {
    case 'strength':
      return frozen({ strength: frozen({ percent: readPercent(at, field, STRENGTH) }) });
    case 'waterPerAlkali':
      return frozen({ waterPerAlkali: readNumber(at, field, { min: 0, max: 100 }) });
    case 'waterPerFat':
      return frozen({ waterPerFat: frozen({ percent: readPercent(at, field, { min: 0, max: 1000 }) }) });
    case 'water':
      return frozen({ water: frozen({ g: readMass(at, field) }) });
    default:
      return refuseKey('unknown-key', path, way, WAYS);
  }
}

/** The strength that a dilution asks for, percent by mass. */
export function strengthAsked(dilution: GivenDilution): Decimal | undefined {
  return dilution !== 'as-is' && 'strength' in dilution ? dilution.strength.percent : undefined;
}

/**
 * Grams of water that a dilution adds.
 *
 * @throws CalculationError `infeasible` for a strength above that of the alkali, and for a solid left dry
 */
export function addedWater(dilution: GivenDilution, parts: Undiluted): Decimal {
  const water = waterOf(dilution, parts);
  if (water.isZero() && parts.hasSolid)
    refuse('infeasible', 'dilution', 'water: solid alkali must be dissolved', 'no water');
  return water;
}

function waterOf(dilution: GivenDilution, { alkali, hydroxide, fats }: Undiluted): Decimal {
  if (dilution === 'as-is') return ZERO;
  if ('water' in dilution) return dilution.water.g;
  if ('waterPerAlkali' in dilution) return alkali.times(dilution.waterPerAlkali);
  if ('waterPerFat' in dilution) return fats.times(dilution.waterPerFat.percent).div(100);
  const { percent } = dilution.strength;
  const water = hydroxide.times(100).div(percent).minus(alkali);
  // a strength asked for that is the alkali's own must not fail by the last digit
  if (water.lt(alkali.times('-1e-24'))) {
    const most = hydroxide.times(100).div(alkali).toDecimalPlaces(2, Decimal.ROUND_DOWN);
    refuse(
      'infeasible',
      'dilution.strength',
      `at most ${most.toString()} percent, the strength of the alkali itself`,
      percent.toString(),
    );
  }
  return Decimal.max(water, ZERO);
}
