/** Bad input ends in one error that names the fault and the place: the kinds of fault in one table. */
import {
  alkaliContentOf,
  alkaliDemandOf,
  fat,
  fatFromCertificate,
  fatFromProfile,
  lyeStrengthFromMixing,
  naohFromKoh,
  planLye,
  superfatFromLye,
  valueIn,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { refusal } from './refusal.js';

const oil = fat('coconut-oil');
const solution = { hydroxide: { percent: 50 } };
const solid = (percent: unknown) => ({ hydroxide: { percent } });
const plan = (change: object) => () =>
  planLye({
    fats: [{ fat: oil, mass: { g: 700 } }],
    alkali: { naoh: { solution } },
    target: { superfat: { percent: 2 } },
    dilution: { strength: { percent: 33 } },
    ...change,
  });
const mass = (quantity: unknown) => plan({ fats: [{ fat: oil, mass: quantity }] });
const certificate = (value: unknown) => () =>
  fatFromCertificate({ name: 'A lot', kind: 'triglyceride', saponificationValue: value } as never);
const ofProfile = (profile: unknown) => () => fatFromProfile({ name: 'x', kind: 'triglyceride', profile } as never);

describe('bad input', () => {
  it.each<[string, () => unknown, string, string, string?]>([
    ['two unit keys', mass({ g: 700, kg: '0.7' }), 'two-units', 'fats[0].mass', 'g and kg'],
    ['two unit keys to convert', () => valueIn({ lb: 2, oz: 3 } as never, 'g' as never), 'two-units', 'quantity'],
    ['an unknown unit', mass({ kgs: 700 }), 'unknown-unit', 'fats[0].mass.kgs', 'did you mean "kg"?'],
    ['an unknown unit to convert', () => valueIn({ pounds: 2 } as never, 'g' as never), 'unknown-unit', 'quantity.pounds'],
    ['an unknown unit to convert to', () => valueIn({ lb: 2 }, 'grams' as never), 'unknown-unit', 'unit.grams'],
    ['a unit of another kind', () => valueIn({ lb: 2 }, 'mL' as never), 'unknown-unit', 'unit.mL'],
    ['an unknown option', plan({ scalestep: { g: 1 } }), 'unknown-key', 'input.scalestep', 'did you mean "scaleStep"?'],
    ['an unknown option within', plan({ target: { superfatt: { percent: 5 } } }), 'unknown-key', 'target.superfatt', 'did you mean "superfat"?'],
    ['an unknown way of dilution', plan({ dilution: { strenght: { percent: 33 } } }), 'unknown-key', 'dilution.strenght', 'did you mean "strength"?'],
    ['a bare number', mass(700), 'bad-shape', 'fats[0].mass'],
    ['NaN', mass({ g: Number.NaN }), 'not-a-number', 'fats[0].mass.g', 'received NaN'],
    ['NaN as text', mass({ g: 'NaN' }), 'not-a-number', 'fats[0].mass.g'],
    ['Infinity', mass({ g: Number.POSITIVE_INFINITY }), 'not-a-number', 'fats[0].mass.g', 'received Infinity'],
    ['Infinity of a decimal', mass({ g: valueIn({ g: 1 }, 'g').div(0) }), 'not-a-number', 'fats[0].mass.g'],
    ['a negative mass', mass({ g: -700 }), 'out-of-range', 'fats[0].mass.g', 'received -700'],
    ['a negative mass in pounds', mass({ lb: -1 }), 'out-of-range', 'fats[0].mass.lb', 'received -1'],
    ['a percentage over 100', plan({ target: { superfat: { percent: 101 } } }), 'out-of-range', 'target.superfat.percent', 'received 101'],
    ['a fraction over 1', plan({ target: { superfat: { fraction: '1.01' } } }), 'out-of-range', 'target.superfat.fraction', 'received 1.01'],
    ['a negative percentage', plan({ target: { superfat: { percent: -1 } } }), 'out-of-range', 'target.superfat.percent'],
    ['a decimal comma', mass({ g: '1,5' }), 'not-a-number', 'fats[0].mass.g', "received '1,5'"],
    ['no fats', plan({ fats: [] }), 'bad-shape', 'fats'],
    ['no fats at all', plan({ fats: undefined }), 'missing', 'fats'],
    ['no fats to demand', () => alkaliDemandOf([]), 'bad-shape', 'fats'],
    ['fats of no mass', mass({ g: 0 }), 'out-of-range', 'fats'],
    ['a profile that does not close', ofProfile({ 'C12:0': 50, 'C18:1': 40 }), 'profile-does-not-close', 'profile', 'a sum of 90'],
    ['ranges that cannot close', ofProfile({ 'C12:0': { low: 60, high: 70 }, 'C18:1': { low: 50, high: 60 } }), 'profile-does-not-close', 'profile'],
    ['an unknown acid', ofProfile({ 'C18:1OH': 100 }), 'unknown-acid', 'profile.C18:1OH', 'did you mean "C18:1-OH"?'],
    ['a saponification value under 20', certificate({ mgKohPerG: '19.99' }), 'out-of-range', 'saponificationValue.mgKohPerG'],
    ['a saponification value over 700', certificate({ mgKohPerG: '700.01' }), 'out-of-range', 'saponificationValue.mgKohPerG', 'received 700.01'],
    ['a saponification value of another basis', certificate({ gNaohPerG: '183' }), 'out-of-range', 'saponificationValue.gNaohPerG', 'received 183'],
    ['a bare saponification value', certificate(190), 'bad-shape', 'saponificationValue'],
    ['zero assay', plan({ alkali: { naoh: { solid: solid(0) } } }), 'out-of-range', 'alkali.naoh.solid.hydroxide.percent', 'received 0'],
    ['zero assay to exchange', () => naohFromKoh({ koh: { g: 1 }, kohAssay: { percent: 90 }, naohAssay: { percent: 0 } }), 'out-of-range', 'naohAssay.percent'],
    ['a range of assays from zero', () => alkaliContentOf({ alkali: 'koh', solid: { hydroxide: { low: { percent: 0 }, high: { percent: 90 } } } }), 'out-of-range', 'solid.hydroxide.low.percent'],
    ['a strength that the stock cannot give', plan({ dilution: { strength: { percent: 60 } } }), 'infeasible', 'dilution.strength', 'at most 50 percent'],
    ['a solid without water', plan({ alkali: { naoh: { solid: solid(98) } }, dilution: 'as-is' }), 'infeasible', 'dilution'],
    ['a step coarser than the alkali', plan({ scaleStep: { kg: 1 } }), 'infeasible', 'scaleStep'],
    ['an unknown fat', () => fat('coconut-oli'), 'unknown-fat', 'fat', 'coconut-oil'],
    ['a fat that could be several', () => fat('rosin'), 'unknown-fat', 'fat', 'rosin-ww'],
    ['a fat by its name where a fat is wanted', plan({ fats: [{ fat: 'coconut-oil', mass: { g: 1 } }] }), 'bad-shape', 'fats[0].fat'],
    ['an unknown alkali', () => lyeStrengthFromMixing({ alkali: 'lioh', mass: { g: 1 }, solution, water: { g: 1 } } as never), 'bad-shape', 'alkali'],
    ['lye of no mass', () => superfatFromLye({ fats: [{ fat: oil, mass: { g: 1 } }], lye: [{ alkali: 'naoh', mass: { g: 0 }, solution }] }), 'out-of-range', 'lye'],
    ['nothing', () => planLye(undefined as never), 'missing', 'input'],
    ['a list for an object', () => planLye([] as never), 'bad-shape', 'input'],
  ])('%s', (_what, call, code, path, said = '') => {
    const refused = refusal(call);
    expect({ code: refused.code, path: refused.path }).toEqual({ code, path });
    expect(refused.message).toContain(said);
  }); // prettier-ignore

  it('of a long text little is told', () => {
    const { message } = refusal(mass({ g: 'x'.repeat(1_000_000) }));
    expect(message.length).toBeLessThan(200);
  });

  it('a long option is no reason for a long error', () => {
    expect(refusal(plan({ ['x'.repeat(1_000_000)]: 1 })).message.length).toBeLessThan(1000);
  });
});
