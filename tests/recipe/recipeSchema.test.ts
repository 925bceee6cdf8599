import { Ajv2020, type SchemaObject } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { isCalculationError } from 'laurate';
import { readRecipe } from 'laurate/recipe';
import { describe, expect, it } from 'vitest';
import { recipeJsonSchema } from './recipeJsonSchema.js';
import { changed, placesIn, recipe, SMALL, WORKED } from './recipes.js';

const schema = recipeJsonSchema() as SchemaObject;
const ajv = new Ajv2020({ strict: true, allErrors: true });
const validate = ajv.compile(schema);

const isRead = (value: unknown): boolean => {
  try {
    readRecipe(value);
    return true;
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return false;
  }
};

describe('the JSON Schema of a recipe', () => {
  it('is the one that is shipped', async () => {
    await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot('../../src/recipe/recipe.schema.json');
  });

  it('is a schema of 2020-12', () => {
    expect(schema).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema' });
    expect(ajv.validateSchema(schema)).toBe(true);
  });

  it.each([
    ['with every field', WORKED],
    ['with the fewest', SMALL],
  ])('accepts a recipe %s', (_which, value) => {
    expect(isRead(value)).toBe(true);
    expect({ valid: validate(value), errors: validate.errors }).toEqual({ valid: true, errors: null });
  });
});

describe('the JSON Schema and the reader', () => {
  it('both accept every recipe, over all fields, units and forms; and again what was read of it', () => {
    fc.assert(
      fc.property(recipe, (value) => {
        const read = JSON.stringify(readRecipe(value));
        expect({ valid: validate(value), errors: validate.errors }).toEqual({ valid: true, errors: null });
        expect({ valid: validate(JSON.parse(read)), errors: validate.errors }).toEqual({ valid: true, errors: null });
      }),
      { seed: 20261125, numRuns: 400 },
    );
  });

  it('whatever the reader accepts of a recipe with a fault put in, the schema accepts', () => {
    const counts = { accepted: 0, refusedByBoth: 0 };
    const wrong = fc.oneof(
      fc.constantFrom<unknown>(undefined, null, true, '', ' ', 'x', 'castor-oil', [], {}, [1]),
      fc.constantFrom<unknown>(0, -1, 1, 2, 1e300, '1', '0.50', '5.', '.5', '1e0', '-0', '1,5', '1.5.', 'g'),
      fc.jsonValue(),
      fc.record({ g: fc.integer(), kg: fc.integer() }, { requiredKeys: [] }),
    );
    const mutant = fc.tuple(recipe, fc.nat(), wrong, fc.boolean()).map(([value, at, by, beside]) => {
      const places = placesIn(value);
      return changed(value, places[at % places.length] ?? [], (old) =>
        beside && typeof old === 'object' && !Array.isArray(old) ? { ...old, extra: by } : by,
      );
    });
    fc.assert(
      fc.property(mutant, (made) => {
        const value: unknown = JSON.parse(JSON.stringify(made));
        const accepted = isRead(value);
        const valid = validate(value);
        if (accepted) expect({ valid, errors: validate.errors, value }).toMatchObject({ valid: true });
        if (accepted) counts.accepted += 1;
        else if (!valid) counts.refusedByBoth += 1;
      }),
      { seed: 20261125, numRuns: 2000 },
    );
    // else nothing was tried
    expect(counts.accepted).toBeGreaterThan(100);
    expect(counts.refusedByBoth).toBeGreaterThan(500);
  });

  const [row] = SMALL.fats;
  const [lye] = SMALL.lye;
  const withFat = (change: object) => ({ ...SMALL, fats: [{ ...row, ...change }] });
  const withLye = (change: object) => ({ ...SMALL, lye: [{ alkali: 'naoh', mass: { g: 1 }, ...change }] });
  const withAddition = (addition: object) => ({ ...SMALL, additions: [addition] });
  it.each<[string, unknown]>([
    ['nothing', null],
    ['a list', [SMALL]],
    ['a text', JSON.stringify(SMALL)],
    ['no version', { ...SMALL, version: undefined }],
    ['another version', { ...SMALL, version: 2 }],
    ['a version as text', { ...SMALL, version: '1' }],
    ['an unknown field', { ...SMALL, servings: 12 }],
    ['a blank title', { ...SMALL, title: ' ' }],
    ['a title of 201 characters', { ...SMALL, title: 'x'.repeat(201) }],
    ['no fats', { ...SMALL, fats: [] }],
    ['fats as an object', { ...SMALL, fats: { 0: row } }],
    ['a fat without mass', { ...SMALL, fats: [{ fat: 'coconut-oil' }] }],
    ['a fat without name', { ...SMALL, fats: [{ mass: { g: 1 } }] }],
    ['a nameless whole fat', withFat({ fat: { kind: 'triglyceride' } })],
    ['a bare number as mass', withFat({ mass: 900 })],
    ['a mass without unit', withFat({ mass: {} })],
    ['a mass in two units', withFat({ mass: { g: 900, lb: 2 } })],
    ['a mass in an unknown unit', withFat({ mass: { cups: 2 } })],
    ['a volume for a mass', withFat({ mass: { mL: 900 } })],
    ['a decimal comma', withFat({ mass: { g: '1,5' } })],
    ['a mass of null', withFat({ mass: { g: null } })],
    ['a list of claims', withFat({ claimed: [] })],
    ['a bare saponification value', withFat({ claimed: { saponificationValue: 190 } })],
    ['no lye', { ...SMALL, lye: [] }],
    ['an unknown alkali', { ...SMALL, lye: [{ ...lye, alkali: 'lioh' }] }],
    ['lye without assay', withLye({})],
    ['lye both solid and dissolved', withLye({ solid: { hydroxide: { percent: 99 } }, solution: { hydroxide: { percent: 50 } } })],
    ['a solid of nothing', withLye({ solid: {} })],
    ['total alkali without carbonate', withLye({ solid: { totalAlkali: { percent: 95 } } })],
    ['hydroxide with carbonate', withLye({ solid: { hydroxide: { percent: 95 }, carbonate: { percent: 1 } } })],
    ['hydroxide and total alkali', withLye({ solid: { hydroxide: { percent: 9 }, totalAlkali: { percent: 9 }, carbonate: { percent: 1 } } })],
    ['half a range', withLye({ solution: { hydroxide: { low: { percent: 49 } } } })],
    ['an addition without amount', withAddition({ name: 'colour' })],
    ['an addition by mass and volume', withAddition({ name: 'colour', mass: { g: 1 }, volume: { mL: 1 } })],
    ['an addition without name', withAddition({ mass: { g: 1 } })],
    ['an addition of two names', withAddition({ name: 'colour', solvent: 'water', mass: { g: 1 } })],
    ['an unknown solvent', withAddition({ solvent: 'spirit', mass: { g: 1 } })],
    ['an assay of something else', withAddition({ name: 'colour', mass: { g: 1 }, assay: { percent: 50 } })],
    ['an empty target', { ...SMALL, target: {} }],
    ['two targets', { ...SMALL, target: { superfat: { percent: 1 }, freeCausticAlkaliAtMost: { percentNaoh: 0 } } }],
    ['a claim with a unit too many', { ...SMALL, claimed: { ph: { percent: 9 } } }],
    ['an unknown claim', { ...SMALL, claimed: { lather: 5 } }],
    ['a list of claims of the whole', { ...SMALL, claimed: [] }],
    ['a temperature without stage', { ...SMALL, temperatures: [{ temperature: { celsius: 60 } }] }],
    ['an unknown stage', { ...SMALL, temperatures: [{ stage: 'stirring', temperature: { celsius: 60 } }] }],
  ])('both refuse %s', (_what, value) => {
    // as JSON, in which a field of undefined is not there
    const json: unknown = JSON.parse(JSON.stringify(value));
    expect({ reader: isRead(json), schema: validate(json) }).toEqual({ reader: false, schema: false });
  }); // prettier-ignore
});
