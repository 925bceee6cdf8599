import { fileURLToPath } from 'node:url';
import type { JsonSchema } from '@valibot/to-json-schema';
import ts from 'typescript';
import { recipeJsonShape } from './recipeJsonShape.js';

/** The shape of a recipe as JSON Schema 2020-12, its fields described as those of the type are. */
export const recipeJsonSchema = (): JsonSchema => describedAs(recipeJsonShape(), ...recipeType());

/** The interface `Recipe`, as the compiler sees it. */
function recipeType(): [type: ts.Type, checker: ts.TypeChecker] {
  const file = fileURLToPath(new URL('../../src/recipe/recipe.ts', import.meta.url));
  const options = { strict: true, module: ts.ModuleKind.NodeNext, target: ts.ScriptTarget.ES2022 };
  const program = ts.createProgram([file], options);
  const found = program
    .getSourceFile(file)
    ?.statements.find((statement) => ts.isInterfaceDeclaration(statement) && statement.name.text === 'Recipe');
  if (found === undefined) throw new Error('no interface Recipe');
  const checker = program.getTypeChecker();
  return [checker.getTypeAtLocation(found), checker];
}

/** A schema in which every field is described by the doc comment of the same field of a type. */
function describedAs(schema: JsonSchema, type: ts.Type, checker: ts.TypeChecker): JsonSchema {
  if (schema.type === 'array') {
    const entry = checker.getIndexTypeOfType(type, ts.IndexKind.Number);
    return entry === undefined ? schema : { ...schema, items: describedAs(schema.items as JsonSchema, entry, checker) };
  }
  if (schema.properties === undefined) return schema;
  const fields = Object.entries(schema.properties).map(([key, field]) => {
    const symbol = checker.getPropertyOfType(type, key);
    if (symbol === undefined) throw new Error(`no field ${key} in ${checker.typeToString(type)}`);
    const description = ts.displayPartsToString(symbol.getDocumentationComment(checker)).replaceAll(/\s+/g, ' ');
    if (description === '') throw new Error(`no doc comment on ${key} of ${checker.typeToString(type)}`);
    const fieldType = checker.getNonNullableType(checker.getTypeOfSymbol(symbol));
    return [key, { description, ...describedAs(field as JsonSchema, fieldType, checker) }] as const;
  });
  return { ...schema, properties: Object.fromEntries(fields) };
}
