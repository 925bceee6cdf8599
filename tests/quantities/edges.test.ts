/** Estimates whose ends fall together in part, and ranges that are turned round. */
import { describe, expect, it } from 'vitest';
import { mapEnds, readPercent, readRanged, readSaponificationValueRange } from '../../src/quantities/index.js';
import { refusal } from '../laws/refusal.js';

describe('mapEnds', () => {
  const mapped = (low: string, likely: string, high: string) => {
    const seen: string[] = [];
    const out = mapEnds({ low, likely, high }, (text) => {
      seen.push(text);
      return text.toUpperCase();
    });
    return { seen: seen.length, out };
  };

  it('works out a figure without spread once, and one with any spread at its ends', () => {
    expect(mapped('a', 'a', 'a')).toEqual({ seen: 1, out: { low: 'A', likely: 'A', high: 'A' } });
    expect(mapped('a', 'a', 'b').out).toEqual({ low: 'A', likely: 'A', high: 'B' });
    expect(mapped('a', 'b', 'b').out).toEqual({ low: 'A', likely: 'B', high: 'B' });
    expect(mapped('a', 'b', 'c').out).toEqual({ low: 'A', likely: 'B', high: 'C' });
  });
});

describe('ranges', () => {
  const value = (low: object, high: object) => {
    const read = readSaponificationValueRange('value', { low, high });
    return [read.low.toFixed(1), read.high.toFixed(1)];
  };

  it('of equivalents run the other way: the greater equivalent is the lower value', () => {
    // 56105 mg/mol over 280.525 and 295.289 g/mol
    const turned = ['190.0', '200.0'];
    expect(value({ saponificationEquivalent: '280.525' }, { saponificationEquivalent: '295.289473684' })).toEqual(
      turned,
    );
    expect(value({ saponificationEquivalent: '295.289473684' }, { saponificationEquivalent: '280.525' })).toEqual(
      turned,
    );
  });

  it.each<[string, () => unknown]>([
    ['of another unit', () => value({ mgKohPerG: 200 }, { mgKohPerG: 190 })],
    ['of two units', () => value({ saponificationEquivalent: 280 }, { mgKohPerG: 190 })],
    ['of two units, the other way', () => value({ mgKohPerG: 201 }, { saponificationEquivalent: 290 })],
    [
      'of a kind without such a unit',
      () => readRanged('value', { low: { percent: 2 }, high: { percent: 1 } }, (path, part) => readPercent(path, part)),
    ],
  ])('%s are not turned round', (_what, read) => {
    expect(refusal(read)).toMatchObject({ code: 'out-of-range', path: 'value' });
  });
});
