/** Readings at one time, windows by themselves, and what a heat capacity rests on. */
import { compositionFrom, fatFromCertificate, heatOfWarming, soapFromLye, stagedLye } from 'laurate';
import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/numbers/index.js';
import { judgingWindow, processWindows } from '../../src/process/processWindows.js';
import { inTime } from '../../src/process/readings.js';
import { refusal } from '../laws/refusal.js';

const dry = fatFromCertificate({ name: 'Dry', kind: 'triglyceride', saponificationValue: { mgKohPerG: 200 } });

describe('readings in time', () => {
  const reading = (minutes: number) => ({ path: '', stage: 'lye' as const, minutes: new Decimal(minutes), celsius: new Decimal(60) }); // prettier-ignore
  const times = (...minutes: readonly number[]) => inTime(minutes.map(reading)).map(({ minutes: at }) => at.toNumber());

  it('span some time from the first to the last, also where two are of one time', () => {
    expect(times(5, 5, 10)).toEqual([5, 5, 10]);
    expect(times(10, 5, 5)).toEqual([5, 5, 10]);
    expect(times(5, 5)).toEqual([]);
  });
});

describe('windows', () => {
  it('that judge say so, by themselves and among the others', () => {
    const judging = processWindows().filter(({ judges }) => judges);
    expect(judging.length).toBeGreaterThan(0);
    for (const { id } of judging) expect(judgingWindow(id as 'pouring-usual')).toEqual(judging.find((one) => one.id === id)); // prettier-ignore
  });
});

describe('the publications of a heat capacity', () => {
  const basis = (g: number): readonly string[] => {
    const lye = [{ alkali: 'naoh', mass: { g }, solution: { hydroxide: { percent: 50 } } }] as const;
    const composition = compositionFrom({ soap: soapFromLye({ fats: [{ fat: dry, mass: { g: 500 } }], lye }), additions: [] }); // prettier-ignore
    return heatOfWarming({ composition, from: { celsius: 20 }, to: { celsius: 60 } }).basis;
  };

  it('are those of what is there: of fat left over or of caustic left over, not of both', () => {
    // 500 g take 1.782 mol; 140 g of this lye hold 1.750, 150 g 1.875
    const [fatLeft, causticLeft] = [basis(140), basis(150)];
    expect([fatLeft.includes('fasina-colley-2008'), fatLeft.includes('crc-thermodynamic-properties')]).toEqual([true, false]); // prettier-ignore
    expect([causticLeft.includes('fasina-colley-2008'), causticLeft.includes('crc-thermodynamic-properties')]).toEqual([false, true]); // prettier-ignore
  });
});

describe('a lye in portions', () => {
  const portions = (celsius: string) =>
    stagedLye({
      fats: [{ fat: dry, mass: { g: 500 } }],
      lye: [{ alkali: 'naoh', mass: { g: 140 }, solution: { hydroxide: { percent: 50 } } }],
      start: { pot: { celsius }, lye: { celsius: 25 } },
    }).portions;

  it('is in a hundred at most: so near its ceiling of 65 °C a pot may start, and no nearer', () => {
    expect(portions('63.53').length).toBe(100);
    expect(refusal(() => portions('63.6'))).toMatchObject({ code: 'infeasible', path: 'start.pot' });
  });
});
