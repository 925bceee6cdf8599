/** What the tables of mixtures say of one another, and of themselves: the figures that the docs state. */
import { mixtureDensity, solventDensity, type MixedSolvent } from 'laurate';
import { describe, expect, it } from 'vitest';
import {
  glycerolAt20,
  glycerolByTemperature,
  propyleneGlycolByTemperature,
  sucroseAt20,
  type MixtureGrid,
} from '../../src/composition/data/mixtureDensities.js';
import { waterDensityTo100 } from '../../src/lye/waterDensityTo100.js';
import { Decimal, knotsFrom, monotoneCubic, type Knot } from '../../src/numbers/index.js';

const d = (value: number | string): Decimal => new Decimal(value);
const at = (solvent: MixedSolvent, percent: number | string, celsius: number | string): Decimal =>
  mixtureDensity({ solvent, share: { percent }, temperature: { celsius } }).density.gPerML;

/** The largest miss when each inner knot is taken out and worked out from the rest. */
function leaveOneOut(knots: readonly Knot[]): string {
  const misses = knots.slice(1, -1).map(({ x, y }) =>
    monotoneCubic(knots.filter((other) => !other.x.eq(x)))
      .at(x)
      .minus(y)
      .abs(),
  );
  return Decimal.max(...misses).toFixed(5);
}

const column = ({ rows, celsius }: MixtureGrid, place: number, scale = d(1)): Knot[] => [
  { x: d(0), y: waterDensityTo100(d(celsius[place] ?? '')) },
  ...rows.map(([percent, ...figures]) => ({ x: d(percent), y: d(figures[place] ?? '').times(scale) })),
];

describe('glycerol with water', () => {
  it('each row from the others, at twice their distance, within 0.00014 g/mL', () => {
    expect(leaveOneOut(column(glycerolAt20, 0, waterDensityTo100(d(20))))).toBe('0.00013');
  });

  it('gives pure glycerol as the liquid is, and water at the other end', () => {
    expect(at('glycerol', 100, 20).minus('1.2611').abs().lt('0.0001')).toBe(true);
    for (const celsius of [15, 20, 31, 40]) {
      expect(at('glycerol', 0, celsius).eq(waterDensityTo100(d(celsius)))).toBe(true);
    }
  });

  it('moves with temperature as the second table does', () => {
    for (const [percent, ...figures] of glycerolByTemperature.rows) {
      const [, , at20 = '', at25 = '', at40 = ''] = figures;
      expect(at('glycerol', percent, 25).minus(at('glycerol', percent, 20)).toFixed(6)).toBe(d(at25).minus(at20).toFixed(6));
      expect(at('glycerol', percent, 40).minus(at('glycerol', percent, 20)).toFixed(6)).toBe(d(at40).minus(at20).toFixed(6));
    }
  }); // prettier-ignore
});

describe('propylene glycol with water', () => {
  it('each row from the others within 0.0004 g/mL, and each temperature within 0.00013', () => {
    const byShare = propyleneGlycolByTemperature.celsius.map((_, place) => leaveOneOut(column(propyleneGlycolByTemperature, place)));
    expect(byShare).toEqual(['0.00037', '0.00040', '0.00037', '0.00030', '0.00033']);
    const byTemperature = propyleneGlycolByTemperature.rows.map(([, ...figures]) =>
      leaveOneOut(knotsFrom(propyleneGlycolByTemperature.celsius, figures)),
    );
    expect(byTemperature.sort().at(-1)).toBe('0.00013');
  }); // prettier-ignore

  it('gives its rows again', () => {
    for (const [percent, ...figures] of propyleneGlycolByTemperature.rows) {
      propyleneGlycolByTemperature.celsius.forEach((celsius, place) => {
        expect(at('propylene-glycol', percent, celsius).eq(figures[place] ?? '')).toBe(true);
      });
    }
  });
});

describe('sucrose with water', () => {
  it('each row from the others, at twice their distance, within 0.00014 g/mL', () => {
    expect(leaveOneOut(column(sucroseAt20, 0))).toBe('0.00014');
  });

  it('lies within 0.5 % of the solid’s density mixed without shrinking, which the volume of a batch takes', () => {
    const solid = solventDensity({ solvent: 'sucrose', temperature: { celsius: 17 } }).density.gPerML;
    for (const percent of [10, 20, 30, 40, 50, 60, 70, 80]) {
      const ideal = d(100).div(
        d(percent)
          .div(solid)
          .plus(d(100 - percent).div(waterDensityTo100(d(20)))),
      );
      expect(at('sucrose', percent, 20).div(ideal).minus(1).abs().lt('0.0055')).toBe(true);
    }
  });

  it('as does a sorbitol syrup of 70.5 % dry substance, measured at 1.301 g/mL', () => {
    const solid = solventDensity({ solvent: 'sorbitol', temperature: { celsius: 20 } }).density.gPerML;
    const ideal = d(100).div(
      d('70.5')
        .div(solid)
        .plus(d('29.5').div(waterDensityTo100(d(20)))),
    );
    expect(d('1.301').div(ideal).minus(1).toFixed(4)).toBe('0.0005');
  });
});

describe('ethanol with water', () => {
  it('is denser than unmixed by at most 3.7 %, which the volume of a batch allows for', () => {
    const pure = at('ethanol', 100, 20);
    const shrunk = Array.from({ length: 99 }, (_, i) => i + 1).map((percent) => {
      const ideal = d(100).div(
        d(percent)
          .div(pure)
          .plus(d(100 - percent).div(waterDensityTo100(d(20)))),
      );
      return at('ethanol', percent, 20).div(ideal).minus(1);
    });
    expect(Decimal.max(...shrunk).toFixed(4)).toBe('0.0368');
  });

  it('of no strength is water, as the polynomial has it', () => {
    for (const celsius of [0, 20, 40]) {
      expect(at('ethanol', 0, celsius).minus(waterDensityTo100(d(celsius))).abs().lt('0.00002')).toBe(true);
    }
  }); // prettier-ignore
});
