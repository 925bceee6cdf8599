import { readdir, readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { figures } from '../../docs/examples/figures.js';
import { figureFile, svgOf } from './svgOf.js';

describe('docs/figures', () => {
  it('holds each figure, and nothing else', async () => {
    expect((await readdir(figureFile('.'))).sort()).toEqual(
      Object.keys(figures)
        .map((name) => `${name}.svg`)
        .sort(),
    );
  });

  it.each(Object.entries(figures))('%s is up to date (else: npm run figures)', async (name, chart) => {
    const { svg, complaints } = await svgOf(chart);
    expect(complaints).toEqual([]);
    expect(`${svg}\n`).toBe(await readFile(figureFile(`${name}.svg`), 'utf8'));
  });

  it('is drawn the same every time, in whatever order', async () => {
    const drawn = async (charts: readonly (typeof figures)[string][]): Promise<string[]> => {
      const all: string[] = [];
      for (const chart of charts) all.push((await svgOf(chart)).svg);
      return all;
    };
    const charts = Object.values(figures);
    expect((await drawn([...charts].reverse())).reverse()).toEqual(await drawn(charts));
  });
});
