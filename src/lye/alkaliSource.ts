import {
  fieldPath,
  frozen,
  readShape,
  refuse,
  ZERO,
  type Decimal,
  type Fields,
  type Limits,
} from '../numbers/index.js';
import {
  mapEnds,
  readPercent,
  readRanged,
  type Estimate,
  type Fraction,
  type FractionInput,
  type OneChoice,
  type Ranged,
} from '../quantities/index.js';
import { hydroxidePerCarbonate, type Alkali } from './alkali.js';
import { CARBONATE, SOLID, STRENGTH } from './limits.js';

/** Assay of a solid whose hydroxide is stated by itself. */
export interface HydroxideAssay {
  /** Hydroxide, share of the solid by mass; `at least 98 %` is the range from 98 to 100. */
  readonly hydroxide: Ranged<FractionInput>;
  readonly totalAlkali?: never;
  readonly carbonate?: never;
}

/** Assay of a solid as pharmacopoeias state it: all alkali as hydroxide, and the carbonate inside it. */
export interface TotalAlkaliAssay {
  /** Total alkali as hydroxide, carbonate included, share of the solid by mass. */
  readonly totalAlkali: Ranged<FractionInput>;
  /** Carbonate (Na2CO3 or K2CO3), share of the solid by mass. */
  readonly carbonate: Ranged<FractionInput>;
  readonly hydroxide?: never;
}

/** What a solid alkali holds. */
export type SolidAssay = HydroxideAssay | TotalAlkaliAssay;

/** What a lye holds. */
export interface SolutionStrength {
  /** Hydroxide, share of the whole solution by mass. */
  readonly hydroxide: Ranged<FractionInput>;
}

/** An alkali as it stands in the store: a solid by its assay or a solution by its strength. */
export type AlkaliSource = OneChoice<{
  /** Flakes, pellets or powder, by their assay. */
  readonly solid: SolidAssay;
  /** A lye, by its strength. */
  readonly solution: SolutionStrength;
}>;

/** An alkali source as read; shares are fractions of one. */
export interface ReadSource {
  readonly state: 'solid' | 'solution';
  /** True hydroxide. */
  readonly hydroxide: Estimate<Decimal>;
  /** All alkali as hydroxide; with the carbonate it spans what `hydroxide` can be. */
  readonly totalAlkali: Estimate<Decimal>;
  /** Carbonate, where the assay states it. */
  readonly carbonate?: Estimate<Decimal>;
  /** The source as given, in canonical units. */
  readonly given: AlkaliSource;
}

const EXPECTED = '{ solid: { hydroxide: { percent: 98 } } } or { solution: { hydroxide: { percent: 50 } } }';

/**
 * Reads an alkali source.
 *
 * Total alkali counts carbonate as hydroxide; true hydroxide is `total − carbonate·2·M(hydroxide)/M(carbonate)`.
 *
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` and the faults of a quantity
 */
export function readAlkaliSource(path: string, value: unknown, alkali: Alkali): ReadSource {
  return alkaliSourceFrom(path, readShape(path, value, ['solid', 'solution'], EXPECTED), alkali);
}

/** Reads an alkali source among the fields of something else; an empty path is that of the input itself. */
export function alkaliSourceFrom(path: string, { solid, solution }: Fields, alkali: Alkali): ReadSource {
  const whole = path === '' ? 'input' : path;
  if (solid !== undefined && solution !== undefined) {
    refuse('bad-shape', whole, 'either solid or solution', 'both');
  }
  if (solution !== undefined) return readSolution(fieldPath(path, 'solution'), solution);
  if (solid === undefined) refuse('missing', whole, 'solid or solution', 'neither');
  return readSolid(fieldPath(path, 'solid'), solid, alkali);
}

function readShares(path: string, value: unknown, limits: Limits): Estimate<Decimal> {
  return readRanged(path, value, (at, part) => readPercent(at, part, limits));
}

const fractions = (percents: Estimate<Decimal>): Estimate<Decimal> => mapEnds(percents, (percent) => percent.div(100));
const shown = (percents: Estimate<Decimal>): Estimate<Fraction> => mapEnds(percents, (percent) => frozen({ percent }));

function readSolution(path: string, value: unknown): ReadSource {
  const { hydroxide } = readShape(path, value, ['hydroxide']);
  const percents = readShares(`${path}.hydroxide`, hydroxide, STRENGTH);
  const hydroxideShares = fractions(percents);
  return {
    state: 'solution',
    hydroxide: hydroxideShares,
    totalAlkali: hydroxideShares,
    given: frozen({ solution: frozen({ hydroxide: shown(percents) }) }),
  };
}

function readSolid(path: string, value: unknown, alkali: Alkali): ReadSource {
  const fields = readShape(path, value, ['hydroxide', 'totalAlkali', 'carbonate']);
  if (fields['hydroxide'] !== undefined) {
    if (fields['totalAlkali'] !== undefined || fields['carbonate'] !== undefined) {
      refuse('bad-shape', path, 'either hydroxide, or totalAlkali with carbonate', 'both');
    }
    const percents = readShares(`${path}.hydroxide`, fields['hydroxide'], SOLID);
    const hydroxideShares = fractions(percents);
    return {
      state: 'solid',
      hydroxide: hydroxideShares,
      totalAlkali: hydroxideShares,
      given: frozen({ solid: frozen({ hydroxide: shown(percents) }) }),
    };
  }
  const total = readShares(`${path}.totalAlkali`, fields['totalAlkali'], SOLID);
  const carbonate = readShares(`${path}.carbonate`, fields['carbonate'], CARBONATE);
  const as = hydroxidePerCarbonate(alkali);
  const hydroxide = frozen({
    low: total.low.minus(carbonate.high.times(as)),
    likely: total.likely.minus(carbonate.likely.times(as)),
    high: total.high.minus(carbonate.low.times(as)),
  });
  if (hydroxide.low.lte(ZERO)) {
    refuse('out-of-range', `${path}.carbonate`, 'less alkali than the total', carbonate.high.toString());
  }
  return {
    state: 'solid',
    hydroxide: fractions(hydroxide),
    totalAlkali: fractions(total),
    carbonate: fractions(carbonate),
    given: frozen({ solid: frozen({ totalAlkali: shown(total), carbonate: shown(carbonate) }) }),
  };
}
