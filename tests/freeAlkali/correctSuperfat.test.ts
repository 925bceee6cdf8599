import fc from 'fast-check';
import { acidValueFromTitration, correctSuperfat, type CorrectSuperfatInput } from 'laurate';
import { describe, expect, it } from 'vitest';
import { codes, deviation, Exact, KOH, NAOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

// a test has some uncertainty; the least that is read holds a dose back in its twelfth figure
const acid = (mgKohPerG: string | number, uncertainty: string | number = '1e-12') => ({
  acidValue: { mgKohPerG },
  standardUncertainty: { mgKohPerG: uncertainty },
});
const fat = (mgKohPerG: string | number) => ({
  saponificationValue: { mgKohPerG },
  standardUncertainty: { mgKohPerG: '1e-12' },
});
const settled = <M>(measured: M) => ({ measured, reactionComplete: { earlier: measured, apart: { hours: 1 } } });
const once = {
  batch: { g: 1000 },
  measured: acid('5.6105'),
  target: { mgKohPerG: 0 },
  lye: { alkali: 'naoh', solution: { hydroxide: { percent: 50 } } },
} as const satisfies CorrectSuperfatInput;
const base = { ...once, ...settled(once.measured) } satisfies CorrectSuperfatInput;
const changed = (input: CorrectSuperfatInput) =>
  Object.fromEntries(correctSuperfat(input).changes.map(({ component, mass }) => [component, mass.g.toFixed(4)]));

describe('correctSuperfat: worked by hand', () => {
  it('0.1 mol of free acid takes 0.1 mol of hydroxide, 8 g of 50 % lye', () => {
    const r = correctSuperfat(base);
    expect([r.decision, r.add.g.toFixed(9)]).toEqual(['add-then-test', '7.999400000']);
    expect(changed(base)).toEqual({
      water: '5.8012', // 3.9997 of the lye, 1.8015 of the reaction
      soapSodium: '30.3982', // 0.1 · (282 + 22.990 − 1.008)
      soapPotassium: undefined,
      freeAcid: '-28.2000',
    });
  });

  it('fat and acid together are counted as fat: glycerol instead of water', () => {
    expect(changed({ ...base, ...settled(fat('5.6105')) })).toEqual({
      water: '3.9997',
      soapSodium: '30.3982',
      freeFat: '-29.4683', // 0.1 · (282 + 38.049/3)
      glycerol: '3.0698', // 0.1/3 · 92.094
    });
  });

  it('the batch grows: to leave a target takes a little less', () => {
    const { add } = correctSuperfat({ ...base, target: { mgKohPerG: 2 } });
    const target = new Exact(2).div(KOH.times(1000));
    const by = new Exact('0.1').minus(target.times(1000)).div(new Exact('0.5').div(NAOH).plus(target));
    expect(deviation(add.g.toString(), by).lte('1e-28')).toBe(true);
  });

  it('a solid potash with carbonate: the rest is water, the carbonate stays', () => {
    const solid = { totalAlkali: { percent: 90 }, carbonate: { percent: 2 } } as const;
    const potash = { ...base, lye: { alkali: 'koh', solid } } as const;
    // hydroxide 0.9 − 0.02·112.21/138.204 = 0.8837617
    expect(correctSuperfat(potash).add.g.toFixed(5)).toBe('6.34843');
    expect(changed(potash)).toMatchObject({ carbonate: '0.1270', soapPotassium: '32.0090', freeAcid: '-28.2000' });
    expect(codes(correctSuperfat(potash).cautions).slice(1, 4)).toEqual(['solid-into-cold-water', 'lye-into-hot-soap', 'carbonate-foams']); // prettier-ignore
  });

  it('a stock that may have thrown crystals in a cold store is no lye of known strength: soda over 31, potash over 45 %', () => {
    const says = (alkali: 'naoh' | 'koh', percent: number): boolean =>
      codes(correctSuperfat({ ...base, lye: { alkali, solution: { hydroxide: { percent } } } }).cautions).includes(
        'crystallised-stock',
      );
    expect([says('naoh', 31), says('naoh', 32), says('koh', 45), says('koh', 46)]).toEqual([false, true, false, true]);
  });

  it('lye that may be stronger than likely, and a test that may read too much, hold the dose back', () => {
    const lye = { alkali: 'naoh', solution: { hydroxide: { low: { percent: 48 }, high: { percent: 52 } } } } as const;
    const r = correctSuperfat({ ...base, ...settled(acid('5.6105', '0.2')), lye });
    expect(r.decision).toBe('add-then-test');
    // (5.6105 − 0.329) mg/g over 52 %
    expect(r.add.g.toFixed(5)).toBe(new Exact('5.2815').div(KOH).times(NAOH).div('0.52').toFixed(5));
    expect(r.leaves.low.mgKohPerG.isZero()).toBe(true);
  });

  it('nothing before the reaction is shown to be over, whatever is free', () => {
    const r = correctSuperfat(once);
    expect([r.decision, r.add.g.toString(), r.changes.length]).toEqual(['heat-and-test-again', '0', 0]);
    expect(codes(r.cautions).slice(0, 3)).toEqual(['caustic-burns', 'heat-before-correcting', 'crystallised-stock']);
  });

  it('nothing where the target is met, none into a soap with triethanolamine, none on coarse tests', () => {
    const decided = (change: Partial<CorrectSuperfatInput>) => {
      const { decision, add, notes } = correctSuperfat({ ...base, ...change });
      return [decision, add.g.toString(), notes[0]?.code];
    };
    expect(decided({ target: { mgKohPerG: '5.6105' } })).toEqual(['nothing-to-add', '0', 'nothing-to-add']);
    expect(decided({ triethanolamine: true })).toEqual(['cannot-tell', '0', 'triethanolamine-reads-as-acid']);
    expect(decided(settled(acid('5.6', '0.6')))).toEqual(['measure-again', '0', 'tests-too-coarse-to-agree']);
  });

  it('lye over 3 % of the batch has a caution, over 10 % there is none', () => {
    // 56.105 mg/g take 8 % of lye of 50 %
    const at = (value: string) => correctSuperfat({ ...base, ...settled(acid(value)) });
    expect(codes(at('21').cautions)).not.toContain('large-dose');
    expect(codes(at('21.1').cautions)).toContain('large-dose');
    expect(at('70.1').decision).toBe('add-then-test');
    const wild = at('150');
    expect([wild.decision, wild.add.g.toString(), wild.left.g.toFixed(2)]).toEqual([
      'too-much-to-correct',
      '0',
      '213.87',
    ]);
  });

  it('takes titrations as they are', () => {
    const test = acidValueFromTitration({ sample: { g: 10 }, titrant: { eqPerL: '0.1' }, volume: { mL: 8 } });
    const r = correctSuperfat({ ...base, ...settled(test), target: { mgKohPerG: 1 } });
    expect(r.decision).toBe('add');
    expect(r.given.measured.acidValue?.mgKohPerG.eq(test.acidValue.mgKohPerG)).toBe(true);
  });
});

describe('correctSuperfat: laws', () => {
  const milli = (min: number, max: number) => fc.integer({ min, max }).map((value) => `${String(value)}e-3`);

  it('what it changes adds up to what was added, and no dose leaves free caustic', () => {
    fc.assert(
      fc.property(milli(1000, 9000000), milli(1, 50000), milli(1, 500), fc.boolean(), fc.constantFrom<CorrectSuperfatInput['lye']>(base.lye, { alkali: 'koh', solid: { totalAlkali: { percent: 90 }, carbonate: { low: { percent: 0 }, high: { percent: 3 } } } }, { alkali: 'naoh', solid: { hydroxide: { percent: 98 } } }), (g, value, uncertainty, isFat, lye) => {
        const measured = isFat ? { ...fat(value), standardUncertainty: { mgKohPerG: uncertainty } } : acid(value, uncertainty);
        const r = correctSuperfat({ batch: { g }, ...settled(measured), target: { mgKohPerG: 0 }, lye });
        const sum = r.changes.reduce((total, { mass }) => total.plus(mass.g.toString()), new Exact(0));
        expect(deviation(sum, r.add.g.toString()).lte('1e-28')).toBe(true);
        expect(r.leaves.low.mgKohPerG.gte(0)).toBe(true);
        expect(r.leaves.low.mgKohPerG.lte(r.leaves.likely.mgKohPerG)).toBe(true);
        expect(r.leaves.likely.mgKohPerG.lte(r.leaves.high.mgKohPerG)).toBe(true);
      }),
    );
  }); // prettier-ignore
});

describe('correctSuperfat: refusals', () => {
  it.each<[string, object, string, string]>([
    ['a target above what was measured', { target: { mgKohPerG: 6 } }, 'out-of-range', 'target'],
    ['a bound above the target', { notBelow: { mgKohPerG: 1 } }, 'out-of-range', 'notBelow'],
    ['a sample over the batch', { measured: { ...acid(5), sample: { kg: 2 } } }, 'out-of-range', 'measured.sample'],
    ['a test without uncertainty', { measured: acid(5, 0) }, 'out-of-range', 'measured.standardUncertainty.mgKohPerG'],
    ['a field that no test has', { measured: { ...acid(5), sampel: { g: 10 } } }, 'unknown-key', 'measured.sampel'],
    ['a result of another function', { measured: { ...acid(5), by: 'acidityFromTitration' } }, 'bad-shape', 'measured.by'],
    ['a flag that is none', { triethanolamine: 1 }, 'bad-shape', 'triethanolamine'],
    ['no kind of test', { measured: { standardUncertainty: { mgKohPerG: 1 } } }, 'missing', 'measured'],
    ['two kinds of test', { measured: { ...acid(5), ...fat(5) } }, 'bad-shape', 'measured'],
    ['another kind of test before', { reactionComplete: { earlier: fat(5), apart: { hours: 1 } } }, 'bad-shape', 'reactionComplete.earlier'],
    ['no lye', { lye: undefined }, 'missing', 'lye'],
    ['a lye without strength', { lye: { alkali: 'naoh' } }, 'missing', 'lye'],
    ['more than any soap holds free', { target: { mgKohPerG: 301 } }, 'out-of-range', 'target.mgKohPerG'],
  ])('%s', (_what, change, code, path) => {
    expect(refusal(() => correctSuperfat({ ...base, ...change }))).toMatchObject({ code, path });
  }); // prettier-ignore
});
