import fc from 'fast-check';
import { mixtureDensity, spiritStrengthFromVolume, type MixedSolvent } from 'laurate';
import { describe, expect, it } from 'vitest';
import { refusal } from '../laws/refusal.js';

const at = (solvent: MixedSolvent, percent: number | string, celsius: number | string): string =>
  mixtureDensity({ solvent, share: { percent }, temperature: { celsius } }).density.gPerML.toString();
const strength = (percentByVolume: number | string): string =>
  spiritStrengthFromVolume({ strength: { percentByVolume } }).strength.percent.toString();

// Published rows for these functions stand in src/checkValues/data/solventDensities.ts.

describe('mixtureDensity: worked by hand', () => {
  it('reads a row of the table', () => {
    expect(at('sucrose', 50, 20)).toBe('1.2295');
    expect(at('propylene-glycol', 40, 25)).toBe('1.0294');
  });

  it('takes a gravity of glycerol as weighed in air', () => {
    // 1.12845 at 50 %: 1.12845 · (0.998204 - 0.0012) + 0.0012
    expect(Number(at('glycerol', 50, 20)).toFixed(5)).toBe('1.12627');
  });
});

describe('mixtureDensity: laws', () => {
  it.each([
    ['glycerol', 100, [15, 40]],
    ['sucrose', 84, [20, 20]],
    ['propylene-glycol', 60, [0, 60]],
  ] as const)('%s: the more the denser', (solvent, most, [coldest, hottest]) => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: most * 10 - 1 }),
        fc.integer({ min: coldest, max: hottest }),
        (tenths, celsius) => {
          const [less, more] = [tenths / 10, (tenths + 1) / 10];
          expect(Number(at(solvent, more, celsius))).toBeGreaterThan(Number(at(solvent, less, celsius)));
        },
      ),
      { numRuns: 60 },
    );
  });

  it('ethanol: the more the lighter, the warmer the lighter above 10 °C', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999 }), fc.integer({ min: 10, max: 39 }), (tenths, celsius) => {
        const here = Number(at('ethanol', tenths / 10, celsius));
        expect(Number(at('ethanol', (tenths + 1) / 10, celsius))).toBeLessThan(here);
        expect(Number(at('ethanol', tenths / 10, celsius + 1))).toBeLessThan(here);
      }),
      { numRuns: 60 },
    );
  });
});

describe('mixtureDensity: refusals', () => {
  it.each<[string, () => unknown, string, string, string]>([
    ['a share beyond the table', () => at('propylene-glycol', 61, 20), 'outside-table', 'share', '0 to 60 percent'],
    ['another share', () => at('sucrose', '84.1', 20), 'outside-table', 'share', '0 to 84 percent'],
    ['a temperature beyond it', () => at('sucrose', 20, 21), 'outside-table', 'temperature', '20 °C alone'],
    ['spirit too hot', () => at('ethanol', 20, 41), 'outside-table', 'temperature', '-20 to 40 °C'],
    ['glycerol too cold', () => at('glycerol', 20, 14), 'outside-table', 'temperature', '15 to 40 °C'],
    ['a solvent without table', () => at('sorbitol' as never, 20, 20), 'bad-shape', 'solvent', 'one of glycerol'],
    ['spirit by volume', () => mixtureDensity({ solvent: 'ethanol', share: { percentByVolume: 40 } as never, temperature: { celsius: 20 } }), 'unknown-unit', 'share.percentByVolume', 'percent'],
    ['more than all', () => at('ethanol', 101, 20), 'out-of-range', 'share.percent', '0 to 100'],
  ])('%s', (_what, call, code, path, said) => {
    const { message, ...rest } = refusal(call);
    expect(rest).toEqual({ code, path });
    expect(message).toContain(said);
  }); // prettier-ignore
});

describe('spiritStrengthFromVolume', () => {
  it('96 % by volume is 93.84 % by mass', () => {
    expect(Number(strength(96)).toFixed(2)).toBe('93.84');
  });

  it('nothing is nothing, all is all', () => {
    expect([strength(0), strength(100)]).toEqual(['0', '100']);
  });

  it('the volume is got back: w·ρ(w) = v·ρ(1)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), (hundredths) => {
        const by = spiritStrengthFromVolume({ strength: { percentByVolume: `${String(hundredths)}e-2` } });
        const density = (percent: string): typeof by.strength.percent =>
          mixtureDensity({ solvent: 'ethanol', share: { percent }, temperature: { celsius: 20 } }).density.gPerML;
        const { percent } = by.strength;
        const back = percent.times(density(percent.toString())).div(density('100'));
        expect(
          back
            .minus(`${String(hundredths)}e-2`)
            .abs()
            .lte('1e-26'), // the terms of the polynomial are a thousand times its sum
        ).toBe(true);
        expect(percent.lt(`${String(hundredths)}e-2`)).toBe(true);
      }),
      { numRuns: 100 },
    );
  });

  it.each([
    [{ percentByVolume: 100.1 }, 'out-of-range', 'strength.percentByVolume'],
    [{ percentByVolume: -1 }, 'out-of-range', 'strength.percentByVolume'],
    [{ percent: 96 }, 'unknown-unit', 'strength.percent'],
    [undefined, 'missing', 'strength'],
  ])('refuses %j', (given, code, path) => {
    expect(refusal(() => spiritStrengthFromVolume({ strength: given as never }))).toMatchObject({ code, path });
  });
});
