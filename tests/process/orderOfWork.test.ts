import { orderOfWork, processWindows, sources } from 'laurate';
import { describe, expect, it } from 'vitest';

const steps = orderOfWork();

describe('orderOfWork', () => {
  it('is the order of the alcohol-free route', () => {
    expect(steps.map(({ id }) => id)).toEqual([
      'melt-fats',
      'add-lye',
      'finish-saponification',
      'add-glycerol',
      'add-propylene-glycol',
      'add-sorbitol',
      'clear',
      'pour',
    ]);
  });

  it('names windows that judge, of its own stage', () => {
    for (const { stage, window } of steps) {
      expect(processWindows().find(({ id }) => id === window)).toMatchObject({ judges: true, stage });
    }
  });

  it('says common practice but for the one rule of its own', () => {
    expect(steps.filter(({ obtained }) => obtained === 'convention').map(({ id, source }) => [id, source])).toEqual([
      ['finish-saponification', 'laurate-convention'],
    ]);
    for (const { source } of steps.filter(({ obtained }) => obtained === 'common-practice')) {
      expect(source).toBe('common-practice');
    }
  });

  it('gives times only as they are printed, in minutes, with a publication each', () => {
    const holds = steps.flatMap(({ id, holds: printed }) =>
      printed.map(({ low, high, source }) => [id, low.minutes.toString(), high?.minutes.toString(), source]),
    );
    expect(holds).toEqual([
      ['add-lye', '15', undefined, 'clear-soap-patent-1995'],
      ['finish-saponification', '15', '30', 'suhadi-rasmito-2019'],
      ['finish-saponification', '120', '120', 'thomssen-1922'],
      ['finish-saponification', '1440', '2160', 'formulas-1914'],
      ['clear', '30', undefined, 'clear-soap-patent-1995'],
    ]);
    const named = steps.flatMap(({ holds: printed }) => printed.map(({ source }) => source));
    expect(sources([...new Set(named)])).toHaveLength(4);
  });
});
