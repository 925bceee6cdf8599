/** What the tables of densities say of one another, and of themselves: the figures that DEVELOPERS.md and the docs state. */
import { lyeDensity } from 'laurate';
import { describe, expect, it } from 'vitest';
import { kohAt15, kohAt20, naohAt20, naohByTemperature } from '../../src/lye/data/lyeDensities.js';
import { densityColumn } from '../../src/lye/densityColumn.js';
import { kohDensityByCorrelation } from '../../src/lye/kohDensityByCorrelation.js';
import { waterDensityTo100 } from '../../src/lye/waterDensityTo100.js';
import { Decimal, knotsFrom, monotoneCubic, type Knot } from '../../src/numbers/index.js';
import { waterDensity } from '../../src/quantities/waterDensity.js';

const d = (value: number | string): Decimal => new Decimal(value);
const knot = (x: string, y: string): Knot => ({ x: d(x), y: d(y) });
const twenty = d(20);

/** The largest miss when each inner knot is taken out and worked out from the rest. */
function leaveOneOut(knots: readonly Knot[]): Decimal {
  const misses = knots.slice(1, -1).map(({ x, y }) =>
    monotoneCubic(knots.filter((other) => !other.x.eq(x)))
      .at(x)
      .minus(y)
      .abs(),
  );
  return Decimal.max(...misses);
}

const naohKnots = [
  { x: d(0), y: waterDensityTo100(twenty) },
  ...naohAt20.rows.map(([x, y]) => knot(x, y)),
  ...naohByTemperature.rows.filter(([x]) => Number(x) > 40).map(([x, , , y = '']) => knot(x, y)),
];

describe('the table of NaOH', () => {
  it('at 20 °C meets each of its rows from the others within 0.00014 g/mL, where 0.0003 was aimed at', () => {
    expect(naohKnots.map(({ x }) => x.toString()).slice(-3)).toEqual(['40', '48', '50']);
    expect(leaveOneOut(naohKnots).toFixed(5)).toBe('0.00013');
  });

  it('the recalled 20 °C column and the one that was read differ by at most 0.0002 g/mL', () => {
    const read = new Map(naohAt20.rows);
    const apart = naohByTemperature.rows.flatMap(([percent = '', , , at20 = '']) => {
      const other = read.get(percent);
      return other === undefined ? [] : [d(at20).minus(other).abs()];
    });
    expect(apart).toHaveLength(12);
    expect(Decimal.max(...apart).toString()).toBe('0.0002');
  });

  it('between its temperatures meets each from the others within 0.0004 g/mL', () => {
    const misses = naohByTemperature.rows.map(([, ...densities]) =>
      leaveOneOut(knotsFrom(naohByTemperature.celsius, densities)),
    );
    expect(Decimal.max(...misses).toFixed(5)).toBe('0.00037'); // 1 % at 80 °C
  });

  it('gives its rows again, and the rows of the other temperatures within what the two 20 °C columns differ by', () => {
    for (const [percent, density] of naohAt20.rows) {
      expect(at('naoh', percent, 20).toString()).toBe(d(density).toString());
    }
    for (const [percent = '', ...densities] of naohByTemperature.rows) {
      naohByTemperature.celsius.forEach((celsius, place) => {
        expect(
          at('naoh', percent, celsius)
            .minus(densities[place] ?? '')
            .abs()
            .lte('0.0002'),
        ).toBe(true);
      });
    }
  });
});

const at = (alkali: 'naoh' | 'koh', percent: string | number, celsius: string | number): Decimal =>
  lyeDensity({ alkali, strength: { percent }, temperature: { celsius } }).density.gPerML;

describe('the table of KOH', () => {
  it('lies within 0.0009 g/mL of the correlation at 15 °C', () => {
    const correlation = kohDensityByCorrelation(d(15));
    const apart = kohAt15.rows.map(([percent, density]) => correlation(d(percent)).minus(density).abs());
    expect(Decimal.max(...apart).toFixed(5)).toBe('0.00085');
  });

  it('meets each of its rows from the others within 0.0001 g/mL', () => {
    const knots = [{ x: d(0), y: waterDensityTo100(d(15)) }, ...kohAt15.rows.map(([x, y]) => knot(x, y))];
    expect(leaveOneOut(knots).toFixed(5)).toBe('0.00007');
  });

  it('the column set aside lies 0.3 % below it at 10 %, and 0.4 to 0.7 % from 20 to 50 %', () => {
    const below = new Map(
      kohAt20.rows.map(([percent, density]) => [
        percent,
        at('koh', percent, 20).minus(density).div(density).times(100).toFixed(2),
      ]),
    );
    expect(['10', '20', '30', '40', '50'].map((percent) => below.get(percent))).toEqual(['0.29', '0.41', '0.55', '0.62', '0.62']); // prettier-ignore
  });

  it('the correlation gives the densities evaluated from its constants elsewhere', () => {
    // strength, then g/mL at 15, 40 and 80 °C, four decimals
    for (const [percent = 0, ...densities] of [
      [10, 1.0918, 1.0826, 1.0582],
      [30, 1.2913, 1.2781, 1.2477],
      [50, 1.5149, 1.4998, 1.4677],
    ]) {
      const got = [15, 40, 80].map((celsius) => kohDensityByCorrelation(d(celsius))(d(percent)).toFixed(4));
      expect(got).toEqual(densities.map((density) => density.toFixed(4)));
    }
  });
});

describe('water', () => {
  it('has the densities evaluated from the same constants elsewhere, 0 to 100 °C', () => {
    const got = [0, 4, 15, 20, 25, 40, 60, 80, 100].map((celsius) => waterDensityTo100(d(celsius)).toFixed(5));
    expect(got).toEqual(['0.99984', '0.99997', '0.99910', '0.99820', '0.99704', '0.99222', '0.98320', '0.97180', '0.95836']); // prettier-ignore
  });

  it('agrees with the formula that the hydrometer scales use within 0.000003 g/mL, 0 to 40 °C', () => {
    for (let celsius = 0; celsius <= 40; celsius += 1) {
      expect(waterDensityTo100(d(celsius)).minus(waterDensity(celsius)).abs().lte('0.000004'), String(celsius)).toBe(
        true,
      );
    }
  });
});

describe('every column', () => {
  it('rises with strength at every temperature, and falls with temperature from 4 °C on at every strength', () => {
    for (const [alkali, coldest, hottest] of [
      ['naoh', 0, 100],
      ['koh', 15, 80],
    ] as const) {
      let cooler: Decimal[] = [];
      for (let celsius = coldest; celsius <= hottest; celsius += 4) {
        const { curve } = densityColumn(alkali, 'recommended', d(celsius));
        const densities = Array.from({ length: 101 }, (_, half) => curve.at(d(half).div(2)));
        densities.slice(1).forEach((density, place) => {
          expect(density.gt(densities[place] ?? 0), `${alkali} ${String(place / 2)} % ${String(celsius)} °C`).toBe(
            true,
          );
        });
        if (celsius > 4) {
          densities.forEach((density, place) => {
            expect(density.lt(cooler[place] ?? 9), `${alkali} ${String(place / 2)} % ${String(celsius)} °C`).toBe(true);
          });
        }
        cooler = densities;
      }
    }
  });
});
