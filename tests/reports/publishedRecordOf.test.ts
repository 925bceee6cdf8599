import { fat, fatFromCertificate, fats, readFat, type PublishedFatId } from 'laurate';
import { publishedRecordOf, type PublishedCell } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { inciProvenance, publishedFatRecords } from '../../src/fats/data/publishedFatRecords.js';
import { publishedFats } from '../../src/fats/data/publishedFats.js';
import { refusal } from '../laws/refusal.js';

/** A cell in one line: what, from, to, unit, source, how obtained, conditions. */
const line = ({ of, low, high, unit, source, obtained, conditions }: PublishedCell): string =>
  [of, low, high, unit, source, obtained, conditions].map((one) => one?.toString() ?? '-').join(' ');
const linesOf = (id: PublishedFatId): readonly string[] => publishedRecordOf(id).cells.map(line);

const UNITS = {
  saponificationValue: 'mg KOH/g',
  acidValue: 'mg KOH/g',
  iodineValue: 'g I2/100 g',
  unsaponifiable: 'percent',
} as const;
const PRINTED = { relativeDensity: 'relative to water', refractiveIndex: 'none', titre: '°C' } as const;
const keysOf = <T extends object>(record: T): readonly (keyof T)[] => Object.keys(record) as (keyof T)[];

describe('the record of a fat, as its publications have it', () => {
  it('coconut oil: every cell', () => {
    const codex = 'codex-cxs-210-2024 read';
    const growers = 'coconut-community-standard-undated read';
    const acid = (name: string, low: string, high: string) =>
      `${name} ${low} ${high} percent of fatty acids ${codex} -`;
    expect(linesOf('coconut-oil')).toEqual([
      ...[
        ['C6:0', '0', '0.7'],
        ['C8:0', '4.6', '10'],
        ['C10:0', '5', '8'],
        ['C12:0', '45.1', '53.2'],
        ['C14:0', '16.8', '21'],
        ['C16:0', '7.5', '10.2'],
        ['C18:0', '2', '4'],
        ['C18:1', '5', '10'],
        ['C18:2', '1', '2.5'],
        ['C18:3', '0', '0.2'],
        ['C20:0', '0', '0.2'],
        ['C20:1', '0', '0.2'],
      ].map(([name = '', low = '', high = '']) => acid(name, low, high)),
      // looked for, and not found
      ...['C16:1', 'C17:0', 'C17:1', 'C20:2', 'C22:0', 'C22:1', 'C22:2', 'C24:0', 'C24:1'].map((name) =>
        acid(name, '0', '0'),
      ),
      `saponificationValue 248 265 mg KOH/g ${codex} -`,
      `saponificationValue 250 264 mg KOH/g ${growers} -`,
      `iodineValue 6.3 10.6 g I2/100 g ${codex} -`,
      `iodineValue 7.5 10.5 g I2/100 g ${growers} -`,
      `unsaponifiable - 1.5 percent ${codex} -`,
      `relativeDensity 0.908 0.921 relative to water ${codex} 40 °C, water at 20 °C`,
      `refractiveIndex 1.448 1.45 none ${codex} nD at 40 °C`,
    ]);
    const { id, name, origin, inciNames } = publishedRecordOf('coconut-oil');
    expect([id, name, origin]).toEqual(['coconut-oil', 'Coconut oil', 'Cocos nucifera L. kernel']);
    expect(inciNames).toEqual({
      fat: 'Cocos Nucifera (Coconut) Oil',
      sodiumSoap: 'Sodium Cocoate',
      source: 'inci',
      obtained: 'memory',
    });
  });

  it('olive oil: acids of another source than the rest of its profile', () => {
    const acids = publishedRecordOf('olive-oil').cells.filter(({ of }) => of.startsWith('C'));
    const others = acids.filter(({ source }) => source === 'codex-cxs-33-2017');
    expect(others.map(({ of, obtained }) => [of, obtained])).toEqual([
      ['C18:3', 'memory'],
      ['C22:0', 'memory'],
      ['C24:0', 'memory'],
    ]);
    for (const one of acids.filter((acid) => !others.includes(acid))) {
      expect([one.source, one.obtained]).toEqual(['codex-cxs-33-2013', 'read']);
    }
  });
});

describe('every record', () => {
  const table = publishedFats();

  it.each(fats)('$id: every figure of the tables once, by its own source, and none beside them', ({ id, name }) => {
    const [figures, record] = [table[id], publishedFatRecords[id]];
    const acids = [
      ...Object.entries(figures.profile ?? {}),
      ...(record.profile?.notDetected ?? []).map((acid) => [acid, [0, 0]] as const),
    ].map(([acid, [low, high]]) => {
      const own = record.profile?.exceptions?.filter((one) => one.acids.some((other) => other === acid)) ?? [];
      const { source, obtained } = own[0] ?? record.profile ?? {};
      return `${acid} ${String(low)} ${String(high)} percent of fatty acids ${String(source)} ${String(obtained)} -`;
    });
    const limits = keysOf(UNITS).flatMap((of) =>
      (figures[of] ?? []).map(
        ([low, high, source]) =>
          `${of} ${String(low ?? '-')} ${String(high ?? '-')} ${UNITS[of]} ${source} ${String(record.limits[of]?.[source])} -`,
      ),
    );
    const [observed, from] = figures.observedSaponificationValue ?? [];
    const seen = from === undefined ? [] : [`${String(observed)} ${String(observed)} mg KOH/g ${from}`].map(
      (one) => `observedSaponificationValue ${one} ${String(record.limits.observedSaponificationValue?.[from])} -`,
    );
    const printed = keysOf(PRINTED).flatMap((of) => {
      const one = record[of];
      return one === undefined ? [] : [
        `${of} ${String(one.low)} ${String(one.high)} ${PRINTED[of]} ${one.source} ${one.obtained} ${one.conditions ?? '-'}`,
      ];
    });
    const { cells, ...rest } = publishedRecordOf(id);
    expect(cells.map(line)).toEqual([...acids, ...limits, ...seen, ...printed]);
    expect(rest).toEqual({
      id,
      name,
      origin: record.origin,
      notes: record.notes,
      ...(record.inciNames && { inciNames: { ...record.inciNames, ...inciProvenance } }),
    });
  }); // prettier-ignore

  it('can neither be changed nor added to', () => {
    const record = publishedRecordOf('coconut-oil');
    for (const one of [record, record.cells, ...record.cells, record.inciNames, record.notes]) {
      expect(Object.isFrozen(one)).toBe(true);
    }
  });
});

describe('publishedRecordOf', () => {
  it('takes a fat as well as its name, also one that was stored', () => {
    const oil = fat('castor-oil');
    for (const of of [oil, readFat(JSON.parse(JSON.stringify(oil)))]) {
      expect(publishedRecordOf(of)).toEqual(publishedRecordOf('castor oil'));
    }
  });

  it('refuses a fat that is no published one, and what is no fat', () => {
    const lot = fatFromCertificate({ name: 'Drum', like: fat('castor-oil'), saponificationValue: { mgKohPerG: 180 } });
    const stored = readFat({ ...(JSON.parse(JSON.stringify(lot)) as object), id: 'constructor' });
    for (const of of [lot, stored, 12 as never, 'constructor']) {
      expect(refusal(() => publishedRecordOf(of))).toMatchObject({ code: 'unknown-fat', path: 'fat' });
    }
    expect(refusal(() => publishedRecordOf(null as never))).toMatchObject({ code: 'missing', path: 'fat' });
  });
});
