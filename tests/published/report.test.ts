/** The page of validation is what the check values say today, and its lists leave nothing out. */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { describe, expect, it } from 'vitest';
import * as audit from 'laurate/audit';
import { checkValues } from 'laurate/check-values';
import * as main from 'laurate';
import * as recipe from 'laurate/recipe';
import * as reports from 'laurate/reports';
import { validationPage } from './page.js';
import { tables } from './tables.js';
import { unchecked } from './unchecked.js';

const page = fileURLToPath(new URL('../../docs/validation.md', import.meta.url));
const all = Object.values(tables).flat();

it('the page is not stale: `npm run report` writes it', async () => {
  const text = await format(validationPage, { ...(await resolveConfig(page)), parser: 'markdown' });
  await expect(text).toMatchFileSnapshot(page);
});

describe('the tables of the publications', () => {
  it('hold every check value, and each once', () => {
    const astray = checkValues().flatMap((row) => {
      const names = all.filter(({ checks }) => checks?.(row) === true).map(({ name }) => name);
      return names.length === 1 ? [] : [[row.id, names]];
    });
    expect(astray).toEqual([]);
  });

  it.each(all)('$name: stands somewhere, or says why not', ({ entries, checks, readBy, tests, left }) => {
    expect(entries).toBeGreaterThan(0);
    expect([checks, readBy, left].filter((each) => each !== undefined)).not.toEqual([]);
    if (checks !== undefined) expect(checkValues().filter(checks)).not.toEqual([]);
    if (tests !== undefined) expect(existsSync(fileURLToPath(new URL(`../../${tests}`, import.meta.url)))).toBe(true);
  });

  it('that are read name functions of the library', () => {
    const names = new Set(Object.keys({ ...main, ...recipe, ...audit, ...reports }));
    const said = all.flatMap(({ readBy = '' }) => [...readBy.matchAll(/`(\w+)`/g)].map(([, name = '']) => name));
    expect(said.length).toBeGreaterThan(20);
    expect(said.filter((name) => !names.has(name))).toEqual([]);
  });
});

it('functions without a check value are just those that are listed', () => {
  const called = new Set<string>(checkValues().map(({ call }) => call));
  const functions = Object.entries({ ...main, ...recipe, ...audit, ...reports })
    .filter(([name, one]) => typeof one === 'function' && /^[a-z]/.test(name) && !called.has(name))
    .map(([name]) => name);
  expect(Object.keys(unchecked).sort()).toEqual(functions.sort());
});
