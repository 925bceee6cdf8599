import { Decimal, knotsFrom, monotoneCubic, refuse, ZERO, type Curve, type Knot } from '../numbers/index.js';
import type { SourceId } from '../sources/index.js';
import type { Alkali } from './alkali.js';
import { kohAt15, kohAt20, naohAt20, naohByTemperature, type DensityColumn } from './data/lyeDensities.js';
import { kohDensityByCorrelation } from './kohDensityByCorrelation.js';
import { waterDensityTo100 } from './waterDensityTo100.js';

/**
 * Which table of densities is read: the one recommended here, or the columns for 20 °C of one handbook alone, all of
 * them read (`crc-102`: NaOH to 40 %; KOH to 50 %, below all other tables).
 */
export type LyeDensityTable = 'recommended' | 'crc-102';

export const LYE_DENSITY_TABLES = ['recommended', 'crc-102'] as const;

/** One alkali's density by strength at one temperature. */
export interface ColumnAtTemperature {
  /** Strength in percent by mass, density in g/mL. */
  readonly curve: Curve;
  /** Water, and its density. */
  readonly first: Knot;
  /** The strongest lye in it, percent by mass, and its density. */
  readonly last: Knot;
  readonly basis: readonly SourceId[];
}

/** A table as parsed: knots at its own temperature, and what another temperature adds to each. */
interface ParsedTable {
  /** Knots of rising strength; the first is water. */
  readonly knots: readonly Knot[];
  readonly coldest: number;
  readonly hottest: number;
  /** What the density at a strength changes by from the temperature of the knots to another, g/mL. */
  readonly change: (celsius: Decimal) => (percent: Decimal) => Decimal;
  readonly basis: readonly SourceId[];
}

const parsedTables = new Map<string, ParsedTable>();

/** The table of an alkali, parsed when first used. */
function tableOf(alkali: Alkali, table: LyeDensityTable): ParsedTable {
  const name = `${alkali} ${table}`;
  let parsed = parsedTables.get(name);
  if (parsed === undefined) {
    const recommended = alkali === 'naoh' ? naohTable : kohTable;
    parsed = table === 'crc-102' ? asRead(alkali) : recommended();
    parsedTables.set(name, parsed);
  }
  return parsed;
}

function knotsOf({ rows }: DensityColumn, celsius: number): readonly Knot[] {
  const water = { x: ZERO, y: waterDensityTo100(new Decimal(celsius)) };
  return [water, ...rows.map(([percent, density]) => ({ x: new Decimal(percent), y: new Decimal(density) }))];
}

/** One handbook's column for 20 °C, and nothing added to it but water. */
function asRead(alkali: Alkali): ParsedTable {
  const column = alkali === 'naoh' ? naohAt20 : kohAt20;
  const change = () => () => ZERO;
  return {
    knots: knotsOf(column, 20),
    coldest: 20,
    hottest: 20,
    change,
    basis: [column.source, 'kell-1975'],
  };
}

/**
 * NaOH: the fine column for 20 °C that was read, carried on by the recalled table where it ends at 40 %; other
 * temperatures by that table's differences from its own 20 °C.
 */
function naohTable(): ParsedTable {
  const byTemperature = naohByTemperature.rows.map(([percent, ...densities]) => ({
    percent: new Decimal(percent),
    densities: monotoneCubic(knotsFrom(naohByTemperature.celsius, densities)),
  }));
  const twenty = new Decimal(20);
  const fine = knotsOf(naohAt20, 20);
  const strongest = new Decimal(40);
  const carriedOn = byTemperature
    .filter(({ percent }) => percent.gt(strongest))
    .map(({ percent, densities }) => ({ x: percent, y: densities.at(twenty) }));
  const waterAt20 = waterDensityTo100(twenty);
  return {
    knots: [...fine, ...carriedOn],
    coldest: 0,
    hottest: 100,
    change: (celsius) =>
      monotoneCubic([
        { x: ZERO, y: waterDensityTo100(celsius).minus(waterAt20) },
        ...byTemperature.map(({ percent, densities }) => ({
          x: percent,
          y: densities.at(celsius).minus(densities.at(twenty)),
        })),
      ]).at,
    basis: ['crc-102-2021', 'perry-densities', 'kell-1975'],
  };
}

/** KOH: the table for 15 °C; other temperatures by the differences of the correlation, over the range it was tried on. */
function kohTable(): ParsedTable {
  const base = new Decimal(15);
  const atBase = kohDensityByCorrelation(base);
  return {
    knots: knotsOf(kohAt15, 15),
    coldest: 15,
    hottest: 80,
    change: (celsius) => {
      const there = kohDensityByCorrelation(celsius);
      return (percent) => there(percent).minus(atBase(percent));
    },
    basis: ['perry-densities', 'laliberte-2009', 'kell-1975'],
  };
}

/**
 * The density of one alkali's lye by strength at one temperature: the table's knots moved to that temperature, and a
 * monotone cubic through them.
 *
 * @throws CalculationError `outside-table` for a temperature the table does not cover
 */
export function densityColumn(alkali: Alkali, table: LyeDensityTable, celsius: Decimal): ColumnAtTemperature {
  const { knots, coldest, hottest, change, basis } = tableOf(alkali, table);
  if (celsius.lt(coldest) || celsius.gt(hottest)) {
    const range = coldest === hottest ? `${String(coldest)} °C alone` : `${String(coldest)} to ${String(hottest)} °C`;
    refuse('outside-table', 'temperature', `${range}, which the table of ${alkali} covers`, `${celsius.toString()} °C`);
  }
  const changeAt = change(celsius);
  const moved = knots.map(({ x, y }) => ({ x, y: y.plus(changeAt(x)) }));
  return {
    curve: monotoneCubic(moved),
    first: moved.reduce((water) => water),
    last: moved.reduce((_, stronger) => stronger),
    basis,
  };
}
