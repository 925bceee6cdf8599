import fc from 'fast-check';
import { dilutedLye, lyeStrengthFromMixing, planLye, fat, type DilutedLyeInput } from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { deviation, Exact, KOH, NAOH, textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const fifty = { strength: { percent: 50 } } as const;
const codes = (input: DilutedLyeInput): string[] => dilutedLye(input).cautions.map(({ code }) => code);

describe('dilutedLye: worked by hand', () => {
  it('1000 g of 33 % from 50 %: 660 g and 340 g of water', () => {
    const r = dilutedLye({ alkali: 'naoh', stock: fifty, target: { strength: { percent: 33 }, lye: { g: 1000 } } });
    expect([r.stock.g, r.water.g, r.lye.mass.g].map(String)).toEqual(['660', '340', '1000']);
    expect(r.hydroxide.mol.toFixed(6)).toBe('8.250619'); // 330 / 39.997
    expect(r.lye.strength.likely.percent.toString()).toBe('33');
    expect(r.given.target.lye?.g.toString()).toBe('1000');
  });

  it('an amount of hydroxide: 4 mol at 40 %', () => {
    const r = dilutedLye({
      alkali: 'naoh',
      stock: fifty,
      target: { strength: { percent: 40 }, hydroxide: { mol: 4 } },
    });
    expect(r.stock.g.toString()).toBe('319.976'); // 4 · 39.997 / 0.5
    expect(r.water.g.toString()).toBe('79.994'); // 159.988 / 0.4 − 319.976
    expect(r.hydroxide.mol.toString()).toBe('4');
  });

  it('what is left of a drum: 266 g of 30 % takes 532 g of water to 10 %', () => {
    const r = dilutedLye({
      alkali: 'koh',
      stock: { strength: { percent: 30 } },
      target: { strength: { percent: 10 }, stock: { g: 266 } },
    });
    expect([r.stock.g, r.water.g].map(String)).toEqual(['266', '532']);
    expect(r.hydroxide.mol.toFixed(6)).toBe('1.422333'); // 79.8 / 56.105
  });

  it('a stock of 48 to 52 % is weighed as 50 %, and the lye may then be 31.68 to 34.32 %', () => {
    const r = dilutedLye({
      alkali: 'naoh',
      stock: { strength: { low: { percent: 48 }, high: { percent: 52 } } },
      target: { strength: { percent: 33 }, lye: { g: 1000 } },
    });
    expect(r.stock.g.toString()).toBe('660');
    const { low, likely, high } = r.lye.strength;
    expect([low, likely, high].map(({ percent }) => percent.toString())).toEqual(['31.68', '33', '34.32']);
  });

  it('cautions: it burns and warms; a stock that may have frozen in the store is of unknown strength', () => {
    const target = { strength: { percent: 10 }, lye: { g: 1 } } as const;
    const of = (alkali: 'naoh' | 'koh', percent: number) => codes({ alkali, stock: { strength: { percent } }, target });
    expect(of('naoh', 50).slice(0, 3)).toEqual(['caustic-burns', 'diluting-warms', 'crystallised-stock']);
    expect(of('naoh', 25)).not.toContain('crystallised-stock'); // freezes at -17 °C
    expect(of('naoh', 74)).toContain('crystallised-stock'); // beyond the curve
    expect(of('koh', 45)).not.toContain('crystallised-stock'); // freezes at -29 °C
    expect(of('koh', 50)).toContain('crystallised-stock'); // freezes at 7 °C
  });

  it('its working', () => {
    const r = dilutedLye({ alkali: 'naoh', stock: fifty, target: { strength: { percent: 33 }, lye: { g: 1000 } } });
    expect(workingOf(r).map(({ figure, value }) => `${figure} ${value.toFixed(2)}`)).toEqual([
      'hydroxide in the lye 330.00',
      'stock 660.00',
      'lye 1000.00',
      'water 340.00',
      'hydroxide 8.25',
    ]);
  });
});

const stronger = fc.tuple(fc.integer({ min: 1, max: 7500 }), fc.integer({ min: 1, max: 7500 })).map(([a, b]) => ({
  weak: Math.min(a, b) / 100,
  strong: Math.max(a, b) / 100,
}));
const alkalis = fc.constantFrom('naoh' as const, 'koh' as const);
const grams = fc.integer({ min: 1, max: 1_000_000 }).map((mg) => `${String(mg)}e-2`);

describe('dilutedLye: laws', () => {
  it('mass and hydroxide are conserved, and mixing what it weighs gives the strength asked for', () => {
    fc.assert(
      fc.property(alkalis, stronger, grams, (alkali, { weak, strong }, g) => {
        const r = dilutedLye({
          alkali,
          stock: { strength: { percent: strong } },
          target: { strength: { percent: weak }, lye: { g } },
        });
        expect(deviation(new Exact(r.stock.g.toString()).plus(r.water.g.toString()), r.lye.mass.g.toString()).lte('1e-28')).toBe(true); // prettier-ignore
        const pure = new Exact(r.stock.g.toString()).times(strong).div(100);
        expect(deviation(r.hydroxide.mol.toString(), pure.div(alkali === 'koh' ? KOH : NAOH)).lte('1e-28')).toBe(true);
        const mixed = lyeStrengthFromMixing({
          alkali,
          mass: r.stock,
          solution: { hydroxide: { percent: strong } },
          water: r.water,
        });
        expect(deviation(mixed.strength.likely.percent.toString(), weak).lte('1e-28')).toBe(true);
      }),
    );
  });

  it('the three ways of asking agree', () => {
    fc.assert(
      fc.property(alkalis, stronger, grams, (alkali, { weak, strong }, g) => {
        const stock = { strength: { percent: strong } };
        const strength = { percent: weak };
        const byLye = dilutedLye({ alkali, stock, target: { strength, lye: { g } } });
        for (const amount of [{ hydroxide: byLye.hydroxide }, { stock: byLye.stock }]) {
          const again = dilutedLye({ alkali, stock, target: { strength, ...amount } });
          expect(deviation(again.water.g.toString(), byLye.water.g.toString()).lte('1e-28')).toBe(true);
          expect(deviation(again.lye.mass.g.toString(), g).lte('1e-28')).toBe(true);
        }
      }),
    );
  });

  it('scales, survives JSON, and takes a plan’s hydroxide', () => {
    const target = { strength: { percent: 33 } } as const;
    const one = dilutedLye({ alkali: 'naoh', stock: fifty, target: { ...target, lye: { g: 500 } } });
    const two = dilutedLye({ alkali: 'naoh', stock: fifty, target: { ...target, lye: { kg: 1 } } });
    expect(two.water.g.toString()).toBe(one.water.g.times(2).toString());
    expect(textOf(dilutedLye(throughJson(two.given) as DilutedLyeInput))).toBe(textOf(two));
    const plan = planLye({
      fats: [{ fat: fat('coconut-oil'), mass: { g: 900 } }],
      alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
      target: { superfat: { percent: 2 } },
      dilution: { strength: { percent: 33 } },
    });
    const jug = dilutedLye({ alkali: 'naoh', stock: fifty, target: { ...target, hydroxide: plan.hydroxide } });
    expect(deviation(jug.stock.g.toString(), plan.weigh.naoh.g.toString()).lte('1e-28')).toBe(true);
    expect(deviation(jug.water.g.toString(), plan.weigh.water.g.toString()).lte('1e-28')).toBe(true);
  });

  it('to its own strength it takes no water', () => {
    const r = dilutedLye({
      alkali: 'naoh',
      stock: fifty,
      target: { strength: { percent: 50 }, hydroxide: { mol: 3 } },
    });
    expect(r.water.g.isZero()).toBe(true);
  });
});

describe('dilutedLye: refusals', () => {
  const strength = { percent: 33 };
  const good = { alkali: 'naoh', stock: fifty, target: { strength, lye: { g: 1000 } } };
  it.each<[object, string, string]>([
    [{ target: { strength: { percent: 51 }, lye: { g: 1 } } }, 'infeasible', 'target.strength: expected at most 50 percent, the strength of the stock, received 51'], // prettier-ignore
    [{ stock: { strength: { low: { percent: 20 }, high: { percent: 40 } } } }, 'infeasible', 'at most 30 percent'],
    [{ target: { strength } }, 'missing', 'target: expected one of hydroxide, lye, stock, received none of them'],
    [{ target: { strength, lye: { g: 1 }, stock: { g: 1 } } }, 'bad-shape', 'target: expected exactly one of hydroxide, lye, stock, received lye and stock'], // prettier-ignore
    [{ target: { lye: { g: 1 } } }, 'missing', 'target.strength'],
    [{ target: { strength, lye: { g: 0 } } }, 'out-of-range', 'target.lye.g: expected more than 0'],
    [{ target: { strength, hydroxide: { mol: 0 } } }, 'out-of-range', 'target.hydroxide.mol: expected more than 0'],
    [{ target: { strength, stock: { g: -1 } } }, 'out-of-range', 'target.stock.g: expected more than 0'],
    [{ target: { strength: { percent: 0 }, lye: { g: 1 } } }, 'out-of-range', 'target.strength.percent'],
    [{ target: { strength, litres: { L: 1 } } }, 'unknown-key', 'target.litres'],
    [{ stock: { strength: { percent: 76 } } }, 'out-of-range', 'stock.strength.percent'],
    [{ stock: {} }, 'missing', 'stock.strength'],
    [{ stock: undefined }, 'missing', 'stock'],
    [{ target: undefined }, 'missing', 'target'],
    [{ alkali: 'lime' }, 'bad-shape', 'alkali'],
    [{ water: { g: 1 } }, 'unknown-key', 'input.water'],
  ])('%o', (change, code, message) => {
    const refused = refusal(() => dilutedLye({ ...good, ...change } as never));
    expect(refused.code).toBe(code);
    expect(refused.message).toContain(message);
  });
});
