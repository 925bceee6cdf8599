/** What a bundle of one import weighs, compressed, by the budgets of package.json. */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** Bytes of gzip beside decimal.js, and how many the budget allows. */
export interface Size {
  readonly name: string;
  readonly size: number;
  readonly sizeLimit: number;
}

/** Of each budget, in its order; without `laurate`, that of decimal.js alone. */
export function sizes(): readonly Size[] {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const text = execFileSync('npx', ['size-limit', '--json'], {
    cwd: root,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  return JSON.parse(text) as readonly Size[];
}
