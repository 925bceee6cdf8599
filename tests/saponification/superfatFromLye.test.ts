import fc from 'fast-check';
import { fat, fatFromCertificate, superfatFromLye, type LyeChargeInput } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { asFat, asLye, charges, lots } from './model.js';

const lot = fatFromCertificate({
  name: 'Coconut oil, drum 7',
  kind: 'triglyceride',
  saponificationValue: { mgKohPerG: '256.4' },
  uncertainty: { mgKohPerG: 1 },
});
const kilo = [{ fat: lot, mass: { kg: 1 } }];
const stock = (g: number, percent = 49): LyeChargeInput => ({
  alkali: 'naoh',
  mass: { g },
  solution: { hydroxide: { percent } },
});

describe('superfatFromLye: worked by hand', () => {
  it('340 g of 49 % lye on 1 kg of fat of 256.4', () => {
    const { superfat, superfatByMass, freeCausticAlkali, demand, charged, batch } = superfatFromLye({
      fats: kilo,
      lye: [stock(340)],
    });
    expect(demand.likely.mol.toFixed(9)).toBe('4.570002674'); // 256400 / 56105
    expect(charged.likely.mol.toFixed(9)).toBe('4.165312398'); // 340 * 0.49 / 39.997
    expect(superfat.likely.percent.toFixed(9)).toBe('8.855361890'); // 100 * (1 - 4.165312398 / 4.570002674)
    expect(superfat.low.percent.toFixed(9)).toBe('8.498491733'); // the leanest lot, 255.4
    expect(superfat.high.percent.toFixed(9)).toBe('9.209459163'); // the richest, 257.4
    expect(superfatByMass.likely.percent.toFixed(9)).toBe('8.855361890'); // one fat without free acid: the same
    expect(freeCausticAlkali.high.percentNaoh.isZero()).toBe(true);
    expect([batch.mass.g.toString(), batch.is]).toEqual(['1340', 'fats-lye-and-water']);
  });

  it('400 g of it are too much', () => {
    const { superfat, superfatByMass, freeCausticAlkali } = superfatFromLye({ fats: kilo, lye: [stock(400)] });
    expect(superfat.likely.percent.toFixed(9)).toBe('-7.228986012'); // 4.900367528 mol charged
    expect(superfatByMass.likely.percent.isZero()).toBe(true);
    // (4.900367528 - 4.570002674) * 39.997 / 1400, and the same with 255.4 and 257.4
    expect(freeCausticAlkali.likely.percentNaoh.toFixed(9)).toBe('0.943828790');
    expect(freeCausticAlkali.high.percentNaoh.toFixed(9)).toBe('0.994749895');
    expect(freeCausticAlkali.low.percentNaoh.toFixed(9)).toBe('0.892907686');
  });

  it('water dilutes what is free, and so does a stated mass of the batch', () => {
    const wet = superfatFromLye({ fats: kilo, lye: [stock(400)], water: { g: 200 } });
    expect(wet.freeCausticAlkali.likely.percentNaoh.toFixed(9)).toBe('0.825850192'); // 13.2136 / 1600
    expect(wet.batch.mass.g.toString()).toBe('1600');
    const stated = superfatFromLye({ fats: kilo, lye: [stock(400)], batchMass: { kg: '1.6' } });
    expect(stated.freeCausticAlkali.likely.percentNaoh.toFixed(9)).toBe('0.825850192');
    expect(stated.batch.is).toBe('as-stated');
  });

  it('two alkalis add up by mole', () => {
    const { charged, superfat } = superfatFromLye({
      fats: kilo,
      lye: [
        { alkali: 'naoh', mass: { g: 100 }, solid: { hydroxide: { percent: 98 } } },
        { alkali: 'koh', mass: { g: 100 }, solid: { hydroxide: { percent: 90 } } },
      ],
    });
    expect(charged.likely.mol.toFixed(9)).toBe('4.054318868'); // 98 / 39.997 + 90 / 56.105
    expect(superfat.likely.percent.toFixed(9)).toBe('11.284102938');
  });

  it('carbonate is not counted', () => {
    const { charged } = superfatFromLye({
      fats: kilo,
      lye: [{ alkali: 'naoh', mass: { g: 100 }, solid: { totalAlkali: { percent: 95 }, carbonate: { percent: 3 } } }],
    });
    expect(charged.likely.mol.toFixed(9)).toBe('2.318567956'); // 92.735762539 / 39.997
  });

  it('free acid is taken first: stearic acid beside a fat', () => {
    const of = (kind: 'triglyceride' | 'free-fatty-acid', mgKohPerG: number) =>
      fatFromCertificate({ name: kind, kind, saponificationValue: { mgKohPerG } });
    const by = (tag: number, acid: number, mol: string) =>
      superfatFromLye({
        fats: [
          { fat: of('triglyceride', 250), mass: { g: tag } },
          { fat: of('free-fatty-acid', 208), mass: { g: acid } },
        ],
        lye: [
          {
            alkali: 'naoh',
            mass: { g: new Exact(mol).times('39.997').toString() },
            solid: { hydroxide: { percent: 100 } },
          },
        ],
      }).superfatByMass.likely.percent.toFixed(6);
    // 800 g fat and 200 g acid want 3.564745 + 0.741467 mol; 4.090900989 leaves 0.215311 of the esters: 48.32 g of 1 kg
    expect(by(800, 200, '4.090900989216647357633009535692006')).toBe('4.832000');
    // 100 g fat and 900 g acid want 0.445593 + 3.336601 mol; 1.891097050 splits no fat and leaves 43.3 % of the acid
    expect(by(100, 900, '1.891097050173781302914178771945459')).toBe('48.990385');
  });

  it('refers to no alkali that was not weighed', () => {
    const { given } = superfatFromLye({ fats: kilo, lye: [stock(340)] });
    expect(given.water.g.isZero()).toBe(true);
    expect(given.lye).toHaveLength(1);
    expect(given.batchMass).toBeUndefined();
  });
});

describe('superfatFromLye: laws', () => {
  it('every gram more of alkali lowers superfat; every gram more of fat raises it', () => {
    fc.assert(
      fc.property(lots, charges, (some, lye) => {
        const superfat = (more: number, fatter: number) =>
          superfatFromLye({
            fats: some.map((one, at) => asFat(at === 0 ? { ...one, grams: one.grams + fatter } : one)),
            lye: lye.map((one, at) => asLye(at === 0 ? { ...one, grams: one.grams + more } : one)),
          }).superfat.likely.percent;
        expect(superfat(1, 0).lt(superfat(0, 0))).toBe(true);
        expect(superfat(0, 1).gt(superfat(0, 0))).toBe(true);
      }),
    );
  });

  it('scales with the batch', () => {
    fc.assert(
      fc.property(lots, charges, fc.integer({ min: 2, max: 50 }), (some, lye, times) => {
        const at = (scale: number) => {
          const { superfat, superfatByMass, freeCausticAlkali } = superfatFromLye({
            fats: some.map((one) => asFat({ ...one, grams: one.grams * scale })),
            lye: lye.map((one) => asLye({ ...one, grams: one.grams * scale })),
          });
          return [superfat.low.percent, superfatByMass.high.percent, freeCausticAlkali.high.percentNaoh];
        };
        const [one, many] = [at(1), at(times)];
        for (const [i, figure] of one.entries()) expect(deviation(String(many[i]), figure).lte('1e-28')).toBe(true);
      }),
    );
  });

  it('an alkali charged in two portions is the alkali charged at once', () => {
    fc.assert(
      fc.property(lots, charges, (some, lye) => {
        const fats = some.map((one) => asFat(one));
        const [first] = lye;
        if (first === undefined) return;
        const halves = [asLye(first), asLye(first)];
        const whole = asLye({ ...first, grams: first.grams * 2 });
        const [split, once] = [halves, [whole]].map((charged) => superfatFromLye({ fats, lye: charged }));
        expect(deviation(String(split?.superfat.low.percent), String(once?.superfat.low.percent)).lte('1e-28')).toBe(
          true,
        );
      }),
    );
  });
});

describe('superfatFromLye: an alkali of no mass', () => {
  it('beside another changes nothing', () => {
    const [alone, beside] = [[stock(340)], [{ ...stock(0), alkali: 'koh' } as const, stock(340)]].map((lye) =>
      superfatFromLye({ fats: kilo, lye }),
    );
    expect(beside?.superfat).toEqual(alone?.superfat);
    expect(beside?.freeCausticAlkali).toEqual(alone?.freeCausticAlkali);
  });
});

describe('superfatFromLye: refusals', () => {
  const good = { fats: [{ fat: fat('tallow'), mass: { g: 100 } }], lye: [stock(20)] };
  it.each<[string, object, string, string]>([
    ['no fats', { fats: [] }, 'bad-shape', 'fats'],
    ['no lye', { lye: [] }, 'bad-shape', 'lye'],
    ['lye left out', { lye: undefined }, 'missing', 'lye'],
    ['lye that weighs nothing', { lye: [stock(0)] }, 'out-of-range', 'lye'],
    ['a negative lye', { lye: [stock(-1)] }, 'out-of-range', 'lye[0].mass.g'],
    ['an unknown alkali', { lye: [{ ...stock(1), alkali: 'soda' }] }, 'bad-shape', 'lye[0].alkali'],
    ['a solution of 76 %', { lye: [stock(1, 76)] }, 'out-of-range', 'lye[0].solution.hydroxide.percent'],
    ['solid and solution', { lye: [{ ...stock(1), solid: { hydroxide: { percent: 98 } } }] }, 'bad-shape', 'lye[0]'],
    ['neither', { lye: [{ alkali: 'naoh', mass: { g: 1 } }] }, 'missing', 'lye[0]'],
    ['a strength on its own', { lye: [{ alkali: 'naoh', mass: { g: 1 }, strength: { percent: 49 } }] }, 'unknown-key', 'lye[0].strength'],
    ['negative water', { water: { g: -1 } }, 'out-of-range', 'water.g'],
    ['a batch of nothing', { batchMass: { g: 0 } }, 'out-of-range', 'batchMass.g'],
    ['an unknown option', { superfat: { percent: 5 } }, 'unknown-key', 'input.superfat'],
  ])('%s', (_what, change, code, path) => {
    expect(refusal(() => superfatFromLye({ ...good, ...change }))).toMatchObject({ code, path });
  }); // prettier-ignore
});
