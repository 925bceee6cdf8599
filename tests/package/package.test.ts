/** The packed tarball as its users meet it: by import, by require, in a browser bundle, and by the compiler. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const home = mkdtempSync(join(tmpdir(), 'laurate-package-'));
const installed = join(home, 'node_modules', 'laurate');

const run = (command: string, ...args: string[]): string =>
  execFileSync(command, args, { cwd: home, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

function written(name: string, text: string): string {
  const file = join(home, name);
  writeFileSync(file, text);
  return file;
}

beforeAll(() => {
  if (!existsSync(join(root, 'dist'))) throw new Error('no dist: npm run build first');
  const [packed] = JSON.parse(
    execFileSync('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', home], {
      cwd: root,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    }),
  ) as [{ filename: string }];
  mkdirSync(installed, { recursive: true });
  run('tar', '-xzf', packed.filename, '-C', installed, '--strip-components', '1');
  for (const dependency of ['decimal.js', 'leven', 'valibot']) {
    symlinkSync(join(root, 'node_modules', dependency), join(home, 'node_modules', dependency), 'junction');
  }
}, 60_000);

afterAll(() => {
  rmSync(home, { recursive: true, force: true });
});

/** Two figures that can be had by hand; and each further entry has to load and answer. */
const use = `
  const { naoh } = naohFromKoh({ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });
  const { weigh } = planLye({
    fats: [{
      fat: fatFromCertificate({ name: 'lot', kind: 'triglyceride', saponificationValue: { mgKohPerG: '256.4' } }),
      mass: { g: 1000 },
    }],
    alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
    target: { superfat: { percent: 5 } },
    dilution: 'as-is',
  });
  const { met, known, total } = selfCheck();
  console.log(naoh.g.toFixed(3), weigh.naoh.g.toFixed(3), total > 0 && met + known === total, typeof workingOf);
  const recipe = {
    version: 1,
    fats: [{ fat: 'coconut-oil', mass: { g: '900' } }],
    lye: [{ alkali: 'naoh', mass: { g: '180' }, solid: { hydroxide: { percent: '99' } } }],
  };
  console.log(readRecipe(recipe).fats[0].fat.name, auditRecipe(recipe).verdict, schema.required.join());
`;
// 90 / 56.105 * 39.997 / 0.98; and 1000 * 0.2564 * 0.95 / 56.105 * 39.997 / 0.5
// 178 g of hydroxide for at most 170 g that 900 g of coconut oil can take up
const expected = '65.470 347.294 true function\nCoconut oil dangerous version,fats,lye\n';

const imports = `
  import { naohFromKoh, planLye, fatFromCertificate } from 'laurate';
  import { workingOf } from 'laurate/reports';
  import { selfCheck } from 'laurate/check-values';
  import { readRecipe } from 'laurate/recipe';
  import { auditRecipe } from 'laurate/audit';
`;
const schemaImport = "import schema from 'laurate/recipe.schema.json' with { type: 'json' };\n";
const requires = `
  const { naohFromKoh, planLye, fatFromCertificate } = require('laurate');
  const { workingOf } = require('laurate/reports');
  const { selfCheck } = require('laurate/check-values');
  const { readRecipe } = require('laurate/recipe');
  const { auditRecipe } = require('laurate/audit');
  const schema = require('laurate/recipe.schema.json');
`;

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

  it.each([
    ['node16', 'Node16', 'consumer.mts'],
    ['node16', 'Node16', 'consumer.cts'],
    ['bundler', 'ESNext', 'consumer.ts'],
  ])(
    'compiles under moduleResolution %s, module %s, as %s',
    (moduleResolution, module, name) => {
      const answers = 'const grams: string = naoh.g.toFixed(3);\nexport { grams };\n';
      const call =
        'const { naoh } = naohFromKoh({ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });\n';
      const wrong =
        '// @ts-expect-error two units are no quantity\nnaohFromKoh({ koh: { g: 100, kg: 1 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });\n';
      const file = written(
        name,
        `${imports}void [planLye, fatFromCertificate, workingOf, selfCheck, readRecipe, auditRecipe];\n${call}${answers}${wrong}`,
      );
      const options = {
        moduleResolution,
        module,
        target: 'ES2022',
        lib: ['ES2022'],
        types: [],
        strict: true,
        noEmit: true,
      };
      const project = written(`${name}.json`, JSON.stringify({ compilerOptions: options, files: [file] }));
      const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
      expect(() => run('node', tsc, '-p', project)).not.toThrow();
    },
    60_000,
  );
});
