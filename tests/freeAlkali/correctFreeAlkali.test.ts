import fc from 'fast-check';
import {
  correctFreeAlkali,
  fat,
  fatFromBlend,
  fatFromCertificate,
  freeCausticAlkaliFromTitration,
  type CorrectFreeAlkaliInput,
  type CorrectFreeAlkaliResult,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { contentAfter, doseFor } from '../../src/freeAlkali/dose.js';
import { Decimal } from '../../src/numbers/index.js';
import { codes, deviation, Exact, NAOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';
import { gaussian } from './gaussian.js';

// a test has some uncertainty; the least that is read holds a dose back in its twelfth figure
const found = (percentNaoh: string | number, uncertainty: string | number = '1e-12') => ({
  freeCausticAlkali: { percentNaoh },
  standardUncertainty: { percentNaoh: uncertainty },
});
const settled = (measured: ReturnType<typeof found>) => ({
  measured,
  reactionComplete: { earlier: measured, apart: { hours: 1 } },
});
const changed = (r: CorrectFreeAlkaliResult) =>
  Object.fromEntries(r.changes.map(({ component, mass }) => [component, mass.g]));

const CITRIC = '192.123';
const once = {
  batch: { g: 1000 },
  alkali: 'naoh',
  measured: found('0.39997'),
  target: { percentNaoh: 0 },
  corrector: { acid: 'citric', assay: { percent: 100 } },
} as const satisfies CorrectFreeAlkaliInput;
const base = { ...once, ...settled(once.measured) } satisfies CorrectFreeAlkaliInput;

describe('correctFreeAlkali: worked by hand', () => {
  it('0.1 mol of caustic takes a thirtieth of a mole of citric acid, and leaves its salt and water', () => {
    const r = correctFreeAlkali(base);
    expect(r.freeCaustic.g.toString()).toBe('3.9997');
    expect(r.decision).toBe('add-then-test'); // to leave nothing is to aim at the edge
    expect(r.add.g.toFixed(9)).toBe('6.404100000'); // 192.123/30
    expect(r.leaves.likely.percentNaoh.toFixed(9)).toBe('0.000000000');
    const { salts, water, freeCaustic, other } = changed(r);
    expect(salts?.toFixed(6)).toBe('8.602300'); // 258.069/30
    expect(water?.toFixed(9)).toBe('1.801500000');
    expect(freeCaustic?.toFixed(9)).toBe('-3.999700000');
    expect(other).toBeUndefined();
    expect(r.after.g.toFixed(9)).toBe('1006.404100000');
  });

  it('1.601 g of anhydrous citric acid to one of NaOH, 1.751 g with its water; of KOH 1.141 and 1.248', () => {
    const perGram = (acid: 'citric' | 'citric-monohydrate') => {
      const { add, freeCaustic } = correctFreeAlkali({ ...base, corrector: { acid, assay: { percent: 100 } } });
      return add.g.div(freeCaustic.g);
    };
    expect([perGram('citric'), perGram('citric-monohydrate')].map((ratio) => ratio.toFixed(3))).toEqual(['1.601', '1.751']);
    const potash = ['citric', 'citric-monohydrate'].map((acid) => perGram(acid as 'citric').times('39.997').div('56.105').toFixed(3));
    expect(potash).toEqual(['1.141', '1.248']);
  }); // prettier-ignore

  it('the batch grows: to leave a target takes a little less than it would of a batch that stays', () => {
    const r = correctFreeAlkali({ ...base, target: { percentNaoh: '0.19' } });
    // (0.39997 − 0.19) % of 1000 g over 3/192.123·39.997 + 0.0019
    const by = new Exact('2.0997').div(new Exact(3).div(CITRIC).times(NAOH).plus('0.0019'));
    expect(deviation(r.add.g.toString(), by).lte('1e-28')).toBe(true);
  });

  it('a solution brings its water, a solid what its assay leaves open', () => {
    const solution = correctFreeAlkali({ ...base, corrector: { acid: 'citric', strength: { percent: 25 } } });
    expect(solution.add.g.toFixed(9)).toBe('25.616400000');
    expect(changed(solution)['water']?.toFixed(9)).toBe('21.013800000'); // 19.2123 + 1.8015
    const solid = correctFreeAlkali({ ...base, corrector: { acid: 'lactic', assay: { percent: 90 } } });
    expect(solid.add.g.toFixed(6)).toBe('10.008667'); // 0.1 · 90.078 / 0.9
    expect(changed(solid)['other']?.toFixed(7)).toBe('1.0008667');
    expect(codes(solid.notes)).toEqual(['part-of-the-dose-first', 'lactic-acid-anhydrides']);
  });

  it('a soap of potash: salts weigh more, the dose is the same', () => {
    const potash = correctFreeAlkali({ ...base, alkali: 'koh' });
    expect(potash.add.g.eq(correctFreeAlkali(base).add.g)).toBe(true);
    expect(changed(potash)['salts']?.toFixed(6)).toBe('10.213100'); // (192.123 + 3·(39.098 − 1.008))/30
    expect(changed(potash)['freeCaustic']?.toFixed(9)).toBe('-5.610500000');
    const half = correctFreeAlkali({ ...base, alkali: { kohShare: { percent: 50 } } });
    expect(changed(half)['salts']?.toFixed(6)).toBe('9.407700');
  });

  it('a fatty acid becomes soap and water', () => {
    const acid = fatFromCertificate({ name: 'stearic', kind: 'free-fatty-acid', saponificationValue: { mgKohPerG: '197.5' } });
    const r = correctFreeAlkali({ ...base, corrector: { fat: acid } });
    expect(r.add.g.toFixed(6)).toBe('28.407595'); // 0.1 · 56105/197.5
    const { soapSodium, water } = changed(r);
    expect(water?.toFixed(9)).toBe('1.801500000');
    expect(soapSodium?.toFixed(6)).toBe('30.605795'); // 28.407595 + 3.9997 − 1.8015
    expect(codes(r.notes)).toEqual(['part-of-the-dose-first']);
    expect(codes(r.cautions)).not.toContain('too-much-acid-splits-soap');
  }); // prettier-ignore

  it('a fat becomes soap and glycerol, as slowly as in the pot', () => {
    const oil = fatFromCertificate({ name: 'oil', kind: 'triglyceride', saponificationValue: { mgKohPerG: '190' }, acidValue: { mgKohPerG: 19 }, unsaponifiable: { percent: 1 }, moisture: { percent: '0.5' } });
    const r = correctFreeAlkali({ ...base, corrector: { fat: oil } });
    expect(r.add.g.toFixed(6)).toBe('29.528947'); // 0.1 · 56105/190
    const { soapSodium, glycerol, water, unsaponifiable } = changed(r);
    expect(glycerol?.toFixed(6)).toBe('2.762820'); // 0.09/3 · 92.094
    expect(water?.toFixed(6)).toBe('0.327795'); // 0.01 · 18.015 + 0.5 %
    expect(unsaponifiable?.toFixed(6)).toBe('0.295289');
    expect(soapSodium?.toFixed(6)).toBe('30.142743');
    expect(codes(r.notes)).toEqual(['part-of-the-dose-first', 'fat-takes-time']);
  }); // prettier-ignore

  it('the cautions of acid into hot soap, and of soap after a fat', () => {
    expect(codes(correctFreeAlkali(base).cautions).slice(0, 6)).toEqual(['caustic-burns', 'acid-into-hot-soap', 'too-much-acid-splits-soap', 'acid-hurts-eyes', 'hot-soap-scalds', 'test-before-skin']);
    expect(codes(correctFreeAlkali({ ...base, corrector: { fat: fat('lauric-acid') } }).cautions).slice(0, 3)).toEqual(['caustic-burns', 'hot-soap-scalds', 'test-before-skin']);
  }); // prettier-ignore
});

describe('correctFreeAlkali: whether to add', () => {
  const decided = (change: Partial<CorrectFreeAlkaliInput>) => correctFreeAlkali({ ...base, ...change });

  it('nothing on one test, nor on two in less than an hour, nor on two that differ', () => {
    const measured = found('0.39997', '0.01');
    for (const [reactionComplete, note] of [
      [undefined, 'reaction-not-shown-complete'],
      [{ earlier: measured, apart: { minutes: 59 } }, 'reaction-not-shown-complete'],
      [{ earlier: found('0.43', '0.01'), apart: { hours: 2 } }, 'reaction-still-changing'], // 0.03003 > 1.96·0.01·√2
    ] as const) {
      const r = correctFreeAlkali({ ...once, measured, ...(reactionComplete === undefined ? {} : { reactionComplete }) });
      expect(r.decision).toBe('heat-and-test-again');
      expect([r.add.g.toString(), r.left.g.toString(), r.changes.length]).toEqual(['0', '0', 0]);
      expect(codes(r.notes)).toEqual([note]);
      expect(codes(r.cautions)[1]).toBe('heat-before-correcting');
    }
    const agreed = decided({ measured, reactionComplete: { earlier: found('0.4276', '0.01'), apart: { hours: 1 } } });
    expect(agreed.decision).toBe('add-then-test');
  }); // prettier-ignore

  it('part of the dose where all of it could be too much', () => {
    const measured = found('0.30', '0.02');
    const r = decided(settled(measured));
    expect(r.decision).toBe('add-then-test');
    // sure of 0.30 − 1.645·0.02 = 0.2671 %
    expect(r.add.g.div(r.add.g.plus(r.left.g)).toFixed(6)).toBe('0.890333'); // 0.2671/0.30
    expect(r.leaves.low.percentNaoh.isZero()).toBe(true);
    expect(codes(r.notes)).toEqual(['part-of-the-dose-first']);
  });

  it('nothing where the test is less sure than the dose is large', () => {
    const bound = { percentNaoh: '0.28' } as const;
    const r = decided({ ...settled(found('0.30', '0.02')), target: bound, notBelow: bound });
    expect(r.decision).toBe('measure-again');
    expect(r.add.g.isZero()).toBe(true);
    expect(r.left.g.gt(0)).toBe(true);
    expect(codes(r.notes)).toEqual(['uncertainty-larger-than-dose']);
  });

  it.each(['0.30', '0.31', '0.33'])('nothing where a target of %s is what was found, or within its uncertainty', (percentNaoh) => {
    const measured = found('0.30', '0.02'); // at most 0.3329
    for (const known of [settled(measured), { measured }]) {
      const r = correctFreeAlkali({ ...once, ...known, target: { percentNaoh } });
      expect([r.decision, r.add.g.toString(), r.left.g.toString(), r.changes.length]).toEqual(['nothing-to-add', '0', '0', 0]);
      expect(codes(r.notes)).toEqual(['nothing-to-add']);
      expect(r.leaves.likely.percentNaoh.toString()).toBe('0.3');
    }
  }); // prettier-ignore

  it('nothing into a soap with triethanolamine, which takes the acid as well', () => {
    const r = decided({ triethanolamine: true });
    expect([r.decision, r.add.g.toString(), r.left.g.toString(), r.changes.length]).toEqual(['cannot-tell', '0', '0', 0]);
    expect(codes(r.notes)).toEqual(['triethanolamine-reads-as-alkali']);
    expect(r.given.triethanolamine).toBe(true);
  }); // prettier-ignore

  it('nothing where two tests agree only because they are coarse: a fall of a quarter must show', () => {
    const halved = decided({ measured: found('0.5', '0.2'), reactionComplete: { earlier: found('1.0', '0.2'), apart: { hours: 1 } } });
    expect([halved.decision, halved.add.g.toString()]).toEqual(['measure-again', '0']); // 0.5 is less than 1.96·0.2·√2
    expect(codes(halved.notes)).toEqual(['tests-too-coarse-to-agree']);
    expect(codes(halved.cautions)).toContain('heat-before-correcting');
    // 1.96·√2·u is a quarter of 0.4 where u is 0.03608
    expect(decided(settled(found('0.4', '0.03607'))).decision).toBe('add-then-test');
    expect(decided(settled(found('0.4', '0.03609'))).decision).toBe('measure-again');
  }); // prettier-ignore

  it('a caution over 3 % of the batch or 1 % of salts, and nothing over 10 % or 3 %', () => {
    const solution = { acid: 'citric', strength: { percent: 25 } } as const;
    const solid = { acid: 'citric', assay: { percent: 100 } } as const;
    const at = (percentNaoh: string, corrector: CorrectFreeAlkaliInput['corrector']) =>
      decided({ ...settled(found(percentNaoh)), corrector });
    // 6.40442 g of solution take a gram of NaOH: 3 % take 0.46843 %, 10 % take 1.56142 %
    // 2.15073 g of citrate come of it: 1 % of 0.46496 %, 3 % of 1.39488 %
    const oil = { fat: fat('coconut-oil') } as const; // 5.4 g
    for (const [percentNaoh, corrector, size] of [
      ['0.46', solution, 'usual'],
      ['0.47', solution, 'large'],
      ['0.46', solid, 'usual'],
      ['0.47', solid, 'large'],
      ['1.39', solution, 'large'],
      ['1.40', solution, 'too much'],
      ['1.40', solid, 'too much'],
      ['0.5', oil, 'usual'],
      ['1.40', oil, 'large'],
      ['2', oil, 'too much'],
    ] as const) {
      const r = at(percentNaoh, corrector);
      expect([percentNaoh, r.decision === 'too-much-to-correct', codes(r.cautions).includes('large-dose')]).toEqual([percentNaoh, size === 'too much', size === 'large']);
      expect(r.add.g.isZero()).toBe(size === 'too much');
      // the whole of it is told, to show how much
      if (size === 'too much') expect(r.left.g.gt(20)).toBe(true);
    }
    const wild = decided({ ...settled(found(50)), corrector: solution });
    expect([wild.decision, wild.changes.length, wild.after.g.toString()]).toEqual(['too-much-to-correct', 0, '1000']);
    expect(codes(wild.notes)).toEqual(['too-much-to-correct']);
  }); // prettier-ignore

  it('a solution of citric acid stronger than water dissolves is noted', () => {
    const notes = (acid: 'citric' | 'citric-monohydrate', percent: number) =>
      codes(decided({ target: { percentNaoh: '0.1' }, corrector: { acid, strength: { percent } } }).notes);
    expect([notes('citric', 59), notes('citric-monohydrate', 65)]).toEqual([[], []]);
    expect(notes('citric', 60)).toEqual(['acid-stronger-than-dissolves']);
    expect(notes('citric-monohydrate', 66)).toEqual(['acid-stronger-than-dissolves']);
  });

  it('a stated bound holds the dose back', () => {
    const bounded = {
      ...settled(found('0.30', '0.02')),
      target: { percentNaoh: '0.05' },
      notBelow: { percentNaoh: '0.05' },
    };
    const r = decided(bounded);
    expect(r.leaves.low.percentNaoh.toString()).toBe('0.05');
    expect(r.decision).toBe('add-then-test');
  });

  it('an acid that may be stronger than likely is dosed by the strongest', () => {
    const strength = { low: { percent: 20 }, likely: { percent: 25 }, high: { percent: 30 } };
    const r = decided({ corrector: { acid: 'citric', strength } });
    expect(r.add.g.toFixed(4)).toBe('21.3470'); // 6.4041/0.3
    expect(r.add.g.plus(r.left.g).toFixed(4)).toBe('25.6164');
  });

  it('takes titrations as they are', () => {
    const test = (mL: string) => freeCausticAlkaliFromTitration({ sample: { g: 10 }, titrant: { eqPerL: '0.1' }, volume: { mL } });
    const r = decided({ measured: test('7.55'), reactionComplete: { earlier: test('7.60'), apart: { hours: 1 } }, target: { percentNaoh: '0.03' } });
    expect(r.decision).toBe('add');
    expect(r.leaves.low.percentNaoh.gt(0)).toBe(true);
  }); // prettier-ignore
});

describe('correctFreeAlkali: laws', () => {
  const milli = (min: number, max: number) => fc.integer({ min, max }).map((value) => `${String(value)}e-3`);
  const oil = fatFromCertificate({ name: 'oil', kind: 'triglyceride', saponificationValue: { low: { mgKohPerG: 250 }, high: { mgKohPerG: 260 } }, acidValue: { mgKohPerG: 2 }, unsaponifiable: { percent: '0.5' } }); // prettier-ignore
  const correctors = fc.constantFrom<CorrectFreeAlkaliInput['corrector']>(
    { acid: 'citric', assay: { percent: 100 } },
    { acid: 'citric-monohydrate', strength: { low: { percent: 20 }, high: { percent: 25 } } },
    { acid: 'lactic', strength: { percent: 80 } },
    { fat: oil },
    { fat: fat('stearic-acid-50') },
    { fat: fatFromBlend({ name: 'two', parts: [{ fat: oil, mass: { g: 1 } }, { fat: fat('lauric-acid'), mass: { g: 2 } }] }) },
  ); // prettier-ignore
  const alkalis = fc.constantFrom<CorrectFreeAlkaliInput['alkali']>('naoh', 'koh', { kohShare: { percent: 30 } });

  it('applied to the account of the pot it ends at its target', () => {
    fc.assert(
      fc.property(milli(1000, 9000000), milli(1, 800), fc.integer({ min: 0, max: 99 }), correctors, alkalis, (g, percentNaoh, share, corrector, alkali) => {
        const target = new Exact(percentNaoh).times(share).div(100);
        const r = correctFreeAlkali({ batch: { g }, alkali, ...settled(found(percentNaoh)), target: { percentNaoh: target.toString() }, corrector });
        // an acid of a range is dosed in part; the rest of the dose changes the pot in proportion
        const dose = new Exact(r.add.g.toString()).plus(r.left.g.toString());
        const parts = r.add.g.isZero() ? 0 : dose.div(r.add.g.toString());
        const perMole = alkali === 'koh' ? '56.105' : alkali === 'naoh' ? '39.997' : '44.8294';
        const taken = new Exact(changed(r)['freeCaustic']?.toString() ?? 0).neg().div(perMole).times(parts);
        const left = new Exact(percentNaoh).times(g).div(100).div(NAOH).minus(taken);
        const after = dose.plus(g);
        expect(deviation(left.times(NAOH).times(100).div(after), target).lte('1e-25')).toBe(true);
      }),
    );
  }); // prettier-ignore

  it('what it changes adds up to what was added', () => {
    fc.assert(
      fc.property(milli(1000, 9000000), milli(1, 800), correctors, alkalis, (g, percentNaoh, corrector, alkali) => {
        const r = correctFreeAlkali({ batch: { g }, alkali, ...settled(found(percentNaoh)), target: { percentNaoh: 0 }, corrector });
        const sum = r.changes.reduce((total, { mass }) => total.plus(mass.g.toString()), new Exact(0));
        expect(deviation(sum, r.add.g.toString()).lte('1e-28')).toBe(true);
      }),
    );
  }); // prettier-ignore

  /** One pot corrected as often as tests say so; the lowest it ever stands at, and where it ends. */
  function mended(truth: number, grams: number, bound: number, errors: () => number, uncertainty: number) {
    let [caustic, batch, lowest] = [truth * grams, grams, truth];
    const test = () => found(Math.max(0, caustic / batch + errors() * uncertainty).toFixed(12), uncertainty.toFixed(12));
    for (let stage = 0; stage < 4; stage += 1) {
      const measured = test();
      const target = Math.min(Number(measured.freeCausticAlkali.percentNaoh), bound).toFixed(12);
      if (Number(target) < bound) break;
      const r = correctFreeAlkali({ batch: { g: batch.toFixed(9) }, alkali: 'naoh', ...settled(measured), target: { percentNaoh: target }, notBelow: { percentNaoh: target }, corrector: { acid: 'citric', assay: { percent: 100 } } });
      if (r.add.g.isZero()) break;
      caustic -= r.add.g.toNumber() * ((3 / Number(CITRIC)) * 39.997 * 100);
      batch += r.add.g.toNumber();
      lowest = Math.min(lowest, caustic / batch);
    }
    return { lowest, last: caustic / batch };
  } // prettier-ignore

  it('the stages never pass their bound, whatever the batch, while tests err within their limits', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 2000 }), fc.integer({ min: 100, max: 100000 }), fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 50 }), fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 8, maxLength: 8 }), (truth, grams, bound, uncertainty, errors) => {
        let at = 0;
        const next = () => (1.644 * (errors[at++ % errors.length] ?? 0)) / 1000;
        const { lowest, last } = mended(truth / 1000, grams, bound / 1000, next, uncertainty / 1000);
        // floating point of the test itself
        expect(lowest).toBeGreaterThan(Math.min(truth, bound) / 1000 - 1e-9);
        expect(last).toBeLessThanOrEqual(truth / 1000 + 1e-9);
      }),
    );
  }); // prettier-ignore

  it('and with errors as they come, one dose passes it in five of a hundred', () => {
    const runs = 4000;
    let passed = 0;
    for (let seed = 1; seed <= runs; seed += 1) {
      const error = gaussian(seed)();
      const measured = found((0.3 + 0.02 * error).toFixed(12), '0.02');
      const { add } = correctFreeAlkali({ ...base, ...settled(measured) });
      if (0.3 * 10 - add.g.toNumber() * (3 / Number(CITRIC)) * 39.997 < 0) passed += 1;
    }
    // 5 % of 4000 are 200, with a standard deviation of 14
    expect(passed).toBeGreaterThan(145);
    expect(passed).toBeLessThan(255);
  });

  it('a dose and the content it leaves undo each other', () => {
    fc.assert(
      fc.property(milli(1, 2000), milli(1000, 9000000), milli(1, 30), fc.integer({ min: 0, max: 100 }), (content, batch, perGram, share) => {
        const [w, m, k] = [content, batch, perGram].map((text) => new Decimal(text)) as [Decimal, Decimal, Decimal];
        const target = w.times(share).div(100);
        const dose = doseFor(w, target, m, k);
        expect(deviation(contentAfter(w, dose, m, k).toString(), target.toString()).lte('1e-28')).toBe(true);
        expect(dose.gte(0)).toBe(true);
      }),
    );
    expect(doseFor(new Decimal(1), new Decimal(2), new Decimal(1), new Decimal(1)).isZero()).toBe(true);
  }); // prettier-ignore
});

describe('correctFreeAlkali: refusals', () => {
  const wax = fat('beeswax');
  it.each<[string, object, string, string]>([
    ['a target above what can have been measured', { target: { percentNaoh: '0.4' } }, 'out-of-range', 'target'],
    ['a bound above the target', { notBelow: { percentNaoh: '0.1' } }, 'out-of-range', 'notBelow'],
    ['a sample over the batch', { measured: { ...found('0.4'), sample: { kg: 2 } } }, 'out-of-range', 'measured.sample'],
    ['a sample over the batch before', { reactionComplete: { earlier: { ...found('0.4'), sample: { kg: 2 } }, apart: { hours: 1 } } }, 'out-of-range', 'reactionComplete.earlier.sample'],
    ['a content finer than any test', { measured: found('1e-13') }, 'out-of-range', 'measured.freeCausticAlkali'],
    ['a test without uncertainty', { measured: found('0.4', 0) }, 'out-of-range', 'measured.standardUncertainty.percentNaoh'],
    ['a field that no test has', { measured: { ...found('0.4'), sampel: { g: 10 } } }, 'unknown-key', 'measured.sampel'],
    ['a result of another function', { measured: { ...found('0.4'), by: 'totalFreeAlkaliFromTitration' } }, 'bad-shape', 'measured.by'],
    ['a flag that is none', { triethanolamine: 'no' }, 'bad-shape', 'triethanolamine'],
    ['no batch', { batch: { g: 0 } }, 'out-of-range', 'batch.g'],
    ['an unknown acid', { corrector: { acid: 'acetic', assay: { percent: 100 } } }, 'bad-shape', 'corrector.acid'],
    ['an acid without its share', { corrector: { acid: 'citric' } }, 'missing', 'corrector.assay'],
    ['an acid with two shares', { corrector: { acid: 'citric', assay: { percent: 100 }, strength: { percent: 25 } } }, 'bad-shape', 'corrector'],
    ['an acid of more than all', { corrector: { acid: 'citric', assay: { percent: 101 } } }, 'out-of-range', 'corrector.assay.percent'],
    ['an acid and a fat', { corrector: { acid: 'citric', fat: fat('oleic-acid') } }, 'bad-shape', 'corrector'],
    ['a wax', { corrector: { fat: wax } }, 'infeasible', 'corrector.fat'],
    ['a wax in a blend', { corrector: { fat: fatFromBlend({ name: 'b', parts: [{ fat: wax, mass: { g: 1 } }, { fat: fat('oleic-acid'), mass: { g: 1 } }] }) } }, 'infeasible', 'corrector.fat'],
    ['no alkali', { alkali: undefined }, 'missing', 'alkali'],
    ['an unknown alkali', { alkali: 'lioh' }, 'bad-shape', 'alkali'],
    ['a share of potash over all', { alkali: { kohShare: { percent: 101 } } }, 'out-of-range', 'alkali.kohShare.percent'],
    ['a completion without time', { reactionComplete: { earlier: found('0.4') } }, 'missing', 'reactionComplete.apart'],
  ])('%s', (_what, change, code, path) => {
    expect(refusal(() => correctFreeAlkali({ ...base, ...change }))).toMatchObject({ code, path });
  }); // prettier-ignore
});
