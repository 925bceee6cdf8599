/** The edges of what a recipe may say, and which fault is told where there are two. */
import { readRecipe } from 'laurate/recipe';
import { describe, expect, it } from 'vitest';
import { readParts } from '../../src/recipe/readParts.js';
import { refusal } from '../laws/refusal.js';
import { SMALL } from './recipes.js';

const [weighed] = SMALL.lye;
const faultsOf = (value: unknown) => readParts(value, {}).faults.map(({ code, path }) => `${code} ${path}`);

describe('limits of claims', () => {
  it.each<[claim: string, inside: unknown, outside: unknown, path: string]>([
    ['strength', { percent: 0 }, { percent: '-0.1' }, 'strength.percent'],
    ['waterPerAlkali', 0, '-0.001', 'waterPerAlkali'],
    ['waterPerFat', { percent: 0 }, { percent: '-0.1' }, 'waterPerFat.percent'],
    ['kohShare', { percent: 0 }, { percent: '-0.1' }, 'kohShare.percent'],
    ['shares', { soap: { percent: 0 } }, { soap: { percent: '-0.1' } }, 'shares.soap.percent'],
    ['clearingAgentsPerSoap', 0, '-0.001', 'clearingAgentsPerSoap'],
    ['waterPerSoap', 0, '-0.001', 'waterPerSoap'],
    ['ph', 0, '-0.001', 'ph'],
    ['ph', 14, '14.001', 'ph'],
    ['freeCausticAlkali', { percentNaoh: 0 }, { percentNaoh: '-0.001' }, 'freeCausticAlkali.percentNaoh'],
  ])('%s', (claim, inside, outside, path) => {
    expect(readRecipe({ ...SMALL, claimed: { [claim]: inside } }).claimed).toHaveProperty(claim);
    const refused = refusal(() => readRecipe({ ...SMALL, claimed: { [claim]: outside } }));
    expect(refused).toMatchObject({ code: 'out-of-range', path: `claimed.${path}` });
    expect(faultsOf({ ...SMALL, claimed: { [claim]: outside } })).toEqual([`out-of-range claimed.${path}`]);
  });
});

describe('the name of a field', () => {
  it.each([
    [40, `recipe.${'x'.repeat(40)}`],
    [41, 'recipe'],
  ])('of %s letters', (letters, path) => {
    expect(refusal(() => readRecipe({ ...SMALL, ['x'.repeat(letters)]: 1 }))).toMatchObject({ code: 'unknown-key', path });
  }); // prettier-ignore
});

describe('what is told of two faults', () => {
  it('is the assay that cannot be, before the form that is one too many', () => {
    const lye = { ...weighed, solid: { hydroxide: { percent: 200 } }, solution: { hydroxide: { percent: 50 } } };
    expect(refusal(() => readRecipe({ ...SMALL, lye: [lye] })).path).toBe('lye[0].solid.hydroxide.percent');
  });

  it('is a missing version where all is missing', () => {
    expect(refusal(() => readRecipe({}))).toMatchObject({ code: 'missing', path: 'version' });
    expect(faultsOf({ fats: SMALL.fats, lye: SMALL.lye })).toEqual(['missing version']);
  });
});

describe('readParts: what cannot be read leaves no row', () => {
  it('total alkali without its carbonate is no assay', () => {
    const lye = [{ alkali: 'naoh', mass: { g: 1 }, solid: { totalAlkali: { percent: 90 } } }];
    expect(faultsOf({ ...SMALL, lye })).toEqual(['missing lye[0].solid.carbonate']);
    expect(readParts({ ...SMALL, lye }, {}).lye.rows).toEqual([]);
  });

  it('an addition without mass is none, however well its claim can be read; and one without claim has no field for it', () => {
    const share = { percent: 5 };
    const additions = [
      { name: 'colour', claimed: { share } },
      { name: 'scent', mass: { g: 1 } },
    ];
    const read = readParts({ ...SMALL, additions }, {});
    expect(read.additions.rows).toStrictEqual([{ path: 'additions[1]', row: { name: 'scent', mass: { g: '1' } } }]);
    expect(read.additions.areAll).toBe(false);
  });

  it('a field of no value is no field, known or not', () => {
    expect(faultsOf({ ...SMALL, water: undefined, notes: undefined })).toEqual([]);
  });
});
