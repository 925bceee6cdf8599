import { toJsonSchema, type JsonSchema } from '@valibot/to-json-schema';
import { FAT_KINDS } from '../../src/fats/fatKind.js';
import { unitsByKind, type UnitsByKind } from '../../src/quantities/index.js';
import type { Leaf } from '../../src/recipe/leaf.js';
import { recipeSchema } from '../../src/recipe/recipeSchema.js';

const NUMBER: JsonSchema = {
  description: 'A number. As text it keeps the decimals it was printed with: "4.0" says more than 4.',
  anyOf: [
    { type: 'number' },
    { type: 'string', pattern: '^[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,6})?$', maxLength: 64 },
  ],
};
const TEXT: JsonSchema = { type: 'string', pattern: '\\S', maxLength: 200 };
const FRACTION: JsonSchema = { $ref: '#/$defs/fraction' };

/** One unit key of some kinds, and nothing else. */
function oneUnit(description: string, ...kinds: readonly (keyof UnitsByKind)[]): JsonSchema {
  const units = kinds.flatMap((kind) => Object.keys(unitsByKind()[kind]));
  return {
    description,
    type: 'object',
    properties: Object.fromEntries(units.map((unit) => [unit, { $ref: '#/$defs/number' }])),
    minProperties: 1,
    maxProperties: 1,
    additionalProperties: false,
  };
}

/** What the schemas of the parts refer to. */
const DEFINITIONS: Record<string, JsonSchema> = {
  number: NUMBER,
  text: { description: 'A name or title.', ...TEXT },
  fat: {
    anyOf: [
      TEXT,
      {
        description: 'A whole fat as laurate makes it. What else it holds is left to the reader.',
        type: 'object',
        properties: { name: TEXT, kind: { enum: [...FAT_KINDS, 'blend'] }, saponificationValue: { type: 'object' } },
        required: ['name', 'kind', 'saponificationValue'],
      },
    ],
  },
  mass: oneUnit('A mass in one unit; oz and lb are avoirdupois.', 'mass'),
  volume: oneUnit('A volume in one unit; fluid ounces and gallons say whose.', 'volume'),
  time: oneUnit('A time in one unit.', 'time'),
  temperature: oneUnit('A temperature in one unit.', 'temperature'),
  fraction: oneUnit('A share by mass, in one unit.', 'fraction'),
  rangedFraction: {
    description: 'A share by mass, as one figure or as a range; likely is the middle unless given.',
    anyOf: [
      FRACTION,
      {
        type: 'object',
        properties: { low: FRACTION, likely: FRACTION, high: FRACTION },
        required: ['low', 'high'],
        additionalProperties: false,
      },
    ],
  },
  assay: oneUnit('A share by mass; of ethanol it may be one by volume at 20 °C.', 'fraction', 'spiritStrength'),
  saponificationValue: oneUnit(
    'A saponification value in one unit: mg or g of KOH, or g of NaOH, that split 1 g of fat; or the equivalent, g of fat to a mole of alkali.',
    'saponificationValue',
  ),
  alkaliContent: oneUnit('Alkali in a soap or batch, percent by mass, as the alkali named.', 'alkaliContent'),
};

/** The shape of a recipe as JSON Schema 2020-12, made of the schema that the reader uses; its fields not yet described. */
export function recipeJsonShape(): JsonSchema {
  const { $schema, ...schema } = toJsonSchema(recipeSchema(), {
    target: 'draft-2020-12',
    // an object is first looked at for unknown fields: two schemas in one pipe, both for the same value
    errorMode: 'ignore',
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
    $defs: DEFINITIONS,
  };
}
