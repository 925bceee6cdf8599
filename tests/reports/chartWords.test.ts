import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/numbers/index.js';
import { drawn, interval, inWords } from '../../src/reports/charts/figures.js';
import { linesOf, plainText } from '../../src/reports/charts/words.js';

const estimate = (low: string, likely: string, high: string) => ({
  low: new Decimal(low),
  likely: new Decimal(likely),
  high: new Decimal(high),
});

describe('figures of a chart', () => {
  it('are rounded outward where they spread, to the nearest where they do not', () => {
    expect(interval(estimate('1.239', '1.244', '1.241'), 2)).toEqual({ low: 1.23, likely: 1.24, high: 1.25 });
    expect(interval(estimate('-1.231', '0', '1.231'), 2)).toEqual({ low: -1.24, likely: 0, high: 1.24 });
    expect(interval(estimate('1.239', '1.239', '1.239'), 2)).toEqual({ low: 1.24, likely: 1.24, high: 1.24 });
    expect(interval(estimate('1.231', '1.231', '1.231'), 2)).toEqual({ low: 1.23, likely: 1.23, high: 1.23 });
  });

  it('have no minus before nought', () => {
    expect(Object.is(drawn(new Decimal('-0.001'), 2), 0)).toBe(true);
    expect(drawn(new Decimal('-0.001'), 2, 'down')).toBe(-0.01);
  });

  it('tell their ends in words where there are two', () => {
    expect(inWords(estimate('37.31', '38', '39.04'), 1, ' %')).toBe('38.0 % (37.3 to 39.1)');
    expect(inWords(estimate('-3', '-2', '-1'), 0)).toBe('−2 (−3 to −1)');
    expect(inWords(estimate('38', '38', '38'), 2, ' %')).toBe('38.00 %');
  });
});

describe('words of a chart', () => {
  it('stand in lines as long as they may be, broken between words', () => {
    expect(linesOf('one two three four', 9)).toEqual(['one two', 'three', 'four']);
    expect(linesOf('one two three four', 10)).toEqual(['one two', 'three four']);
    expect(linesOf('a word-that-is-too-long b', 6)).toEqual(['a', 'word-that-is-too-long', 'b']);
    expect(linesOf('one', 3)).toEqual(['one']);
    const words = fc.array(fc.string({ minLength: 1, maxLength: 9, unit: fc.constantFrom('a', 'b') }), {
      minLength: 1,
    });
    fc.assert(
      fc.property(words, fc.integer({ min: 1, max: 40 }), (some, longest) => {
        const lines = linesOf(some.join(' '), longest);
        expect(lines.join(' ')).toBe(some.join(' '));
        for (const [at, line] of lines.entries()) {
          if (line.includes(' ')) expect(line.length).toBeLessThanOrEqual(longest);
          const [next] = lines[at + 1]?.split(' ') ?? [];
          if (next !== undefined) expect(`${line} ${next}`.length).toBeGreaterThan(longest);
        }
      }),
      { seed: 31, numRuns: 200 },
    );
  });

  it('of somebody else are cut to so many characters, a mark of it among them', () => {
    expect(plainText('abcde', 5)).toBe('abcde');
    expect(plainText('abcdef', 5)).toBe('abcd…');
    expect(plainText('🥥🥥🥥', 3)).toBe('🥥🥥🥥');
    expect(plainText('🥥🥥🥥🥥', 3)).toBe('🥥🥥…');
    expect(plainText(' \u0000a\u202Eb\uFFFF ', 9)).toBe('a b');
  });
});
