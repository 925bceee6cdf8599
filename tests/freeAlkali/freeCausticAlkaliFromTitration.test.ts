import fc from 'fast-check';
import { freeCausticAlkaliFromTitration, type FreeCausticAlkaliFromTitrationInput } from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { codes, deviation, Exact, NAOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const titrant = { eqPerL: '0.1' } as const;
const once = { sample: { g: 10 }, titrant, volume: { mL: '2.4' } } as const;
const exact = {
  balance: { g: 0 },
  burette: { mL: 0 },
  endPoint: { mL: 0 },
  blank: { mL: 0 },
  titrant: { percent: 0 },
  sampling: { percent: 0 },
} as const;

describe('freeCausticAlkaliFromTitration: worked by hand', () => {
  it('2.40 mL of 0.1 N on 10 g: 0.24 mmol, 0.096 %', () => {
    const r = freeCausticAlkaliFromTitration(once);
    expect(r.freeCausticAlkali.percentNaoh.toString()).toBe('0.0959928'); // 0.024 · 3.9997
    // single: (0.01)²·(0.03² + 0.03²) + 0.024²·(0.02² + 0.001²) = 4.10976e-7; shared: (0.005·0.024)² + (0.01·0.04)² = 1.744e-7
    expect(r.standardUncertainty.percentNaoh.toFixed(9)).toBe('0.003060165'); // √5.85376e-7 · 3.9997
    expect(r.sample.g.toString()).toBe('10');
    expect(r.by).toBe('freeCausticAlkaliFromTitration');
  });

  it('takes the blank off, and reads other units', () => {
    const r = freeCausticAlkaliFromTitration({
      ...once,
      sample: { kg: '0.01' },
      volume: { L: '0.0025' },
      blank: { mL: '0.1' },
    });
    expect(r.freeCausticAlkali.percentNaoh.toString()).toBe('0.0959928');
    expect(r.given.blank).toEqual({ mL: expect.anything() as unknown });
  });

  it('of two readings the mean; what they share is not halved', () => {
    const r = freeCausticAlkaliFromTitration({
      readings: [
        { sample: { g: 10 }, volume: { mL: '2.40' } },
        { sample: { g: 10 }, volume: { mL: '2.40' } },
      ],
      titrant,
    });
    expect(r.freeCausticAlkali.percentNaoh.toString()).toBe('0.0959928');
    expect(r.sample.g.toString()).toBe('20');
    // 4.10976e-7 / 2 + 1.744e-7 = 3.79888e-7
    expect(r.standardUncertainty.percentNaoh.toFixed(9)).toBe('0.002465217');
    expect(codes(r.notes)).not.toContain('readings-scatter');
  });

  it('two readings scatter where they differ by more than chi-square of one degree of freedom allows', () => {
    const apart = (low: string, high: string) =>
      codes(
        freeCausticAlkaliFromTitration({
          readings: [
            { sample: { g: 10 }, volume: { mL: low } },
            { sample: { g: 10 }, volume: { mL: high } },
          ],
          titrant,
        }).notes,
      );
    // 2.4 mL ± d: 2·(0.01·d)² over 3.841 · 4.10976e-7, so d over 0.0888
    expect(apart('2.315', '2.485')).not.toContain('readings-scatter');
    expect(apart('2.305', '2.495')).toContain('readings-scatter');
  });

  it('readings that scatter beyond their budget speak for themselves, by Student’s t', () => {
    const r = freeCausticAlkaliFromTitration({
      readings: [
        { sample: { g: 10 }, volume: { mL: 2 } },
        { sample: { g: 10 }, volume: { mL: 3 } },
      ],
      titrant,
      uncertainty: { ...exact, burette: { mL: '0.03' } },
    });
    // x 0.02 and 0.03: s² = 5e-5; chi-square 5e-5/(0.01·0.03)² = 556; t(1) = 6.314
    expect(codes(r.notes)).toContain('readings-scatter');
    const wide = new Exact('5e-5').div(2).sqrt().times('6.314').div('1.645').times(NAOH).div(10);
    expect(deviation(r.standardUncertainty.percentNaoh.toString(), wide).lte('1e-25')).toBe(true);
  });

  it('a reading at the blank, or just below it, finds nothing', () => {
    for (const mL of ['0.25', '0.3']) {
      const r = freeCausticAlkaliFromTitration({ ...once, volume: { mL }, blank: { mL: '0.3' } });
      expect(r.freeCausticAlkali.percentNaoh.isZero()).toBe(true);
      expect(r.standardUncertainty.percentNaoh.gt(0)).toBe(true);
      expect(codes(r.notes)).toContain('none-found');
    }
    const some = freeCausticAlkaliFromTitration({ ...once, volume: { mL: '0.31' }, blank: { mL: '0.3' } });
    expect(codes(some.notes)).not.toContain('none-found');
  });

  it('says what the method is for, and warns of spirit, burns first', () => {
    const r = freeCausticAlkaliFromTitration(once);
    expect(codes(r.notes)).toEqual(['alcohol-method-for-soda-soap', 'free-fat-takes-caustic']);
    expect(codes(r.cautions).slice(0, 3)).toEqual(['caustic-burns', 'spirit-catches-fire', 'test-before-skin']);
    const barium = freeCausticAlkaliFromTitration({ ...once, method: 'barium-chloride' });
    expect(codes(barium.notes)).toEqual(['free-fat-takes-caustic']);
    expect(codes(barium.cautions)).toContain('barium-chloride-poisonous');
  });

  it('can be worked through', () => {
    const steps = workingOf(freeCausticAlkaliFromTitration(once));
    expect(steps.map(({ figure, value }) => `${figure}: ${value.toPrecision(4)}`)).toEqual([
      'equivalents, reading 1: 0.02400',
      'mean of the readings, not below nothing: 0.02400',
      'standard uncertainty: 0.0007651',
      'free caustic alkali: 0.09599',
      'standard uncertainty of the free caustic alkali: 0.003060',
    ]);
  });
});

describe('freeCausticAlkaliFromTitration: laws', () => {
  const grams = fc.integer({ min: 1000, max: 50000 }).map((mg) => `${String(mg)}e-3`);
  const millilitres = fc.integer({ min: 0, max: 50000 }).map((uL) => `${String(uL)}e-3`);

  it('is c·(V − B)·M/(10·m), in another arithmetic', () => {
    fc.assert(
      fc.property(grams, millilitres, millilitres, (g, mL, blank) => {
        const volume = new Exact(mL).plus(blank);
        const { freeCausticAlkali } = freeCausticAlkaliFromTitration({ ...once, sample: { g }, volume: { mL: volume.toString() }, blank: { mL: blank } });
        const byHand = new Exact('0.1').times(mL).times(NAOH).div(10).div(g);
        expect(deviation(freeCausticAlkali.percentNaoh.toString(), byHand).lte('1e-30')).toBe(true);
      }),
    );
  }); // prettier-ignore

  it('every stated uncertainty widens, and none of them gives none', () => {
    fc.assert(
      fc.property(grams, fc.integer({ min: 1000, max: 50000 }), (g, uL) => {
        const input = { ...once, sample: { g }, volume: { mL: `${String(uL)}e-3` } };
        const found = (change: object) =>
          freeCausticAlkaliFromTitration({ ...input, uncertainty: { ...exact, ...change } }).standardUncertainty.percentNaoh;
        expect(found({}).isZero()).toBe(true);
        for (const [key, size] of Object.entries({ balance: { g: '0.01' }, burette: { mL: '0.01' }, endPoint: { mL: '0.01' }, blank: { mL: '0.01' }, titrant: { percent: 1 }, sampling: { percent: 1 } })) {
          expect(found({ [key]: size }).gt(0)).toBe(true);
        }
      }),
    );
  }); // prettier-ignore

  it('readings in any order give the same', () => {
    const one = { sample: { g: 9 }, volume: { mL: '2.2' } };
    const two = { sample: { g: 11 }, volume: { mL: '2.6' } };
    const [a, b] = [freeCausticAlkaliFromTitration({ readings: [one, two], titrant }), freeCausticAlkaliFromTitration({ readings: [two, one], titrant })]; // prettier-ignore
    expect(a.freeCausticAlkali.percentNaoh.eq(b.freeCausticAlkali.percentNaoh)).toBe(true);
    expect(deviation(a.standardUncertainty.percentNaoh.toString(), b.standardUncertainty.percentNaoh.toString()).lte('1e-30')).toBe(true); // prettier-ignore
  });
});

describe('freeCausticAlkaliFromTitration: refusals', () => {
  it.each<[object, string, string]>([
    [{ titrant: { eqPerL: 0 } }, 'out-of-range', 'titrant.eqPerL'],
    [{ sample: { g: 0 } }, 'out-of-range', 'sample.g'],
    [{ volume: { mL: '0.1' }, blank: { mL: '0.3' } }, 'out-of-range', 'volume'],
    [{ volume: { mL: -1 } }, 'out-of-range', 'volume.mL'],
    [{ volume: { mL: '1e-7' } }, 'out-of-range', 'volume'],
    [{ volume: { L: 1001 } }, 'out-of-range', 'volume.L'],
    [{ uncertainty: { balance: { g: 10 } } }, 'out-of-range', 'uncertainty.balance'],
    [{ uncertainty: { burette: { mL: 101 } } }, 'out-of-range', 'uncertainty.burette.mL'],
    [{ volume: undefined }, 'missing', 'volume'],
    [{ readings: [{ sample: { g: 1 }, volume: { mL: 1 } }] }, 'bad-shape', 'readings'],
    [{ method: 'acetone' }, 'bad-shape', 'method'],
    [{ uncertainty: { scale: { g: 1 } } }, 'unknown-key', 'uncertainty.scale'],
    [{ uncertainty: { titrant: { percent: 51 } } }, 'out-of-range', 'uncertainty.titrant.percent'],
    [{ batch: { g: 1 } }, 'unknown-key', 'input.batch'],
  ])('%o', (change, code, path) => {
    const input = { ...once, ...change } as FreeCausticAlkaliFromTitrationInput;
    expect(refusal(() => freeCausticAlkaliFromTitration(input))).toMatchObject({ code, path });
  });

  it('says that less than the blank is no content', () => {
    const { message } = refusal(() => freeCausticAlkaliFromTitration({ ...once, volume: { mL: 0 }, blank: { mL: 1 } }));
    expect(message).toBe('volume: expected at least the blank, 1 mL: less is no such content, received 0');
  });

  it('that passes three standard uncertainties, and no less', () => {
    const short = (mL: string) => () => freeCausticAlkaliFromTitration({ ...once, volume: { mL: 0 }, blank: { mL } });
    // 3·√(0.03² + 0.03² + 0.04²) = 0.1749
    expect(codes(short('0.17')().notes)).toContain('none-found');
    expect(refusal(short('0.18'))).toMatchObject({ code: 'out-of-range', path: 'volume' });
  });

  it('of readings an empty list, more than ten, and one at its place', () => {
    const reading = { sample: { g: 1 }, volume: { mL: 1 } };
    const of = (readings: readonly object[]) => refusal(() => freeCausticAlkaliFromTitration({ readings, titrant } as never));
    expect(of([])).toMatchObject({ code: 'bad-shape', path: 'readings' });
    expect(of(Array.from({ length: 11 }, () => reading))).toMatchObject({ code: 'bad-shape', path: 'readings' });
    expect(of([reading, { ...reading, volume: { mL: -1 } }])).toMatchObject({ path: 'readings[1].volume.mL' });
  }); // prettier-ignore
});
