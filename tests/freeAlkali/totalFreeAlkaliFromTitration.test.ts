import { freeCausticAlkaliFromTitration, totalFreeAlkaliFromTitration } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const back = { sample: { g: 10 }, titrant: { eqPerL: '0.1' }, volume: { mL: '22.6' } } as const;
const acid = { titrant: { eqPerL: '1.003' }, volume: { mL: '3' } } as const;

describe('totalFreeAlkaliFromTitration: worked by hand', () => {
  it('30.1 mL for the acid, 22.6 with soap: 0.75 mmol on 10 g', () => {
    const r = totalFreeAlkaliFromTitration({ ...back, blank: { mL: '30.1' } });
    expect(r.totalFreeAlkali.percentNaoh.toString()).toBe('0.2999775'); // 0.075 · 3.9997
    expect(r.notes.map(({ code }) => code)).toEqual(['carbonate-counted']);
    expect(r.cautions.map(({ code }) => code)).toContain('spirit-catches-fire');
  });

  it('3 mL of 1.003 N take 30.09 mL of 0.1 N', () => {
    const r = totalFreeAlkaliFromTitration({ ...back, acid });
    expect(r.totalFreeAlkali.percentNaoh.toFixed(10)).toBe('0.2995775300'); // 0.0749 · 3.9997
    // blank: √2·0.005·30.09 = 0.2128 mL of strengths that do not cancel, 0.03·10.03 = 0.3009 mL of the burette: 0.3685 mL
    // (0.01·0.3685)² + (0.01)²·0.0018 + 0.0749²·(0.02² + 0.001² + 0.005²) = 1.6150e-5
    expect(r.standardUncertainty.percentNaoh.toFixed(4)).toBe('0.0161');
    const stronger = { ...acid, volume: { mL: '2' } };
    expect(refusal(() => totalFreeAlkaliFromTitration({ ...back, acid: stronger })).path).toBe('volume');
  });

  it('what is given gives it again, also of an acid', () => {
    const r = totalFreeAlkaliFromTitration({ ...back, acid });
    expect(textOf(totalFreeAlkaliFromTitration(throughJson(r.given) as never))).toBe(textOf(r));
  });

  it('carbonate is what it exceeds free caustic by', () => {
    const total = totalFreeAlkaliFromTitration({ ...back, blank: { mL: '30.1' } }).totalFreeAlkali.percentNaoh;
    const caustic = freeCausticAlkaliFromTitration({ sample: { g: 10 }, titrant: { eqPerL: '0.1' }, volume: { mL: '2.5' } });
    // 0.5 mmol of carbonate on 10 g: half of it in moles, 105.988 g each
    const carbonate = total.minus(caustic.freeCausticAlkali.percentNaoh).div('79.994').times('105.988');
    expect(deviation(carbonate.toString(), '0.26497').lte('1e-25')).toBe(true);
  }); // prettier-ignore
});

describe('totalFreeAlkaliFromTitration: refusals', () => {
  it.each<[object, string, string]>([
    [{}, 'missing', 'blank'],
    [{ blank: { mL: 30 }, acid }, 'bad-shape', 'input'],
    [{ blank: { mL: 20 } }, 'out-of-range', 'volume'],
    [{ acid: { titrant: { eqPerL: 0 }, volume: { mL: 1 } } }, 'out-of-range', 'acid.titrant.eqPerL'],
    [{ acid: { titrant: { eqPerL: 1 }, volume: { mL: 0 } } }, 'out-of-range', 'acid.volume.mL'],
    [{ acid: { titrant: { eqPerL: 1 }, mass: { g: 1 } } }, 'unknown-key', 'acid.mass'],
  ])('%o', (change, code, path) => {
    expect(refusal(() => totalFreeAlkaliFromTitration({ ...back, ...change } as never))).toMatchObject({ code, path });
  });
});
