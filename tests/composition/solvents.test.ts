import { compositionFrom, fat, soapFromLye, solvent, solventDensity, solvents, sources, type SolventId } from 'laurate';
import { solventRecordOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { SOLVENT_IDS } from '../../src/composition/index.js';
import { solventNotes } from '../../src/composition/data/solventRecords.js';
import { throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const soap = soapFromLye({
  fats: [{ fat: fat('tallow'), mass: { g: 100 } }],
  lye: [{ alkali: 'naoh', mass: { g: 13 }, solid: { hydroxide: { percent: 99 } } }],
});
const density = (id: SolventId, celsius: number | string): string =>
  solventDensity({ solvent: id, temperature: { celsius } }).density.gPerML.toFixed(4);

describe('solvent: worked by hand', () => {
  it('tells names, molar mass, flash and boiling point, and what is sold', () => {
    const ethanol = solvent('ethanol');
    expect(ethanol.molarMass?.gPerMol.toString()).toBe('46.069'); // 2 · 12.011 + 6 · 1.008 + 15.999
    expect([ethanol.name, ethanol.inciName, ethanol.component]).toEqual(['Ethanol', 'Alcohol', 'ethanol']);
    expect(ethanol.boilingPoint?.celsius.toString()).toBe('78.24');
    expect(ethanol.flashPoint?.high.celsius.toString()).toBe('13');
    expect(ethanol.grades.map(({ assay }) => [assay.low, assay.high].map(({ percent }) => percent.toString()))).toEqual(
      [
        ['92.3', '93.8'],
        ['92.6', '95.2'],
        ['41', '42'],
      ],
    );
    expect(ethanol.basis).toEqual(expect.arrayContaining(['iupac-2021', 'nfpa-497', 'nf-diluted-alcohol']));
  });

  it('gives a mixture no formula', () => {
    expect(solvent('peg-400')).not.toHaveProperty('formula');
    expect(solvent('peg-400')).not.toHaveProperty('molarMass');
    expect(solvent('sucrose')).not.toHaveProperty('flashPoint');
  });

  it.each([
    ['water', '18.015'],
    ['2-propanol', '60.096'],
    ['glycerol', '92.094'],
    ['propylene-glycol', '76.095'],
    ['dipropylene-glycol', '134.175'],
    ['1-3-butanediol', '90.122'],
    ['sorbitol', '182.172'],
    ['sucrose', '342.297'],
    ['glucose', '180.156'],
    ['triethanolamine', '149.190'],
  ] as const)('the molar mass of %s is %s', (id, expected) => {
    expect(solvent(id).molarMass?.gPerMol.toFixed(3)).toBe(expected);
  });
});

describe('solvents: laws', () => {
  it.each(solvents)('$id: its grades are assays, its component is there, its sources are on the shelf', ({ id, name }) => {
    const one = solvent(id);
    expect(one.name).toBe(name);
    expect(sources(one.basis).map((source) => source.id)).toEqual([...one.basis]);
    for (const { assay } of [...one.grades, ...(throughJson(one) as typeof one).grades]) {
      const { components } = compositionFrom({ soap, additions: [{ solvent: id as 'glycerol', mass: { g: 100 }, assay }] });
      const added = one.id === 'glycerol' ? components.glycerol.added : components[one.component].mass;
      expect(added.high.g.eq(assay.high.percent)).toBe(true);
      expect(added.low.g.eq(assay.low.percent)).toBe(true);
    }
  }); // prettier-ignore

  it('are those that additions may be, and no two have one component', () => {
    expect(solvents.map(({ id }) => id)).toEqual(SOLVENT_IDS);
    expect(new Set(solvents.map(({ id }) => solvent(id).component)).size).toBe(solvents.length);
  });

  it('each has an account of its figures', () => {
    for (const { id } of solvents) {
      const { cells, inciName, notes } = solventRecordOf(id);
      expect(inciName.obtained).toBe('memory');
      expect(notes).toEqual(solventNotes[id]);
      expect(cells.length).toBeGreaterThan(0);
      for (const cell of cells) {
        expect(cell.low.lte(cell.high)).toBe(true);
        expect(sources(cell.sources)).toHaveLength(cell.sources.length);
      }
    }
  });
});

describe('solventRecordOf', () => {
  it('tells what was read, recalled and evaluated', () => {
    const { cells } = solventRecordOf('propylene-glycol');
    expect(cells.map(({ of, low, conditions, obtained }) => [of, low.toString(), conditions, obtained])).toEqual([
      ['density', '1.0361', '20 °C', 'read'],
      ['densityByTemperature', '1.0401', '15 °C', 'derived'],
      ['densityByTemperature', '1.0364', '20 °C', 'derived'],
      ['densityByTemperature', '1.0326', '25 °C', 'derived'],
      ['densityByTemperature', '1.0211', '40 °C', 'derived'],
      ['densityByTemperature', '1.0052', '60 °C', 'derived'],
      ['densityByTemperature', '0.9887', '80 °C', 'derived'],
      ['boilingPoint', '187.3', undefined, 'read'],
      ['flashPoint', '99', undefined, 'memory'],
      ['assay', '99.5', 'propylene glycol, USP', 'memory'],
    ]);
  });
});

describe('solventDensity', () => {
  it('is the measured figure at its temperature, moved by the correlation to others', () => {
    expect(density('ethanol', 20)).toBe('0.7893');
    expect(density('ethanol', 60)).toBe('0.7536'); // 0.7893 + 0.7545 - 0.7902
    expect(density('water', 4)).toBe('1.0000');
    expect(density('sucrose', 17)).toBe('1.5805');
    expect(density('peg-400', 25)).toBe('1.1200');
  });

  it.each(['ethanol', '2-propanol', 'glycerol', 'propylene-glycol', '1-3-butanediol'] as const)(
    '%s grows lighter as it warms',
    (id) => {
      const falling = Array.from({ length: 66 }, (_, i) => Number(density(id, 15 + i)));
      expect([...falling].sort((a, b) => b - a)).toEqual(falling);
    },
  );

  it.each<[string, () => unknown, string, string, string]>([
    ['too cold', () => density('glycerol', '14.9'), 'outside-table', 'temperature', '15 to 80 °C, which the figures of glycerol cover'],
    ['too hot', () => density('ethanol', 81), 'outside-table', 'temperature', '15 to 80 °C'],
    ['where there is one figure', () => density('dipropylene-glycol', 21), 'outside-table', 'temperature', '20 °C alone'],
    ['what is not on file', () => density('glycerine' as never, 20), 'bad-shape', 'solvent', 'did you mean "glycerol"?'],
    ['nothing', () => solvent(undefined as never), 'missing', 'solvent', 'one of water, ethanol'],
    ['a near miss', () => solvent('propyleneglycol' as never), 'bad-shape', 'solvent', 'did you mean "propylene-glycol"?'],
  ])('refuses %s', (_what, call, code, path, said) => {
    const { message, ...rest } = refusal(call);
    expect(rest).toEqual({ code, path });
    expect(message).toContain(said);
  }); // prettier-ignore
});

describe('sources of a solvent', () => {
  it.each<[SolventId, readonly string[]]>([
    ['water', ['iupac-2021', 'crc-organic-constants']],
    ['2-propanol', ['iupac-2021', 'crc-organic-constants', 'iec-60079-20-1', 'nfpa-497', 'pharmacopoeias-recalled']],
  ])('%s: of its formula, its boiling and flash point, and its grades', (id, expected) => {
    expect(solvent(id).basis).toEqual(expected);
  });

  it('a mixture has no formula, and does not cite the atomic weights', () => {
    expect(solvent('peg-400').basis).not.toContain('iupac-2021');
  });

  it.each<[SolventId, readonly string[]]>([
    ['water', ['kell-1975']],
    ['ethanol', ['crc-organic-constants', 'vdi-heat-atlas']],
    ['2-propanol', ['crc-102-2021', 'vdi-heat-atlas']],
  ])('the density of %s is by its figure, and by its correlation', (id, expected) => {
    expect(solventDensity({ solvent: id, temperature: { celsius: 25 } }).basis).toEqual(expected);
  });
});
