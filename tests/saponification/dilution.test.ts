/** The ways of diluting a lye, as {@link planLye} takes them. */
import fc from 'fast-check';
import { fatFromCertificate, planLye, type AlkaliSource, type Dilution } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

// 1 kg that wants exactly 200 g of pure NaOH at no superfat
const fats = [
  {
    fat: fatFromCertificate({ name: 'A lot', kind: 'triglyceride', saponificationValue: { gNaohPerG: '0.2' } }),
    mass: { kg: 1 },
  },
];
const plan = (naoh: AlkaliSource, dilution: Dilution) =>
  planLye({ fats, alkali: { naoh }, target: { superfat: { percent: 0 } }, dilution });
const water = (naoh: AlkaliSource, dilution: Dilution): string => plan(naoh, dilution).weigh.water.g.toFixed(6);
const solid = (percent: number | string): AlkaliSource => ({ solid: { hydroxide: { percent } } });
const solution = (percent: number | string): AlkaliSource => ({ solution: { hydroxide: { percent } } });

describe('dilution: worked by hand, for 200 g of NaOH on 1 kg of fat', () => {
  it.each<[string, AlkaliSource, Dilution, string]>([
    ['a solid of 100 % to 25 %', solid(100), { strength: { percent: 25 } }, '600.000000'], // 200 / 0.25 - 200
    ['a solid of 80 % to 25 %', solid(80), { strength: { percent: 25 } }, '550.000000'], // 800 - 250
    ['a 50 % lye to 25 %', solution(50), { strength: { fraction: '0.25' } }, '400.000000'], // 800 - 400
    ['a 50 % lye to its own 50 %', solution(50), { strength: { percent: 50 } }, '0.000000'],
    ['two parts to a solid of 80 %', solid(80), { waterPerAlkali: 2 }, '500.000000'], // 2 * 250: alkali as weighed
    ['half a part to a 50 % lye', solution(50), { waterPerAlkali: '0.5' }, '200.000000'], // 0.5 * 400
    ['38 % of the fat', solid(100), { waterPerFat: { percent: 38 } }, '380.000000'],
    ['a mass', solid(100), { water: { lb: 1 } }, '453.592370'],
    ['no more to a 50 % lye', solution(50), 'as-is', '0.000000'],
    ['no more to a 50 % lye, said as a mass', solution(50), { water: { g: 0 } }, '0.000000'],
  ])('%s', (_what, naoh, dilution, expected) => {
    expect(water(naoh, dilution)).toBe(expected);
  }); // prettier-ignore

  it('is told in what was given', () => {
    expect(plan(solution(50), 'as-is').given.dilution).toBe('as-is');
    const { dilution } = plan(solid(98), { waterPerAlkali: 2 }).given;
    expect(String((dilution as { waterPerAlkali: unknown }).waterPerAlkali)).toBe('2');
  });
});

describe('dilution: laws', () => {
  it('a strength asked for is reached', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 750 }), fc.integer({ min: 0, max: 600 }), fc.boolean(), (want, more, dry) => {
        const own = Math.min(750, want + more);
        const from = dry ? solid(`${String(Math.max(100, own + 1))}e-1`) : solution(`${String(own)}e-1`);
        const { strength } = plan(from, { strength: { percent: `${String(want)}e-1` } }).lye;
        // 34 digits through a division and its inverse
        expect(deviation(String(strength.likely.percent), want / 10).lte('1e-15')).toBe(true);
        expect(deviation(String(strength.likely.percent), `${String(want)}e-1`).lte('1e-28')).toBe(true);
      }),
      { numRuns: 300 },
    ); // prettier-ignore
  });

  it('the strength of a mixture: pure hydroxide over all of the lye', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 300, max: 1000 }), (g, assay) => {
        const made = plan(solid(`${String(assay)}e-1`), { water: { g } });
        const expected = made.weigh.naoh.g.times(assay).div(10).div(made.weigh.naoh.g.plus(g));
        expect(deviation(String(made.lye.strength.likely.percent), String(expected)).lte('1e-31')).toBe(true);
      }),
    );
  });
});

describe('dilution: refusals', () => {
  it.each<[string, AlkaliSource, unknown, string, string]>([
    ['stronger than the stock', solution(50), { strength: { percent: '50.1' } }, 'infeasible', 'dilution.strength'],
    ['stronger than the solid', solid(60), { strength: { percent: 61 } }, 'infeasible', 'dilution.strength'],
    ['a solid as it is', solid(98), 'as-is', 'infeasible', 'dilution'],
    ['a solid with no water', solid(98), { water: { g: 0 } }, 'infeasible', 'dilution'],
    ['a solid with no part of water', solid(98), { waterPerAlkali: 0 }, 'infeasible', 'dilution'],
    ['a solid with water as no part of fat', solid(98), { waterPerFat: { percent: 0 } }, 'infeasible', 'dilution'],
    ['a strength of nothing', solid(98), { strength: { percent: 0 } }, 'out-of-range', 'dilution.strength.percent'],
    ['a strength over 75 %', solid(98), { strength: { percent: 76 } }, 'out-of-range', 'dilution.strength.percent'],
    ['a strength without unit', solid(98), { strength: 33 }, 'bad-shape', 'dilution.strength'],
    ['negative parts', solid(98), { waterPerAlkali: -1 }, 'out-of-range', 'dilution.waterPerAlkali'],
    ['more than a hundred parts', solid(98), { waterPerAlkali: 101 }, 'out-of-range', 'dilution.waterPerAlkali'],
    ['more than ten times the fat', solid(98), { waterPerFat: { percent: 1001 } }, 'out-of-range', 'dilution.waterPerFat.percent'],
    ['water as less than no part of fat', solid(98), { waterPerFat: { percent: -1 } }, 'out-of-range', 'dilution.waterPerFat.percent'],
    ['parts with a comma', solid(98), { waterPerAlkali: '1,5' }, 'not-a-number', 'dilution.waterPerAlkali'],
    ['negative water', solid(98), { water: { g: -1 } }, 'out-of-range', 'dilution.water.g'],
    ['two ways', solid(98), { water: { g: 1 }, waterPerAlkali: 1 }, 'bad-shape', 'dilution'],
    ['no way', solid(98), {}, 'missing', 'dilution'],
    ['nothing', solid(98), undefined, 'missing', 'dilution'],
    ['another word', solid(98), 'as it is', 'bad-shape', 'dilution'],
    ['an unknown way', solid(98), { waterPerOil: { percent: 38 } }, 'unknown-key', 'dilution.waterPerOil'],
  ])('%s', (_what, naoh, dilution, code, path) => {
    expect(refusal(() => plan(naoh, dilution as Dilution))).toMatchObject({ code, path });
  }); // prettier-ignore

  it('tells what is possible', () => {
    expect(refusal(() => plan(solution(50), { strength: { percent: 60 } })).message).toContain('at most 50 percent');
    expect(refusal(() => plan(solid(98), 'as it is' as never)).message).toContain("'as-is'");
    expect(refusal(() => plan(solid(98), { waterPerOil: { percent: 38 } } as never)).message).toContain('waterPer');
  });
});
