import fc from 'fast-check';
import { lyeTemperatureFromDissolving, type LyeTemperatureFromDissolvingInput } from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { deviation, textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const dissolved = (solid: number | string, water: number | string, celsius: number | string = 20, more: object = {}) =>
  lyeTemperatureFromDissolving({
    alkali: 'naoh',
    solid: { g: solid },
    water: { g: water },
    start: { celsius },
    ...more,
  });
const codes = ({ cautions }: { cautions: readonly { code: string }[] }): string[] => cautions.map(({ code }) => code);

describe('lyeTemperatureFromDissolving: worked by hand', () => {
  it('one mole in 20 of water from 25 °C', () => {
    const r = dissolved('39.997', '360.3', 25);
    expect(r.heat.kJ.toString()).toBe('42.865');
    expect(r.strength.percent.toFixed(3)).toBe('9.992');
    // 0.107083 kJ/g; from 25 to 40 °C 15 · 3.853 = 57.80 J/g, on to 60 °C at 3.8338: 25 + 15 + 49.284/3.8338 = 52.855
    expect(r.final.celsius.toFixed(2)).toBe('52.86');
    expect(r).toMatchObject({ meaning: 'expected', extrapolated: false, boils: 'no' });
    expect(r.boilingPoint?.celsius.toFixed(2)).toBe('102.80'); // 9.992 %: just under 102.8
  });

  it('a ceiling is named for KOH alone', () => {
    const noted = (alkali: string): string[] => dissolved(10, 200, 20, { alkali }).notes.map(({ code }) => code);
    expect(noted('naoh')).toEqual(['all-at-once', 'heats-four-percent-apart']);
    expect(noted('koh')).toEqual(['all-at-once', 'ceiling-only']);
  });

  it('what water and solid bring from the start counts: 5 °C instead of 25 °C', () => {
    // 20 · (360.3 · 4.18 + 59.5) J = 31.311 kJ less: 11.554/400.297 = 28.864 J/g; 3.853 to one degree
    const r = dissolved('39.997', '360.3', 5);
    expect(r.heat.kJ.toString()).toBe('42.865');
    expect(r.final.celsius.toFixed(2)).toBe('32.49');
  });

  it('a solid of 90 %: the rest is water', () => {
    const impure = dissolved(100, 190, 20, { assay: { percent: 90 } });
    const pure = dissolved(90, 200, 20);
    expect(impure.final.celsius.toString()).toBe(pure.final.celsius.toString());
    expect(impure.given.assay.percent.toString()).toBe('90');
  });

  it.each([
    // per cent, and the end from 20 °C if the heat is taken on straight lines between 3, 4 and 5 mol of water, and the
    // heat capacity of the lye alone counts: a sum made apart, in whole degrees
    [40, 109],
    [33.33, 104],
    [31, 101],
  ])('a lye of %s percent ends within 1.5 °C of a simpler sum, %s °C', (percent, simple) => {
    const { final } = dissolved(percent, 100 - percent);
    expect(Math.abs(Number(final.celsius) - simple)).toBeLessThan(1.5); // the curve between the dilutions bulges by 1 %
  });

  it('does not tell whether it boils within 4 % of the rise, which is how well the heat is known', () => {
    // 42.4 % from 40 °C ends near 129 °C, 89 degrees up, of which 4 % are 3.6; that lye boils near 134 °C
    const short = dissolved('42.4', '57.6', 40);
    const [end, boiling] = [Number(short.final.celsius), Number(short.boilingPoint?.celsius)];
    expect(boiling - end).toBeGreaterThan((end - 40) * 0.04);
    expect(short.boils).toBe('no');
    const near = dissolved('42.4', '57.6', 43);
    const [hotter, same] = [Number(near.final.celsius), Number(near.boilingPoint?.celsius)];
    expect(same - hotter).toBeGreaterThan(0);
    expect(same - hotter).toBeLessThan((hotter - 43) * 0.04);
    expect(near.boils).toBe('cannot-tell');
    expect(near.cautions.map(({ code }) => code)).toContain('lye-would-boil');
  });

  it('KOH is a ceiling, beyond its tables marked', () => {
    const r = dissolved(100, 900, 20, { alkali: 'koh' });
    expect(r.heat.kJ.toFixed(3)).toBe('102.682'); // 100 / 56.105 · 57.61
    expect(r).toMatchObject({ meaning: 'ceiling', extrapolated: false, boils: 'no' });
    expect(r.notes.map(({ code }) => code)).toEqual(['all-at-once', 'ceiling-only']);
    expect(r).not.toHaveProperty('boilingPoint');
    expect(r.basis).toContain('parker-1965');
    const strong = dissolved(45, 55, 20, { alkali: 'koh' });
    expect(strong).toMatchObject({ extrapolated: true, boils: 'cannot-tell' });
    expect(strong.notes.map(({ code }) => code)).toContain('beyond-heat-capacities');
    expect(codes(strong)).toContain('lye-would-boil');
  });
});

describe('lyeTemperatureFromDissolving: marks and cautions', () => {
  it('beyond 80 °C the heat capacities are carried on, and pellets boil locally', () => {
    const hot = dissolved(100, 200);
    expect(hot.final.celsius.toFixed(1)).toBe('104.9');
    expect(hot).toMatchObject({ extrapolated: true, boils: 'no' });
    expect(codes(hot).slice(0, 3)).toEqual(['caustic-burns', 'solid-into-cold-water', 'pellets-boil-locally']);
    const mild = dissolved(20, 80);
    expect(mild.final.celsius.toFixed(1)).toBe('76.8');
    expect(codes(mild)).not.toContain('pellets-boil-locally');
    expect(mild.extrapolated).toBe(false);
  });

  it('below 20 °C too', () => {
    expect(dissolved(1, 99, 5)).toMatchObject({ extrapolated: true });
  });

  it('says where the lye would boil', () => {
    const r = dissolved(40, 60, 60);
    expect(r.boilingPoint?.celsius.toString()).toBe('130.1');
    expect(r.final.celsius.gt('130.1')).toBe(true);
    expect(r.boils).toBe('yes');
    expect(codes(r).slice(0, 4)).toEqual(['caustic-burns', 'solid-into-cold-water', 'lye-would-boil', 'pellets-boil-locally']); // prettier-ignore
  });
});

describe('lyeTemperatureFromDissolving: laws', () => {
  const percents = fc.integer({ min: 1, max: 425 }).map((tenths) => tenths / 10);
  const starts = fc.integer({ min: 0, max: 60 });

  it('does not depend on the size of the batch', () => {
    fc.assert(
      fc.property(percents, starts, fc.integer({ min: 2, max: 1000 }), (percent, start, times) => {
        const one = dissolved(percent, 100 - percent, start);
        const many = dissolved(percent * times, (100 - percent) * times, start);
        expect(deviation(many.final.celsius.toString(), one.final.celsius.toString()).lte('1e-12')).toBe(true);
      }),
    );
  });

  it('a warmer start ends warmer, by about as much', () => {
    fc.assert(
      fc.property(percents, fc.integer({ min: 0, max: 59 }), (percent, start) => {
        const rise = dissolved(percent, 100 - percent, start + 1).final.celsius.minus(
          dissolved(percent, 100 - percent, start).final.celsius,
        );
        // heat capacity of water and solid over that of the lye: one for weak lyes, 0.9 at 42 %, a little over one at 5 %
        expect(Number(rise)).toBeGreaterThan(0.88);
        expect(Number(rise)).toBeLessThan(1.06);
      }),
    );
  });

  it('more water ends cooler, from 30 % down', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 299 }), (tenths) => {
        const end = (percent: number) => dissolved(percent, 100 - percent).final.celsius;
        expect(end(tenths / 10).lt(end(tenths / 10 + 0.1))).toBe(true);
      }),
    );
  });

  it('survives JSON, and its working ends in the result', () => {
    const r = dissolved(100, 200);
    const again = lyeTemperatureFromDissolving(throughJson(r.given) as LyeTemperatureFromDissolvingInput);
    expect(textOf(again)).toBe(textOf(r));
    const steps = workingOf(r);
    expect(steps.map(({ unit }) => unit)).toEqual(['g', 'mol', 'g', 'percent', 'kJ/mol', 'kJ', 'kJ', '°C']);
    expect(steps.at(-1)?.value.toString()).toBe(r.final.celsius.toString());
  });
});

describe('lyeTemperatureFromDissolving: refusals', () => {
  const good = { alkali: 'naoh', solid: { g: 100 }, water: { g: 200 }, start: { celsius: 20 } };
  it.each<[object, string, string]>([
    // 3 · 18.015 / 39.997 · 100
    [{ water: { g: 100 } }, 'outside-table', 'water: expected at least 135.2 g: heats are known to 42.5 percent of naoh, received 100 g'], // prettier-ignore
    [{ alkali: 'koh', water: { g: 99 } }, 'outside-table', 'water: expected water for a lye of at most 50 percent, received 50.3 percent'], // prettier-ignore
    [{ solid: { g: 0 } }, 'out-of-range', 'solid.g: expected more than 0'],
    [{ water: { g: 0 } }, 'out-of-range', 'water.g: expected more than 0'],
    [{ assay: { percent: 101 } }, 'out-of-range', 'assay.percent'],
    [{ assay: { percent: 0 } }, 'out-of-range', 'assay.percent'],
    [{ start: { celsius: -1 } }, 'out-of-range', 'start.celsius: expected 0 to 60'],
    [{ start: { celsius: 61 } }, 'out-of-range', 'start.celsius: expected 0 to 60'],
    [{ start: undefined }, 'missing', 'start'],
    [{ alkali: 'lime' }, 'bad-shape', 'alkali'],
    [{ pot: { g: 1 } }, 'unknown-key', 'input.pot'],
  ])('%o', (change, code, message) => {
    const refused = refusal(() => lyeTemperatureFromDissolving({ ...good, ...change } as never));
    expect(refused.code).toBe(code);
    expect(refused.message).toContain(message);
  });

  it('the least water that is asked for is enough, and an impure solid needs less', () => {
    expect(dissolved(100, '135.2').strength.percent.toFixed(1)).toBe('42.5');
    const refused = refusal(() => dissolved(100, 100, 20, { assay: { percent: 90 } }));
    expect(refused.message).toContain('at least 111.7 g'); // 121.7 for 90 g, less the 10 g that the solid brings
    expect(dissolved(100, '111.7', 20, { assay: { percent: 90 } }).boils).toBe('no');
  });
});
