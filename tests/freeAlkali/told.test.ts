/** What corrections, verdicts and readings tell beside their figure: notes, cautions, and the end a dose is made for. */
import {
  correctFreeAlkali,
  correctSuperfat,
  fat,
  fatFromBlend,
  freeAlkaliBehindPh,
  judgeFreeAlkali,
  type Fat,
} from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { doseOf } from '../../src/freeAlkali/dose.js';
import { Decimal } from '../../src/numbers/index.js';

const codes = (remarks: readonly { code: string }[]): string[] => remarks.map(({ code }) => code);
const decimal = (value: string | number) => new Decimal(value);
const certain = (value: string | number) => ({ low: decimal(value), likely: decimal(value), high: decimal(value) });
const END = ['no-aluminium-zinc-tin', 'children-and-animals', 'sums-not-a-certificate'];

describe('a dose', () => {
  const thirds = { batch: decimal(1000), target: decimal('0.1'), bound: decimal(0), perGram: certain(3) };

  it('that is given whole ends at its target, to the last digit', () => {
    const { add, left, leaves } = doseOf({ ...thirds, found: certain('0.3') });
    // (0.3 − 0.1)·1000/3.1, a figure without end: worked back it misses 0.1 by the last digit
    expect([add.toFixed(6), left.toString(), leaves.likely.toString()]).toEqual(['64.516129', '0', '0.1']);
  });

  it('that is given in part leaves what the rest would have taken', () => {
    const found = { low: decimal('0.15'), likely: decimal('0.3'), high: decimal('0.45') };
    const { add, left, leaves } = doseOf({ ...thirds, found });
    // safe: 0.15·1000/3 = 50 of 64.516; (0.3·1000 − 3·50)/1050
    expect([add.toString(), left.toFixed(6)]).toEqual(['50', '14.516129']);
    expect([leaves.low, leaves.likely, leaves.high].map((share) => share.toFixed(6))).toEqual([
      '0.000000',
      '0.142857',
      '0.285714',
    ]);
  });
});

describe('correctFreeAlkali', () => {
  const measured = { freeCausticAlkali: { percentNaoh: '0.4' }, standardUncertainty: { percentNaoh: '0.001' } };
  const reactionComplete = { earlier: measured, apart: { hours: 1 } };
  const base = { batch: { g: 1000 }, alkali: 'naoh', measured, reactionComplete } as const;
  const corrected = (one: Fat, target = '0.1') =>
    correctFreeAlkali({ ...base, target: { percentNaoh: target }, corrector: { fat: one } });
  const components = (one: Fat) => corrected(one).changes.map(({ component }) => component);

  it('by rosin is at once, and leaves no glycerol', () => {
    expect(codes(corrected(fat('Rosin, Spanish')).notes)).toEqual([]);
    expect(components(fat('Rosin, Spanish'))).not.toContain('glycerol');
    expect(components(fat('coconut-oil'))).toContain('glycerol');
  });

  it('by a blend takes time where one part of it is a fat', () => {
    const parts = [
      { fat: fat('coconut-oil'), mass: { g: 1 } },
      { fat: fat('stearic-acid-50'), mass: { g: 1 } },
    ];
    expect(codes(corrected(fatFromBlend({ name: 'Two', parts })).notes)).toEqual(['fat-takes-time']);
    expect(codes(corrected(fat('stearic-acid-50')).notes)).toEqual([]);
  });

  it('warns of no dose where there is none', () => {
    const { decision, cautions } = corrected(fat('coconut-oil'), '0.4');
    expect([decision, ...codes(cautions)]).toEqual([
      'nothing-to-add',
      'caustic-burns',
      'hot-soap-scalds',
      'test-before-skin',
      ...END,
    ]);
  });
});

describe('correctSuperfat', () => {
  const measured = { acidValue: { mgKohPerG: 5 }, standardUncertainty: { mgKohPerG: '0.1' } };
  const base = {
    batch: { g: 1000 },
    measured,
    reactionComplete: { earlier: measured, apart: { hours: 1 } },
    target: { mgKohPerG: 1 },
  } as const;

  it('by lye without carbonate has no foam to warn of; with the lye the batch is heavier', () => {
    const r = correctSuperfat({ ...base, lye: { alkali: 'naoh', solution: { hydroxide: { percent: 50 } } } });
    expect(codes(r.cautions)).toEqual([
      'caustic-burns',
      'crystallised-stock',
      'lye-into-hot-soap',
      'hot-soap-scalds',
      'test-before-skin',
      ...END,
    ]);
    // 4 mg/g of 1000 g over 50 %, and 1 mg/g of the lye itself
    expect([r.add.g.toFixed(3), r.after.g.toFixed(3)]).toEqual(['5.695', '1005.695']);
  });
});

describe('judgeFreeAlkali', () => {
  it.each([
    ['0.05', false, ['limit-within-uncertainty']],
    ['0.05', true, ['triethanolamine-reads-as-alkali']],
    ['0.01', false, []],
    ['0.09', false, []],
  ])('%s percent against 0.05, with triethanolamine: %s', (percentNaoh, triethanolamine, notes) => {
    const measured = { freeCausticAlkali: { percentNaoh }, standardUncertainty: { percentNaoh: '0.005' } };
    expect(codes(judgeFreeAlkali({ measured, limit: { percentNaoh: '0.05' }, triethanolamine }).notes)).toEqual(notes);
  });
});

describe('freeAlkaliBehindPh', () => {
  const on = { soap: { g: 1 }, solution: { mL: 100 } };
  const read = (pH: string, error = '0.3') =>
    freeAlkaliBehindPh({ reading: { pH }, error: { pH: error }, on, temperature: { celsius: 25 } });

  it.each([
    ['8', 'below-soap', ['low-ph-is-not-safe']],
    ['10', 'as-soap', []],
    ['11.5', 'above-soap', ['caustic-not-ruled-out']],
  ])('of %s: %s', (pH, finding, own) => {
    const r = read(pH);
    expect(r.finding).toBe(finding);
    expect(codes(r.cautions)).toEqual(['caustic-burns', ...own, 'ph-is-no-assay', 'test-before-skin', ...END]);
  });

  it('works out a cap where there is one, and none that nobody is told', () => {
    const figures = (pH: string) => workingOf(read(pH)).map(({ figure }) => figure);
    expect(read('10').atMost?.percentNaoh.gt(0)).toBe(true);
    expect(figures('10')).toContain('free caustic, at most');
    expect(read('13').atMost).toBeUndefined();
    expect(figures('13')).not.toContain('free caustic, at most');
  });
});
