/** The packed tarball as its users meet it: by import, by require, in a browser bundle, and by the compiler. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
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
  for (const dependency of ['decimal.js', 'leven']) {
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
`;
// 90 / 56.105 * 39.997 / 0.98; and 1000 * 0.2564 * 0.95 / 56.105 * 39.997 / 0.5
const expected = '65.470 347.294 true function\n';

const imports = `
  import { naohFromKoh, planLye, fatFromCertificate } from 'laurate';
  import { workingOf } from 'laurate/reports';
  import { selfCheck } from 'laurate/check-values';
`;
const requires = `
  const { naohFromKoh, planLye, fatFromCertificate } = require('laurate');
  const { workingOf } = require('laurate/reports');
  const { selfCheck } = require('laurate/check-values');
`;

describe('the packed tarball', () => {
  it('works by import', () => {
    expect(run('node', written('esm.mjs', imports + use))).toBe(expected);
  });

  it('works by require', () => {
    expect(run('node', written('cjs.cjs', requires + use))).toBe(expected);
  });

  it('works in a bundle for the browser', async () => {
    const outfile = join(home, 'bundle.mjs');
    await build({
      stdin: { contents: imports + use, resolveDir: home },
      bundle: true,
      platform: 'browser',
      format: 'esm',
      outfile,
      logLevel: 'silent',
    });
    expect(run('node', outfile)).toBe(expected);
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
        `${imports}void [planLye, fatFromCertificate, workingOf, selfCheck];\n${call}${answers}${wrong}`,
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
