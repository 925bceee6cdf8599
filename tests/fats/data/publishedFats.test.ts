import { describe, expect, it } from 'vitest';
import { inciProvenance, publishedFatRecords, type Obtained } from '../../../src/fats/data/publishedFatRecords.js';
import { fats, type FatListing, type PublishedFatId } from '../../../src/fats/data/fatNames.js';
import { publishedFats as table } from '../../../src/fats/data/publishedFats.js';
import { fattyAcidNames } from '../../../src/chemistry/data/fattyAcidNames.js';
import { standards as shelf } from '../../../src/sources/data/standards.js';

const publishedFats = table();
const standards = shelf();
const listed = new Map(fats.map((listing) => [listing.id, listing]));
const listingOf = (id: PublishedFatId): FatListing => {
  const listing = listed.get(id);
  if (listing === undefined) throw new Error(`${id} has no name`);
  return listing;
};
const ids = Object.keys(publishedFats) as PublishedFatId[];
const limited = ['saponificationValue', 'acidValue', 'iodineValue', 'unsaponifiable'] as const;
const characteristics = ['relativeDensity', 'refractiveIndex', 'titre'] as const;

/** One figure, or pair of limits, of the table, with where it is from. */
interface Cell {
  readonly fat: PublishedFatId;
  readonly what: string;
  readonly low: number | null;
  readonly high: number | null;
  readonly source: string | undefined;
  readonly obtained: Obtained | undefined;
}

function profileCells(fat: PublishedFatId): Cell[] {
  const { profile } = publishedFats[fat];
  const record = publishedFatRecords[fat].profile;
  const detected = Object.entries(profile ?? {}).map(([acid, [low, high]]) => ({ acid: acid, low, high }));
  const notDetected = (record?.notDetected ?? []).map((acid) => ({ acid: acid, low: 0, high: 0 }));
  return [...detected, ...notDetected].map(({ acid, low, high }) => {
    const exception = record?.exceptions?.find(({ acids }) => acids.some((a) => a === acid));
    const { source, obtained } = exception ?? record ?? {};
    return { fat, what: acid, low, high, source, obtained };
  });
}

function limitCells(fat: PublishedFatId): Cell[] {
  const { limits } = publishedFatRecords[fat];
  const rows = limited.flatMap((what) =>
    (publishedFats[fat][what] ?? []).map(([low, high, source]) => {
      return { fat, what, low, high, source, obtained: limits[what]?.[source] };
    }),
  );
  const single = publishedFats[fat].observedSaponificationValue;
  if (single === undefined) return rows;
  const [value, source] = single;
  const obtained = limits.observedSaponificationValue?.[source];
  return [...rows, { fat, what: 'saponificationValue', low: value, high: value, source, obtained }];
}

function otherCells(fat: PublishedFatId): Cell[] {
  const record = publishedFatRecords[fat];
  const printed = characteristics.flatMap((what) => {
    const cell = record[what];
    if (cell === undefined) return [];
    return [{ fat, what, low: cell.low, high: cell.high, source: cell.source, obtained: cell.obtained }];
  });
  const observed = [...limited, 'titre' as const].flatMap((what) =>
    (record.observed?.[what] ?? []).map(([low, high, source, obtained]) => ({
      fat,
      what,
      low,
      high,
      source,
      obtained,
    })),
  );
  return [...printed, ...observed];
}

const profiles = ids.flatMap(profileCells);
const cells: readonly Cell[] = [...profiles, ...ids.flatMap(limitCells), ...ids.flatMap(otherCells)];

/** Read, recalled, worked out. */
type Count = readonly [read: number, memory: number, derived: number];

function count(some: readonly Cell[]): Count {
  const of = (obtained: Obtained): number => some.filter((cell) => cell.obtained === obtained).length;
  return [of('read'), of('memory'), of('derived')];
}

const sum = ([a, b, c]: Count, [x, y, z]: Count): Count => [a + x, b + y, c + z];

/** The strictest reading of "the same name": letters and digits only. */
const bare = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]/g, '');

describe('the published fats', () => {
  it('are 64: 50 glycerides, 8 acids, 3 waxes, 3 rosins', () => {
    const kinds = ids.map((id) => listingOf(id).kind);
    const of = (kind: string): number => kinds.filter((k) => k === kind).length;
    expect(ids.length).toBe(64);
    expect([of('triglyceride'), of('free-fatty-acid'), of('wax-ester'), of('rosin')]).toEqual([50, 8, 3, 3]);
  });

  it('have a record each, and no record stands alone', () => {
    expect(Object.keys(publishedFatRecords)).toEqual(ids);
  });

  it('answer to one name each: no id, name or synonym is used twice', () => {
    const names = ids.flatMap((id) => {
      const own = new Set([bare(id), bare(listingOf(id).name)]);
      return [...own, ...listingOf(id).synonyms.map(bare)];
    });
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
    expect(names.filter((name) => name === '')).toEqual([]);
  });

  it.each([
    'rosin',
    'colophony',
    'stearic acid',
    'stearin',
    'rapeseed oil',
    'palm',
    'olein',
    'hydrogenated vegetable oil',
  ])('leave "%s" to the maker: it could be two fats of different lye demand', (name) => {
    const taken = ids.filter((id) =>
      [id, listingOf(id).name, ...listingOf(id).synonyms].some((n) => bare(n) === bare(name)),
    );
    expect(taken).toEqual([]);
  });

  it('are without limits or a single value for the saponification value, or acid value of an acid, in seven cases', () => {
    const without = ids.filter((id) => {
      const fat = publishedFats[id];
      const acid = listingOf(id).kind === 'free-fatty-acid' ? fat.acidValue : undefined;
      return (fat.saponificationValue ?? fat.observedSaponificationValue ?? acid) === undefined;
    });
    // Six rows of the standard that were found without characteristics, and hempseed oil, which no standard covers.
    expect(without).toEqual([
      'babassu-oil',
      'corn-oil',
      'cottonseed-oil',
      'canola-oil',
      'sesame-oil',
      'hempseed-oil',
      'palm-stearin',
    ]);
    // Each of them can still be reckoned from its profile.
    expect(without.filter((id) => publishedFats[id].profile === undefined)).toEqual([]);
  });
});

describe('every cell', () => {
  it('says which publication it is from, and the bibliography has it', () => {
    const unknown = cells.filter(({ source }) => source === undefined || !Object.hasOwn(standards, source));
    expect(unknown).toEqual([]);
  });

  it('says whether it was read, recalled or worked out', () => {
    expect(cells.filter(({ obtained }) => obtained === undefined)).toEqual([]);
    expect(sum([0, 0, 0], count(cells)).reduce((a, b) => a + b)).toBe(cells.length);
  });

  it('has its low end at or below its high end, and at least one end', () => {
    expect(cells.filter(({ low, high }) => low === null && high === null)).toEqual([]);
    expect(cells.filter(({ low, high }) => low !== null && high !== null && low > high)).toEqual([]);
  });

  it('lies where its quantity can lie', () => {
    const room: Record<string, readonly [number, number]> = {
      saponificationValue: [20, 700], // what the library accepts as a saponification value at all
      acidValue: [0, 700],
      iodineValue: [0, 300], // tung oil, the most unsaturated here, reaches about 240
      unsaponifiable: [0, 20], // unrefined shea butter has the most, 19 %
      relativeDensity: [0.8, 1],
      refractiveIndex: [1.4, 1.6],
      titre: [0, 75], // pure stearic acid sets at 69.6 °C
    };
    const outside = cells.filter(({ what, low, high }) => {
      const [least, most] = room[what] ?? [0, 100];
      return [low, high].some((end) => end !== null && (end < least || end > most));
    });
    expect(outside).toEqual([]);
  });

  it('is named by an acid on file, where it is part of a profile', () => {
    expect(profiles.filter(({ what }) => !Object.hasOwn(fattyAcidNames, what))).toEqual([]);
  });
});

describe('the records', () => {
  it('name the publications of the limits, no more and no fewer', () => {
    for (const id of ids) {
      const { limits } = publishedFatRecords[id];
      for (const what of limited) {
        const named = new Set((publishedFats[id][what] ?? []).map(([, , source]) => source));
        expect([id, what, Object.keys(limits[what] ?? {}).sort()]).toEqual([id, what, [...named].sort()]);
      }
      const single = publishedFats[id].observedSaponificationValue;
      expect([id, Object.keys(limits.observedSaponificationValue ?? {})]).toEqual([id, single ? [single[1]] : []]);
    }
  });

  it('name the publications of the profile, no more and no fewer', () => {
    for (const id of ids) {
      const named = new Set(profileCells(id).map(({ source }) => source));
      expect([id, [...named].sort()]).toEqual([id, [...(publishedFats[id].profileSource ?? [])].sort()]);
    }
  });

  it('list no acid both as found and as not found, and no exception that is not in the profile', () => {
    for (const id of ids) {
      const acids = profileCells(id).map(({ what }) => what);
      expect([id, new Set(acids).size]).toEqual([id, acids.length]);
      const excepted = (publishedFatRecords[id].profile?.exceptions ?? []).flatMap((e) => [...e.acids] as string[]);
      expect([id, excepted.filter((acid) => !acids.includes(acid))]).toEqual([id, []]);
      expect([id, new Set(excepted).size]).toEqual([id, excepted.length]);
    }
  });

  it('cite every publication of the shelf at least once', () => {
    const cited = new Set([...cells.map(({ source }) => source), inciProvenance.source]);
    expect(Object.keys(standards).filter((id) => !cited.has(id))).toEqual([]);
  });
});

describe('profiles', () => {
  it('can close: the lows sum to at most 100, the highs to at least 100', () => {
    const open = ids.flatMap((id) => {
      const ranges = Object.values(publishedFats[id].profile ?? {});
      if (ranges.length === 0) return [];
      const low = ranges.reduce((total, [l]) => total + l, 0);
      const high = ranges.reduce((total, [, h]) => total + h, 0);
      return low <= 100 && high >= 100 ? [] : [{ id, low, high }];
    });
    expect(open).toEqual([]);
  });

  it('are on file for 53 fats', () => {
    expect(ids.filter((id) => publishedFats[id].profile !== undefined).length).toBe(53);
  });
});

describe('counts of cells (read, recalled, worked out)', () => {
  // The chief figures of the 61 fats besides rosin; then further standards and observed figures beside them, and the
  // three rosins of the 1908 handbook.
  const chief: Record<string, Count> = {
    saponificationValue: [36, 14, 0],
    acidValue: [17, 4, 3],
    iodineValue: [41, 12, 0],
    unsaponifiable: [27, 17, 0],
    relativeDensity: [22, 15, 0],
    refractiveIndex: [25, 12, 0],
    titre: [9, 4, 0],
  };
  const furtherLimits: Record<string, Count> = {
    saponificationValue: [12, 9, 1],
    acidValue: [7, 4, 0],
    iodineValue: [14, 11, 0],
    unsaponifiable: [5, 5, 0],
  };
  const furtherObserved: Record<string, Count> = {
    saponificationValue: [14, 0, 4],
    iodineValue: [21, 0, 0],
    unsaponifiable: [2, 0, 0],
    titre: [7, 0, 0],
  };
  const rosins: Record<string, Count> = {
    saponificationValue: [3, 0, 0],
    acidValue: [3, 0, 0],
    iodineValue: [3, 0, 0],
  };

  it('profiles, not-detected cells included', () => {
    expect(count(profiles)).toEqual([618, 215, 5]);
  });

  it.each(Object.keys(chief))('%s', (what) => {
    const all = count(cells.filter((cell) => cell.what === what));
    const parts = [chief, furtherLimits, furtherObserved, rosins].map((part) => part[what] ?? ([0, 0, 0] as const));
    expect(all).toEqual(parts.reduce(sum));
  });

  it('all of them: 795, 293 and 8 chief figures, the rest beside them', () => {
    const beside = [furtherLimits, furtherObserved, rosins].flatMap((part) => Object.values(part));
    expect(count(cells)).toEqual(beside.reduce(sum, [795, 293, 8]));
  });
});
