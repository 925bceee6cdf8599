import fc from 'fast-check';
import { kohShareFromMassShare } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact, KOH, NAOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const share = (percent: number | string) => kohShareFromMassShare({ massShare: { percent } }).kohShare.percent;

describe('kohShareFromMassShare: worked by hand', () => {
  it('half and 60 % by mass', () => {
    expect(share(50).toFixed(6)).toBe('41.619321'); // 0.5/56.105 / (0.5/56.105 + 0.5/39.997) = 39.997 / 96.102
    expect(share(60).toFixed(6)).toBe('51.675488'); // 0.6/56.105 / (0.6/56.105 + 0.4/39.997)
  });

  it('none and all stay none and all', () => {
    expect(share(0).toString()).toBe('0');
    expect(share(100).toString()).toBe('100');
  });
});

describe('kohShareFromMassShare: laws', () => {
  it('gives the mass share back: x·M(KOH) to (1 − x)·M(NaOH)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10000 }), (hundredths) => {
        const x = new Exact(share(`${String(hundredths)}e-2`).toString()).div(100);
        const koh = x.times(KOH);
        const back = koh.div(koh.plus(new Exact(1).minus(x).times(NAOH))).times(10000);
        expect(deviation(back, hundredths).lte('1e-31')).toBe(true); // five roundings at 34 digits
      }),
    );
  });

  it('rises with the mass share and lies below it: KOH is the heavier', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99 }), (percent) => {
        expect(share(percent).lt(percent)).toBe(true);
        expect(share(percent).lt(share(percent + 1))).toBe(true);
      }),
    );
  });
});

describe('kohShareFromMassShare: refusals', () => {
  it.each<[unknown, string, string]>([
    [{ massShare: { percent: 101 } }, 'out-of-range', 'massShare.percent'],
    [{ massShare: { percent: -1 } }, 'out-of-range', 'massShare.percent'],
    [{ massShare: 50 }, 'bad-shape', 'massShare'],
    [{}, 'missing', 'massShare'],
    [{ moleShare: { percent: 50 } }, 'unknown-key', 'input.moleShare'],
  ])('%o', (input, code, path) => {
    expect(refusal(() => kohShareFromMassShare(input as never))).toMatchObject({ code, path });
  });
});
