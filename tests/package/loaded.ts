/** Which packages an entry of the built package brings with it. */
import { build } from 'esbuild';
import { root } from './packed.js';

export const entries = ['index', 'recipe', 'audit', 'reports', 'check-values'] as const;

export async function packagesLoadedBy(entry: (typeof entries)[number]): Promise<readonly string[]> {
  const { metafile } = await build({
    entryPoints: [`${root}dist/${entry}.js`],
    absWorkingDir: root,
    bundle: true,
    format: 'esm',
    packages: 'external',
    write: false,
    metafile: true,
    outdir: 'unwritten',
    logLevel: 'silent',
  });
  const loaded = Object.values(metafile.inputs).flatMap(({ imports }) =>
    imports.flatMap(({ path, external }) => (external === true ? [path] : [])),
  );
  return [...new Set(loaded)].sort();
}
