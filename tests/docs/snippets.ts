/**
 * Examples as tests. Every `ts` block of the guides and of the doc comments becomes a module in which each line
 * `expression; // => value` is a check and each line `expression; // throws 'code'` a refusal. A block without such a
 * line, a comment that hangs on no expression, or a value that is no literal is a fault of the document: its module
 * throws, so that one bad example is one failing test.
 */
import ts from 'typescript';

export interface Snippet {
  /** File from the root of the project, with forward slashes. */
  readonly file: string;
  /** Line of the first line of code in that file, counted from 1. */
  readonly line: number;
  readonly code: string;
  /** In doc comments the imports may be left out. */
  readonly mayOmitImports: boolean;
}

const FENCE = /^([ \t]*)(`{3,})(\w*)[^\n]*\n([\s\S]*?)^[ \t]*\2[ \t]*$/gm;
const CODE_FENCES = new Set(['ts', 'typescript', 'js', 'javascript', 'mts', 'tsx']);

function lineAt(text: string, index: number): number {
  return text.slice(0, index).split('\n').length;
}

function fencedBlocks(file: string, text: string, firstLine: number, mayOmitImports: boolean): Snippet[] {
  return [...text.matchAll(FENCE)].flatMap((match) => {
    const [, indent = '', , language = '', body = ''] = match;
    if (!CODE_FENCES.has(language)) return [];
    const code = body
      .split('\n')
      .map((line) => (line.startsWith(indent) ? line.slice(indent.length) : line))
      .join('\n');
    return [{ file, line: firstLine + lineAt(text, match.index), code, mayOmitImports }];
  });
}

/** The code blocks of a Markdown page. */
export function snippetsOfMarkdown(file: string, text: string): Snippet[] {
  return fencedBlocks(file, text, 1, false);
}

/** The code blocks under `@example` in the doc comments of a source file. */
export function snippetsOfSource(file: string, text: string): Snippet[] {
  return [...text.matchAll(/^[ \t]*\/\*\*[\s\S]*?\*\//gm)].flatMap((comment) => {
    const prose = comment[0]
      .replace(/^[ \t]*\/\*\*/, '')
      .replace(/\*\/$/, '')
      .replaceAll(/^[ \t]*\* ?/gm, '');
    const firstLine = lineAt(text, comment.index);
    return [...prose.matchAll(/^@example\b[^\n]*\n([\s\S]*?)(?=^@\w|(?![\s\S]))/gm)].flatMap((example) => {
      const body = example[1] ?? '';
      const line = firstLine + lineAt(prose, example.index) - 1;
      const blocks = fencedBlocks(file, body, line + 1, true);
      // Kept as one empty snippet, which moduleOf refuses.
      return blocks.length === 0 ? [{ file, line, code: '', mayOmitImports: true }] : blocks;
    });
  });
}

/** An import line for each name an entry exports, read from its export lists without running it. */
export function importLines(publicName: string, entryText: string): [name: string, line: string][] {
  const source = ts.createSourceFile('entry.ts', entryText, ts.ScriptTarget.Latest, true);
  return source.statements.filter(ts.isExportDeclaration).flatMap(({ exportClause, isTypeOnly }) => {
    if (exportClause === undefined || !ts.isNamedExports(exportClause)) {
      throw new Error(`${publicName}: an entry exports by name only`);
    }
    return exportClause.elements.map((element): [string, string] => {
      const keyword = isTypeOnly || element.isTypeOnly ? 'import type' : 'import';
      const name = element.name.text;
      return [name, `${keyword} { ${name} } from '${publicName}';`];
    });
  });
}

/** Names a block uses without declaring them: reads of identifiers, not keys and not members. */
function freeNames(source: ts.SourceFile): Set<string> {
  const used = new Set<string>();
  const declared = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) {
      const { parent } = node;
      const isName = 'name' in parent && parent.name === node;
      if (isName && ts.isShorthandPropertyAssignment(parent)) used.add(node.text);
      else if (isName && !ts.isPropertyAccessExpression(parent) && !ts.isPropertyAssignment(parent)) {
        declared.add(node.text);
      } else if (!isName && !(ts.isBindingElement(parent) && parent.propertyName === node)) used.add(node.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return new Set([...used].filter((name) => !declared.has(name)));
}

function isLiteral(node: ts.Expression): boolean {
  if (ts.isStringLiteral(node) || ts.isNumericLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return true;
  if (ts.isPrefixUnaryExpression(node)) return ts.isNumericLiteral(node.operand);
  if (ts.isArrayLiteralExpression(node)) return node.elements.every(isLiteral);
  if (ts.isObjectLiteralExpression(node)) {
    return node.properties.every((each) => ts.isPropertyAssignment(each) && isLiteral(each.initializer));
  }
  return (
    [ts.SyntaxKind.TrueKeyword, ts.SyntaxKind.FalseKeyword, ts.SyntaxKind.NullKeyword].includes(node.kind) ||
    (ts.isIdentifier(node) && node.text === 'undefined')
  );
}

function literal(text: string, where: string): string {
  const source = ts.createSourceFile('value.ts', `(${text})`, ts.ScriptTarget.Latest, true);
  const [statement, ...more] = source.statements;
  if (
    statement === undefined ||
    more.length > 0 ||
    !ts.isExpressionStatement(statement) ||
    !ts.isParenthesizedExpression(statement.expression) ||
    !isLiteral(statement.expression.expression)
  ) {
    throw new Error(`${where}: the expected value is not a literal: ${text}`);
  }
  return text;
}

const EXPECTATION = /^\/\/ (=>|throws) (.+)$/;

/** The snippet as a module: every expected value compared, nothing else changed; or a module that throws its fault. */
export function moduleOf(snippet: Snippet, imports: ReadonlyMap<string, string>): string {
  try {
    return checkedModuleOf(snippet, imports);
  } catch (fault) {
    return `throw new Error(${JSON.stringify(String(fault))});\nexport {};\n`;
  }
}

function checkedModuleOf(snippet: Snippet, imports: ReadonlyMap<string, string>): string {
  const { file, line, code } = snippet;
  const source = ts.createSourceFile('snippet.ts', code, ts.ScriptTarget.Latest, true);
  const whereAt = (index: number): string => `${file}:${String(line + lineAt(code, index) - 1)}`;

  let checked = '';
  let copied = 0;
  let checks = 0;
  const helpers = new Set<string>();
  for (const statement of source.statements) {
    const comment = (ts.getTrailingCommentRanges(code, statement.end) ?? [])
      .map(({ pos, end }) => EXPECTATION.exec(code.slice(pos, end).trim()))
      .find((match) => match !== null);
    if (comment === undefined || !ts.isExpressionStatement(statement)) continue;
    const where = whereAt(statement.getStart());
    const [, kind, value = ''] = comment;
    const expression = statement.expression.getText();
    const [helper, prefix] = kind === 'throws' ? ['checkRefusal', '() => '] : ['check', ''];
    helpers.add(helper);
    checked += code.slice(copied, statement.getStart());
    checked += `${helper}(${JSON.stringify(where)}, ${prefix}${expression}, ${literal(value.trim(), where)});`;
    copied = statement.end;
    checks += 1;
  }
  checked += code.slice(copied);

  const promised = code.match(/\/\/ (=>|throws) /g)?.length ?? 0;
  if (promised !== checks) throw new Error(`${whereAt(0)}: a "// =>" that hangs on no expression statement`);
  if (checks === 0) throw new Error(`${whereAt(0)}: no fenced ts block with a line that ends in "// => value"`);

  const omitted = snippet.mayOmitImports ? [...freeNames(source)].flatMap((name) => imports.get(name) ?? []) : [];
  return [
    `import { ${[...helpers].sort().join(', ')} } from '../check.js';`,
    ...omitted,
    checked,
    'export {};',
    '',
  ].join('\n');
}
