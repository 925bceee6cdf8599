/** Writes every example of the documents as a module into tests/docs/generated, before any test runs. */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { importLines, moduleOf, snippetsOfMarkdown, snippetsOfSource } from './snippets.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const generated = `${root}tests/docs/generated`;

const read = (file: string): string => (existsSync(root + file) ? readFileSync(root + file, 'utf8') : '');
const inFolder = (folder: string, ending: string, recursive: boolean): string[] =>
  readdirSync(root + folder, { recursive, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending))
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`);

export default function setup(): void {
  const pages = ['README.md', 'DEVELOPERS.md', ...inFolder('docs', '.md', false)];
  const snippets = [
    ...pages.flatMap((page) => snippetsOfMarkdown(page, read(page))),
    ...inFolder('src', '.ts', true).flatMap((file) => snippetsOfSource(file, read(file))),
  ];
  const imports = new Map([
    ...importLines('laurate/check-values', read('src/checkValues/index.ts')),
    ...importLines('laurate/reports', read('src/reports/index.ts')),
    ...importLines('laurate/recipe', read('src/batch/index.ts')),
    ...importLines('laurate/audit', read('src/audit/index.ts')),
    ...importLines('laurate', read('src/index.ts')),
  ]);

  rmSync(generated, { recursive: true, force: true });
  mkdirSync(generated, { recursive: true });
  for (const snippet of snippets) {
    const name = `${snippet.file.replaceAll('/', '__')}__line-${String(snippet.line)}.ts`;
    writeFileSync(`${generated}/${name}`, moduleOf(snippet, imports));
  }
}
