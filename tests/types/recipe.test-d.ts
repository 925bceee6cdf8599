import type * as v from 'valibot';
import { fat, superfatFromLye, type Decimal, type Fat } from 'laurate';
import { readRecipe, type ReadRecipe, type Recipe, type RecipeAddition, type RecipeLye } from 'laurate/recipe';
import { describe, expectTypeOf, it } from 'vitest';
import type { recipeSchema } from '../../src/recipe/recipeSchema.js';

const small = {
  version: 1,
  fats: [{ fat: 'coconut-oil', mass: { g: 900 } }],
  lye: [{ alkali: 'naoh', mass: { g: 158 }, solid: { hydroxide: { percent: 99 } } }],
} satisfies Recipe;

describe('Recipe', () => {
  it('takes a fat by id, by any name and as a value', () => {
    expectTypeOf<'coconut-oil'>().toExtend<Recipe['fats'][number]['fat']>();
    expectTypeOf<'my own oil'>().toExtend<Recipe['fats'][number]['fat']>();
    expectTypeOf<Fat>().toExtend<Recipe['fats'][number]['fat']>();
    const whole: Recipe = { ...small, fats: [{ fat: fat('castor-oil'), mass: { lb: '2.0' } }] };
    expectTypeOf(whole).toEqualTypeOf<Recipe>();
  });

  it('refuses another version, and fields it does not know', () => {
    // @ts-expect-error: the version is 1
    ({ ...small, version: 2 }) satisfies Recipe;
    // @ts-expect-error: no such field
    ({ ...small, titel: 'x' }) satisfies Recipe;
    // @ts-expect-error: lye is not left out
    ({ version: 1, fats: small.fats }) satisfies Recipe;
  });

  it('refuses a unit of another kind, two units and bare numbers', () => {
    // @ts-expect-error: a volume is no mass
    ({ ...small, water: { mL: 100 } }) satisfies Recipe;
    // @ts-expect-error: two units
    ({ ...small, water: { g: 100, kg: 1 } }) satisfies Recipe;
    // @ts-expect-error: a number has no unit
    ({ ...small, water: 100 }) satisfies Recipe;
    // @ts-expect-error: a saponification value has its basis in its unit
    ({ ...small, fats: [{ fat: 'x', mass: { g: 1 }, claimed: { saponificationValue: { percent: 1 } } }] }) satisfies Recipe;
    // @ts-expect-error: a pH has no unit
    ({ ...small, claimed: { ph: { percent: 9 } } }) satisfies Recipe;
  }); // prettier-ignore

  it('takes lye as a solid or as a solution', () => {
    const lye = { alkali: 'naoh', mass: { g: 1 } } as const;
    const hydroxide = { percent: 50 };
    ({ ...lye, solid: { hydroxide: { low: { percent: 98 }, high: { percent: 100 } } } }) satisfies RecipeLye;
    ({ ...lye, solution: { hydroxide } }) satisfies RecipeLye;
    // @ts-expect-error: not both
    ({ ...lye, solid: { hydroxide }, solution: { hydroxide } }) satisfies RecipeLye;
    // @ts-expect-error: nor neither
    lye satisfies RecipeLye;
    // @ts-expect-error: total alkali says its carbonate
    ({ ...lye, solid: { totalAlkali: { percent: 95 } } }) satisfies RecipeLye;
  });

  it('takes an addition as a solvent or under a name, by mass or by volume', () => {
    const [mass, volume] = [{ g: 1 }, { mL: 1 }];
    ({ solvent: 'glycerol', mass, assay: { percent: '99.5' } }) satisfies RecipeAddition;
    ({ solvent: 'ethanol', volume, assay: { percentByVolume: 96 } }) satisfies RecipeAddition;
    ({ name: 'colour', mass }) satisfies RecipeAddition;
    // @ts-expect-error: not both names
    ({ name: 'rain', solvent: 'water', mass }) satisfies RecipeAddition;
    // @ts-expect-error: not both amounts
    ({ name: 'colour', mass, volume }) satisfies RecipeAddition;
    // @ts-expect-error: no amount
    ({ name: 'colour' }) satisfies RecipeAddition;
    // @ts-expect-error: no such solvent
    ({ solvent: 'glycerin', mass }) satisfies RecipeAddition;
    // @ts-expect-error: only a solvent has an assay
    ({ name: 'colour', mass, assay: { percent: 50 } }) satisfies RecipeAddition;
    // @ts-expect-error: of spirit alone the share may be one by volume
    ({ solvent: 'glycerol', mass, assay: { percentByVolume: 96 } }) satisfies RecipeAddition;
    // @ts-expect-error: a share is by mass or by volume
    ({ solvent: 'ethanol', mass, assay: { percent: 94, percentByVolume: 96 } }) satisfies RecipeAddition;
  });

  it('takes one target', () => {
    ({ ...small, target: { superfat: { percent: 4 } } }) satisfies Recipe;
    const both = { superfat: { percent: 4 }, freeCausticAlkaliAtMost: { percentNaoh: '0.05' } };
    // @ts-expect-error: two targets are none
    ({ ...small, target: both }) satisfies Recipe;
  });
});

describe('readRecipe', () => {
  it('gives a recipe again, its fats found', () => {
    expectTypeOf<ReadRecipe>().toExtend<Recipe>();
    expectTypeOf(readRecipe(small).fats[0]?.fat).toEqualTypeOf<Fat | undefined>();
  });

  it('gives what the calculations take', () => {
    const { fats, lye } = readRecipe(small);
    expectTypeOf(superfatFromLye({ fats, lye }).superfat.likely.percent).toEqualTypeOf<Decimal>();
  });

  it('takes any value, and own fats by name', () => {
    expectTypeOf(readRecipe).parameter(0).toEqualTypeOf<unknown>();
    readRecipe(small, { fats: { 'drum 7': fat('coconut-oil') } });
    // @ts-expect-error: a fat is a value
    readRecipe(small, { fats: { 'drum 7': 'coconut-oil' } });
  });

  it('reads by a schema of just the type Recipe', () => {
    expectTypeOf<v.InferOutput<ReturnType<typeof recipeSchema>>>().toEqualTypeOf<Recipe>();
  });
});
