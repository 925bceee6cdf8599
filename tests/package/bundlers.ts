/** Each bundler as its manual says, for one entry file of the folder it stands in; the bundle is one script. */
import { dirname, join, relative } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { writeFileSync } from 'node:fs';
import { build as esbuild } from 'esbuild';
import { rollup } from 'rollup';
import { build as vite } from 'vite';
import webpack from 'webpack';

type Bundler = (entry: string, outfile: string) => Promise<void>;

const withEsbuild: Bundler = async (entry, outfile) => {
  const { warnings } = await esbuild({
    entryPoints: [entry],
    outfile,
    bundle: true,
    minify: true,
    format: 'iife',
    logLevel: 'silent',
    // what a chunk imports for its order alone has no effect, as package.json says
    logOverride: { 'ignored-bare-import': 'silent' },
  });
  if (warnings.length > 0) throw new Error(JSON.stringify(warnings));
};

/** Rollup finds no packages by itself: it is told what Node finds from the folder of the page. */
const withRollup: Bundler = async (entry, outfile) => {
  const asker = join(dirname(entry), 'resolve.mjs');
  writeFileSync(asker, 'export const resolve = (name) => import.meta.resolve(name);\n');
  const { resolve } = (await import(pathToFileURL(asker).href)) as { resolve: (name: string) => string };
  const bundle = await rollup({
    input: entry,
    plugins: [
      {
        name: 'as-node-does',
        resolveId: (source) => (/^[./]/.test(source) ? null : fileURLToPath(resolve(source))),
      },
    ],
    onwarn: ({ message }) => {
      throw new Error(message);
    },
  });
  await bundle.write({ file: outfile, format: 'iife' });
  await bundle.close();
};

const withWebpack: Bundler = (entry, outfile) =>
  new Promise((resolve, reject) => {
    const output = { path: dirname(outfile), filename: relative(dirname(outfile), outfile) };
    // the one thing it has to say of a page of this size is its size
    const settings = { mode: 'production', target: 'web', performance: false, cache: false, entry, output } as const;
    webpack(settings, (error, stats) => {
      if (error) reject(error);
      else if (stats === undefined || stats.hasErrors() || stats.hasWarnings()) reject(new Error(stats?.toString()));
      else resolve();
    });
  });

const withVite: Bundler = async (entry, outfile) => {
  await vite({
    root: dirname(entry),
    configFile: false,
    logLevel: 'error',
    build: {
      outDir: dirname(outfile),
      emptyOutDir: false,
      rolldownOptions: {
        input: entry,
        output: { format: 'iife', entryFileNames: relative(dirname(outfile), outfile) },
      },
    },
  });
};

export const bundlers: Readonly<Record<string, Bundler>> = {
  esbuild: withEsbuild,
  rollup: withRollup,
  webpack: withWebpack,
  vite: withVite,
};
