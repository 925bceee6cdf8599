import fc from 'fast-check';
import { lyeDensity, lyeStrengthFromDensity, valueIn, type LyeDensityInput } from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { deviation, Exact, NAOH, textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const density = (alkali: 'naoh' | 'koh', percent: number | string, celsius: number | string): string =>
  lyeDensity({ alkali, strength: { percent }, temperature: { celsius } }).density.gPerML.toString();

describe('lyeDensity: worked by hand', () => {
  it('NaOH: a row of the fine table at 20 °C', () => {
    const r = lyeDensity({ alkali: 'naoh', strength: { percent: 30 }, temperature: { celsius: 20 } });
    expect(r.density.gPerML.toString()).toBe('1.3277');
    expect(r.concentration.eqPerL.toFixed(6)).toBe('9.958497'); // 10 · 30 · 1.3277 / 39.997
    expect(r).toMatchObject({
      by: 'lyeDensity',
      given: { alkali: 'naoh', table: 'recommended' },
      basis: ['crc-102-2021', 'perry-densities', 'kell-1975', 'iupac-2021', 'ghs-naoh'],
    });
    expect(r.cautions[0]?.code).toBe('caustic-burns');
  });

  it('below the freezing point, crystals make the strength unknown, in both directions', () => {
    // 50 % freezes at 11 °C, 30 % at 2 °C
    const codes = (percent: number, celsius: number): string[] => {
      const { density: found, cautions } = lyeDensity({
        alkali: 'naoh',
        strength: { percent },
        temperature: { celsius },
      });
      const back = lyeStrengthFromDensity({ alkali: 'naoh', density: found, temperature: { celsius } });
      expect(back.cautions.map(({ code }) => code)).toEqual(expect.arrayContaining(cautions.map(({ code }) => code)));
      return cautions.map(({ code }) => code);
    };
    expect(codes(50, 5)).toContain('crystallised-stock');
    expect(codes(50, 20)).not.toContain('crystallised-stock');
    expect(codes(30, 5)).not.toContain('crystallised-stock');
  });

  it('NaOH: a row at another temperature is the fine table moved by the difference of the coarse one', () => {
    expect(density('naoh', 20, 60)).toBe('1.1961'); // 1.2192 + (1.1960 − 1.2191)
    expect(density('naoh', 50, 0)).toBe('1.54'); // above 40 % the coarse table itself
    expect(density('naoh', 50, 20)).toBe('1.5253');
  });

  it('KOH: a row of the table for 15 °C, and the correlation’s 0.0021 g/mL less at 20 °C', () => {
    expect(density('koh', 30, 15)).toBe('1.2905');
    expect(Number(density('koh', 30, 20))).toBeCloseTo(1.2905 - (1.2913 - 1.2892), 3);
    expect(Number(density('koh', 50, 80))).toBeCloseTo(1.5143 - (1.5149 - 1.4677), 3);
  });

  it('the handbook’s own column for 20 °C, by name', () => {
    const crc = (alkali: 'naoh' | 'koh', percent: number) =>
      lyeDensity({ alkali, strength: { percent }, temperature: { celsius: 20 }, table: 'crc-102' });
    expect(crc('koh', 50).density.gPerML.toString()).toBe('1.5024');
    expect(crc('naoh', 40).density.gPerML.toString()).toBe('1.4299');
    expect(crc('koh', 50).basis).toEqual(['crc-102-2021', 'kell-1975', 'iupac-2021', 'ghs-naoh']);
  });

  it('no alkali is water', () => {
    expect(deviation(density('naoh', 0, 60), density('koh', 0, 60)).lte('1e-33')).toBe(true);
    expect(Number(density('naoh', 0, 100))).toBeCloseTo(0.95836, 5);
  });
});

const percents = fc.integer({ min: 0, max: 50_000 }).map((part) => `${String(part)}e-3`);
const lyes: fc.Arbitrary<LyeDensityInput> = fc
  .tuple(fc.constantFrom('naoh' as const, 'koh' as const), percents, fc.integer({ min: 0, max: 1000 }))
  .map(([alkali, percent, part]) => ({
    alkali,
    strength: { percent },
    temperature: { celsius: alkali === 'naoh' ? part / 10 : 15 + part * 0.065 },
  }));

describe('lyeDensity: laws', () => {
  it('there and back: strength to density to strength, and density to strength to density, within 1e-25', () => {
    fc.assert(
      fc.property(lyes, (lye) => {
        const { alkali, temperature } = lye;
        const there = lyeDensity(lye);
        const back = lyeStrengthFromDensity({ alkali, temperature, density: there.density });
        expect(new Exact(back.strength.percent.toString()).minus(there.given.strength.percent.toString()).abs().lte('1e-25')).toBe(true); // prettier-ignore
        const again = lyeDensity({ alkali, temperature, strength: back.strength });
        expect(new Exact(again.density.gPerML.toString()).minus(there.density.gPerML.toString()).abs().lte('1e-25')).toBe(true); // prettier-ignore
      }),
      { numRuns: 60 },
    );
  });

  it('a litre holds strength times density', () => {
    fc.assert(
      fc.property(percents, (percent) => {
        const r = lyeDensity({ alkali: 'naoh', strength: { percent }, temperature: { celsius: 20 } });
        const grams = new Exact(r.density.gPerML.toString()).times(1000).times(percent).div(100);
        expect(grams.div(NAOH).minus(r.concentration.eqPerL.toString()).abs().lte('1e-30')).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  it('the unit of what goes in makes no difference; result and input survive JSON; the input is left alone', () => {
    const celsius = { alkali: 'naoh', strength: { percent: 33 }, temperature: { celsius: 25 } } as const;
    const before = JSON.stringify(celsius);
    const r = lyeDensity(celsius);
    expect(JSON.stringify(celsius)).toBe(before);
    const same = lyeDensity({ alkali: 'naoh', strength: { fraction: '0.33' }, temperature: { fahrenheit: 77 } });
    expect(textOf(same)).toBe(textOf(r));
    expect(textOf(lyeDensity(throughJson(r.given) as LyeDensityInput))).toBe(textOf(r));
    expect(Object.isFrozen(r) && Object.isFrozen(r.given) && Object.isFrozen(r.density)).toBe(true);
    expect(workingOf(r).map(({ figure }) => figure)).toEqual(['density', 'hydroxide in a litre']);
  });
});

describe('lyeDensity: refusals', () => {
  const good = { alkali: 'naoh', strength: { percent: 30 }, temperature: { celsius: 20 } };
  it.each<[object, string, string]>([
    [
      { strength: { percent: '50.001' } },
      'outside-table',
      'strength: expected 0 to 50 percent, which the table covers',
    ],
    [{ strength: { percent: -1 } }, 'out-of-range', 'strength.percent: expected 0 to 100'],
    [
      { temperature: { celsius: '-0.1' } },
      'outside-table',
      'temperature: expected 0 to 100 °C, which the table of naoh',
    ],
    [{ temperature: { celsius: '100.1' } }, 'outside-table', 'temperature: expected 0 to 100 °C'],
    [{ alkali: 'koh', temperature: { celsius: 14 } }, 'outside-table', 'temperature: expected 15 to 80 °C, which the table of koh'], // prettier-ignore
    [{ alkali: 'koh', temperature: { celsius: 81 } }, 'outside-table', 'temperature: expected 15 to 80 °C'],
    [{ table: 'crc-102', temperature: { celsius: 21 } }, 'outside-table', 'temperature: expected 20 °C alone'],
    [{ table: 'crc-102', strength: { percent: 41 } }, 'outside-table', 'strength: expected 0 to 40 percent'],
    [{ table: 'crc102' }, 'bad-shape', 'table: expected one of recommended, crc-102 (did you mean'],
    [{ alkali: 'soda' }, 'bad-shape', 'alkali: expected one of naoh, koh'],
    [{ temperature: undefined }, 'missing', 'temperature: expected a quantity'],
    [{ temperature: { kelvin: '1e6' } }, 'out-of-range', 'temperature.kelvin: expected 173.15 to 673.15'],
    [{ volume: { mL: 1 } }, 'unknown-key', 'input.volume'],
  ])('%o', (change, code, message) => {
    const refused = refusal(() => lyeDensity({ ...good, ...change } as never));
    expect(refused.code).toBe(code);
    expect(refused.message).toContain(message);
  });
});

describe('lyeStrengthFromDensity: worked by hand', () => {
  it('36 degrees Baumé at 15 °C', () => {
    const r = lyeStrengthFromDensity({ alkali: 'naoh', density: { baume144_3: 36 }, temperature: { celsius: 15 } });
    // 144.3 / (144.3 − 36) · 0.99910257 = 1.3312117 g/mL; 28 % has 1.3094 and 32 % 1.3520 − 0.0002 there
    expect(r.given.density.gPerML.toFixed(6)).toBe('1.331214');
    expect(r.strength.percent.toFixed(2)).toBe('30.05');
    expect(r.concentration.eqPerL.toFixed(3)).toBe('10.001'); // 10 · 30.0485 · 1.331214 / 39.997
    expect(r.cautions.map(({ code }) => code)).toContain('reads-all-salts');
    expect(workingOf(r).map(({ figure }) => figure)).toEqual(['density', 'strength', 'hydroxide in a litre']);
  });

  it('the same reading in every unit of density', () => {
    const gPerML = '1.4';
    const strengths = (
      [
        'gPerML',
        'kgPerM3',
        'specificGravity20_4',
        'specificGravity20_20',
        'specificGravity15_15',
        'specificGravity60F_60F',
        'twaddell',
        'baume145',
        'baume144_3',
      ] as const
    ).map((unit) =>
      lyeStrengthFromDensity({
        alkali: 'koh',
        density: { [unit]: valueIn({ gPerML }, unit) } as never,
        temperature: { celsius: 20 },
      }).strength.percent.toFixed(25),
    );
    expect(new Set(strengths).size).toBe(1);
  });

  it('a lye warmed by ten degrees reads weaker, and the temperature puts it right', () => {
    const reading = { twaddell: 70 } as const;
    const at = (celsius: number): string =>
      lyeStrengthFromDensity({ alkali: 'naoh', density: reading, temperature: { celsius } }).strength.percent.toFixed(
        1,
      );
    expect([at(15), at(25), at(35)]).toEqual(['31.7', '32.3', '32.9']); // about 0.006 g/mL, of 0.0105 to one per cent
  });

  it('a table that is lower reads stronger', () => {
    const read = (table: 'recommended' | 'crc-102'): string =>
      lyeStrengthFromDensity({ alkali: 'koh', density: { gPerML: '1.49' }, temperature: { celsius: 20 }, table }).strength.percent.toFixed(1); // prettier-ignore
    expect([read('recommended'), read('crc-102')]).toEqual(['48.2', '48.9']);
  });
});

describe('lyeStrengthFromDensity: refusals', () => {
  const good = { alkali: 'naoh', density: { gPerML: '1.3' }, temperature: { celsius: 20 } };
  it.each<[object, string, string]>([
    [{ density: { gPerML: '1.53' } }, 'outside-table', 'density: expected 0.9982 (water) to 1.5253 g/mL (50 percent) at 20 °C, received 1.5300 g/mL'], // prettier-ignore
    [{ density: { gPerML: '0.99' } }, 'outside-table', 'density: expected 0.9982 (water)'],
    [{ density: { gPerML: '0.4' } }, 'out-of-range', 'density.gPerML: expected 0.5 to 14'],
    [{ density: { baume145: 150 } }, 'out-of-range', 'baume145: expected less than the modulus'],
    [{ density: { baume: 36 } }, 'unknown-unit', 'density.baume'],
    [{ density: { twaddell: 1, gPerML: 1 } }, 'two-units', 'density'],
    [{ temperature: { celsius: 101 } }, 'outside-table', 'temperature: expected 0 to 100 °C'],
    [{ density: undefined }, 'missing', 'density'],
    [{ strength: { percent: 1 } }, 'unknown-key', 'input.strength'],
  ])('%o', (change, code, message) => {
    const refused = refusal(() => lyeStrengthFromDensity({ ...good, ...change } as never));
    expect(refused.code).toBe(code);
    expect(refused.message).toContain(message);
  });
});
