import { toJsonSchema, type JsonSchema } from '@valibot/to-json-schema';
import type { Leaf } from '../../src/recipe/leaf.js';
import { recipeSchema } from '../../src/recipe/recipeSchema.js';

const NUMERIC: JsonSchema = {
  description: 'A number; as text it keeps the decimals it was printed with.',
  anyOf: [
    { type: 'number' },
    { type: 'string', pattern: '^[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,6})?$', maxLength: 64 },
  ],
};

/** The shape of a recipe as JSON Schema 2020-12, made of the schema that the reader uses. */
export function recipeJsonSchema(): JsonSchema {
  const { $schema, ...schema } = toJsonSchema(recipeSchema(), {
    target: 'draft-2020-12',
    typeMode: 'input',
    overrideAction: ({ valibotAction, jsonSchema }) => {
      if (valibotAction.type === 'transform') return jsonSchema;
      if (valibotAction.type !== 'check') return undefined;
      return { ...jsonSchema, ...(valibotAction as unknown as { requirement: Leaf }).requirement.jsonSchema };
    },
  });
  return {
    $schema,
    title: 'A recipe for soap',
    description:
      'What is in the pot, what it should be (target) and what is printed of it (claimed). Limits of the figures are left to the reader.',
    ...schema,
    $defs: { numeric: NUMERIC },
  };
}
