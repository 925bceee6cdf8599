import { describe, expect, it } from 'vitest';
import { EDITION, shelves, sources, type SourceId } from '../../src/sources/index.js';

const rows = shelves().flatMap((shelf) => Object.entries(shelf));
const all = rows.map(([id]) => id as SourceId);

describe('sources: worked by hand', () => {
  it('gives title, authors, edition and place of a publication', () => {
    expect(sources(['si-brochure-2019', 'iupac-2021'])).toEqual([
      {
        id: 'si-brochure-2019',
        title: 'The International System of Units (SI Brochure)',
        authors: 'Bureau International des Poids et Mesures',
        edition: '9th edition, 2019',
      },
      {
        id: 'iupac-2021',
        title: 'Standard atomic weights of the elements 2021 (IUPAC Technical Report)',
        authors: 'T. Prohaska et al.',
        edition: 'Pure and Applied Chemistry 94 (2022) 573-600, doi:10.1515/pac-2019-0603',
        where: 'Table of abridged standard atomic weights',
      },
    ]);
  });

  it('gives nothing for nothing', () => {
    expect(sources([])).toEqual([]);
  });

  it('leaves out a name of a later edition, and names every object has', () => {
    const ids = ['iupac-2099', 'constructor', '__proto__', 'toString', 'iupac-2021'] as unknown as SourceId[];
    expect(sources(ids).map(({ id }) => id)).toEqual(['iupac-2021']);
  });

  it('has its own conventions in the edition of the figures', () => {
    expect(sources(['laurate-convention'])[0]?.edition).toBe(EDITION);
  });

  it('knows the edition of the figures by year and number', () => {
    expect(EDITION).toMatch(/^\d{4}\.\d+$/);
  });
});

describe('sources: laws', () => {
  it('keeps the order asked for, and repeats what is asked for twice', () => {
    const ids = [...all].reverse();
    expect(sources(ids).map(({ id }) => id)).toEqual(ids);
    expect(sources([...ids, ...ids])).toHaveLength(2 * ids.length);
  });

  it('is frozen, so that no caller can change the bibliography', () => {
    const found = sources(all);
    expect(found.every((row) => Object.isFrozen(row))).toBe(true);
  });

  it('leaves the list of names untouched', () => {
    const ids: SourceId[] = ['iupac-2021', 'tanaka-2001'];
    sources(ids);
    expect(ids).toEqual(['iupac-2021', 'tanaka-2001']);
  });
});

describe('the bibliography', () => {
  it('has every publication on one shelf only', () => {
    expect(new Set(all).size).toBe(all.length);
  });

  it('has every publication once, whatever its name', () => {
    const printed = rows.map(([, { title, edition, where }]) => [title, edition, where].join(' | '));
    expect(printed.filter((text, at) => printed.indexOf(text) !== at)).toEqual([]);
  });

  it('names every publication in kebab case', () => {
    expect(all.filter((id) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
  });

  it('gives every publication a title and an edition, and cites it, not a copy on the web', () => {
    const known = ['title', 'authors', 'edition', 'where'];
    const faults = rows.filter(
      ([, publication]) =>
        Object.keys(publication).some((key) => !known.includes(key)) ||
        [publication.title, publication.edition, ...(Object.values(publication) as unknown[])].some(
          (text) => typeof text !== 'string' || text === '' || text !== text.trim() || /https?:|www\./.test(text),
        ),
    );
    expect(faults).toEqual([]);
  });
});
