import fc from 'fast-check';
import { freeAlkaliLimits, freeCausticAlkaliFromTitration, judgeFreeAlkali, sources, valueIn } from 'laurate';
import { describe, expect, it } from 'vitest';
import { codes } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const measured = (percentNaoh: string, uncertainty: string) => ({
  freeCausticAlkali: { percentNaoh },
  standardUncertainty: { percentNaoh: uncertainty },
});
const limit = { percentNaoh: '0.05' } as const;

describe('judgeFreeAlkali: worked by hand', () => {
  it.each([
    ['0.030', '0.012', 'below'], // 0.030 + 1.645·0.012 = 0.04974
    ['0.030', '0.0122', 'cannot-tell'], // 0.05007
    ['0.070', '0.012', 'above'], // 0.05026
    ['0.070', '0.0122', 'cannot-tell'], // 0.04993
    ['0.04999999', '1e-9', 'below'],
    ['0.05', '1e-9', 'cannot-tell'], // at the limit itself no test can tell
    ['0.05000001', '1e-9', 'above'],
  ])('%s ± %s percent against 0.05: %s', (content, uncertainty, verdict) => {
    expect(judgeFreeAlkali({ measured: measured(content, uncertainty), limit }).verdict).toBe(verdict);
  });

  it('limits are per soap as sold: what dries off concentrates the caustic', () => {
    const wet = { measured: measured('0.045', '0.001'), limit };
    expect(judgeFreeAlkali(wet).verdict).toBe('below');
    const dry = judgeFreeAlkali({ ...wet, massLoss: { percent: 10 } });
    expect(dry.freeCausticAlkali.likely.percentNaoh.toString()).toBe('0.05');
    expect(dry.verdict).toBe('cannot-tell');
    expect(judgeFreeAlkali({ ...wet, massLoss: { percent: 20 } }).verdict).toBe('above');
  });

  it('triethanolamine: cannot tell, whatever was measured', () => {
    for (const content of ['0', '0.9']) {
      const r = judgeFreeAlkali({ measured: measured(content, '0.001'), limit, triethanolamine: true });
      expect(r.verdict).toBe('cannot-tell');
      expect(codes(r.notes)).toEqual(['triethanolamine-reads-as-alkali']);
    }
  });

  it('takes a titration as it is', () => {
    const test = freeCausticAlkaliFromTitration({ sample: { g: 10 }, titrant: { eqPerL: '0.1' }, volume: { mL: '0.6' } });
    const r = judgeFreeAlkali({ measured: test, limit: 'toilet-soap-is-2888' });
    expect(r.verdict).toBe('below'); // 0.0240 + 1.645·0.0024
    expect(r.given.measured.sample?.g.toString()).toBe('10');
  }); // prettier-ignore

  it('says where a limit is from and how sure it is', () => {
    const r = judgeFreeAlkali({ measured: measured('0.1', '0.01'), limit: 'soft-soap-usp' });
    expect(r.limit.percentNaoh.toFixed(6)).toBe('0.178224'); // 0.25 · 39.997/56.105
    expect(r.verdict).toBe('below');
    expect(codes(r.notes)).toEqual(['limit-memory']);
    expect(r.basis).toContain('usp-28-nf-23-2005');
    expect(r.given.limit).toBe('soft-soap-usp');
  });

  it('warns of what is above, and of what is not shown to be below', () => {
    const cautions = (content: string) =>
      codes(judgeFreeAlkali({ measured: measured(content, '0.01'), limit }).cautions);
    expect(cautions('0.01').slice(1, 2)).toEqual(['test-before-skin']);
    expect(cautions('0.05').slice(1, 3)).toEqual(['free-caustic-not-shown-below', 'test-before-skin']);
    expect(cautions('0.2').slice(1, 3)).toEqual(['free-caustic-above-limit', 'test-before-skin']);
    expect(cautions('0.01').at(-1)).toBe('sums-not-a-certificate');
  });
});

describe('freeAlkaliLimits', () => {
  it('are limits with a source, and say that none was read', () => {
    expect(freeAlkaliLimits.map(({ id, atMost }) => [id, valueIn(atMost, 'percentNaoh').toFixed(3)])).toEqual([
      ['toilet-soap-is-2888', '0.050'],
      ['bathing-bar-is-13498', '0.050'],
      ['laundry-soap-is-285', '0.200'],
      ['toilet-soap-customary', '0.100'],
      ['laundry-soap-customary', '0.200'],
      ['soft-soap-usp', '0.178'],
    ]);
    expect(Object.isFrozen(freeAlkaliLimits) && freeAlkaliLimits.every((row) => Object.isFrozen(row))).toBe(true);
    expect(freeAlkaliLimits.map(({ obtained }) => obtained)).not.toContain('read');
    for (const { source, note } of freeAlkaliLimits) {
      expect(sources([source])).toHaveLength(1);
      expect(note).toMatch(/recalled|not verified/i);
    }
  });
});

describe('judgeFreeAlkali: laws', () => {
  const content = fc.integer({ min: 0, max: 4000 }).map((units) => `${String(units)}e-4`);
  const uncertain = fc.integer({ min: 1, max: 4000 }).map((units) => `${String(units)}e-4`);
  const order = ['below', 'cannot-tell', 'above'];

  it('more caustic is never judged better, and more uncertainty never surer', () => {
    fc.assert(
      fc.property(content, content, uncertain, content, (one, other, uncertainty, more) => {
        const [less, greater] = Number(one) <= Number(other) ? [one, other] : [other, one];
        const at = (found: string, u: string) => judgeFreeAlkali({ measured: measured(found, u), limit }).verdict;
        expect(order.indexOf(at(less, uncertainty))).toBeLessThanOrEqual(order.indexOf(at(greater, uncertainty)));
        const wider = String(Number(uncertainty) + Number(more));
        if (at(one, uncertainty) === 'cannot-tell') expect(at(one, wider)).toBe('cannot-tell');
      }),
    );
  });
});

describe('judgeFreeAlkali: refusals', () => {
  const good = { measured: measured('0.03', '0.01'), limit };
  it.each<[object, string, string]>([
    [{ measured: measured('0.03', '0') }, 'out-of-range', 'measured.standardUncertainty.percentNaoh'],
    [{ measured: { ...measured('0.03', '0.01'), result: 1 } }, 'unknown-key', 'measured.result'],
    [{ limit: 'toilet-soap' }, 'bad-shape', 'limit'],
    [{ limit: { percentNaoh: 0 } }, 'out-of-range', 'limit.percentNaoh'],
    [{ limit: { percent: 1 } }, 'unknown-unit', 'limit.percent'],
    [{ limit: undefined }, 'missing', 'limit'],
    [{ measured: { freeCausticAlkali: { percentNaoh: 1 } } }, 'missing', 'measured.standardUncertainty'],
    [{ measured: undefined }, 'missing', 'measured'],
    [{ massLoss: { percent: 91 } }, 'out-of-range', 'massLoss.percent'],
    [{ triethanolamine: 'yes' }, 'bad-shape', 'triethanolamine'],
  ])('%o', (change, code, path) => {
    expect(refusal(() => judgeFreeAlkali({ ...good, ...change }))).toMatchObject({ code, path });
  });
});

it('at just the limit with 95 % confidence it is below', () => {
  // 0.03355 + 1.645 · 0.01 = 0.05
  const at = (percentNaoh: string) =>
    judgeFreeAlkali({
      measured: { freeCausticAlkali: { percentNaoh }, standardUncertainty: { percentNaoh: '0.01' } },
      limit: { percentNaoh: '0.05' },
    }).verdict;
  expect([at('0.03355'), at('0.03356')]).toEqual(['below', 'cannot-tell']);
});
