import { describe, expect, it } from 'vitest';
import { textsOf, trials } from './trials.js';

/**
 * The library against a second implementation that was written from the guides, README and public signatures alone, and
 * works on exact rationals. Values of published fats are data and taken from the library; formulas are not.
 *
 * What differed while it was written, and whose fault it was. All other figures agreed at the first comparison.
 *
 * - What an impure `water` lacks counted as `other`: ours, the guide says water.
 * - 2-propanol stayed in the pot when spirit left: the guide was silent. Library: it is spirit, and goes in proportion.
 * - Water midway between two steps went up: the guide was silent. Library: to the even step.
 * - A step of the scale greater than the mass of an alkali gave a plan without it: the guide was silent. Library: refused.
 * - A step by which the water of a solid alkali is none gave a plan without it (one recipe in 100 000, seed 1): the guide was
 *   silent. Library: refused.
 * - Extent without any esters was nought: the guide's formula said nothing of it, and had no lower end either. Library: 1
 *   once the acid is met.
 * - A limit of free caustic was passed by 0.000003 % of the batch (one recipe in 6000, seed 1): ours. Water rounded down
 *   makes a smaller batch; the guide says that the limit holds for what is weighed, not how. Library: a step less of alkali.
 * - Not settled: with two alkalis in that case the library now and then takes off a step more than would do (13 of 40 such
 *   plans), which no guide explains. Its limit holds. Steps of 1 g and a limit of 5 % were needed to see it.
 *
 * Asked of the library before the guide was mended, so no difference was seen: what is neither hydroxide nor carbonate in
 * solid NaOH and KOH, the parts of a wax, the carbonic acid beside `evaporated`, superfat by mass where caustic is in excess,
 * the likely split of water and spirit.
 */
describe('a second implementation, from the guides alone and on exact rationals', () => {
  // one in four of the recipes is followed to the products, one in ten to the composition
  it('agrees with the library on 2000 recipes', () => {
    const result = trials(2000, 2);
    expect(textsOf(result)).toEqual([]);
    expect(result.figures).toBeGreaterThan(80_000);
    expect(result.refusedByBoth).toBeGreaterThan(0);
  });
});
