import fc from 'fast-check';
import { lyeFreezingPoint, type LyeFreezingPointInput } from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { mayFreezeInStore } from '../../src/lye/index.js';
import { Decimal } from '../../src/numbers/index.js';
import { textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const freezing = (alkali: 'naoh' | 'koh', percent: number | string) =>
  lyeFreezingPoint({ alkali, strength: { percent } });
const celsius = (alkali: 'naoh' | 'koh', percent: number | string): string =>
  freezing(alkali, percent).freezingPoint.celsius.toFixed(2);

describe('lyeFreezingPoint: worked by hand', () => {
  it('NaOH on the lines between its points', () => {
    expect(celsius('naoh', '50.36')).toBe('11.70'); // a point
    expect(celsius('naoh', 50)).toBe('11.30'); // 9.9 + 1.8 · (50 − 48.73)/1.63
    expect(celsius('naoh', 0)).toBe('0.00');
    expect(celsius('naoh', '73.37')).toBe('62.90');
  });

  it('NaOH is not monotonic: less water can freeze later', () => {
    const at = [18.68, 38.98, 45.62, 50].map((percent) => Number(celsius('naoh', percent)));
    expect(at).toEqual([-28, 15.7, 6.1, 11.3]);
  });

  it('bounds: 0.3 % of strength along the curve, and 0.5 °C on top', () => {
    const { bounds } = freezing('naoh', 50);
    // at 49.7 %: 10.9712; at 50.3 %: 11.6337
    expect([bounds?.low.celsius.toFixed(3), bounds?.high.celsius.toFixed(3)]).toEqual(['10.471', '12.134']);
    const trough = freezing('naoh', '45.5').bounds; // the lowest point lies inside
    expect(trough?.low.celsius.toFixed(1)).toBe('5.6'); // 6.1 − 0.5
    expect(freezing('naoh', '0.1').bounds?.low.celsius.toFixed(3)).toBe('-0.589'); // never weaker than water
  });

  it('KOH to 7 % on printed depressions', () => {
    expect(celsius('koh', 4)).toBe('-2.57');
    expect(celsius('koh', '6.5')).toBe('-4.53'); // between -4.14 and -4.92
    expect(freezing('koh', 4).bounds?.low.celsius.toString()).toBe('-2.62');
    expect(freezing('koh', 4).basis[0]).toBe('crc-102-2021');
  });

  it('KOH at its three single points, without bounds', () => {
    expect(['30.8', 45, 50].map((percent) => celsius('koh', percent))).toEqual(['-65.00', '-29.00', '7.00']);
    expect(freezing('koh', 45)).not.toHaveProperty('bounds');
    expect(freezing('koh', 45).basis[0]).toBe('handbooks-recalled');
  });

  it('says that a stock with crystals is of unknown strength', () => {
    const { cautions } = freezing('naoh', 40);
    expect(cautions.map(({ code }) => code)).toContain('crystallised-stock');
    expect(cautions[0]?.code).toBe('caustic-burns');
  });
});

describe('lyeFreezingPoint: laws', () => {
  it('lies within its bounds, which are at least a degree apart, and moves no faster than the steepest line', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 73_269 }), (part) => {
        const r = freezing('naoh', `${String(part)}e-3`);
        const next = freezing('naoh', `${String(part + 100)}e-3`);
        const { low, high } = r.bounds ?? { low: r.freezingPoint, high: r.freezingPoint };
        expect(low.celsius.plus('0.5').lte(r.freezingPoint.celsius)).toBe(true);
        expect(high.celsius.minus('0.5').gte(r.freezingPoint.celsius)).toBe(true);
        // 5.93 °C to one per cent, between 52.25 and 53.06 %
        expect(next.freezingPoint.celsius.minus(r.freezingPoint.celsius).abs().lte('0.594')).toBe(true);
      }),
    );
  });

  it('survives JSON; its working is one line', () => {
    const r = freezing('naoh', 33);
    expect(textOf(lyeFreezingPoint(throughJson(r.given) as LyeFreezingPointInput))).toBe(textOf(r));
    expect(workingOf(r).map(({ value }) => value.toFixed(2))).toEqual([celsius('naoh', 33)]);
  });
});

describe('lyeFreezingPoint: refusals', () => {
  const good = { alkali: 'koh', strength: { percent: 5 } };
  it.each<[object, string, string]>([
    [{ strength: { percent: '7.01' } }, 'outside-table', 'strength: expected 0 to 7 percent of koh, or 30.8, 45 or 50 percent exactly, received 7.01 percent'], // prettier-ignore
    [{ strength: { percent: 40 } }, 'outside-table', 'strength: expected 0 to 7 percent of koh'],
    [
      { alkali: 'naoh', strength: { percent: '73.38' } },
      'outside-table',
      'strength: expected 0 to 73.37 percent of naoh',
    ],
    [{ strength: { percent: 101 } }, 'out-of-range', 'strength.percent'],
    [{ strength: undefined }, 'missing', 'strength'],
    [{ alkali: undefined }, 'missing', 'alkali'],
    [{ temperature: { celsius: 1 } }, 'unknown-key', 'input.temperature'],
  ])('%o', (change, code, message) => {
    const refused = refusal(() => lyeFreezingPoint({ ...good, ...change } as never));
    expect(refused.code).toBe(code);
    expect(refused.message).toContain(message);
  });
});

describe('mayFreezeInStore agrees with the curves', () => {
  const may = (alkali: 'naoh' | 'koh', percent: number) => mayFreezeInStore(alkali, new Decimal(percent));

  it('every strength of NaOH whose curve may be over 5 °C, and little more', () => {
    const overFive = Array.from({ length: 733 }, (_, tenth) => (tenth + 1) / 10).filter(
      (percent) => freezing('naoh', percent).bounds?.high.celsius.gt(5) === true,
    );
    expect(overFive).not.toEqual([]);
    expect(overFive.filter((percent) => !may('naoh', percent))).toEqual([]);
    expect(Math.min(...overFive) - 31).toBeLessThan(0.3); // the error of the curve's strengths
    expect(
      Array.from({ length: 310 }, (_, tenth) => (tenth + 1) / 10).filter((percent) => may('naoh', percent)),
    ).toEqual([]);
    expect(may('naoh', 74)).toBe(true); // beyond the curve nothing is known
  });

  it('KOH: over 5 °C at 50 %, far under it at 45 % and all that is known below', () => {
    expect([may('koh', 50), Number(celsius('koh', 50))]).toEqual([true, 7]);
    expect([may('koh', 45), Number(celsius('koh', 45))]).toEqual([false, -29]);
    expect(may('koh', 46)).toBe(true);
  });
});
