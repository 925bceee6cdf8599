/** Every public function has a law, every law that is named is a test, and the table of the page is that of the tests. */
import { describe, expect, it } from 'vitest';
import { elsewhere, lawsOf, titles } from './laws.js';
import { lawsTable, publicFunctions } from './lawsTable.js';
import { guideWith } from '../pages.js';

describe('the laws', () => {
  it('of every public function are named', () => {
    const without = [...lawsOf(publicFunctions)].filter(([, laws]) => laws.length === 0).map(([name]) => name);
    expect(without).toEqual([]);
    expect(Object.keys(elsewhere).filter((name) => !publicFunctions.includes(name))).toEqual([]);
  });

  it('that are named are titles of tests', () => {
    const known = new Set(titles().map(({ file, title }) => `${file}: ${title}`));
    const named = Object.values(elsewhere).flatMap((files) =>
      Object.entries(files).flatMap(([file, some]) => some.map((title) => `${file}.test.ts: ${title}`)),
    );
    expect(named.filter((law) => !known.has(law))).toEqual([]);
    expect(known.has('laws/fuzz.test.ts: no such law')).toBe(false);
  });

  it('stand in docs/reliability.md as they are (npm run reliability writes them)', async () => {
    const { now, then } = await guideWith('reliability.md', 'laws', lawsTable());
    expect(now).toBe(then);
  });
});
