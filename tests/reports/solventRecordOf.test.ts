import { solvents, type SolventId } from 'laurate';
import { solventRecordOf, type SolventCell } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { evaluatedSources, recalledSources, solventNotes } from '../../src/composition/data/solventRecords.js';
import { solventData } from '../../src/composition/data/solvents.js';
import { solvent } from '../../src/composition/index.js';

/** A cell in one line: what, from, to, unit, conditions, sources, how obtained. */
const line = ({ of, low, high, unit, conditions = '-', sources, obtained }: SolventCell): string =>
  [of, low, high, unit, conditions, sources.join('+'), obtained].map(String).join(' ');
const linesOf = (id: SolventId): readonly string[] => solventRecordOf(id).cells.map(line);

describe('the record of a solvent, as its publications have it', () => {
  it('glycerol: every cell', () => {
    expect(linesOf('glycerol')).toEqual([
      'density 1.2611 1.2611 g/mL 20 °C crc-102-2021 read',
      ...['15 °C 1.2644', '20 °C 1.2612', '25 °C 1.258', '40 °C 1.2484', '60 °C 1.2353', '80 °C 1.2219'].map((row) => {
        const [celsius, , gPerML] = row.split(' ');
        return `densityByTemperature ${gPerML ?? ''} ${gPerML ?? ''} g/mL ${celsius ?? ''} °C vdi-heat-atlas derived`;
      }),
      'boilingPoint 289 289 °C - crc-organic-constants read',
      // one of the two was recalled
      'flashPoint 160 177 °C - dippr-flash-points+handbooks-recalled memory',
      'assay 95 100 percent glycerin, USP usp-29-glycerin read',
      'assay 96 100 percent glycerol, Ph. Eur. pharmacopoeias-recalled memory',
      'assay 83.5 88.5 percent glycerol (85 per cent), Ph. Eur. pharmacopoeias-recalled memory',
    ]);
    const { id, name, inciName } = solventRecordOf('glycerol');
    expect([id, name, inciName.name, inciName.source]).toEqual(['glycerol', 'Glycerol', 'Glycerin', 'handbooks-recalled']);
  });

  it('water: an evaluated density, and nothing that it has not', () => {
    expect(linesOf('water')).toEqual([
      'density 0.99821 0.99821 g/mL 20 °C kell-1975 derived',
      'boilingPoint 99.97 99.97 °C - crc-organic-constants read',
    ]);
  });
}); // prettier-ignore

describe('every record', () => {
  const table = solventData();
  const obtained = (sources: readonly string[]): string => {
    if (recalledSources.some((one) => sources.includes(one))) return 'memory';
    return evaluatedSources.some((one) => sources.includes(one)) ? 'derived' : 'read';
  };

  it.each(solvents)('$id: every figure of the table once, by its own source, and none beside them', ({ id, name }) => {
    const { density, boilingPoint, flashPoint, grades } = table[id];
    const [celsius, gPerML, source] = density.measured;
    const [at = '', moved = '', by = ''] = density.byTemperature ?? [];
    const [low, high, cups = []] = flashPoint ?? [];
    const row = (of: string, from: string, to: string, unit: string, conditions: string, sources: readonly string[]) =>
      [of, Number(from), Number(to), unit, conditions, sources.join('+'), obtained(sources)].join(' ');
    expect(linesOf(id)).toEqual([
      row('density', gPerML, gPerML, 'g/mL', `${celsius} °C`, [source]),
      ...moved.match(/\S+/g)?.map((figure, index) =>
        row('densityByTemperature', figure, figure, 'g/mL', `${at.split(' ')[index] ?? ''} °C`, [by]),
      ) ?? [],
      ...(boilingPoint ? [row('boilingPoint', boilingPoint[0], boilingPoint[0], '°C', '-', [boilingPoint[1]])] : []),
      ...(low !== undefined && high !== undefined ? [row('flashPoint', low, high, '°C', '-', cups)] : []),
      ...grades.map(([grade, least, most, from]) => row('assay', least, most, 'percent', grade, [from])),
    ]);
    const { cells, ...rest } = solventRecordOf(id);
    expect(rest).toEqual({
      id,
      name,
      inciName: { name: solvent(id).inciName, source: 'handbooks-recalled', obtained: 'memory' },
      notes: solventNotes[id],
    });
    for (const one of [rest.inciName, rest.notes, cells, ...cells, ...cells.map(({ sources }) => sources)]) {
      expect(Object.isFrozen(one)).toBe(true);
    }
  }); // prettier-ignore
});
