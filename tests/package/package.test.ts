/** The packed tarball as its users meet it: by import, by require, in a browser bundle, and by the compiler. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { linksOf } from '../docs/pages.js';
import { expected, imports, requires, schemaImport, use } from './consumer.js';
import { installedIn, root } from './packed.js';

const home = mkdtempSync(join(tmpdir(), 'laurate-package-'));
let installed = '';

const run = (command: string, ...args: string[]): string =>
  execFileSync(command, args, { cwd: home, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

function written(name: string, text: string): string {
  const file = join(home, name);
  writeFileSync(file, text);
  return file;
}

beforeAll(() => {
  installed = installedIn(home);
}, 600_000);

afterAll(() => {
  rmSync(home, { recursive: true, force: true });
});

describe('the packed tarball', () => {
  it('works by import', () => {
    expect(run('node', written('esm.mjs', schemaImport + imports + use))).toBe(expected);
  });

  it('works by require', () => {
    expect(run('node', written('cjs.cjs', requires + use))).toBe(expected);
  });

  it('works in a bundle for the browser', async () => {
    const outfile = join(home, 'bundle.mjs');
    await build({
      stdin: { contents: schemaImport + imports + use, resolveDir: home },
      bundle: true,
      platform: 'browser',
      format: 'esm',
      outfile,
      logLevel: 'silent',
    });
    expect(run('node', outfile)).toBe(expected);
  });

  it('tells where its JSON Schema lies', () => {
    const file = written('where.mjs', "console.log(import.meta.resolve('laurate/recipe.schema.json'));");
    const shipped: unknown = JSON.parse(readFileSync(new URL(run('node', file).trim()), 'utf8'));
    const source = readFileSync(join(root, 'src', 'recipe', 'recipe.schema.json'), 'utf8');
    expect(shipped).toEqual(JSON.parse(source));
  });

  it('has every page that its pages lead to, but for the live page, which is built', () => {
    const pages = readdirSync(installed, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.md'))
      .map((name) => join(installed, name));
    const links = pages.flatMap((page) =>
      linksOf(readFileSync(page, 'utf8')).map((link) => join(dirname(page), link.replace(/#.*/, ''))),
    );
    expect(links.length).toBeGreaterThan(30);
    const missing = links.filter((file) => !existsSync(file)).map((file) => relative(installed, file));
    expect([...new Set(missing)]).toEqual(['docs/live/live.html']);
  });

  it.each([
    ['node16', 'Node16', ['consumer.mts', 'consumer.cts']],
    ['nodenext', 'NodeNext', ['consumer.mts', 'consumer.cts']],
    ['bundler', 'ESNext', ['consumer.ts']],
    ['bundler', 'Preserve', ['consumer.ts', 'consumer.mts']],
  ])(
    'compiles under moduleResolution %s, module %s, as %j, the declarations checked as well',
    (moduleResolution, module, names) => {
      const answers = 'const grams: string = naoh.g.toFixed(3);\nexport { grams };\n';
      const call =
        'const { naoh } = naohFromKoh({ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });\n';
      const wrong =
        '// @ts-expect-error two units are no quantity\nnaohFromKoh({ koh: { g: 100, kg: 1 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });\n';
      const text = `${imports}void [planLye, fatFromCertificate, workingOf, selfCheck, readRecipe, auditRecipe];\n${call}${answers}${wrong}`;
      const options = {
        moduleResolution,
        module,
        target: 'ES2022',
        lib: ['ES2022'],
        types: [],
        strict: true,
        exactOptionalPropertyTypes: true,
        skipLibCheck: false,
        noEmit: true,
      };
      const files = names.map((name) => written(name, text));
      const project = written(`${module}.json`, JSON.stringify({ compilerOptions: options, files }));
      const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
      expect(() => run('node', tsc, '-p', project)).not.toThrow();
    },
    60_000,
  );
});
