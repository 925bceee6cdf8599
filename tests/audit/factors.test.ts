/** What a slip is looked for among: neighbours in a list of fats, units that fats are measured in, and figures miswritten. */
import { fat, fats, mixtureDensity, type SolventId } from 'laurate';
import { describe, expect, it } from 'vitest';
import { benchDensity } from '../../src/audit/solventDensities.js';
import { fatUnitFactors } from '../../src/audit/slips/unitSlips.js';
import { Decimal } from '../../src/numbers/index.js';
import { slipsOfThePen } from '../../src/audit/slips/slipsOfThePen.js';
import { neighboursOf } from '../../src/audit/slips/valueSlips.js';

describe('neighbours in the list of fats', () => {
  const neighbours = (id: string): readonly string[] => neighboursOf(fat(id)).flatMap((one) => one.id ?? []);

  it('stand on both sides, and see each other', () => {
    const counts = fats.map(({ id }) => {
      for (const other of neighbours(id)) expect(neighbours(other)).toContain(id);
      return neighbours(id).length;
    });
    // only the first and the last have but one
    expect(counts.sort()).toEqual([1, 1, ...Array.from({ length: fats.length - 2 }, () => 2)]);
  });

  it('are the nearest names before and after', () => {
    const names = fats.map(({ name }) => name);
    for (const { id, name } of fats) {
      const before = names.filter((one) => one < name).reduce((last, one) => (one > last ? one : last), '');
      const after = names.filter((one) => one > name).reduce((first, one) => (one < first ? one : first), '\uFFFF');
      const beside = neighboursOf(fat(id)).map((one) => one.name);
      expect(beside).toEqual([before, after].filter((one) => names.includes(one)));
    }
  });
});

describe('a fluid ounce of fat printed as an ounce', () => {
  it.each([
    ['light, hot; recalled', '0.86'],
    ['castor oil, the densest; recalled', '0.961'],
  ])('%s, %s g/mL, lies inside the factor', (_, density) => {
    const { factor } = fatUnitFactors('oz').find(({ meant }) => meant === 'usFlOz') ?? expect.unreachable();
    const ounces = (29.5735 * Number(density)) / 28.3495;
    expect(factor.low.lte(ounces) && factor.high.gte(ounces)).toBe(true);
  });
});

describe('what a volume of spirit weighs', () => {
  const dense = (low: string, high = low) => {
    const span = benchDensity('ethanol', { low: new Decimal(low), likely: new Decimal(low), high: new Decimal(high) });
    return span && [span.low, span.likely, span.high].map((gPerML) => gPerML.toFixed(5));
  };

  it('goes from that of a warm bench to that of a cold one', () => {
    // OIML R 22, general formula: 90 % by mass at 25, 20 and 15 °C
    expect(dense('0.90')).toEqual(['0.81353', '0.81788', '0.82220']);
  });

  it('and over its assay', () => {
    // 95 % at 25 °C
    expect(dense('0.90', '0.95')).toEqual(['0.79981', '0.81788', '0.82220']);
  });
});

describe('what a volume of another liquid weighs', () => {
  const of = (solvent: SolventId, share: string) => {
    const assay = new Decimal(share);
    return benchDensity(solvent, { low: assay, likely: assay, high: assay })?.likely.toFixed(4);
  };

  it('is that of its mixture with water where there is a table, else of what is nearly pure', () => {
    const table = (solvent: 'glycerol' | 'propylene-glycol', percent: number) =>
      mixtureDensity({ solvent, share: { percent }, temperature: { celsius: 20 } }).density.gPerML.toFixed(4);
    expect(of('propylene-glycol', '0.4')).toBe(table('propylene-glycol', 40));
    expect(of('glycerol', '0.5')).toBe(table('glycerol', 50));
    expect([of('dipropylene-glycol', '1'), of('dipropylene-glycol', '0.5'), of('sorbitol', '0.7')]).toEqual(['1.0206', undefined, undefined]);
  });
}); // prettier-ignore

describe('a figure miswritten', () => {
  const meant = (text: string, code: string): readonly string[] =>
    slipsOfThePen(text).flatMap((slip) =>
      slip.code === code ? [`${slip.meant.toString()} by ${slip.step.toString()}`] : [],
    );

  it.each<[string, readonly string[]]>([
    ['4.5', ['5.4 by 0.1']],
    ['123', ['213 by 1', '132 by 1']],
    ['11', []],
    ['-12', ['-21 by 1']],
    ['7', []],
  ])('%s may have had two digits exchanged: %j', (text, expected) => {
    expect(meant(text, 'digits-exchanged')).toEqual(expected);
  });

  it('or its point moved, to the digits that are left', () => {
    expect(meant('4.5', 'decimal-point-moved')).toEqual([
      '0.0045 by 0.0001', '0.045 by 0.001', '0.45 by 0.01', '45 by 1', '450 by 1', '4500 by 1',
    ]); // prettier-ignore
  });

  it.each(['1e5', '2.5E-3', '1.2345678901234567890'])('but nobody writes %s by hand', (text) => {
    expect(slipsOfThePen(text)).toEqual([]);
    expect(slipsOfThePen('1.234567890123456789').length).toBeGreaterThan(6); // 20 characters
  });
});
