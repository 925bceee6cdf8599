import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { recipeJsonShape } from './recipeJsonShape.js';

/** A schema without the descriptions of its parts. */
function bare(schema: unknown): unknown {
  if (Array.isArray(schema)) return schema.map(bare);
  if (typeof schema !== 'object' || schema === null) return schema;
  const parts = Object.entries(schema).filter(([key, part]) => key !== 'description' || typeof part !== 'string');
  return Object.fromEntries(parts.map(([key, part]) => [key, bare(part)]));
}

describe('the shape of a recipe', () => {
  it('is that of the JSON Schema that is shipped', () => {
    const shipped = readFileSync(new URL('../../src/recipe/recipe.schema.json', import.meta.url), 'utf8');
    expect(bare(recipeJsonShape())).toEqual(bare(JSON.parse(shipped)));
  });
});
