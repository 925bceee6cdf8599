import { describe, expect, it } from 'vitest';
import {
  fattyAcidFigures,
  fattyAcidNames,
  molarMass,
  readFattyAcid,
  type FattyAcid,
} from '../../src/chemistry/index.js';
import { refusal } from '../laws/refusal.js';

// Formula of the free acid, and its molar mass from C 12.011, H 1.0080, O 15.999: lauric acid is
// 12 · 12.011 + 24 · 1.0080 + 2 · 15.999 = 200.322.
const ACIDS = [
  ['C4:0', 'C4H8O2', '88.106'],
  ['C5:0', 'C5H10O2', '102.133'],
  ['C6:0', 'C6H12O2', '116.160'],
  ['C8:0', 'C8H16O2', '144.214'],
  ['C10:0', 'C10H20O2', '172.268'],
  ['C12:0', 'C12H24O2', '200.322'],
  ['C14:0', 'C14H28O2', '228.376'],
  ['C14:0-iso', 'C14H28O2', '228.376'],
  ['C14:1', 'C14H26O2', '226.360'],
  ['C15:0', 'C15H30O2', '242.403'],
  ['C15:0-iso', 'C15H30O2', '242.403'],
  ['C15:0-anteiso', 'C15H30O2', '242.403'],
  ['C16:0', 'C16H32O2', '256.430'],
  ['C16:0-iso', 'C16H32O2', '256.430'],
  ['C16:1', 'C16H30O2', '254.414'],
  ['C16:2', 'C16H28O2', '252.398'],
  ['C17:0', 'C17H34O2', '270.457'],
  ['C17:0-iso', 'C17H34O2', '270.457'],
  ['C17:0-anteiso', 'C17H34O2', '270.457'],
  ['C17:1', 'C17H32O2', '268.441'],
  ['C18:0', 'C18H36O2', '284.484'],
  ['C18:0-OH', 'C18H36O3', '300.483'],
  ['C18:0-oxo', 'C18H34O3', '298.467'],
  ['C18:1', 'C18H34O2', '282.468'],
  ['C18:1-OH', 'C18H34O3', '298.467'],
  ['C18:2', 'C18H32O2', '280.452'],
  ['C18:3', 'C18H30O2', '278.436'],
  ['C18:3-conj', 'C18H30O2', '278.436'],
  ['C18:4', 'C18H28O2', '276.420'],
  ['C20:0', 'C20H40O2', '312.538'],
  ['C20:1', 'C20H38O2', '310.522'],
  ['C20:2', 'C20H36O2', '308.506'],
  ['C20:3', 'C20H34O2', '306.490'],
  ['C20:4', 'C20H32O2', '304.474'],
  ['C20:5', 'C20H30O2', '302.458'],
  ['C22:0', 'C22H44O2', '340.592'],
  ['C22:1', 'C22H42O2', '338.576'],
  ['C22:2', 'C22H40O2', '336.560'],
  ['C22:4', 'C22H36O2', '332.528'],
  ['C22:5', 'C22H34O2', '330.512'],
  ['C22:6', 'C22H32O2', '328.496'],
  ['C24:0', 'C24H48O2', '368.646'],
  ['C24:1', 'C24H46O2', '366.630'],
] as const satisfies readonly (readonly [FattyAcid, string, string])[];

const all = Object.keys(fattyAcidNames) as FattyAcid[];

describe('fattyAcidFigures: worked by hand', () => {
  it('has the acids listed here and no other', () => {
    expect([...all].sort()).toEqual(ACIDS.map(([id]) => id).sort());
  });

  it.each(ACIDS)('%s is %s, %s g/mol', (id, formula, mass) => {
    const acid = fattyAcidFigures(id);
    expect(acid.id).toBe(id);
    expect(acid.formula).toBe(formula);
    expect(acid.molarMass.toFixed(3)).toBe(mass);
  });

  it.each<[FattyAcid, number, number, boolean]>([
    ['C12:0', 12, 0, false],
    ['C18:1', 18, 1, false],
    ['C18:1-OH', 18, 1, true],
    ['C18:0-OH', 18, 0, true],
    ['C18:0-oxo', 18, 0, false],
    ['C18:3-conj', 18, 3, false],
    ['C15:0-anteiso', 15, 0, false],
    ['C22:6', 22, 6, false],
  ])('%s has %s carbons, %s double bonds, a hydroxyl group: %s', (id, carbons, doubleBonds, hydroxy) => {
    expect(fattyAcidFigures(id)).toMatchObject({ carbons, doubleBonds, hydroxy });
  });

  it('leaves the formula as it is for a branch and for conjugation', () => {
    expect(fattyAcidFigures('C16:0-iso').formula).toBe(fattyAcidFigures('C16:0').formula);
    expect(fattyAcidFigures('C17:0-anteiso').formula).toBe(fattyAcidFigures('C17:0').formula);
    expect(fattyAcidFigures('C18:3-conj').formula).toBe(fattyAcidFigures('C18:3').formula);
  });
});

describe('fattyAcidFigures: laws', () => {
  const plain = all.filter((id) => /^C\d+:\d+$/.test(id)).map(fattyAcidFigures);

  it('adds CH2 for a carbon and takes H2 for a double bond', () => {
    for (const a of plain) {
      for (const b of plain) {
        const expected = molarMass('CH2')
          .times(b.carbons - a.carbons)
          .minus(molarMass('H2').times(b.doubleBonds - a.doubleBonds));
        expect(b.molarMass.minus(a.molarMass).eq(expected)).toBe(true);
      }
    }
  });

  it('adds an oxygen for hydroxyl, and takes H2 as well for a keto group', () => {
    const [stearic, hydroxy, oxo] = (['C18:0', 'C18:0-OH', 'C18:0-oxo'] as const).map(
      (id) => fattyAcidFigures(id).molarMass,
    );
    expect(hydroxy?.minus(stearic ?? 0).toString()).toBe('15.999');
    expect(oxo?.minus(hydroxy ?? 0).toString()).toBe('-2.016');
  });

  it('is frozen, and the same the second time', () => {
    for (const id of all) {
      expect(Object.isFrozen(fattyAcidFigures(id))).toBe(true);
      expect(fattyAcidFigures(id)).toEqual(fattyAcidFigures(id));
    }
  });

  it('has a name for every acid, each but once', () => {
    const names = all.map((id) => fattyAcidNames[id]);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^[a-z0-9-]+ acid$/);
  });
});

describe('readFattyAcid', () => {
  it('reads every acid on file', () => {
    for (const id of all) {
      expect(readFattyAcid('x', id)).toBe(id);
    }
  });

  it.each([
    ['c18:1', ' (did you mean "C18:1"?)'],
    ['C18:1OH', ' (did you mean "C18:1-OH"?)'],
    ['C18-1', ' (did you mean "C18:1"?)'],
    ['oleic acid', ''],
    ['constructor', ''],
    ['__proto__', ''],
    ['x'.repeat(41), ''],
  ])('"%s" is an unknown acid', (id, near) => {
    expect(refusal(() => readFattyAcid('profile.x', id))).toEqual({
      code: 'unknown-acid',
      path: 'profile.x',
      message: `profile.x: expected a fatty acid by lipid number, as C12:0 or C18:1-OH${near}, received ${id}`,
    });
  });

  it.each([
    [undefined, 'nothing'],
    [18, '18'],
    [['C12:0'], 'a list of 1'],
    [Object('C12:0'), 'an object'],
  ])('%o is an unknown acid', (id, received) => {
    expect(refusal(() => readFattyAcid('id', id))).toEqual({
      code: 'unknown-acid',
      path: 'id',
      message: `id: expected a fatty acid by lipid number, as C12:0 or C18:1-OH, received ${received}`,
    });
  });
});
