/** What an import costs, of the library and of each of its dependencies, each in a process of its own. */
import { execFileSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { interleaved, type Rounds } from './harness.js';

/** Milliseconds from before the import until it is there; the start of the process itself is not in it. */
const script = (specifier: string): string => `
  const start = performance.now();
  await import(${JSON.stringify(specifier)});
  process.stdout.write(String(performance.now() - start));
`;

const { dependencies } = createRequire(import.meta.url)('laurate/package.json') as {
  readonly dependencies: Readonly<Record<string, string>>;
};

const MODULES = [
  ...['laurate', ...Object.keys(dependencies)].map((specifier) => ({ name: `\`${specifier}\``, specifier })),
  { name: 'an empty module', specifier: 'data:text/javascript,export%20{}' },
];

/** Milliseconds of each import, in each round. */
export function importTimes(rounds: number): readonly Rounds[] {
  return interleaved(MODULES, rounds, ({ specifier }) =>
    Number(execFileSync(process.execPath, ['--input-type=module', '-e', script(specifier)], { encoding: 'utf8' })),
  );
}
