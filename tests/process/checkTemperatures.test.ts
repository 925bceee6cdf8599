import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { checkTemperatures, type StageTemperatures, type TemperatureReading, type WorkStage } from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { codes, deviation, textOf } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

/** Readings of one stage: minutes (none where undefined) and °C. */
const log = (
  stage: WorkStage,
  ...readings: readonly (readonly [minutes: number | string | undefined, celsius: number | string])[]
): TemperatureReading[] =>
  readings.map(([minutes, celsius]) => ({
    stage,
    ...(minutes === undefined ? {} : { time: { minutes } }),
    temperature: { celsius },
  }));
const only = (readings: readonly TemperatureReading[]): StageTemperatures => {
  const [stage, ...others] = checkTemperatures({ readings }).stages;
  expect(others).toEqual([]);
  if (stage === undefined) throw new Error('no stage was told');
  return stage;
};

describe('checkTemperatures: the span of a log', () => {
  it('runs from the first time to the last, also where the first two readings are of one time', () => {
    const { logged } = only(log('saponification', [5, 60], [5, 60], [30, 61]));
    expect([logged?.from.minutes.toString(), logged?.to.minutes.toString()]).toEqual(['5', '30']);
  });

  it('is none where all readings are of one time, or one of them has none', () => {
    expect(only(log('saponification', [5, 60], [5, 60])).logged).toBeUndefined();
    expect(only(log('saponification', [5, 60], [undefined, 62], [9, 60])).logged).toBeUndefined();
  });
});

describe('checkTemperatures: worked by hand', () => {
  it('a peak over the usual window, not over the tolerable one', () => {
    // 50 to 70 in 20 min: over 65 from minute 15; 70 to 60 in 20: until minute 30. A triangle 15 min long, 5 high: 37.5
    const r = only(log('saponification', [0, 50], [20, 70], [40, 60]));
    expect(r).toMatchObject({ stage: 'saponification', verdict: 'tolerable' });
    expect(r.meaning.code).toBe('warmer-than-usual');
    expect([r.lowest.celsius.toString(), r.highest.celsius.toString()]).toEqual(['50', '70']);
    expect([r.logged?.from.minutes.toString(), r.logged?.to.minutes.toString()]).toEqual(['0', '40']);
    expect(r.beyond).toHaveLength(1);
    const [beyond] = r.beyond;
    expect(beyond).toMatchObject({ window: 'saponification-usual', side: 'above' });
    expect(beyond?.limit.celsius.toString()).toBe('65');
    expect(beyond?.furthest.celsius.toString()).toBe('70');
    expect(beyond?.by.celsiusDegrees.toString()).toBe('5');
    expect(beyond?.time?.minutes.toString()).toBe('15');
    expect(beyond?.onAverage?.celsiusDegrees.toString()).toBe('2.5');
  });

  it('too hot: over both windows, each with its own time', () => {
    // over 65 from 2.5 to 27.5 min: triangles of 7.5 and 7.5 min and a plateau of 10 at 80: 15·15/2 + 150 = 262.5 in 25 min
    // over 75 from 7.5 to 22.5: 2.5·5/2·2 + 10·5 = 62.5 in 15 min
    const r = only(log('saponification', [0, 60], [10, 80], [20, 80], [30, 60]));
    expect(r.verdict).toBe('too-hot');
    expect(r.meaning.code).toBe('darkens');
    expect(r.beyond.map(({ window, time }) => [window, time?.minutes.toString()])).toEqual([
      ['saponification-usual', '25'],
      ['saponification-tolerable', '15'],
    ]);
    expect(r.beyond.map(({ onAverage }) => onAverage?.celsiusDegrees.toFixed(4))).toEqual(['10.5000', '4.1667']);
  });

  it('a trapezium where both ends of a line are out', () => {
    const [beyond] = only(log('clearing', [10, 72], [20, 76])).beyond;
    expect(beyond?.time?.minutes.toString()).toBe('10');
    expect(beyond?.onAverage?.celsiusDegrees.toString()).toBe('4');
  });

  it('just at a limit is inside', () => {
    expect(only(log('saponification', [0, 65])).verdict).toBe('within');
    expect(only(log('saponification', [0, 75])).verdict).toBe('tolerable');
    expect(only(log('saponification', [0, '75.01'])).verdict).toBe('too-hot');
    expect(only(log('clearing', [0, 70], [5, 70])).beyond).toEqual([]);
    expect(only(log('clearing', [0, '70.1'])).verdict).toBe('too-hot');
    expect(only(log('pouring', [0, 60], [5, 65])).verdict).toBe('within');
  });

  it('poured too cold, and too hot and too cold in one stage', () => {
    const cold = only(log('pouring', [90, 62], [100, 57]));
    expect(cold.verdict).toBe('too-cold');
    expect(cold.meaning.code).toBe('sets-before-it-is-poured');
    // under 60 from minute 94: 6 min, on average 1.5
    expect(cold.beyond[0]).toMatchObject({ window: 'pouring-usual', side: 'below' });
    expect(cold.beyond[0]?.by.celsiusDegrees.toString()).toBe('3');
    expect(cold.beyond[0]?.time?.minutes.toString()).toBe('6');
    expect(cold.beyond[0]?.onAverage?.celsiusDegrees.toString()).toBe('1.5');
    const both = only(log('pouring', [90, 70], [100, 50]));
    expect(both.verdict).toBe('too-hot');
    expect(both.meaning.code).toBe('poured-hot');
    expect(both.beyond.map(({ side, time }) => [side, time?.minutes.toString()])).toEqual([
      ['above', '2.5'],
      ['below', '5'],
    ]);
  });

  it('means something else once cleared', () => {
    expect(only(log('clearing', [0, 72])).meaning.code).toBe('darkens-once-cleared');
    expect(only(log('clearing', [0, 60])).meaning.code).toBe('as-usual');
  });

  it('knows no window of the lye', () => {
    const r = only(log('lye', [undefined, 95]));
    expect(r).toMatchObject({ verdict: 'cannot-tell', beyond: [] });
    expect(r.meaning.code).toBe('no-window-known');
  });
});

describe('checkTemperatures: what the times tell', () => {
  it('a reading without a time, and it cannot be told how long', () => {
    const result = checkTemperatures({ readings: log('saponification', [0, 60], [undefined, 70], [40, 60]) });
    const [r] = result.stages;
    expect(r?.verdict).toBe('tolerable');
    expect(r).not.toHaveProperty('logged');
    expect(r?.beyond[0]).not.toHaveProperty('time');
    expect(r?.beyond[0]).not.toHaveProperty('onAverage');
    expect(codes(result.notes)).toEqual(['common-practice-of-one-route', 'between-readings', 'times-do-not-tell']);
  });

  it('nor of a single time, said twice', () => {
    const [r] = checkTemperatures({ readings: log('saponification', [20, 70], [20, '70.0']) }).stages;
    expect(r?.beyond[0]).not.toHaveProperty('time');
  });

  it('nothing to tell where nothing is beyond', () => {
    const { notes } = checkTemperatures({ readings: log('saponification', [undefined, 60]) });
    expect(codes(notes)).toEqual(['common-practice-of-one-route', 'between-readings']);
  });

  it('stages stand in the order of the work; that they overlap is said, the lye apart', () => {
    const inOrder = [...log('clearing', [60, 66], [70, 66]), ...log('saponification', [0, 50], [60, 60])];
    const good = checkTemperatures({ readings: inOrder });
    expect(good.stages.map(({ stage }) => stage)).toEqual(['saponification', 'clearing']);
    expect(codes(good.notes)).not.toContain('stages-overlap');
    const mixed = [...log('clearing', [50, 66], [70, 66]), ...log('saponification', [0, 50], [60, 60])];
    expect(codes(checkTemperatures({ readings: mixed }).notes)).toContain('stages-overlap');
    const lye = [...log('lye', [0, 30], [90, 25]), ...log('saponification', [0, 50], [60, 60])];
    expect(codes(checkTemperatures({ readings: lye }).notes)).not.toContain('stages-overlap');
  });

  it('warns of lye, scalds and spirit, burns first', () => {
    const { cautions } = checkTemperatures({ readings: log('pouring', [0, 62]) });
    expect(codes(cautions).slice(0, 4)).toEqual(['caustic-burns', 'lye-into-hot-soap', 'hot-soap-scalds', 'spirit-catches-fire']); // prettier-ignore
  });

  it('shows its working', () => {
    const steps = workingOf(checkTemperatures({ readings: log('saponification', [0, 50], [20, 70], [40, 60]) }));
    const integral = steps.find(({ figure }) => figure === 'above saponification-usual: integral');
    expect([integral?.value.toString(), integral?.unit]).toEqual(['37.5', 'Celsius degrees · min']);
  });
});

describe('checkTemperatures: laws', () => {
  const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((value) => value / 10);
  const logs = fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 240 }), tenths(40, 95)), {
    minLength: 2,
    maxLength: 9,
    selector: ([minutes]) => minutes,
  });
  const stage = fc.constantFrom<WorkStage>('saponification', 'clearing', 'pouring');

  it('the order of the readings does not matter', () => {
    fc.assert(
      fc.property(stage, logs, (of, readings) => {
        const there = checkTemperatures({ readings: log(of, ...readings) });
        const back = checkTemperatures({ readings: log(of, ...[...readings].reverse()) });
        expect(textOf(back.stages)).toBe(textOf(there.stages));
      }),
    );
  });

  it('time and integral are those of a fine sum over the line', () => {
    fc.assert(
      fc.property(stage, logs, (of, readings) => {
        const r = only(log(of, ...readings));
        const line = [...readings].sort(([a], [b]) => a - b);
        const STEPS = 400;
        for (const { side, limit, time, onAverage } of r.beyond) {
          let [minutes, integral] = [0, 0];
          line.slice(1).forEach(([to, end], at) => {
            const [from, start] = line.at(at) ?? [to, end];
            for (let step = 0; step < STEPS; step += 1) {
              const celsius = start + ((end - start) * (step + 0.5)) / STEPS;
              const out = (celsius - Number(limit.celsius)) * (side === 'above' ? 1 : -1);
              if (out <= 0) continue;
              minutes += (to - from) / STEPS;
              integral += (out * (to - from)) / STEPS;
            }
          });
          // a crossing is missed by at most one step of a line: in time by (to − from)/400, in the integral by much less
          const span = Number(r.logged?.to.minutes) - Number(r.logged?.from.minutes);
          expect(Math.abs(Number(time?.minutes) - minutes)).toBeLessThanOrEqual(span / STEPS);
          const whole = Number(time?.minutes) * Number(onAverage?.celsiusDegrees);
          expect(Math.abs(whole - integral)).toBeLessThanOrEqual((span / STEPS) * (55 / STEPS));
        }
      }),
    );
  });

  it('a reading on the line changes nothing', () => {
    fc.assert(
      fc.property(stage, logs, (of, readings) => {
        const [first, second] = [...readings].sort(([a], [b]) => a - b) as [[number, number], [number, number]];
        const middle: [string, string] = [
          new Decimal(first[0]).plus(second[0]).div(2).toString(),
          new Decimal(first[1]).plus(second[1]).div(2).toString(),
        ];
        const [plain, more] = [only(log(of, ...readings)), only(log(of, ...readings, middle))];
        expect(more.beyond.length).toBe(plain.beyond.length);
        for (const [at, { time, onAverage }] of plain.beyond.entries()) {
          const other = more.beyond[at];
          expect(deviation(String(other?.time?.minutes), String(time?.minutes)).lte('1e-28')).toBe(true);
          expect(deviation(String(other?.onAverage?.celsiusDegrees), String(onAverage?.celsiusDegrees)).lte('1e-28')).toBe(true); // prettier-ignore
        }
      }),
    );
  });

  it('hotter all along is never judged milder', () => {
    const rank = ['too-cold', 'within', 'tolerable', 'too-hot'];
    fc.assert(
      fc.property(
        fc.constantFrom<WorkStage>('saponification', 'clearing'),
        logs,
        tenths(0, 20),
        (of, readings, more) => {
          const cool = only(log(of, ...readings));
          const hot = only(
            log(of, ...readings.map(([minutes, celsius]): [number, number] => [minutes, celsius + more])),
          );
          expect(rank.indexOf(hot.verdict)).toBeGreaterThanOrEqual(rank.indexOf(cool.verdict));
        },
      ),
    );
  });
});

describe('checkTemperatures: refusals', () => {
  const refused = (readings: unknown) =>
    refusal(() => checkTemperatures({ readings: readings as TemperatureReading[] }));

  it('two temperatures at one time of a stage', () => {
    expect(refused([...log('saponification', [20, 64]), ...log('saponification', ['20.0', 70])])).toMatchObject({
      code: 'infeasible',
      path: 'readings[1].temperature',
      message:
        'readings[1].temperature: expected one temperature at one time of saponification, received 64 and 70 °C at 20 minutes',
    });
    expect(() => checkTemperatures({ readings: [...log('saponification', [20, 64]), ...log('clearing', [20, 66])] })).not.toThrow();
  }); // prettier-ignore

  it.each<[unknown, string, string]>([
    [undefined, 'missing', 'readings'],
    [[], 'bad-shape', 'readings'],
    [[{ stage: 'cooling', temperature: { celsius: 20 } }], 'bad-shape', 'readings[0].stage'],
    [[{ stage: 'lye' }], 'missing', 'readings[0].temperature'],
    [[{ stage: 'lye', temperature: { celsius: 500 } }], 'out-of-range', 'readings[0].temperature.celsius'],
    [
      [{ stage: 'lye', time: { minutes: -1 }, temperature: { celsius: 20 } }],
      'out-of-range',
      'readings[0].time.minutes',
    ],
    [[{ stage: 'lye', at: 1, temperature: { celsius: 20 } }], 'unknown-key', 'readings[0].at'],
  ])('%j', (readings, code, path) => {
    expect(refused(readings)).toMatchObject({ code, path });
  });
});
