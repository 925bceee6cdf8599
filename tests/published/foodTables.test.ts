import { describe, expect, it } from 'vitest';
import { togetherOf } from '../../src/checkValues/data/foodTables.js';

const limits = (low: string | null, high: string | null, obtained: 'read' | 'memory' = 'read') => ({
  low,
  high,
  obtained,
});

describe('limits of several standards, taken together', () => {
  it.each([
    ['reach from the lowest to the highest, as printed', [limits('9.50', '20'), limits('80', '100.0')], '9.50-100.0'],
    ['are those of one that holds the other', [limits('184', '196'), limits('186', '194')], '184-196'],
    ['are open below where one is', [limits(null, '5'), limits('1', '7')], '-7'],
    ['are open above where one is', [limits('0', null), limits('1', '7')], '0-'],
  ])('%s', (_what, several, printed) => {
    const [low = '', high = ''] = printed.split('-').map((end) => (end === '' ? null : end));
    expect(togetherOf(several)).toEqual([printed, [low, high], 'read']);
  });

  it('are recalled where one of them is', () => {
    expect(togetherOf([limits('1', '2'), limits('1', '2', 'memory')])[2]).toBe('memory');
  });
});
