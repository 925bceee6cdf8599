/** The package as it is published, laid where a test wants it. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import manifest from '../../package.json' with { type: 'json' };

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Packs the built package into a folder; the path of the tarball. */
export function packedInto(home: string): string {
  if (!existsSync(join(root, 'dist'))) throw new Error('no dist: npm run build first');
  const printed = execFileSync('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', home], {
    cwd: root,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const [{ filename }] = JSON.parse(printed) as [{ filename: string }];
  return join(home, filename);
}

/** Packs the package and unpacks it below `node_modules` of a folder, the runtime dependencies of the project beside it. */
export function installedIn(home: string): string {
  const modules = join(home, 'node_modules');
  const installed = join(modules, manifest.name);
  mkdirSync(installed, { recursive: true });
  execFileSync('tar', ['-xzf', packedInto(home), '-C', installed, '--strip-components', '1']);
  for (const dependency of Object.keys(manifest.dependencies)) {
    symlinkSync(join(root, 'node_modules', dependency), join(modules, dependency), 'junction');
  }
  return installed;
}
