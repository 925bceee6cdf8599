/** What an import of the built package costs before anything is asked of it: nothing. */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { entries, packagesLoadedBy } from './loaded.js';
import { root } from './packed.js';

describe('an import of the built package', () => {
  it.each(entries)('of %s does no arithmetic', (entry) => {
    // Clones of decimal.js share one prototype, so counting there sees every operation of ours.
    const script = `
      import { Decimal } from 'decimal.js';
      let operations = 0;
      for (const [name, method] of Object.entries(Decimal.prototype)) {
        if (typeof method !== 'function' || name === 'constructor') continue;
        Decimal.prototype[name] = function (...args) { operations += 1; return method.apply(this, args); };
      }
      await import('./dist/${entry}.js');
      const onImport = operations;
      const { naohFromKoh } = await import('./dist/index.js');
      naohFromKoh({ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });
      console.log(JSON.stringify({ onImport, counts: operations > onImport }));
    `;
    const printed = execFileSync('node', ['--input-type=module', '-e', script], { cwd: root, encoding: 'utf8' });
    expect(JSON.parse(printed)).toEqual({ onImport: 0, counts: true });
  });

  it.each(entries)('of %s leaves nothing in a bundle that uses nothing of it', async (entry) => {
    const { outputFiles } = await build({
      stdin: { contents: `import './dist/${entry}.js';`, resolveDir: root },
      bundle: true,
      format: 'esm',
      target: 'es2022',
      write: false,
      logLevel: 'silent',
      plugins: [
        {
          name: 'by-statement',
          setup: (bundler) => {
            // Packages are left out. Our own files are kept as if the package did not promise "sideEffects": false,
            // so that every statement has to show by itself that it may be dropped.
            bundler.onResolve({ filter: /^[^./]/ }, ({ path }) => ({ path, external: true, sideEffects: false }));
          },
        },
        {
          name: 'keep-files',
          setup: (bundler) => {
            bundler.onResolve({ filter: /^\./ }, ({ path, resolveDir }) => ({
              path: fileURLToPath(new URL(path, `file://${resolveDir}/`)),
              sideEffects: true,
            }));
          },
        },
      ],
    });
    const kept = outputFiles.map(({ text }) => text.replaceAll(/^\/\/.*\n/gm, '').trim()).join('');
    expect(kept).toBe('');
  });

  it.each([
    ['index', ['decimal.js', 'leven']],
    ['reports', ['decimal.js', 'leven', 'valibot']],
    ['recipe', ['decimal.js', 'leven', 'valibot']],
    ['audit', ['decimal.js', 'leven', 'valibot']],
    ['check-values', ['decimal.js', 'leven', 'valibot']],
  ] as const)('of %s loads the packages %j', async (entry, packages) => {
    expect(await packagesLoadedBy(entry)).toEqual(packages);
  });
});
