import { processWindows, sources, type ProcessWindow } from 'laurate';
import { describe, expect, it } from 'vitest';

const windows = processWindows();
const named = (id: string): ProcessWindow | undefined => windows.find((one) => one.id === id);

describe('processWindows', () => {
  it('judges by four windows, all of them common practice', () => {
    const judging = windows.filter(({ judges }) => judges);
    expect(judging.map(({ id, from, to }) => [id, from?.celsius.toString(), to?.celsius.toString()])).toEqual([
      ['saponification-usual', undefined, '65'],
      ['saponification-tolerable', undefined, '75'],
      ['clearing-usual', undefined, '70'],
      ['pouring-usual', '60', '65'],
    ]);
    for (const { obtained, source } of judging)
      expect([obtained, source]).toEqual(['common-practice', 'common-practice']);
  });

  it('keeps what is printed beside, read in publications of the bibliography', () => {
    const printed = windows.filter(({ judges }) => !judges);
    expect(printed.length).toBe(14);
    for (const { obtained, source, what } of printed) {
      expect(obtained).toBe('read');
      expect(sources([source])).toHaveLength(1);
      expect(['printed', 'ceiling']).toContain(what);
    }
  });

  // °C as the reference rounds them: (°F − 32) · 5/9
  it.each([
    ['pan-ceiling-1908', undefined, '76.7'],
    ['filling-1908', '62.8', '62.8'],
    ['dissolving-1922', '71.1', '71.1'],
    ['saponification-1922', '60.0', '60.0'],
    ['saponification-1914', '43.9', '43.9'],
    ['fats-warmed-1908', '54.4', '54.4'],
    ['hold-us-1995', '79.4', '90.6'],
    ['holding-tank-us-1995', '65.6', '68.3'],
    ['dissolving-jp-5774951', '65.0', '75.0'],
  ])('%s in °C', (id, from, to) => {
    const row = named(id);
    expect(row?.from?.celsius.toFixed(1)).toBe(from);
    expect(row?.to?.celsius.toFixed(1)).toBe(to);
  });

  it('names each window once and none the wrong way round', () => {
    expect(new Set(windows.map(({ id }) => id)).size).toBe(windows.length);
    for (const { from, to } of windows) {
      expect(to).toBeDefined();
      if (from !== undefined) expect(to?.celsius.gte(from.celsius)).toBe(true);
    }
  });
});
