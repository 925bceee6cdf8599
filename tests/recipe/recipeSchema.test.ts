import { describe, expect, it } from 'vitest';
import { recipeJsonSchema } from './recipeJsonSchema.js';

describe('the JSON Schema of a recipe', () => {
  it('is the one that is shipped', async () => {
    const schema = `${JSON.stringify(recipeJsonSchema(), null, 2)}\n`;
    await expect(schema).toMatchFileSnapshot('../../src/recipe/recipe.schema.json');
  });
});
