/** Where the time of a call goes: samples of the running code, as the engine itself takes them. */
import { readFileSync } from 'node:fs';
import { Session, type Profiler } from 'node:inspector/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { Script } from 'node:vm';

/** Shares of the time of a call, in percent. */
export interface Profile {
  readonly name: string;
  readonly decimals: number;
  readonly library: number;
  readonly garbage: number;
  /** The functions of the library that take most by themselves. */
  readonly most: readonly (readonly [name: string, percent: number])[];
}

const WARM_UP_MS = 1500;
const SAMPLED_MS = 4000;
const MICROS_BETWEEN_SAMPLES = 200;
const NAMED = 5;

function repeat(call: () => unknown, milliseconds: number): void {
  const end = performance.now() + milliseconds;
  while (performance.now() < end) call();
}

/** Runs a call over and over and tells what was running at each sample. */
export async function profileOf(name: string, call: () => unknown): Promise<Profile> {
  repeat(call, WARM_UP_MS);
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.setSamplingInterval', { interval: MICROS_BETWEEN_SAMPLES });
  await session.post('Profiler.start');
  repeat(call, SAMPLED_MS);
  const { profile } = await session.post('Profiler.stop');
  session.disconnect();
  return { name, ...sharesIn(profile) };
}

function sharesIn({ nodes, samples = [] }: Profiler.Profile): Omit<Profile, 'name'> {
  const frames = new Map(nodes.map(({ id, callFrame }) => [id, callFrame]));
  const own = new Map<string, number>();
  let [decimals, library, garbage] = [0, 0, 0];
  for (const id of samples) {
    const { url = '', functionName = '' } = frames.get(id) ?? {};
    if (url.includes('decimal.js')) decimals += 1;
    else if (functionName === '(garbage collector)') garbage += 1;
    else if (url.includes('/dist/')) {
      library += 1;
      own.set(functionName, (own.get(functionName) ?? 0) + 1);
    }
  }
  const percent = (count: number): number => (100 * count) / samples.length;
  const most = [...own]
    .filter(([name]) => name !== '')
    .sort(([, one], [, other]) => other - one)
    .slice(0, NAMED)
    .map(([name, count]) => [name, percent(count)] as const);
  return { decimals: percent(decimals), library: percent(library), garbage: percent(garbage), most };
}

/** What an import does: bytes of text, milliseconds to read them, and to run what stands at their top. */
export interface ImportProfile {
  readonly bytes: number;
  readonly compiled: number;
  readonly evaluated: number;
}

/** Reads and runs the CommonJS files of the main entry by themselves, its dependencies loaded before. */
export function importProfile(): ImportProfile {
  const require = createRequire(import.meta.url);
  const main = require.resolve('laurate');
  let [bytes, compiled, evaluated] = [0, 0, 0];
  const loaded = new Map<string, unknown>();
  const load = (path: string): unknown => {
    if (loaded.has(path)) return loaded.get(path);
    const text = readFileSync(path, 'utf8');
    const start = performance.now();
    const script = new Script(`(function (require, exports) {${text}\n})`, { filename: path });
    compiled += performance.now() - start;
    bytes += text.length;
    const run = script.runInThisContext() as (ask: (id: string) => unknown, exports: object) => void;
    const exports = {};
    loaded.set(path, exports);
    // what a file asks for is read while it runs, and is not counted twice
    let asked = 0;
    const before = performance.now();
    run((id) => {
      const from = performance.now();
      const found: unknown = id.startsWith('.') ? load(join(dirname(path), id)) : require(id);
      asked += performance.now() - from;
      return found;
    }, exports);
    evaluated += performance.now() - before - asked;
    return exports;
  };
  load(main);
  return { bytes, compiled, evaluated };
}
