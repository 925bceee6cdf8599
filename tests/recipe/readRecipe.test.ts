import { createRequire } from 'node:module';
import type { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { fat, isCalculationError, planLye, superfatFromLye, toJson, valueIn } from 'laurate';
import { readRecipe } from 'laurate/recipe';
import { describe, expect, it } from 'vitest';
import { refusal } from '../laws/refusal.js';
import { blend, isDeepFrozen, lot, recipe, SMALL, WORKED } from './recipes.js';

const [row] = SMALL.fats;
const [weighed] = SMALL.lye;
const throughJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('readRecipe: the worked example', () => {
  const read = readRecipe(WORKED);

  it('keeps every figure as it is printed, as text', () => {
    expect(read.fats[0]?.mass).toEqual({ g: '900' });
    expect(read.fats[0]?.claimed).toEqual({ saponificationValue: { gNaohPerG: '0.183' } });
    expect(read.lye).toEqual([{ alkali: 'naoh', mass: { g: '322.7' }, solution: { hydroxide: { percent: '49' } } }]);
    expect(read.claimed).toEqual({
      superfat: { percent: '4' },
      strength: { percent: '49' },
      total: { g: '1474.7' },
      ph: '9',
      freeCausticAlkali: { percentNaoh: '0.05' },
    });
    expect(readRecipe({ ...SMALL, water: { g: '4.0' } }).water).toEqual({ g: '4.0' });
  });

  it('finds the fats', () => {
    expect(read.fats[0]?.fat).toBe(fat('coconut-oil'));
  });

  it('has the fields of the recipe and no others', () => {
    expect(Object.keys(read)).toEqual(Object.keys(WORKED));
    expect(Object.keys(readRecipe(SMALL))).toEqual(Object.keys(SMALL));
  });

  it('is input of the calculations: 158 g of hydroxide on 900 g of coconut oil', () => {
    const { superfat } = superfatFromLye({ fats: read.fats, lye: read.lye });
    // 1 - 322.7*0.49/39.997/n, with n of 248 and 265 mg KOH/g
    expect([superfat.low, superfat.high].map(({ percent }) => percent.toFixed(1))).toEqual(['0.6', '7.0']);
    const plan = planLye({
      fats: read.fats,
      alkali: { naoh: { solution: { hydroxide: { percent: 49 } } } },
      target: read.target ?? { superfat: { percent: 0 } },
      dilution: 'as-is',
    });
    expect(plan.superfat.likely.percent.toFixed(6)).toBe('4.000000');
  });
});

describe('readRecipe: laws', () => {
  it('what was read is a recipe again, also as JSON, and reads the same', () => {
    fc.assert(
      fc.property(recipe, (value) => {
        const read = readRecipe(value);
        expect(toJson(readRecipe(read))).toEqual(toJson(read));
        expect(toJson(readRecipe(toJson(read)))).toEqual(toJson(read));
        expect(toJson(readRecipe(throughJson(read)))).toEqual(toJson(read));
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it('nothing of the input changes, and everything of the result is frozen', () => {
    fc.assert(
      fc.property(recipe, (value) => {
        const before = JSON.stringify(value);
        expect(isDeepFrozen(readRecipe(value))).toBe(true);
        expect(JSON.stringify(value)).toBe(before);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('every figure means the number that it meant', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e12, noNaN: true }), (g) => {
        const { water } = readRecipe({ ...SMALL, water: { g } });
        expect(water && valueIn(water, 'g').eq(g)).toBe(true);
      }),
    );
  });

  it('whatever comes, it is a recipe or a refusal', () => {
    fc.assert(
      fc.property(fc.anything({ withBigInt: true, withDate: true, withMap: true, withSparseArray: true }), (value) => {
        expect(() => readRecipe(value)).toThrow(expect.objectContaining({ name: 'CalculationError' }));
        expect(() => readRecipe({ ...SMALL, claimed: { extra: value ?? null } })).toThrow('extra');
      }),
    );
  });
});

describe('readRecipe: fats', () => {
  const named = (name: unknown, fats = {}) => readRecipe({ ...SMALL, fats: [{ fat: name, mass: { g: 1 } }] }, { fats });

  it('are found by any name of the trade', () => {
    expect(named('Copra oil').fats[0]?.fat).toBe(fat('coconut-oil'));
  });

  it("of one's own are found by the letters of their name", () => {
    expect(named('drum 7', { 'drum 7': lot }).fats[0]?.fat).toBe(lot);
    expect(named('drum 7', { 'drum 7': throughJson(lot) }).fats[0]?.fat).toEqual(lot);
    expect(named('Drum-7', { 'drum 7': lot }).fats[0]?.fat).toBe(lot);
    expect(named('Coconut oil', { 'coconut-oil': lot }).fats[0]?.fat).toBe(lot);
    expect(named('Drum 7', { 'drum 7': fat('castor-oil'), 'Drum 7': lot }).fats[0]?.fat).toBe(lot);
    expect(refusal(() => named('DRUM 7', { 'drum 7': lot, 'Drum 7': lot }))).toEqual({
      code: 'unknown-fat',
      path: 'fats[0].fat',
      message: 'fats[0].fat: expected the exact name of one of drum 7, Drum 7, received DRUM 7',
    });
    expect(refusal(() => named('Drum 8', { 'drum 7': lot }))).toEqual({
      code: 'unknown-fat',
      path: 'fats[0].fat',
      message:
        'fats[0].fat: expected the name of a fat of your own, or of a published fat (did you mean "drum 7"?), received Drum 8',
    });
  });

  it.each([[5], [null], [true]])('are a name or a whole fat, not %s', (value) => {
    expect(refusal(() => named(value))).toMatchObject({
      code: 'bad-shape',
      path: 'fats[0].fat',
      message: `fats[0].fat: expected a text of 1 to 200 characters, received ${String(value)}`,
    });
  });

  it('of one name by letters: three of them are told', () => {
    const fats = { 'A b': lot, 'a B': lot, 'A B': lot, ab: lot };
    expect(refusal(() => named('a b', fats)).message).toBe(
      'fats[0].fat: expected the exact name of one of A b, a B, A B, received a b',
    );
  });

  it.each([
    ['オリーブ油', '椰子油'],
    ['?', '---'],
    ['Drum 71', 'Drum 7-1'],
    ['Lot 15', 'Lot 1.5'],
    ['Blend A+', 'Blend A'],
    ['Blend A-', 'Blend A'],
    ['Öl', 'Äl'],
    ['Кокос 76', 'Пальма 76'],
  ])("of one's own are not taken for another: %s is not %s", (called, mine) => {
    expect(refusal(() => named(called, { [mine]: lot }))).toMatchObject({ code: 'unknown-fat', path: 'fats[0].fat' });
    expect(named(mine, { [mine]: lot, [called]: fat('castor-oil') }).fats[0]?.fat).toBe(lot);
  });

  it("of one's own in any script are found by their letters", () => {
    expect(named('кокос-76', { 'Кокос 76': lot }).fats[0]?.fat).toBe(lot);
    expect(named('O\u0308l', { Öl: lot }).fats[0]?.fat).toBe(lot); // the mark apart from its letter
  });

  it("of one's own are a record, not a map", () => {
    const fats = new Map([['Drum 7', lot]]);
    expect(refusal(() => readRecipe(SMALL, { fats: fats as never }))).toMatchObject({
      code: 'bad-shape',
      path: 'options.fats',
    });
  });

  it("of one's own may be what does not say whether it is a map", () => {
    const fault = (): never => {
      throw new Error('an error of the value came through');
    };
    expect(named('Drum 7', new Proxy({ 'Drum 7': lot }, { getPrototypeOf: fault })).fats[0]?.fat).toBe(lot);
  });

  it("of one's own stand before the published", () => {
    expect(named('coconut-oil', { 'coconut-oil': lot }).fats[0]?.fat).toBe(lot);
    expect(named('copra oil', { 'coconut-oil': lot }).fats[0]?.fat).toBe(fat('coconut-oil'));
  });

  it("of one's own that no recipe calls are not read", () => {
    expect(named('castor-oil', { 'drum 8': 'empty' }).fats[0]?.fat).toBe(fat('castor-oil'));
    expect(refusal(() => named('drum 8', { 'drum 8': 'empty' }))).toMatchObject({
      code: 'bad-shape',
      path: 'options.fats.drum 8',
    });
  });

  it.each([
    ['a lot', lot],
    ['a blend', blend],
    ['a published fat', fat('beeswax')],
  ])('may stand in the recipe: %s', (_which, whole) => {
    expect(named(whole).fats[0]?.fat).toBe(whole);
    expect(named(toJson(whole)).fats[0]?.fat).toEqual(whole);
  });

  it('that stand in the recipe are read like any input', () => {
    expect(refusal(() => named({ ...toJson(lot), kind: 'butter' }))).toMatchObject({
      code: 'bad-shape',
      path: 'fats[0].fat.kind',
    });
  });

  it('have no name in common with what every object inherits', () => {
    for (const name of ['__proto__', 'constructor', 'toString']) {
      expect(refusal(() => named(name)).code).toBe('unknown-fat');
    }
  });
});

describe('readRecipe: numbers', () => {
  // the copy for `require` is not the one for `import`
  const OtherCopy = createRequire(import.meta.url)('decimal.js') as Decimal.Constructor;
  const water = (g: unknown) => readRecipe({ ...SMALL, water: { g } }).water;

  it('may be Decimals of any copy of decimal.js', () => {
    expect(water(valueIn({ g: '12.50' }, 'g'))).toEqual({ g: '12.5' });
    expect(water(new OtherCopy('12.5'))).toEqual({ g: '12.5' });
  });

  it('of more digits than ours come as near as ours do', () => {
    const third = new (OtherCopy.clone({ precision: 100 }))(1).div(3);
    expect(water(third)).toEqual({ g: `0.${'3'.repeat(34)}` });
    const Ours = valueIn({ g: 1 }, 'g').constructor as Decimal.Constructor;
    expect(water(new Ours(`0.${'3'.repeat(90)}`))).toEqual({ g: `0.${'3'.repeat(34)}` });
  });

  it('that are none are refused, as Decimals too', () => {
    expect(refusal(() => water(new OtherCopy(Number.NaN)))).toMatchObject({ code: 'not-a-number', path: 'water.g' });
    expect(refusal(() => water(new OtherCopy('1e20')))).toMatchObject({ code: 'out-of-range', path: 'water.g' });
  });

  it('run no code of an object that poses as one', () => {
    const impostor = {
      toStringTag: '[object Decimal]',
      isFinite: () => true,
      toPrecision: () => 'no number',
      toString: () => {
        throw new Error('run');
      },
    };
    expect(refusal(() => water(impostor))).toMatchObject({ code: 'not-a-number', path: 'water.g' });
  });

  it('fields of undefined are not there', () => {
    expect(readRecipe({ ...SMALL, title: undefined, water: { g: 1, kg: undefined } })).toEqual({
      ...readRecipe(SMALL),
      water: { g: '1' },
    });
  });
});

const withFat = (change: object) => ({ ...SMALL, fats: [row, { ...row, ...change }] });
const withLye = (change: object) => ({ ...SMALL, lye: [{ alkali: 'naoh', mass: { g: 1 }, ...change }] });
const withAddition = (addition: object) => ({ ...SMALL, additions: [addition] });
const claiming = (claimed: unknown) => ({ ...SMALL, claimed });
const strength = (percent: unknown) => withLye({ solution: { hydroxide: { percent } } });

describe('readRecipe: refusals', () => {
  it.each<[string, unknown, string, string, string]>([
    ['nothing', undefined, 'missing', 'recipe', 'expected an object, received nothing'],
    ['null', null, 'missing', 'recipe', 'received null'],
    ['a text', '{}', 'bad-shape', 'recipe', "expected an object, received '{}'"],
    ['a list', [SMALL], 'bad-shape', 'recipe', 'received a list of 1'],
    ['no version', { ...SMALL, version: undefined }, 'missing', 'version', 'expected this field, received nothing'],
    ['a later version', { ...SMALL, version: 2 }, 'out-of-range', 'version', '1, the version of this shape, received 2'],
    ['a version as text', { ...SMALL, version: '1' }, 'out-of-range', 'version', 'received 1'],
    ['an unknown field', { ...SMALL, titel: 'x' }, 'unknown-key', 'recipe.titel', 'did you mean "title"?'],
    ['a missing field that is misspelt', { version: 1, fat: [], lye: SMALL.lye }, 'unknown-key', 'recipe.fat', 'did you mean "fats"?'],
    ['a missing field', { version: 1, lye: SMALL.lye }, 'missing', 'fats', 'expected this field'],
    ['a blank title', { ...SMALL, title: ' ' }, 'bad-shape', 'title', 'a text of 1 to 200 characters'],
    ['a long title', { ...SMALL, title: 'x'.repeat(201) }, 'bad-shape', 'title', 'xxx…'],
    ['no fats', { ...SMALL, fats: [] }, 'bad-shape', 'fats', 'a list with at least one entry, received a list of 0'],
    ['fats that are no list', { ...SMALL, fats: { 0: row } }, 'bad-shape', 'fats', 'expected a list, received an object'],
    ['a fat that is no object', { ...SMALL, fats: [row, 7] }, 'bad-shape', 'fats[1]', 'expected an object, received 7'],
    ['a fat that is a list', { ...SMALL, fats: [row, [row]] }, 'bad-shape', 'fats[1]', 'received a list of 1'],
    ['a hole among the fats', { ...SMALL, fats: [row, undefined] }, 'missing', 'fats[1]', 'expected an object, received nothing'],
    ['a fat without mass', { ...SMALL, fats: [{ fat: 'castor-oil' }] }, 'missing', 'fats[0].mass', 'received nothing'],
    ['a misspelt mass', { ...SMALL, fats: [{ fat: 'castor-oil', mas: { g: 1 } }] }, 'unknown-key', 'fats[0].mas', 'did you mean "mass"?'],
    ['a fat without name', { ...SMALL, fats: [{ mass: { g: 1 } }] }, 'missing', 'fats[0].fat', 'received nothing'],
    ['an unknown fat', withFat({ fat: 'coconut-oli' }), 'unknown-fat', 'fats[1].fat', 'coconut-oil'],
    ['a fat that could be several', withFat({ fat: 'rosin' }), 'unknown-fat', 'fats[1].fat', 'rosin-ww'],
    ['a fat that is a number', withFat({ fat: 7 }), 'bad-shape', 'fats[1].fat', 'received 7'],
    ['a fat that is a list', withFat({ fat: ['castor-oil'] }), 'bad-shape', 'fats[1].fat', 'received a list of 1'],
    ['a bare number', withFat({ mass: 900 }), 'bad-shape', 'fats[1].mass', '{ g: … } (or mg, kg, oz, lb), received 900'],
    ['a list for a quantity', withFat({ mass: [900] }), 'bad-shape', 'fats[1].mass', 'received a list of 1'],
    ['two units', withFat({ mass: { g: 900, lb: 2 } }), 'two-units', 'fats[1].mass', 'received g and lb'],
    ['no unit', withFat({ mass: {} }), 'missing', 'fats[1].mass', 'received an empty object'],
    ['an unknown unit', withFat({ mass: { gr: 900 } }), 'unknown-unit', 'fats[1].mass.gr', "one of mg, g, kg, oz, lb, received the unknown unit 'gr'"],
    ['a unit of another kind', withFat({ mass: { mL: 900 } }), 'unknown-unit', 'fats[1].mass.mL', "received the unknown unit 'mL'"],
    ['a negative mass', withFat({ mass: { g: '-1' } }), 'out-of-range', 'fats[1].mass.g', 'at least 0, received -1'],
    ['a decimal comma', withFat({ mass: { g: '1,5' } }), 'not-a-number', 'fats[1].mass.g', "a decimal point: '1.5', received '1,5'"],
    ['no number', withFat({ mass: { g: Number.NaN } }), 'not-a-number', 'fats[1].mass.g', 'received NaN'],
    ['more than any number', withFat({ mass: { g: Infinity } }), 'not-a-number', 'fats[1].mass.g', 'received Infinity'],
    ['a big number of another kind', withFat({ mass: { g: 5n } }), 'not-a-number', 'fats[1].mass.g', 'received 5'],
    ['more than a million tonnes', withFat({ mass: { kg: '1e10' } }), 'out-of-range', 'fats[1].mass', '1e-24 to 1e12 g'],
    ['claims that are a list', withFat({ claimed: [] }), 'bad-shape', 'fats[1].claimed', 'expected an object, received a list of 0'],
    ['an unknown claim of a fat', withFat({ claimed: { sap: 190 } }), 'unknown-key', 'fats[1].claimed.sap', 'did you mean "saponificationValue"?'],
    ['a bare saponification value', withFat({ claimed: { saponificationValue: 190 } }), 'bad-shape', 'fats[1].claimed.saponificationValue', 'gNaohPerG'],
    ['a saponification value of nothing', withFat({ claimed: { saponificationValue: { mgKohPerG: 0 } } }), 'out-of-range', 'fats[1].claimed.saponificationValue.mgKohPerG', 'more than 0'],
    ['a share below nothing', withFat({ claimed: { share: { fraction: '-0.01' } } }), 'out-of-range', 'fats[1].claimed.share.fraction', 'at least 0, received -0.01'],
    ['no lye', { ...SMALL, lye: [] }, 'bad-shape', 'lye', 'at least one entry'],
    ['an unknown alkali', withLye({ alkali: 'nah', solid: { hydroxide: { percent: 9 } } }), 'bad-shape', 'lye[0].alkali', 'one of naoh, koh'],
    ['lye without assay', withLye({}), 'missing', 'lye[0]', 'solid or solution, received neither'],
    ['lye of both kinds', { ...SMALL, lye: [{ ...weighed, solution: { hydroxide: { percent: 50 } } }] }, 'bad-shape', 'lye[0]', 'either solid or solution, received both'],
    ['a solid of nothing', withLye({ solid: {} }), 'missing', 'lye[0].solid', 'hydroxide or totalAlkali, received neither'],
    ['two assays', withLye({ solid: { hydroxide: { percent: 90 }, totalAlkali: { percent: 90 } } }), 'bad-shape', 'lye[0].solid', 'either hydroxide or totalAlkali, received both'],
    ['total alkali without carbonate', withLye({ solid: { totalAlkali: { percent: 95 } } }), 'missing', 'lye[0].solid.carbonate', 'received nothing'],
    ['more carbonate than alkali', withLye({ solid: { totalAlkali: { percent: 20 }, carbonate: { percent: 40 } } }), 'out-of-range', 'lye[0].solid.carbonate', 'less alkali than the total'],
    ['an assay of nothing', withLye({ solid: { hydroxide: { percent: 0 } } }), 'out-of-range', 'lye[0].solid.hydroxide.percent', '10 to 110'],
    ['a solution stronger than any', strength(76), 'out-of-range', 'lye[0].solution.hydroxide.percent', 'received 76'],
    ['half a range', withLye({ solution: { hydroxide: { low: { percent: 49 } } } }), 'missing', 'lye[0].solution.hydroxide.high', 'received nothing'],
    ['a range upside down', withLye({ solution: { hydroxide: { low: { percent: 50 }, high: { percent: 49 } } } }), 'out-of-range', 'lye[0].solution.hydroxide', 'received 50 to 49'],
    ['a strength by volume', withLye({ solution: { hydroxide: { percentByVolume: 50 } } }), 'unknown-unit', 'lye[0].solution.hydroxide.percentByVolume', "received the unknown unit 'percentByVolume'"],
    ['additions that are no list', { ...SMALL, additions: {} }, 'bad-shape', 'additions', 'expected a list, received an object'],
    ['an unknown solvent', withAddition({ solvent: 'glycerin', mass: { g: 1 } }), 'bad-shape', 'additions[0].solvent', 'did you mean "glycerol"?'],
    ['an addition without name', withAddition({ mass: { g: 1 } }), 'missing', 'additions[0]', 'solvent or name, received neither'],
    ['an addition of two names', withAddition({ solvent: 'water', name: 'rain', mass: { g: 1 } }), 'bad-shape', 'additions[0]', 'either solvent or name, received both'],
    ['an addition without amount', withAddition({ name: 'colour' }), 'missing', 'additions[0]', 'mass or volume, received neither'],
    ['an addition of two amounts', withAddition({ name: 'colour', mass: { g: 1 }, volume: { mL: 1 } }), 'bad-shape', 'additions[0]', 'either mass or volume, received both'],
    ['a negative volume', withAddition({ name: 'colour', volume: { mL: -1 } }), 'out-of-range', 'additions[0].volume.mL', 'received -1'],
    ['an assay of something else', withAddition({ name: 'colour', mass: { g: 1 }, assay: { percent: 50 } }), 'bad-shape', 'additions[0].assay', 'an assay only of a solvent'],
    ['an assay of glycerol by volume', withAddition({ solvent: 'glycerol', mass: { g: 1 }, assay: { percentByVolume: 50 } }), 'bad-shape', 'additions[0].assay', 'by volume is for ethanol only, received glycerol'],
    ['spirit over the whole', withAddition({ solvent: 'ethanol', mass: { g: 1 }, assay: { percentByVolume: 101 } }), 'out-of-range', 'additions[0].assay.percentByVolume', 'received 101'],
    ['an assay in two units', withAddition({ solvent: 'ethanol', mass: { g: 1 }, assay: { percentByVolume: 96, percent: 94 } }), 'two-units', 'additions[0].assay', 'percentByVolume and percent'],
    ['an empty target', { ...SMALL, target: {} }, 'missing', 'target.superfat', 'received nothing'],
    ['two targets', { ...SMALL, target: { superfat: { percent: 1 }, freeCausticAlkaliAtMost: { percentNaoh: 0 } } }, 'bad-shape', 'target', 'received both'],
    ['a target of excess', { ...SMALL, target: { superfat: { percent: -1 } } }, 'out-of-range', 'target.superfat.percent', 'received -1'],
    ['a target that is a list', { ...SMALL, target: [] }, 'bad-shape', 'target', 'received a list of 0'],
    ['a target of much caustic', { ...SMALL, target: { freeCausticAlkaliAtMost: { percentNaoh: 6 } } }, 'out-of-range', 'target.freeCausticAlkaliAtMost.percentNaoh', '0 to 5, received 6'],
    ['claims that are null', claiming(null), 'missing', 'claimed', 'received null'],
    ['claims that are an empty list', claiming([]), 'bad-shape', 'claimed', 'received a list of 0'],
    ['an unknown claim', claiming({ superfatt: { percent: 4 } }), 'unknown-key', 'claimed.superfatt', 'did you mean "superfat"?'],
    ['a pH of 15', claiming({ ph: 15 }), 'out-of-range', 'claimed.ph', '0 to 14, received 15'],
    ['a pH that is an object', claiming({ ph: { value: 9 } }), 'not-a-number', 'claimed.ph', 'received an object'],
    ['less than no water', claiming({ waterPerAlkali: -1 }), 'out-of-range', 'claimed.waterPerAlkali', 'received -1'],
    ['an unknown stage', { ...SMALL, temperatures: [{ stage: 'pour', temperature: { celsius: 60 } }] }, 'bad-shape', 'temperatures[0].stage', 'did you mean "pouring"?'],
    ['a stage without temperature', { ...SMALL, temperatures: [{ stage: 'lye' }] }, 'missing', 'temperatures[0].temperature', 'received nothing'],
    ['a temperature under all', { ...SMALL, temperatures: [{ stage: 'lye', temperature: { kelvin: 1 } }] }, 'out-of-range', 'temperatures[0].temperature.kelvin', 'received 1'],
    ['a time before the start', { ...SMALL, temperatures: [{ stage: 'lye', time: { hours: -1 }, temperature: { celsius: 60 } }] }, 'out-of-range', 'temperatures[0].time.hours', 'received -1'],
  ])('%s', (_what, value, code, path, said) => {
    const refused = refusal(() => readRecipe(value));
    expect({ code: refused.code, path: refused.path }).toEqual({ code, path });
    expect(refused.message).toContain(said);
  }); // prettier-ignore

  it.each<[string, unknown, string, string]>([
    ['options that are none', null, 'missing', 'options'],
    ['an unknown option', { fat: {} }, 'unknown-key', 'options.fat'],
    ['fats that are a list', { fats: [] }, 'bad-shape', 'options.fats'],
  ])('of %s', (_what, options, code, path) => {
    expect(refusal(() => readRecipe(SMALL, options as never))).toMatchObject({ code, path });
  });

  it('are of the one class', () => {
    try {
      readRecipe({});
    } catch (error) {
      expect(isCalculationError(error) && error.toJSON()).toMatchObject({ code: 'missing', path: 'version' });
      return;
    }
    expect.unreachable();
  });
});
