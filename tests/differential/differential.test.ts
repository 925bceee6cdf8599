import { describe, expect, it } from 'vitest';
import { textsOf, trials } from './trials.js';

describe('a second implementation, from the guides alone and on exact rationals', () => {
  // one in four of the recipes is followed to the products, one in ten to the composition
  it('agrees with the library on 2000 recipes', () => {
    const result = trials(2000, 2);
    expect(textsOf(result)).toEqual([]);
    expect(result.figures).toBeGreaterThan(80_000);
    expect(result.refusedByBoth).toBeGreaterThan(0);
  });
});
