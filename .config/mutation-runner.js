/**
 * A test runner for Stryker that stays in one process: each test file is bundled once, with the mutated source in it, and
 * evaluated afresh for every mutant, so that nothing which a mutant left in a memory reaches the next one.
 * Vitest lends its `expect`; `describe` and `it` only collect. Starting Vitest for every mutant took ten times as long.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { format } from 'node:util';
import { Script } from 'node:vm';
import { build } from 'esbuild';
import fc from 'fast-check';
import { expect } from 'vitest';

const ENTRIES = { recipe: 'batch', audit: 'audit', reports: 'reports', 'check-values': 'checkValues' };
const STOP = 'Stryker: Hit count limit reached';
/** What a test fails with that asks for more of Vitest than is lent here. */
const OF_VITEST = /failed to access its internal state|without test context/;
const KEPT = 'mutation-coverage.json';
/** One mutant in so many is tried; the others are reported as not run. */
const ONE_IN = Number(process.env.ONE_IN ?? 1);

// a mutant is killed by the first case that fails: the smallest one is not asked for
fc.configureGlobal({ endOnFailure: true, seed: 20261125 });
// matchers ask which file is tested, which Vitest does not know here
expect.setState({ testPath: undefined });
expect.extend({
  toMatchFileSnapshot(received, path) {
    const file = resolve(dirname(current?.path ?? ''), path);
    return { pass: readFileSync(file, 'utf8') === received, message: () => `differs from ${path}` };
  },
});

/** The title of one row of a table; some rows hold what cannot be shown. */
function titled(name, args) {
  try {
    return format(name, ...args).slice(0, 200);
  } catch {
    return name;
  }
}

/** The file whose tests are collected or run. */
let current;

/** What a test file sees as `vitest`. */
function shim() {
  const prefix = [];
  const named = (name) => [...prefix, name].join(' ');
  const bodyOf = (rest) => rest.find((one) => typeof one === 'function');
  const each =
    (define) =>
    (table) =>
    (name, ...rest) => {
      // as Vitest has it: rows are taken apart where all of them are lists
      const areLists = table.every(Array.isArray);
      for (const row of table) {
        const args = areLists ? row : [row];
        define(titled(name, args), () => bodyOf(rest)(...args));
      }
    };
  const describe = (name, ...rest) => {
    prefix.push(name);
    bodyOf(rest)();
    prefix.pop();
  };
  const it = (name, ...rest) => current.tests.push({ name: named(name), body: bodyOf(rest) });
  describe.each = each(describe);
  it.each = each(it);
  const afterEach = (body) => current.after.push(body);
  // modules are not loaded anew here: a test that asks for it, and fails without, is left out
  const vi = { resetModules: () => (current.asksForVitest = true) };
  return { describe, it, expect, afterEach, vi };
}

/** A test file, bundled with all it imports of the project. */
async function bundled(path, root) {
  const alias = Object.fromEntries(
    Object.entries(ENTRIES).map(([entry, folder]) => [`laurate/${entry}`, `${root}/src/${folder}/index.ts`]),
  );
  const { outputFiles, metafile } = await build({
    entryPoints: [path],
    bundle: true,
    write: false,
    metafile: true,
    format: 'cjs',
    platform: 'node',
    target: 'es2022',
    packages: 'external',
    alias: { ...alias, laurate: `${root}/src/index.ts` },
    define: { 'import.meta.url': '__url' },
    logLevel: 'silent',
  });
  const packages = new Map();
  for (const { path: id } of Object.values(metafile.outputs).flatMap(({ imports }) => imports)) {
    if (id === 'vitest' || packages.has(id)) continue;
    packages.set(id, await import(id));
  }
  // each package is handed over as the namespace it is
  const text = outputFiles[0].text.replaceAll(/__toESM\((require\("[^"]+"\))(?:, 1)?\)/g, '$1');
  const source = `(function (require, module, exports, __url) {${text}\n})`;
  const evaluate = new Script(source, { filename: path }).runInThisContext();
  const ask = (vitest) => (id) => (id === 'vitest' ? vitest : packages.get(id));
  return () => {
    current = { path, tests: [], after: [] };
    const module = { exports: {} };
    evaluate(ask(shim()), module, module.exports, pathToFileURL(path).href);
    return current;
  };
}

class BundlesRunner {
  #files;
  #covered;
  /** What the mutated source reads and counts. */
  #stryker = (globalThis.__stryker__ ??= {});

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    const paths = JSON.parse(process.env.MUTATION_TESTS);
    const root = process.cwd();
    this.#files = [];
    for (const path of paths) this.#files.push({ path, load: await bundled(resolve(root, path), root) });
    if (existsSync(KEPT)) this.#covered = JSON.parse(readFileSync(KEPT, 'utf8'));
  }

  /** Runs everything once, and notes which test reaches which mutant. */
  async dryRun() {
    const stryker = this.#stryker;
    const tests = [];
    const covered = {};
    const all = { static: {}, perTest: {} };
    for (const { path, load } of this.#files) {
      const coverage = (stryker.mutantCoverage = { static: {}, perTest: {} });
      stryker.currentTestId = undefined;
      const file = load();
      const [times, leftOut] = [[], []];
      for (const [at, { name, body }] of file.tests.entries()) {
        const id = `${path}#${at}`;
        stryker.currentTestId = id;
        const start = performance.now();
        const failure = await failureOf(file, body);
        const timeSpentMs = performance.now() - start;
        times.push(timeSpentMs);
        const told = { id, name: `${path}: ${name}`, timeSpentMs };
        if (failure === undefined) tests.push({ ...told, status: 0 });
        else if (file.asksForVitest || OF_VITEST.test(failure)) {
          tests.push({ ...told, status: 2 });
          leftOut.push(at);
        } else tests.push({ ...told, status: 1, failureMessage: failure });
      }
      stryker.currentTestId = undefined;
      for (const [mutant, hits] of Object.entries(coverage.static))
        all.static[mutant] = (all.static[mutant] ?? 0) + hits;
      Object.assign(all.perTest, coverage.perTest);
      covered[path] = { times, leftOut, static: Object.keys(coverage.static), perTest: {} };
      for (const [id, mutants] of Object.entries(coverage.perTest))
        for (const mutant of Object.keys(mutants))
          (covered[path].perTest[mutant] ??= []).push(Number(id.split('#')[1]));
    }
    stryker.mutantCoverage = undefined;
    this.#covered = covered;
    writeFileSync(KEPT, JSON.stringify(covered));
    return { status: 'complete', tests, mutantCoverage: all };
  }

  /** Runs what reaches the mutant, quick tests first, until one fails. */
  async mutantRun({ activeMutant: { id }, hitLimit }) {
    if (Number(id) % ONE_IN !== 0) return { status: 'error', errorMessage: 'not drawn' };
    const stryker = this.#stryker;
    let nrOfTests = 0;
    const killed = (test, failureMessage) =>
      stryker.hitCount > hitLimit
        ? { status: 'timeout', reason: 'a loop that does not end' }
        : { status: 'killed', killedBy: [test], failureMessage, nrOfTests };
    stryker.hitCount = 0;
    stryker.hitLimit = hitLimit;
    try {
      for (const { path, load, tests, leftOut, isStatic } of this.#reaching(id)) {
        stryker.activeMutant = id;
        let file;
        try {
          file = load();
        } catch (error) {
          return killed(`${path}#0`, messageOf(error));
        }
        for (const at of isStatic ? [...tests, ...file.tests.keys()] : tests) {
          if (leftOut.includes(at)) continue;
          const test = file.tests[at];
          if (test === undefined) return killed(`${path}#${at}`, 'the test is gone');
          nrOfTests += 1;
          const failure = await failureOf(file, test.body);
          if (failure !== undefined) return killed(`${path}#${at}`, failure);
        }
      }
    } finally {
      stryker.activeMutant = undefined;
    }
    return { status: 'survived', nrOfTests };
  }

  #reaching(id) {
    return this.#files
      .map(({ path, load }) => {
        const { times, leftOut, perTest, static: loaded } = this.#covered[path];
        const tests = (perTest[id] ?? []).filter((at) => !leftOut.includes(at)).sort((a, b) => times[a] - times[b]);
        const time = tests.reduce((sum, at) => sum + times[at], 0);
        return { path, load, tests, leftOut, time, isStatic: loaded.includes(id) };
      })
      .filter(({ tests, isStatic }) => tests.length > 0 || isStatic)
      .sort((a, b) => (a.tests.length === 0) - (b.tests.length === 0) || a.time - b.time);
  }
}

async function failureOf(file, body) {
  current = file;
  try {
    await body();
  } catch (error) {
    return messageOf(error);
  } finally {
    for (const after of file.after) await after();
  }
  return undefined;
}

const messageOf = (error) => {
  try {
    return String(error?.message ?? error).slice(0, 300);
  } catch {
    return STOP;
  }
};

export const strykerPlugins = [{ kind: 'TestRunner', name: 'bundles', injectableClass: BundlesRunner }];
