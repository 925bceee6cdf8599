/** The edges of what plans and pots are read within, and lots and assays that move apart. */
import {
  alkaliDemandOf,
  compositionFrom,
  fatFromCertificate,
  planLye,
  soapFromLye,
  superfatFromLye,
  type AlkaliSource,
  type FractionInput,
  type LyeChargeInput,
  type PlanLyeInput,
  type Ranged,
} from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { refusal } from '../laws/refusal.js';

const dry = fatFromCertificate({ name: 'Dry', kind: 'triglyceride', saponificationValue: { mgKohPerG: 200 } });
const fats = [{ fat: dry, mass: { g: 500 } }];
const solid = (percent: number): AlkaliSource => ({ solid: { hydroxide: { percent } } });
const solution = (percent: number): AlkaliSource => ({ solution: { hydroxide: { percent } } });
const charge = (alkali: 'naoh' | 'koh', g: number, source: AlkaliSource): LyeChargeInput => ({ alkali, mass: { g }, ...source }); // prettier-ignore

describe('planLye: limits of dilution', () => {
  const plan = (dilution: object | string) =>
    planLye({ fats, alkali: { naoh: solid(100) }, target: { superfat: { percent: 5 } }, dilution } as PlanLyeInput);

  it.each<[inside: object, outside: object, path: string]>([
    [{ strength: { percent: 75 } }, { strength: { percent: '75.1' } }, 'strength.percent'],
    [{ waterPerAlkali: 100 }, { waterPerAlkali: '100.1' }, 'waterPerAlkali'],
    [{ waterPerFat: { percent: 1000 } }, { waterPerFat: { percent: '1000.1' } }, 'waterPerFat.percent'],
    [{ waterPerFat: { percent: '0.1' } }, { waterPerFat: { percent: '-0.1' } }, 'waterPerFat.percent'],
    [{ water: { g: 1 } }, { water: { g: -1 } }, 'water.g'],
  ])('%j is read, %j is not', (inside, outside, path) => {
    expect(plan(inside).weigh.water.g.gt(0)).toBe(true);
    expect(refusal(() => plan(outside))).toMatchObject({ code: 'out-of-range', path: `dilution.${path}` });
  });

  it('names the one word there is', () => {
    const { message, ...rest } = refusal(() => plan('none'));
    expect(rest).toEqual({ code: 'bad-shape', path: 'dilution' });
    expect(message).toContain("'as-is'");
  });
});

describe('planLye: rounding', () => {
  it('keeps a limit of caustic where water that is rounded down leaves a smaller batch', () => {
    const plan = planLye({
      fats: [{ fat: dry, mass: { g: 358 } }],
      alkali: { naoh: solid(100) },
      target: { freeCausticAlkaliAtMost: { percentNaoh: 5 } },
      dilution: { waterPerFat: { percent: 40 } },
      scaleStep: { g: 10 },
    });
    // 143.2 g of water are 140 g on this scale: with 80 g of soda 5.0098 % would be caustic
    expect([plan.weigh.naoh.g.toString(), plan.weigh.water.g.toString()]).toEqual(['70', '140']);
    expect(plan.freeCausticAlkali.high.percentNaoh.lte(5)).toBe(true);
  });

  it('one solid alkali of two must have water to dissolve in, on the scale as well', () => {
    const two = { naoh: solution(50), koh: solid(90), kohShare: { percent: 50 } };
    const plan = (dilution: PlanLyeInput['dilution'], scaleStep?: { g: number }) =>
      planLye({ fats, alkali: two, target: { superfat: { percent: 5 } }, dilution, ...(scaleStep && { scaleStep }) });
    expect(refusal(() => plan('as-is'))).toMatchObject({ code: 'infeasible', path: 'dilution' });
    expect(refusal(() => plan({ water: { g: 1 } }, { g: 5 }))).toMatchObject({ code: 'infeasible', path: 'scaleStep' });
    expect(plan({ water: { g: 3 } }, { g: 5 }).weigh.water.g.toString()).toBe('5');
  });
});

describe('what is charged', () => {
  const four = [charge('naoh', 60, solution(50)), charge('naoh', 10, solid(98)), charge('koh', 5, solid(90)), charge('koh', 5, solution(45))]; // prettier-ignore

  it('is four alkalis at most', () => {
    expect(soapFromLye({ fats, lye: four, water: { g: 50 } }).by).toBe('soapFromLye');
    expect(refusal(() => soapFromLye({ fats, lye: [...four, ...four.slice(0, 1)], water: { g: 50 } }))).toMatchObject({
      code: 'bad-shape',
      path: 'lye',
    });
  });

  it('may be nothing of one alkali, not of all', () => {
    const none = charge('koh', 0, solution(45));
    const some = charge('naoh', 60, solution(50));
    for (const of of [soapFromLye, superfatFromLye]) {
      expect(of({ fats, lye: [some, none] }).by).toBe(of.name);
      expect(refusal(() => of({ fats, lye: [none, none] }))).toMatchObject({ code: 'out-of-range', path: 'lye' });
    }
  });

  it('is named where it stands', () => {
    const input = { fats, lye: four, water: { g: 50 }, butter: 1 };
    expect(refusal(() => soapFromLye(input as never)).path).toBe('input.butter');
    const soap = { by: 'soapFromLye', given: input };
    expect(refusal(() => compositionFrom({ soap, additions: [] } as never)).path).toBe('soap.given.butter');
  });
});

describe('soapFromLye: bounds', () => {
  const lye = (
    alkali: 'naoh' | 'koh',
    total: Ranged<FractionInput>,
    carbonate: Ranged<FractionInput>,
  ): LyeChargeInput => charge(alkali, 60, { solid: { totalAlkali: total, carbonate } });
  const percent = (figure: number) => ({ percent: figure });
  const range = (low: number, high: number) => ({ low: percent(low), high: percent(high) });
  const sodium = (...charges: readonly LyeChargeInput[]) =>
    soapFromLye({ fats: [{ fat: dry, mass: { g: 300 } }], lye: charges, water: { g: 100 } }).soap.sodium;

  it('each alkali has its own assay and its own carbonate: sodium soap is most where soda is strong and potash weak', () => {
    const wide = sodium(lye('naoh', range(90, 98), range(0, 4)), lye('koh', range(80, 90), range(0, 4)));
    const most = sodium(lye('naoh', percent(98), percent(0)), lye('koh', percent(80), percent(4)));
    const least = sodium(lye('naoh', percent(90), percent(4)), lye('koh', percent(90), percent(0)));
    expect([wide.low.mol.toFixed(20), wide.high.mol.toFixed(20)]).toEqual([
      least.likely.mol.toFixed(20),
      most.likely.mol.toFixed(20),
    ]);
  });

  it('a fat that may be moist brings that water', () => {
    const moist = fatFromCertificate({
      name: 'Moist',
      kind: 'triglyceride',
      saponificationValue: { mgKohPerG: 200 },
      moisture: { low: { percent: 0 }, high: { percent: 2 } },
    });
    const { low, high } = soapFromLye({ fats: [{ fat: moist, mass: { g: 500 } }], lye: [charge('naoh', 130, solution(50))] }).products.water; // prettier-ignore
    expect([low.g.toFixed(6), high.g.toFixed(6)]).toEqual(['65.000000', '75.000000']);
  });
});

describe('the working of a demand', () => {
  it('has the figures of each fat, and of all of them', () => {
    const two = [...fats, { fat: fatFromCertificate({ name: 'Wide', kind: 'triglyceride', saponificationValue: { low: { mgKohPerG: 180 }, high: { mgKohPerG: 200 } } }), mass: { g: 100 } }]; // prettier-ignore
    const figures = Object.fromEntries(workingOf(alkaliDemandOf(two)).map(({ figure, value }) => [figure, value.toFixed(4)])); // prettier-ignore
    expect(figures).toMatchObject({
      'saponification value of Wide, leanest lot': '180.0000',
      'saponification value of Wide, likely': '190.0000',
      'saponification value of Wide, richest lot': '200.0000',
      'hydroxide for Dry': '1.7824', // 500 · 200/56105
      'hydroxide for Wide': '0.3387', // 100 · 190/56105
      'hydroxide for all fats, likely lots': '2.1210',
      'hydroxide for all fats, leanest lots': '2.1032', // 118000/56105
      'hydroxide for all fats, richest lots': '2.1388', // 120000/56105
    });
  });
});
