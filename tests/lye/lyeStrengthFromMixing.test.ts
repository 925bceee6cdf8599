import fc from 'fast-check';
import { lyeStrengthFromMixing, type LyeStrengthFromMixingInput } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact, KOH, NAOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const stock = (percent: number | string) => ({ solution: { hydroxide: { percent } } });
const solid = (percent: number | string) => ({ solid: { hydroxide: { percent } } });

describe('lyeStrengthFromMixing: worked by hand', () => {
  it('200 g of 50 % lye and 100 g of water', () => {
    const r = lyeStrengthFromMixing({ alkali: 'naoh', mass: { g: 200 }, ...stock(50), water: { g: 100 } });
    expect(r.strength.likely.percent.toFixed(9)).toBe('33.333333333'); // 100 / 300
    expect(r.lye.g.toString()).toBe('300');
    expect(r.hydroxide.likely.mol.toFixed(9)).toBe('2.500187514'); // 100 / 39.997
  });

  it('a solid by its range: 100 g of KOH of 85 to 90 % in 150 g of water', () => {
    const r = lyeStrengthFromMixing({
      alkali: 'koh',
      mass: { g: 100 },
      solid: { hydroxide: { low: { percent: 85 }, high: { percent: 90 } } },
      water: { g: 150 },
    });
    expect([r.strength.low, r.strength.likely, r.strength.high].map((s) => s.percent.toString())).toEqual([
      '34',
      '35',
      '36',
    ]);
    expect(r.hydroxide.high.mol.toFixed(9)).toBe('1.604135104'); // 90 / 56.105
  });

  it('carbonate is no hydroxide', () => {
    const r = lyeStrengthFromMixing({
      alkali: 'naoh',
      mass: { g: 100 },
      solid: { totalAlkali: { percent: '95.0' }, carbonate: { percent: '3.0' } },
      water: { g: 100 },
    });
    expect(r.strength.likely.percent.toFixed(6)).toBe('46.367881'); // 92.735763 / 2
  });

  it('cautions: solid into cold water only where a solid is dissolved', () => {
    const codes = (input: LyeStrengthFromMixingInput): string[] =>
      lyeStrengthFromMixing(input).cautions.map(({ code }) => code);
    const water = { g: 100 };
    expect(codes({ alkali: 'naoh', mass: { g: 50 }, ...solid(98), water })).toContain('solid-into-cold-water');
    const mixed = codes({ alkali: 'naoh', mass: { g: 50 }, ...stock(50), water });
    expect(mixed).not.toContain('solid-into-cold-water');
    expect(mixed[0]).toBe('caustic-burns');
  });
});

describe('lyeStrengthFromMixing: what does not dissolve', () => {
  // 109 g of NaOH and 112 g of KOH to 100 g of water at 20 °C: 109/209, 112/212
  it.each([
    ['naoh', 100, 91.6, false], // 100/191.6 = 52.19 %
    ['naoh', 100, 91.5, true], // 52.22 %
    ['koh', 100, 89.4, false], // 52.798 %
    ['koh', 100, 89.3, true], // 52.83 %
  ] as const)('%s, %d g in %d g', (alkali, g, water, isTooStrong) => {
    const { cautions } = lyeStrengthFromMixing({ alkali, mass: { g }, ...solid(100), water: { g: water } });
    expect(cautions.some(({ code }) => code === 'stronger-than-dissolves')).toBe(isTooStrong);
  });

  it('is said of the strongest assay, and of a solution as well', () => {
    const codes = (input: LyeStrengthFromMixingInput): string[] =>
      lyeStrengthFromMixing(input).cautions.map(({ code }) => code);
    const range = { solid: { hydroxide: { low: { percent: 90 }, high: { percent: 110 } } } };
    // at most 110/200 = 55 %
    expect(codes({ alkali: 'naoh', mass: { g: 100 }, ...range, water: { g: 100 } })).toContain(
      'stronger-than-dissolves',
    );
    expect(codes({ alkali: 'koh', mass: { g: 100 }, ...stock(60), water: { g: 10 } })).toContain(
      'stronger-than-dissolves',
    );
  });
});

describe('lyeStrengthFromMixing: laws', () => {
  const grams = fc.integer({ min: 1, max: 1_000_000 });
  const percent = fc.integer({ min: 1, max: 75 });

  it('hydroxide is conserved, and stands to the lye as the strength says', () => {
    fc.assert(
      fc.property(fc.constantFrom('naoh', 'koh'), grams, percent, fc.integer({ min: 0, max: 1_000_000 }), (alkali, g, w, water) => {
        const r = lyeStrengthFromMixing({ alkali, mass: { g }, ...stock(w), water: { g: water } });
        const pure = new Exact(g).times(w).div(100);
        expect(deviation(r.hydroxide.likely.mol.toString(), pure.div(alkali === 'koh' ? KOH : NAOH)).lte('1e-32')).toBe(true);
        expect(deviation(r.strength.likely.percent.toString(), pure.times(100).div(g + water)).lte('1e-32')).toBe(true);
      }),
    ); // prettier-ignore
  });

  it('all at once or in two steps is the same lye', () => {
    fc.assert(
      fc.property(grams, percent, grams, grams, (g, w, one, two) => {
        const alkali = 'naoh';
        const at = lyeStrengthFromMixing({ alkali, mass: { g }, ...stock(w), water: { g: one + two } });
        const first = lyeStrengthFromMixing({ alkali, mass: { g }, ...stock(w), water: { g: one } });
        const then = lyeStrengthFromMixing({
          alkali,
          mass: first.lye,
          solution: { hydroxide: first.strength.likely },
          water: { g: two },
        });
        expect(
          deviation(then.strength.likely.percent.toString(), at.strength.likely.percent.toString()).lte('1e-31'),
        ).toBe(true);
      }),
    );
  });
});

describe('lyeStrengthFromMixing: refusals', () => {
  const good = { alkali: 'naoh', mass: { g: 200 }, ...stock(50), water: { g: 100 } };
  it.each<[object, string, string]>([
    [{ mass: { g: -1 } }, 'out-of-range', 'mass.g'],
    [{ mass: { g: 0 }, water: { g: 0 } }, 'out-of-range', 'mass'],
    [{ water: { g: -1 } }, 'out-of-range', 'water.g'],
    [{ water: undefined }, 'missing', 'water'],
    [{ mass: undefined }, 'missing', 'mass'],
    [{ alkali: 'soda' }, 'bad-shape', 'alkali'],
    [{ solid: { hydroxide: { percent: 98 } } }, 'bad-shape', 'input'],
    [{ solution: undefined }, 'missing', 'input'],
    [{ solution: { hydroxide: { percent: 76 } } }, 'out-of-range', 'solution.hydroxide.percent'],
    [{ strength: { percent: 30 } }, 'unknown-key', 'strength'],
  ])('%o', (change, code, path) => {
    const refused = refusal(() => lyeStrengthFromMixing({ ...good, ...change } as never));
    expect({ code: refused.code, path: refused.path.replace(/^input\./, '') }).toEqual({ code, path });
  });
});
