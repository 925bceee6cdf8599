/** The arithmetic behind clear verdicts: how far it is off, and that it is never off by more than the proof allows. */
import fc from 'fast-check';
import { fat, fats as listings } from 'laurate';
import { describe, expect, it } from 'vitest';
import { demandAt, lyeAt, potGrams } from '../../src/audit/clear/clearVerdict.js';
import { aboveOf, printedFloat, relativeErrorOf } from '../../src/audit/clear/float64.js';
import { constants, floatPot } from '../../src/audit/clear/floatPot.js';
import { printedNumber } from '../../src/audit/printed.js';
import { ownFats } from '../../src/recipe/readRecipe.js';
import { Exact, KOH, NAOH } from '../laws/exact.js';

const SEED = { seed: 20261127 };
const GRAMS = { mg: '0.001', g: '1', kg: '1000', oz: '28.349523125', lb: '453.59237' } as const;
const MOLAR = { naoh: NAOH, koh: KOH } as const;

const figure = (whole: number, least = 1): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.integer({ min: least, max: whole }),
      fc.integer({ min: 0, max: 9_999_999 }),
      fc.integer({ min: 0, max: 7 }),
    )
    .map(([number, part, digits]) =>
      digits === 0 ? String(number) : `${String(number)}.${String(part).padStart(7, '0').slice(0, digits)}`,
    );
const mass = fc.tuple(fc.constantFrom('mg', 'g', 'kg', 'oz', 'lb'), figure(99_999));
const pots = fc.record({
  fats: fc.array(fc.tuple(fc.constantFrom(...listings.map(({ id }) => id)), mass), { minLength: 1, maxLength: 5 }),
  lye: fc.array(
    fc.record({ alkali: fc.constantFrom('naoh' as const, 'koh' as const), mass, total: figure(99, 11), part: fc.option(fc.integer({ min: 1, max: 49 })) }),
    { minLength: 1, maxLength: 3 },
  ),
  water: mass,
}); // prettier-ignore

type Pot = typeof pots extends fc.Arbitrary<infer T> ? T : never;
const ofMass = ([unit, text]: readonly [string, string]): object => ({ [unit]: text });
const exactly = ([unit, text]: readonly [keyof typeof GRAMS, string]): Exact => new Exact(text).times(GRAMS[unit]);

const CARBONATE = { naoh: new Exact('105.988'), koh: new Exact('138.204') } as const;
/** Carbonate that is so many hundredths of the total alkali, to the digits that are read. */
const carbonateOf = (total: string, part: number): string => new Exact(total).times(part).div(100).toFixed(6);
const sum = (figures: readonly Exact[]): Exact => figures.reduce((all, one) => all.plus(one), new Exact(0));

const recipeOf = ({ fats, lye, water }: Pot): object => ({
  version: 1,
  fats: fats.map(([id, weighed]) => ({ fat: id, mass: ofMass(weighed) })),
  lye: lye.map(({ alkali, mass: weighed, total, part }) => ({
    alkali,
    mass: ofMass(weighed),
    solid:
      part === null
        ? { hydroxide: { percent: total } }
        : { totalAlkali: { percent: total }, carbonate: { percent: carbonateOf(total, part) } },
  })),
  water: ofMass(water),
});

/** The same figures in sixty digits. */
function exactOf({ fats, lye, water }: Pot): readonly Exact[] {
  const demand = (end: 'low' | 'likely' | 'high'): Exact =>
    sum(fats.map(([id, weighed]) => exactly(weighed).times(fat(id).saponificationValue[end].mgKohPerG.toString()))).div(KOH.times(1000)); // prettier-ignore
  const charged = lye.map(({ alkali, mass: weighed, total, part }) => {
    const carbonate = part === null ? 0 : new Exact(carbonateOf(total, part)).times(MOLAR[alkali]).times(2).div(CARBONATE[alkali]); // prettier-ignore
    return exactly(weighed).times(new Exact(total).minus(carbonate)).div(100).div(MOLAR[alkali]);
  });
  const all = sum(
    [...fats.map(([, weighed]) => weighed), ...lye.map(({ mass: weighed }) => weighed), water].map(exactly),
  );
  return [demand('low'), demand('likely'), demand('high'), sum(charged), all];
}

describe('figures in float64', () => {
  it('are multiples of the unit that a kind is told in: an equivalent is none of a value', () => {
    expect([...constants().saponificationValue.keys()]).toEqual(['mgKohPerG', 'gKohPerG', 'gNaohPerG']);
    expect([...constants().mass]).toEqual(
      expect.arrayContaining([
        ['g', 1],
        ['kg', 1000],
        ['oz', 28.349523125],
      ]),
    );
  });

  it('of ten thousand pots: none is off by more than the bound, and the bound is no hundred times too wide', () => {
    let [worst, tried] = [0, 0];
    fc.assert(
      fc.property(pots, (drawn) => {
        const pot = floatPot(recipeOf(drawn), ownFats({}));
        if (pot === undefined) return;
        tried += 1;
        const found = [
          ...(['low', 'likely', 'high'] as const).map((end) => demandAt(pot.fats, end)),
          lyeAt(pot.lye, 'likely', 'value').charged,
          potGrams(pot),
        ];
        const off = exactOf(drawn).map((exact, at) => exact.minus(found[at] ?? 0).div(exact).abs().div(relativeErrorOf(pot.rows)).toNumber()); // prettier-ignore
        worst = Math.max(worst, ...off);
        expect(Math.max(...off)).toBeLessThanOrEqual(1);
      }),
      { ...SEED, numRuns: 10_000 },
    );
    expect(tried).toBeGreaterThan(9_000);
    expect(worst).toBeGreaterThan(0.01);
    expect(relativeErrorOf(60)).toBeLessThan(2e-14);
  });

  it('the bound counts every row, and is that of so many roundings', () => {
    const row = { fat: 'coconut-oil', mass: { g: '100' } };
    const recipe = { version: 1, fats: [row, row, row], lye: [{ alkali: 'naoh', mass: { g: '40' } }, { alkali: 'koh', mass: { g: '9' } }], additions: [{ name: 'clay', mass: { g: '5' } }] };
    expect(floatPot(recipe, ownFats({}))?.rows).toBe(7); // and the water
    for (const rows of [1, 7, 60]) {
      const roundings = new Exact(48 + 2 * rows).times(new Exact(2).pow(-53));
      expect(relativeErrorOf(rows)).toBeCloseTo(roundings.div(new Exact(1).minus(roundings)).toNumber(), 28);
    }
  }); // prettier-ignore

  it('a printed figure and the ends of its last digit are the exact ones, rounded', () => {
    fc.assert(
      fc.property(figure(99_999_999), (text) => {
        const exact = printedNumber(text);
        const { low, value, high } = printedFloat(text, 1);
        expect([low, value, high]).toEqual([exact.low, exact.value, exact.high].map(Number));
      }),
      { ...SEED, numRuns: 2000 },
    );
    expect(printedFloat('0.1', 1)).toEqual({ low: 0.05, value: 0.1, high: 0.2 });
    expect(printedFloat('0.0', 1)).toEqual({ low: -0.1, value: 0, high: 0.1 });
    expect(printedFloat(-2, 10)).toEqual({ low: -30, value: -20, high: -10 });
  });

  it.each(['1e5', ' 5', '5.', '.5', '+5', '123456789', '0.12345678', '', 'x', null, 1e-7, 0.1 + 0.2, Infinity, {}])(
    '%s is left to exact decimals',
    (came) => {
      expect(printedFloat(came, 1).value).toBeNaN();
    },
  );
});

describe('a comparison', () => {
  const above = aboveOf(5);
  const off = relativeErrorOf(5);

  it('is clear only where both sides, each off by as much as may be, would still compare so', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), fc.double({ min: 0, max: 6, noNaN: true }), (one, away) => {
        const other = one * (1 + away * off);
        const isClear = new Exact(other).div(1 + off).gt(new Exact(one).div(1 - off));
        expect([undefined, isClear ? true : undefined]).toContain(above(other, one));
        expect([undefined, isClear ? false : undefined]).toContain(above(one, other));
        if (away > 4.1) expect([above(other, one), above(one, other)]).toEqual([true, false]);
      }),
      { ...SEED, numRuns: 2000 },
    ); // prettier-ignore
  });

  it('with nought, with less than nought, and with no number', () => {
    expect([above(1, 0), above(0, 1), above(0, 0), above(0, -1), above(-1, 0), above(-1, 1), above(1, -1)]).toEqual([
      true, false, undefined, true, false, false, true,
    ]); // prettier-ignore
    expect([above(Number.NaN, 1), above(1, Number.NaN)]).toEqual([undefined, undefined]);
  });
});
