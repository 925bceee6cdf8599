/**
 * The packed tarball, installed from its file, by import and by require on every runtime that the registry has as a
 * package: the supported lines of Node, the first and the last of each, Deno and Bun. `npm run test:runtimes`; it
 * downloads some hundreds of megabytes into a temporary folder, so that it runs before a release and not on every change.
 * Further versions of Node are tried where they are named: `npm run test:runtimes -- 22.15.0`.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expected, imports, requires, schemaImport, use } from './consumer.js';
import { packedInto } from './packed.js';

/** The lowest version of each line that package.json promises, and the last of each line. */
const NODES = ['20.19.0', '20', '22.12.0', '22', '23', '24', '25', '26', ...process.argv.slice(2)];
/** Lines whose `require` knows no ES module: they are no part of the promise, and only import is tried. */
const NO_REQUIRE = ['21', '22.11.0'];

const home = mkdtempSync(join(tmpdir(), 'laurate-runtimes-'));
const program = join(home, 'program');
const runtimes = join(home, 'runtimes');

/** Installs into a folder of its own, with nothing of what is above it. */
function installed(folder: string, packages: readonly string[], ...flags: readonly string[]): void {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{ "private": true }\n');
  const quiet = ['--no-audit', '--no-fund', '--ignore-scripts', '--loglevel', 'error'];
  execFileSync('npm', ['install', ...quiet, ...flags, ...packages], { cwd: folder, stdio: 'ignore' });
}

interface Runtime {
  readonly name: string;
  /** What npm installs, under the name of a folder. */
  readonly package: string;
  readonly command: readonly string[];
  readonly modules: readonly ('import' | 'require')[];
}

const platform = `${process.platform}-${process.arch}`;
const node = (version: string): Runtime => ({
  name: `Node ${version}`,
  package: `node-${version}@npm:node-${platform}@${version}`,
  command: [join(runtimes, 'node_modules', `node-${version}`, 'bin', 'node')],
  modules: NO_REQUIRE.includes(version) ? ['import'] : ['import', 'require'],
});
const bun = `@oven/bun-${platform.replace('arm64', 'aarch64')}`;
const all: readonly Runtime[] = [
  ...[...NODES, ...NO_REQUIRE].map(node),
  {
    name: 'Deno',
    package: 'deno',
    command: [join(runtimes, 'node_modules', '.bin', 'deno'), 'run', '--allow-read', '--node-modules-dir=manual'],
    modules: ['import', 'require'],
  },
  {
    // its own package fetches this one when it is installed
    name: 'Bun',
    package: bun,
    command: [join(runtimes, 'node_modules', bun, 'bin', 'bun'), '--no-install'],
    modules: ['import', 'require'],
  },
];

const programs = {
  import: ['program.mjs', schemaImport + imports + use],
  require: ['program.cjs', requires + use],
} as const;

/** What a runtime prints, without what it warns of. */
function printed([command = '', ...options]: readonly string[], ...args: readonly string[]): string {
  const { stdout, stderr, error } = spawnSync(command, [...options, ...args], { cwd: program, encoding: 'utf8' });
  if (error) return error.message;
  return stdout === '' ? stderr : stdout;
}

try {
  mkdirSync(program, { recursive: true });
  installed(program, [packedInto(home)]);
  for (const [file, text] of Object.values(programs)) writeFileSync(join(program, file), text);
  let failed = 0;
  for (const { name, package: packed, command, modules } of all) {
    try {
      // one at a time: a version that is not to be had leaves the others
      installed(runtimes, [packed], '--no-save');
    } catch {
      process.stdout.write(`SKIPPED  ${name}: ${packed} cannot be installed here\n`);
      continue;
    }
    const [version = ''] = printed([command[0] ?? ''], '--version')
      .trim()
      .split('\n');
    for (const how of modules) {
      const said = printed(command, programs[how][0]);
      if (said === expected) process.stdout.write(`passed   ${name} (${version}), by ${how}\n`);
      else {
        failed += 1;
        process.stdout.write(`FAILED   ${name} (${version}), by ${how}:\n${said}\n`);
      }
    }
  }
  process.exitCode = failed === 0 ? 0 : 1;
} finally {
  rmSync(home, { recursive: true, force: true });
}
