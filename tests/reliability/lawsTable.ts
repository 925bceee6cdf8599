/** The table of laws in docs/reliability.md. */
import * as laurate from 'laurate';
import * as audit from 'laurate/audit';
import * as checkValues from 'laurate/check-values';
import * as recipe from 'laurate/recipe';
import * as reports from 'laurate/reports';
import { lawsOf } from './laws.js';
import { unpadded } from './page.js';

/** Every public function, of all entries. */
export const publicFunctions: readonly string[] = [laurate, recipe, audit, reports, checkValues].flatMap((entry) =>
  Object.entries(entry)
    .flatMap(([name, value]) => (typeof value === 'function' ? [name] : []))
    .sort(),
);

/** What a row of a table is tried on stands in its title as a sign; in words it is any of them. */
const worded = (title: string): string =>
  title.replaceAll(/%[sjodi]|\$[\w.]+/g, '…').replaceAll(/[<>*_]/g, (sign) => `\\${sign}`);

export function lawsTable(): string {
  const rows = [...lawsOf(publicFunctions)].map(([name, laws]) => [
    `\`${name}\``,
    laws.map(({ title }) => worded(title)).join('; '),
    [...new Set(laws.map(({ file }) => `\`tests/${file}\``))].join(', '),
  ]);
  return unpadded(['function', 'laws', 'held by'], rows);
}
