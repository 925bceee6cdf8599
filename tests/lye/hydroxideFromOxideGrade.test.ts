import fc from 'fast-check';
import { hydroxideFromOxideGrade } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const of = (alkali: 'naoh' | 'koh', percent: number | string): string =>
  hydroxideFromOxideGrade({ alkali, grade: { percent } }).hydroxide.percent.toFixed(6);

describe('hydroxideFromOxideGrade: worked by hand', () => {
  it('76 % Na2O and 50 % K2O', () => {
    expect(of('naoh', 76)).toBe('98.090385'); // 76 * 79.994 / 61.979
    expect(of('koh', 50)).toBe('59.562609'); // 50 * 112.21 / 94.195
  });

  it('the grade of the pure hydroxide gives 100', () => {
    expect(of('naoh', '77.479561')).toBe('100.000000'); // 100 * 61.979 / 79.994
  });

  it('over 100 is told, not cut: the grade counts carbonate or is misread', () => {
    expect(of('naoh', 78)).toBe('100.671711'); // 78 * 79.994 / 61.979
  });
});

describe('hydroxideFromOxideGrade: laws', () => {
  it('goes in proportion', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1000 }), (tenths) => {
        const { percent } = hydroxideFromOxideGrade({
          alkali: 'koh',
          grade: { percent: `${String(tenths)}e-1` },
        }).hydroxide;
        // two roundings at 34 digits
        expect(
          deviation(percent.toString(), new Exact(tenths).div(10).times('112.21').div('94.195')).lte('1e-32'),
        ).toBe(true);
      }),
    );
  });
});

describe('hydroxideFromOxideGrade: refusals', () => {
  it.each<[unknown, string, string]>([
    [{ alkali: 'naoh', grade: { percent: 101 } }, 'out-of-range', 'grade.percent'],
    [{ alkali: 'naoh', grade: { percent: -1 } }, 'out-of-range', 'grade.percent'],
    [{ alkali: 'naoh', grade: 76 }, 'bad-shape', 'grade'],
    [{ alkali: 'naoh' }, 'missing', 'grade'],
    [{ alkali: 'na2o', grade: { percent: 76 } }, 'bad-shape', 'alkali'],
    [{ grade: { percent: 76 } }, 'missing', 'alkali'],
    [{ alkali: 'naoh', grade: { percent: 76 }, degrees: 1 }, 'unknown-key', 'input.degrees'],
  ])('%o', (input, code, path) => {
    expect(refusal(() => hydroxideFromOxideGrade(input as never))).toMatchObject({ code, path });
  });
});
