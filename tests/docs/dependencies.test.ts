import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { format, resolveConfig } from 'prettier';
import { expect, it } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { root } from '../package/packed.js';
import { billOfMaterials, dependenciesPage } from './dependenciesPage.js';

const bill = billOfMaterials();
const named = bill.components.map(({ name, version }) => [name, version]);

it('the guide of dependencies says what the bill of materials and the built package say', async () => {
  const page = join(root, 'docs/dependencies.md');
  const text = await format(await dependenciesPage(bill), { ...(await resolveConfig(page)), parser: 'markdown' });
  await expect(text).toMatchFileSnapshot(page);
});

it('the bill names the package by name and version, and its dependencies, which have none of their own', () => {
  const { name, version } = bill.metadata.component;
  expect([name, version]).toEqual([manifest.name, manifest.version]);
  expect(named).toEqual(Object.entries(manifest.dependencies));
  const own = bill.dependencies.map(({ ref, dependsOn }) => [ref.replace(/@[^@]*$/, ''), dependsOn.length]);
  expect(own).toEqual([[manifest.name, named.length], ...named.map(([dependency]) => [dependency, 0])]);
});

it.each(named)('%s runs no script when it is installed, and its licence is the one of the bill', (name = '') => {
  const installed: unknown = JSON.parse(readFileSync(join(root, 'node_modules', name, 'package.json'), 'utf8'));
  const licence = bill.components.find((component) => component.name === name)?.licenses[0]?.license.id;
  expect(licence).toBe('MIT');
  expect(installed).toMatchObject({ license: licence });
  const { scripts = {} } = installed as { readonly scripts?: Readonly<Record<string, string>> };
  expect(Object.keys(scripts).filter((script) => /^(pre|post)?install$/.test(script))).toEqual([]);
});
