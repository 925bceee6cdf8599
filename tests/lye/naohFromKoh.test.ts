import fc from 'fast-check';
import { kohFromNaoh, naohFromKoh } from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact, KOH, NAOH } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const mass = fc.integer({ min: 0, max: 10_000_000 }).map((mg) => `${String(mg)}e-3`);
const assay = fc.integer({ min: 1, max: 1100 }).map((tenths) => `${String(tenths)}e-1`);

describe('naohFromKoh: worked by hand', () => {
  it('takes both assays into account and does not round', () => {
    const r = naohFromKoh({ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });
    expect(r.hydroxide.mol.toFixed(9)).toBe('1.604135104'); // 90 / 56.105
    expect(r.naoh.g.toFixed(9)).toBe('65.469991579'); // 90 / 56.105 * 39.997 / 0.98
    expect(r.by).toBe('naohFromKoh');
    expect(r.basis).toContain('iupac-2021');
  });

  it('reads other units: 1 lb of pure KOH', () => {
    const r = naohFromKoh({ koh: { lb: 1 }, kohAssay: { fraction: 1 }, naohAssay: { ppm: 1000000 } });
    expect(r.naoh.g.toFixed(6)).toBe('323.363943'); // 453.59237 * 39.997 / 56.105
  });

  it('takes an assay over 100, as pharmacopoeias allow, and none of nothing', () => {
    expect(
      naohFromKoh({ koh: { g: 0 }, kohAssay: { percent: 110 }, naohAssay: { percent: 110 } }).naoh.g.isZero(),
    ).toBe(true);
  });

  it('cautions about what is handled, burns first', () => {
    const { cautions } = naohFromKoh({ koh: { g: 1 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });
    expect(cautions[0]?.code).toBe('caustic-burns');
    expect(cautions.map(({ code }) => code)).toContain('sums-not-a-certificate');
  });
});

describe('naohFromKoh: laws', () => {
  it('is undone by kohFromNaoh', () => {
    fc.assert(
      fc.property(mass, assay, assay, (g, koh, naoh) => {
        const there = naohFromKoh({ koh: { g }, kohAssay: { percent: koh }, naohAssay: { percent: naoh } });
        const back = kohFromNaoh({ naoh: there.naoh, naohAssay: { percent: naoh }, kohAssay: { percent: koh } });
        // eight multiplications and divisions of 34 digits
        expect(deviation(back.koh.g.toString(), g).lte('1e-32')).toBe(true);
        expect(deviation(back.hydroxide.mol.toString(), there.hydroxide.mol.toString()).lte('1e-32')).toBe(true);
      }),
    );
  });

  it('is m·w/M(KOH)·M(NaOH)/w, in another arithmetic', () => {
    fc.assert(
      fc.property(mass, assay, assay, (g, koh, naoh) => {
        const got = naohFromKoh({ koh: { g }, kohAssay: { percent: koh }, naohAssay: { percent: naoh } }).naoh.g;
        expect(deviation(got.toString(), new Exact(g).times(koh).times(NAOH).div(KOH).div(naoh)).lte('1e-32')).toBe(
          true,
        );
      }),
    );
  });

  it('needs more of a weaker sodium hydroxide', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 109 }), (percent) => {
        const need = (naoh: number) =>
          naohFromKoh({ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: naoh } }).naoh.g;
        expect(need(percent).gt(need(percent + 1))).toBe(true);
      }),
    );
  });
});

describe('naohFromKoh: refusals', () => {
  const good = { koh: { g: 1 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } };
  it.each<[object, string, string]>([
    [{ koh: { g: -1 } }, 'out-of-range', 'koh.g: expected at least 0, received -1'],
    [{ koh: { g: 'abc' } }, 'not-a-number', 'koh.g: expected a finite number or decimal text, received \'abc\''],
    [{ koh: { g: '1,5' } }, 'not-a-number', 'koh.g: expected a decimal point: \'1.5\', received \'1,5\''],
    [{ kohAssay: { percent: 0 } }, 'out-of-range', 'kohAssay.percent: expected more than 0, received 0'],
    [{ kohAssay: { percent: 111 } }, 'out-of-range', 'kohAssay.percent: expected at most 110, received 111'],
    [{ naohAssay: { percent: 0 } }, 'out-of-range', 'naohAssay.percent: expected more than 0, received 0'],
  ])('%o', (change, code, message) => {
    expect(refusal(() => naohFromKoh({ ...good, ...change }))).toMatchObject({ code, message });
  }); // prettier-ignore

  it('tells what came, in the unit it came in', () => {
    const refused = refusal(() => naohFromKoh({ ...good, naohAssay: { fraction: '1.2' } }));
    expect(refused).toMatchObject({ code: 'out-of-range', path: 'naohAssay.fraction' });
    expect(refused.message).toMatch(/received 1\.2$/);
  });

  it.each<[object, string, string]>([
    [{ kohAssay: undefined }, 'missing', 'kohAssay'],
    [{ koh: 100 }, 'bad-shape', 'koh'],
    [{ koh: { g: 1, kg: 1 } }, 'two-units', 'koh'],
    [{ koh: { gram: 1 } }, 'unknown-unit', 'koh.gram'],
    [{ naohPurity: { percent: 98 } }, 'unknown-key', 'input.naohPurity'],
  ])('%o, at its place', (change, code, path) => {
    expect(refusal(() => naohFromKoh({ ...good, ...change }))).toMatchObject({ code, path });
  });
});
