import fc from 'fast-check';
import { alkaliContentOf, type AlkaliContentOfInput } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact } from '../laws/exact.js';
import { readAlkaliSource } from '../../src/lye/alkaliSource.js';
import { refusal } from '../laws/refusal.js';

const bounds = (input: AlkaliContentOfInput): string[] => {
  const { low, likely, high } = alkaliContentOf(input).hydroxide;
  return [low, likely, high].map(({ percent }) => percent.toFixed(6));
};
const total = (percent: string, carbonate: string, alkali: 'naoh' | 'koh' = 'naoh'): AlkaliContentOfInput => ({
  alkali,
  solid: { totalAlkali: { percent }, carbonate: { percent: carbonate } },
});
const fraction = (from: string, to: string) => ({ low: { percent: from }, high: { percent: to } });

/** Hydroxide with the alkali of one part of carbonate: 2 * 39.997 / 105.988 and 2 * 56.105 / 138.204. */
const PER_CARBONATE = { naoh: new Exact('79.994').div('105.988'), koh: new Exact('112.21').div('138.204') };

describe('alkaliContentOf: worked by hand', () => {
  it('a pharmacopoeial assay counts carbonate as hydroxide', () => {
    expect(bounds(total('95.0', '3.0'))[1]).toBe('92.735763'); // 95.0 - 3.0 * 79.994 / 105.988
    expect(bounds(total('85', '2', 'koh'))[1]).toBe('83.376169'); // 85 - 2 * 112.21 / 138.204
    const { carbonate } = alkaliContentOf(total('95.0', '3.0'));
    expect(carbonate?.likely.percent.toString()).toBe('3');
  });

  it('ranges: the least total with the most carbonate, and the reverse', () => {
    const solid = { totalAlkali: fraction('95', '98'), carbonate: fraction('0.5', '3') };
    // 95 - 3 * 0.754746, 96.5 - 1.75 * 0.754746, 98 - 0.5 * 0.754746
    expect(bounds({ alkali: 'naoh', solid })).toEqual(['92.735763', '95.179195', '97.622627']);
  });

  it('takes hydroxide stated by itself as it is, solid or dissolved', () => {
    expect(bounds({ alkali: 'naoh', solid: { hydroxide: fraction('98', '100') } })).toEqual([
      '98.000000',
      '99.000000',
      '100.000000',
    ]);
    expect(bounds({ alkali: 'koh', solution: { hydroxide: { percent: 50 } } })[1]).toBe('50.000000');
    expect(alkaliContentOf({ alkali: 'koh', solid: { hydroxide: { percent: 85 } } }).carbonate).toBeUndefined();
  });
});

describe('alkaliContentOf: laws', () => {
  const tenths = (from: number, to: number) => fc.integer({ min: from, max: to });

  it('bounds hold every total and carbonate inside the ranges, and are reached at their corners', () => {
    const range = (a: number, b: number) => ({
      low: { fraction: `${String(a)}e-3` },
      high: { fraction: `${String(b)}e-3` },
    });
    fc.assert(
      fc.property(
        fc.constantFrom('naoh', 'koh'), tenths(600, 800), tenths(0, 200), tenths(0, 100), tenths(0, 100), fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }),
        (alkali, from, more, least, wider, t, u) => {
          const solid = { totalAlkali: range(from, from + more), carbonate: range(least, least + wider) };
          const { low, high } = alkaliContentOf({ alkali, solid }).hydroxide;
          const inside = from / 10 + (more / 10) * t - (least / 10 + (wider / 10) * u) * Number(PER_CARBONATE[alkali]);
          // the sample is in double precision: 1e-12 of about 100
          expect(inside).toBeGreaterThanOrEqual(Number(low.percent) - 1e-10);
          expect(inside).toBeLessThanOrEqual(Number(high.percent) + 1e-10);
          const corner = (all: number, carbonate: number): Exact => new Exact(all).div(10).minus(new Exact(carbonate).div(10).times(PER_CARBONATE[alkali]));
          expect(deviation(low.percent.toString(), corner(from, least + wider)).lte('1e-31')).toBe(true);
          expect(deviation(high.percent.toString(), corner(from + more, least)).lte('1e-31')).toBe(true);
        },
      ),
    ); // prettier-ignore
  });

  it('without carbonate, total alkali is hydroxide', () => {
    fc.assert(
      fc.property(tenths(100, 1100), (n) => {
        const [low, likely, high] = bounds(total(`${String(n)}e-1`, '0'));
        expect([low, likely, high]).toEqual(
          bounds({ alkali: 'naoh', solid: { hydroxide: { percent: `${String(n)}e-1` } } }),
        );
      }),
    );
  });
});

describe('alkaliContentOf: refusals', () => {
  const ok = { hydroxide: { percent: 50 } };
  it.each<[string, unknown, string, string]>([
    ['zero assay', { alkali: 'naoh', solid: { hydroxide: { percent: 0 } } }, 'out-of-range', 'solid.hydroxide.percent'],
    ['a fraction as percent', { alkali: 'naoh', solid: { hydroxide: { percent: '0.98' } } }, 'out-of-range', 'solid.hydroxide.percent'],
    ['the same of total alkali', { alkali: 'koh', solid: { totalAlkali: { percent: '9.9' }, carbonate: { percent: 0 } } }, 'out-of-range', 'solid.totalAlkali.percent'],
    ['111 %', { alkali: 'naoh', solid: { hydroxide: { percent: 111 } } }, 'out-of-range', 'solid.hydroxide.percent'],
    ['a solution of 76 %', { alkali: 'naoh', solution: { hydroxide: { percent: 76 } } }, 'out-of-range', 'solution.hydroxide.percent'],
    ['a range that begins at nothing', { alkali: 'naoh', solid: { hydroxide: fraction('0', '98') } }, 'out-of-range', 'solid.hydroxide.low.percent'],
    ['solid and solution', { alkali: 'naoh', solid: ok, solution: ok }, 'bad-shape', 'input'],
    ['neither', { alkali: 'naoh' }, 'missing', 'input'],
    ['an unknown alkali', { alkali: 'lioh', solid: ok }, 'bad-shape', 'alkali'],
    ['no alkali', { solid: ok }, 'missing', 'alkali'],
    ['hydroxide beside total alkali', { alkali: 'naoh', solid: { ...ok, totalAlkali: { percent: 95 } } }, 'bad-shape', 'solid'],
    ['total alkali without carbonate', { alkali: 'naoh', solid: { totalAlkali: { percent: 95 } } }, 'missing', 'solid.carbonate'],
    ['carbonate without total alkali', { alkali: 'naoh', solid: { carbonate: { percent: 1 } } }, 'missing', 'solid.totalAlkali'],
    ['more carbonate than alkali', { alkali: 'naoh', solid: { totalAlkali: { percent: 30 }, carbonate: { percent: 45 } } }, 'out-of-range', 'solid.carbonate'],
    ['carbonate over 50 %', { alkali: 'naoh', solid: { totalAlkali: { percent: 95 }, carbonate: { percent: 51 } } }, 'out-of-range', 'solid.carbonate.percent'],
    ['total alkali of a solution', { alkali: 'naoh', solution: { totalAlkali: { percent: 50 }, carbonate: { percent: 1 } } }, 'unknown-key', 'solution.totalAlkali'],
    ['a bare number', { alkali: 'naoh', solid: 98 }, 'bad-shape', 'solid'],
    ['nothing', undefined, 'missing', 'input'],
  ])('%s', (_what, input, code, path) => {
    const refused = refusal(() => alkaliContentOf(input as never));
    expect({ code: refused.code, path: refused.path.replace(/^input\./, '') }).toEqual({ code, path });
  }); // prettier-ignore

  it('an unknown option, with the one that was meant', () => {
    const refused = refusal(() => alkaliContentOf({ alkali: 'naoh', solids: ok } as never));
    expect(refused.code).toBe('unknown-key');
    expect(refused.message).toContain('did you mean "solid"?');
  });
});

describe('readAlkaliSource: refusals', () => {
  const percent = { percent: 98 };
  it.each<[string, unknown, string, string]>([
    ['neither a solid nor a solution', {}, 'missing', 'lye[0]'],
    ['both', { solid: { hydroxide: percent }, solution: { hydroxide: percent } }, 'bad-shape', 'lye[0]'],
    ['hydroxide beside a carbonate', { solid: { hydroxide: percent, carbonate: { percent: 1 } } }, 'bad-shape', 'lye[0].solid'],
    ['hydroxide beside the total', { solid: { hydroxide: percent, totalAlkali: percent } }, 'bad-shape', 'lye[0].solid'],
  ])('%s is refused where it stands', (_what, source, code, path) => {
    expect(refusal(() => readAlkaliSource('lye[0]', source, 'naoh'))).toMatchObject({ code, path });
  });
}); // prettier-ignore
