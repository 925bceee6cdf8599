/** Every link between the documents of the project leads somewhere; `npm run docs` checks those of the site as built. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import typedoc from '../../.config/typedoc.json' with { type: 'json' };
import { linksOf, proseOf } from './pages.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const guides = readdirSync(join(root, 'docs')).filter((name) => name.endsWith('.md'));
const contributing = readdirSync(join(root, '.github')).filter((name) => name.endsWith('.md'));
const pages = [
  'README.md',
  'DEVELOPERS.md',
  'CHANGELOG.md',
  ...contributing.map((name) => `.github/${name}`),
  ...guides.map((name) => `docs/${name}`),
];

const textOf = (page: string): string => readFileSync(join(root, page), 'utf8');

/** The anchors of a page: its headings in lower case, with hyphens for spaces. */
const anchorsOf = (page: string): readonly string[] =>
  [...proseOf(textOf(page)).matchAll(/^#{1,6} (.+)$/gm)].map(([, heading = '']) =>
    heading
      .toLowerCase()
      .replaceAll(/[^\p{L}\p{N}\s_-]/gu, '')
      .trim()
      .replaceAll(/\s/g, '-'),
  );

/** What is wrong with a link on a page, if anything is. */
function faultOf(page: string, link: string): string | undefined {
  const [path = '', anchor] = link.split('#');
  const target = path === '' ? page : join(dirname(page), path).replaceAll('\\', '/');
  if (!existsSync(join(root, target))) return `${link}: no such file`;
  if (anchor === undefined || anchorsOf(target).includes(anchor)) return undefined;
  return `${link}: no such heading`;
}

describe.each(pages)('links of %s', (page) => {
  it('lead to files and headings that are there', () => {
    const faults = linksOf(textOf(page)).flatMap((link) => faultOf(page, link) ?? []);
    expect(faults).toEqual([]);
  });
});

it('are found at all, and a wrong one is told', () => {
  expect(pages.flatMap((page) => linksOf(textOf(page))).length).toBeGreaterThan(30);
  expect(faultOf('README.md', 'docs/no-such-page.md')).toBe('docs/no-such-page.md: no such file');
  expect(faultOf('README.md', 'docs/recipes.md#no-such-heading')).toBe(
    'docs/recipes.md#no-such-heading: no such heading',
  );
  expect(faultOf('docs/audit.md', '#the-verdict')).toBeUndefined();
});

it('every guide has its place in the navigation of the site, the first one first', () => {
  const placed = typedoc.projectDocuments.map((path) => path.replace('../docs/', ''));
  expect([...placed].sort()).toEqual([...guides].sort());
  expect(placed[0]).toBe('start-here.md');
});

it('every guide is reached from the first one and from the README', () => {
  const from = (page: string): readonly string[] => linksOf(textOf(page)).map((link) => link.replace(/#.*/, ''));
  const others = guides.filter((name) => name !== 'start-here.md');
  expect(others.filter((name) => !from('docs/start-here.md').includes(name))).toEqual([]);
  expect(guides.filter((name) => !from('README.md').includes(`docs/${name}`))).toEqual([]);
});
