import { describe, expect, it } from 'vitest';
import { check, checkRefusal } from './check.js';
import { importLines, moduleOf, snippetsOfMarkdown, snippetsOfSource } from './snippets.js';
import type { Snippet } from './snippets.js';

const imports = new Map(importLines('laurate', `export { double, type Pair } from './double.js';`));
const snippet = (code: string): Snippet => ({ file: 'page.md', line: 10, code, mayOmitImports: true });
const written = (code: string): string => moduleOf(snippet(code), imports);

describe('snippets: where they are found', () => {
  it('in Markdown, ts blocks only, with the line of the code', () => {
    const page = 'Text\n\n```ts\na; // => 1\n```\n\n```sh\nnpm test\n```\n\n  ```ts\n  b; // => 2\n  ```\n';
    expect(snippetsOfMarkdown('page.md', page).map(({ line, code }) => [line, code])).toEqual([
      [4, 'a; // => 1\n'],
      [12, 'b; // => 2\n'],
    ]);
  });

  it('in doc comments, under @example', () => {
    const source =
      'const x = 1;\n/**\n * Says.\n *\n * @example\n * ```ts\n * a; // => 1\n * ```\n * @returns a\n */\n';
    expect(snippetsOfSource('x.ts', source)).toEqual([
      { file: 'x.ts', line: 7, code: 'a; // => 1\n', mayOmitImports: true },
    ]);
  });

  it('an @example without a block is kept, to be refused', () => {
    const [bare] = snippetsOfSource('x.ts', '/**\n * @example\n * a; // => 1\n */\n');
    expect(bare).toEqual({ file: 'x.ts', line: 2, code: '', mayOmitImports: true });
  });
});

describe('snippets: what they become', () => {
  it('a check for each expected value, over several lines too, with the imports left out', () => {
    expect(written("const pair = {\n  a: 1 };\ndouble({\n  pair,\n}); // => '2'\n")).toBe(
      "import { check } from '../check.js';\nimport { double } from 'laurate';\n" +
        "const pair = {\n  a: 1 };\ncheck(\"page.md:12\", double({\n  pair,\n}), '2'); // => '2'\n\nexport {};\n",
    );
  });

  it('types are imported as types', () => {
    expect(written('const p: Pair = [1]; p; // => [1]')).toContain("import type { Pair } from 'laurate';");
  });

  it('a refusal is named by its code', () => {
    expect(written("double(-1); // throws 'out-of-range'")).toContain(
      'checkRefusal("page.md:10", () => double(-1), \'out-of-range\');',
    );
  });

  it('names declared in the block, keys and members are not imported', () => {
    expect(written('const double = (double: number) => ({ double }); double(1).double; // => 1')).not.toContain(
      'laurate',
    );
  });

  it.each([
    ['', 'no fenced ts block'],
    ['const a = 1;', 'no fenced ts block'],
    ['const a = 1; // => 1', 'hangs on no expression'],
    ['a; // => b', 'not a literal'],
    ['a; // => 1 (about)', 'not a literal'],
  ])('%j becomes a module that throws', (code, message) => {
    expect(written(code)).toMatch(/^throw new Error\("Error: page\.md:10: /);
    expect(written(code)).toContain(message);
  });
});

describe('snippets: a wrong value fails', () => {
  it('compares deeply and says where', () => {
    expect(() => {
      check('page.md:1', { g: ['65.4'] }, { g: ['65.4'] });
    }).not.toThrow();
    expect(() => {
      check('page.md:1', { g: ['65.4'] }, { g: ['65.5'] });
    }).toThrow('page.md:1');
    expect(() => {
      check('page.md:1', { g: 1, kg: undefined }, { g: 1 });
    }).toThrow('page.md:1');
  });

  it('a refusal that does not come, or comes for another reason, fails', () => {
    expect(() => {
      checkRefusal('page.md:1', () => 1, 'missing');
    }).toThrow('page.md:1');
    expect(() => {
      checkRefusal(
        'page.md:1',
        () => {
          throw new Error('other');
        },
        'missing',
      );
    }).toThrow('page.md:1');
  });
});
