import fc from 'fast-check';
import {
  fatFromCertificate,
  freeCausticAlkaliFromTitration,
  soapStateFromTest,
  type SoapStateFromTestInput,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { codes, deviation, Exact, NAOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const oil = fatFromCertificate({ name: 'oil', kind: 'triglyceride', saponificationValue: { low: { mgKohPerG: 250 }, high: { mgKohPerG: 260 } } }); // prettier-ignore
const found = (percentNaoh: string | number, uncertainty: string | number = '1e-12') => ({
  freeCausticAlkali: { percentNaoh },
  standardUncertainty: { percentNaoh: uncertainty },
});
// demand 4.456 to 4.634 mol, charged 4.5 mol in 2000 g: from none free to 0.044 mol, 0.088 %
const base = {
  fats: [{ fat: oil, mass: { kg: 1 } }],
  lye: [{ alkali: 'naoh', mass: { g: '359.973' }, solution: { hydroxide: { percent: 50 } } }],
  batchMass: { kg: 2 },
  measured: found('0.5'),
} as const satisfies SoapStateFromTestInput;

describe('soapStateFromTest: worked by hand', () => {
  it('the extent lies between (A − f)/D(high) and (A − f)/D(low)', () => {
    const { extent } = soapStateFromTest(base);
    const taken = new Exact('4.5').minus(new Exact(10).div(NAOH)); // 0.5 % of 2000 g
    const of = (value: number) => taken.times('56.105').times(100).div(value);
    expect(deviation(extent.low.percent.toString(), of(260)).lte('1e-12')).toBe(true);
    expect(deviation(extent.likely.percent.toString(), of(255)).lte('1e-28')).toBe(true);
    expect(deviation(extent.high.percent.toString(), of(250)).lte('1e-12')).toBe(true);
  });

  it('the uncertainty of the test widens it', () => {
    const sure = soapStateFromTest(base).extent;
    const unsure = soapStateFromTest({ ...base, measured: found('0.5', '0.1') }).extent;
    expect(unsure.low.percent.lt(sure.low.percent)).toBe(true);
    expect(unsure.likely.percent.eq(sure.likely.percent)).toBe(true);
    expect(unsure.high.percent.gt(sure.high.percent)).toBe(true);
  });

  it.each([
    ['0.5', '0.02', 'still-reacting', 'still-reacting'],
    ['0.12', '0.01', 'still-reacting', 'still-reacting'], // 0.10355 against at most 0.0881
    ['0.10', '0.01', 'cannot-tell', 'excess-or-unreacted'],
    ['0', '0.002', 'none-found', 'no-caustic-found'],
    ['0.016', '0.01', 'none-found', 'no-caustic-found'], // 0.016 − 0.01645
    ['0.017', '0.01', 'cannot-tell', 'excess-or-unreacted'],
  ])('%s ± %s percent: %s', (content, uncertainty, state, note) => {
    const r = soapStateFromTest({ ...base, measured: found(content, uncertainty) });
    expect([r.state, r.notes[0]?.code]).toEqual([state, note]);
    expect(r.expected.high.percentNaoh.toFixed(4)).toBe('0.0881'); // (4.5 − 250/56.105)·39.997/20
  });

  it('less caustic than any lot leaves', () => {
    const lye = [{ alkali: 'naoh', mass: { g: 400 }, solution: { hydroxide: { percent: 50 } } }] as const;
    const r = soapStateFromTest({ ...base, lye, measured: found('0.1', '0.02') });
    expect(r.state).toBe('less-than-any-lot-leaves');
    expect(r.extent.high.percent.toString()).toBe('100');
    expect(codes(r.notes)).toContain('less-caustic-than-any-lot-leaves');
  });

  it('cannot tell with triethanolamine: what acid found may be none of it caustic', () => {
    const r = soapStateFromTest({ ...base, measured: found('0.5', '0.02'), triethanolamine: true });
    expect([r.state, r.notes[0]?.code, r.given.triethanolamine]).toEqual(['cannot-tell', 'triethanolamine-reads-as-alkali', true]);
    expect(r.extent.high.percent.toString()).toBe('100');
    expect(r.extent.low.percent.eq(soapStateFromTest({ ...base, measured: found('0.5', '0.02') }).extent.low.percent)).toBe(true);
  }); // prettier-ignore

  it('takes a titration as it is, and warns as of any pot', () => {
    const measured = freeCausticAlkaliFromTitration({ sample: { g: 10 }, titrant: { eqPerL: '0.1' }, volume: { mL: '12.5' } });
    const r = soapStateFromTest({ ...base, measured });
    expect(r.state).toBe('still-reacting');
    expect(codes(r.cautions)[0]).toBe('caustic-burns');
    expect(codes(r.cautions)).toContain('test-before-skin');
  }); // prettier-ignore
});

describe('soapStateFromTest: laws', () => {
  it('a pot stopped anywhere lies within the extent that its caustic tells', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2500, max: 2600 }), fc.integer({ min: 0, max: 1000 }), fc.integer({ min: 600, max: 1100 }), (tenths, thousandths, charged) => {
        // what one lot of that value takes up, and has taken up so far
        const demand = new Exact(tenths).div('561.05');
        const alkali = demand.times(charged).div(1000);
        const taken = Exact.min(alkali, demand).times(thousandths).div(1000);
        const g = alkali.times(NAOH).times(2);
        const percentNaoh = alkali.minus(taken).times(NAOH).div(20).toString();
        const { extent } = soapStateFromTest({
          ...base,
          lye: [{ alkali: 'naoh', mass: { g: g.toFixed(30) }, solution: { hydroxide: { percent: 50 } } }],
          measured: found(percentNaoh),
        });
        const truth = taken.times(100).div(demand);
        expect(truth.gte(extent.low.percent.minus('1e-20').toString())).toBe(true);
        expect(truth.lte(extent.high.percent.plus('1e-20').toString())).toBe(true);
      }),
    );
  }); // prettier-ignore
});

describe('soapStateFromTest: refusals', () => {
  it.each<[string, object, string, string]>([
    ['more caustic than was charged', { measured: found(10) }, 'infeasible', 'measured.freeCausticAlkali'],
    ['a sample over the batch', { measured: { ...found(1), sample: { kg: 3 } } }, 'out-of-range', 'measured.sample'],
    [
      'a test without uncertainty',
      { measured: found(1, 0) },
      'out-of-range',
      'measured.standardUncertainty.percentNaoh',
    ],
    ['a flag that is none', { triethanolamine: null }, 'bad-shape', 'triethanolamine'],
    ['no fats', { fats: [] }, 'bad-shape', 'fats'],
    ['no test', { measured: undefined }, 'missing', 'measured'],
    ['an unknown option', { target: 1 }, 'unknown-key', 'input.target'],
  ])('%s', (_what, change, code, path) => {
    expect(refusal(() => soapStateFromTest({ ...base, ...change }))).toMatchObject({ code, path });
  });
});
