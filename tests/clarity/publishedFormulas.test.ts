/** The published formulas and windows as data: what was carried over, and that it comes out of what is printed. */
import { Decimal } from 'decimal.js';
import {
  publishedFormulas,
  publishedWindows,
  sources,
  valueIn,
  type PublishedFormula,
  type PublishedPart,
} from 'laurate';
import { checkValues } from 'laurate/check-values';
import { describe, expect, it } from 'vitest';

const formulas = publishedFormulas();
const named = (id: string): PublishedFormula => {
  const found = formulas.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};
const tally = (words: readonly string[]): Record<string, number> =>
  Object.fromEntries([...new Set(words)].sort().map((word) => [word, words.filter((one) => one === word).length]));
const parts = (formula: PublishedFormula, ...names: readonly PublishedPart[]): Decimal =>
  Decimal.sum(0, ...names.map((name) => formula.shares?.[name]?.percent ?? 0));

describe('remarks and caveats', () => {
  it('are texts where there are any, and left out where there are none', () => {
    const texts = [...formulas.map(({ remark }) => remark), ...publishedWindows().map(({ caveat }) => caveat)];
    expect(texts.filter((text) => text !== undefined).every((text) => text.trim().length > 0)).toBe(true);
    expect(formulas.some((one) => 'remark' in one) && formulas.some((one) => !('remark' in one))).toBe(true);
    expect(publishedWindows().some((one) => 'caveat' in one)).toBe(true);
    // what clears one is unknown where it is not told
    const agents = formulas.map(({ clearingAgents }) => clearingAgents);
    expect(agents.filter((one) => one === undefined).length).toBeGreaterThan(0);
    expect(agents).not.toContain('unknown');
  });
});

describe('the published formulas', () => {
  it('are as many as were carried over: 59 of 24 publications, 37 of them complete', () => {
    expect(formulas).toHaveLength(59);
    expect(new Set(formulas.map(({ id }) => id)).size).toBe(59);
    expect(new Set(formulas.map(({ source }) => source)).size).toBe(24);
    expect(formulas.filter(({ shares }) => shares !== undefined)).toHaveLength(37);
  });

  it('27 are said to be clear, 7 not; of the 25 that say nothing 17 are judged by inference', () => {
    const said = formulas.filter(({ outcomeBasis }) => ['stated', 'claimed', 'seen'].includes(outcomeBasis));
    expect(tally(said.map(({ outcome }) => outcome))).toEqual({ clear: 27, hazy: 4, opaque: 1, translucent: 2 });
    expect(tally(said.filter(({ outcome }) => outcome === 'clear').map(({ form }) => form))).toEqual({ bar: 20, gel: 2, liquid: 5 });
    const inferred = formulas.filter(({ outcomeBasis }) => outcomeBasis === 'inferred');
    expect(tally(inferred.map(({ outcome }) => outcome))).toEqual({ clear: 1, opaque: 8, translucent: 8 });
    expect(tally(formulas.filter(({ outcomeBasis }) => outcomeBasis === 'none').map(({ outcome }) => outcome))).toEqual({ 'not-told': 8 });
  }); // prettier-ignore

  it('cite a publication of the bibliography, and a place in it', () => {
    for (const { id, source, where } of [...formulas, ...publishedWindows()]) {
      expect(sources([source]), id).toHaveLength(1);
      expect(where, id).not.toBe('');
    }
  });

  it('add up to 100, but for the last digits', () => {
    for (const { id, shares } of formulas) {
      if (shares === undefined) continue;
      const sum = Decimal.sum(...Object.values(shares).map(({ percent }) => percent));
      expect(sum.minus(100).abs().lte('0.02'), `${id} ${sum.toString()}`).toBe(true);
    }
  });

  it('hold what their kind says, and nothing that it leaves out', () => {
    for (const { id, clearingAgents, shares } of formulas) {
      if (shares === undefined) continue;
      const has = (...names: readonly PublishedPart[]): boolean => names.some((name) => shares[name] !== undefined);
      expect([id, has('surfactant')]).toEqual([id, clearingAgents === 'with-surfactant']);
      if (clearingAgents === 'with-spirit') expect([id, has('ethanol')]).toEqual([id, true]);
      if (clearingAgents === 'with-sugar') expect([id, has('sucrose'), has('ethanol')]).toEqual([id, true, false]);
      if (clearingAgents === 'polyol-only' || clearingAgents === 'none-added') {
        expect([id, has('sucrose', 'ethanol')]).toEqual([id, false]);
      }
    }
  });
});

/** Least, median and greatest as tabulated by those who gathered the formulas. */
type Row = readonly [
  figure: string,
  of: (formula: PublishedFormula) => Decimal | undefined,
  clear: string,
  notClear: string,
];

describe('bars, clear against not clear, come out as tabulated', () => {
  const polyols = ['glycerol', 'propyleneGlycol', 'polyethyleneGlycol', 'sorbitol'] as const;
  const share =
    (...names: readonly PublishedPart[]) =>
    (one: PublishedFormula) =>
      parts(one, ...names);
  const per =
    (below: PublishedPart, ...names: readonly PublishedPart[]) =>
    (one: PublishedFormula) =>
      parts(one, ...names).div(parts(one, below));
  const rows: readonly Row[] = [
    ['anhydrous soap', share('soap'), '20.7 41.8 53.5 12', '31.2 50.4 78.9 9'],
    ['water', share('water'), '17.4 24.3 31.1 12', '14.8 25.5 38.5 9'],
    ['ethanol', share('ethanol'), '0 10.3 17.9 12', '0 0 4.20 9'],
    ['glycerol', share('glycerol'), '0 6.80 19.3 12', '0 7.27 21.3 9'],
    ['propylene glycol', share('propyleneGlycol'), '0 0 10.9 12', '0 0 0 9'],
    ['polyethylene glycol', share('polyethyleneGlycol'), '0 0 9.60 12', '0 0 0 9'],
    ['sorbitol', share('sorbitol'), '0 0 4.91 12', '0 0 0 9'],
    ['polyol total', share(...polyols), '4.52 6.80 31.4 12', '0 7.27 21.3 9'],
    ['sucrose', share('sucrose'), '0 11.7 17.7 12', '0 0 0 9'],
    ['polyol + sugar', share(...polyols, 'sucrose'), '14.9 19.1 39.2 12', '0 7.27 21.3 9'],
    ['polyol + sugar + ethanol', share(...polyols, 'sucrose', 'ethanol'), '17.2 31.1 39.2 12', '0 7.27 24.4 9'],
    ['clearing agents per soap', per('soap', ...polyols, 'sucrose', 'ethanol'), '0.32 0.73 1.90 12', '0 0.13 0.78 9'],
    ['polyol per soap', per('soap', ...polyols), '0.09 0.15 1.52 12', '0 0.11 0.65 9'],
    ['polyol + sugar per soap', per('soap', ...polyols, 'sucrose'), '0.31 0.48 1.90 12', '0 0.11 0.65 9'],
    ['ethanol per soap', per('soap', 'ethanol'), '0 0.25 0.43 12', '0 0 0.14 9'],
    ['polyol per water', per('water', ...polyols), '0.15 0.26 1.49 12', '0 0.29 0.97 9'],
    ['water per soap', per('soap', 'water'), '0.35 0.58 1.02 12', '0.27 0.45 0.78 9'],
    ['salt + carbonate', share('salts'), '0 0 1.74 12', '0 0 0 9'],
    ['free alkali', share('freeCaustic'), '0 0.62 1.45 12', '0 0 2.78 9'],
    ['free fat + fatty acid', share('freeFat', 'freeAcid'), '0 0 0 12', '0 6.73 30.4 9'],
    ['surfactant', share('surfactant'), '0 0 16.8 12', '0 0 0 9'],
    ['alkali ratio', ({ alkaliOfNeed }) => alkaliOfNeed?.percent.div(100), '1.01 1.11 1.23 11', '0.59 0.87 1.30 8'],
    ['palmitic + stearic', (one) => one.palmiticAndStearic?.percent, '19.0 24.0 55.0 11', '12.0 39.0 85.0 9'],
  ];
  const complete = formulas.filter(({ shares }) => shares !== undefined);
  const clear = complete.filter(({ form, outcome }) => form === 'bar' && outcome === 'clear');
  const notClear = complete.filter(
    ({ form, outcome }) => ['bar', 'soft', 'cream'].includes(form) && outcome !== 'clear',
  );

  it.each(rows)('%s', (_figure, of, ...tabulated) => {
    for (const [at, some] of [clear, notClear].entries()) {
      const values = some.flatMap((one) => of(one) ?? []).sort((a, b) => a.cmp(b));
      const printed = (tabulated[at] ?? '').split(' ');
      const middle = (values[Math.ceil(values.length / 2) - 1] ?? new Decimal(0))
        .plus(values[Math.floor(values.length / 2)] ?? 0)
        .div(2);
      expect(values.length).toBe(Number(printed[3]));
      for (const [value, text = ''] of [[values[0], printed[0]], [middle, printed[1]], [values.at(-1), printed[2]]] as const) {
        // nought is nought; else half a last digit of the table, and of the shares
        const digits = (text.split('.')[1] ?? '').length;
        const tolerance = text === '0' ? new Decimal(0) : new Decimal(10).pow(-digits).div(2).plus('0.0051');
        expect(value?.minus(text).abs().lte(tolerance), `${String(value)} for ${text}`).toBe(true);
      }
    }
  }); // prettier-ignore
});

describe('what the shares are from', () => {
  // one charge of the check values has a name of its own
  const idOf = (check: string): string => (check === 'mixed-acids-patent' ? 'jp-5774951-example-1' : check);
  const PARTS: Readonly<Record<string, PublishedPart>> = {
    soap: 'soap',
    'free-fat': 'freeFat',
    'free-acid': 'freeAcid',
    'free-alkali': 'freeCaustic',
    'propylene-glycol': 'propyleneGlycol',
    'polyethylene-glycol': 'polyethyleneGlycol',
    salt: 'salts',
    water: 'water',
    ethanol: 'ethanol',
    glycerol: 'glycerol',
    sucrose: 'sucrose',
    sorbitol: 'sorbitol',
    other: 'other',
  };
  const finished = checkValues().flatMap((row) => {
    const [, charge, part] = /^(.*)-finished-(.*)$/.exec(row.id) ?? [];
    return charge === undefined || part === undefined ? [] : [{ charge: idOf(charge), part, printed: row.printed }];
  });

  it('25 charges are check values of compositionFrom, and stand here with the same figures', () => {
    expect(new Set(finished.map(({ charge }) => charge)).size).toBe(25);
    for (const { charge, part, printed } of finished) {
      const name = PARTS[part];
      if (name === undefined) throw new Error(part);
      expect([charge, part, named(charge).shares?.[name]?.percent.toFixed(2)]).toEqual([charge, part, new Decimal(printed).toFixed(2)]);
    }
  }); // prettier-ignore

  // Ready-made soap reacts with nothing; so these are sums by hand. Water in soap, strength of spirit, and gravities recalled.
  const oz = 28.349523;
  const general = 2 / 0.63 + 2;
  const stearicMol = (5 * 205) / 56106;
  const suppository = 68 - (stearicMol / 2) * 44.009;
  const cooley = (2.5 + 1.25) * oz + 3 * 3.5516 * 0.9 + 18 * 28.4131 * 0.838 + 2 * 28.4131;
  const spirit1898 = 1.5 * 473.1765 * 0.82;
  const kings = 3 * oz + 5 * 3.6967 * 0.9 + 29.5735 * 0.96 + spirit1898;
  it.each([
    ['kings-1898-glycerite-of-soap-coconut', { soap: 100 / 5, glycerol: (400 * 0.95) / 5, water: (400 * 0.05) / 5 }, 0.005],
    ['usp-glycerin-suppository-91-9-5', { soap: 900 / 105, glycerol: 9100 / 105, water: 500 / 105 }, 0.005],
    ['ep-521579-clear-stick', { soap: 7, propyleneGlycol: 70, water: 20.95, salts: 0.5 }, 0.005],
    ['us-5798094-glycol-stick', { soap: 7, propyleneGlycol: 68, water: 10, surfactant: 15 }, 0.005],
    ['codex-opodeldoch', { soap: 9.5, ethanol: 77.5 * 0.857, water: 77.5 * 0.143 + 3 * 0.9 }, 0.006],
    ['bpc-1911-solid-opodeldoc', { soap: 8 * 0.7, ethanol: 84 * 0.857, water: 8 * 0.3 + 84 * 0.143 + 5 * 0.9 }, 0.005],
    // the greatest takes what is missing to 100
    ['formulas-1914-solid-alcohol', { soap: 2900 / 1031, ethanol: 85700 / 1031, water: 14300 / 1031 }, 0.01],
    ['thomssen-general-alcohol-glycerine', { soap: (2 / 0.63 / general) * 68.1, ethanol: 92.4 / general, glycerol: 100 / general }, 0.01],
    ['thomssen-milled-semi', { soap: 73 * 1.081 }, 0.04],
    ['kings-1898-glycerin-suppository', { soap: (100 * (5 + stearicMol * 21.982)) / suppository, glycerol: 6000 / suppository }, 0.01],
    ['cooley-bp-soap-liniment', { soap: (250 * oz * 0.7) / cooley, ethanol: (1800 * 28.4131 * 0.838 * 0.84) / cooley }, 0.05],
    // gravities of two oils and of ammonia water are not told
    ['kings-1898-solid-opodeldoc', { soap: (200 * oz * 0.8) / kings, ethanol: (91 * spirit1898) / kings }, 0.15],
  ] as const)('%s, by hand', (id, byHand, tolerance) => {
    const { shares } = named(id);
    for (const [part, percent] of Object.entries(byHand)) {
      const figure = shares?.[part as PublishedPart]?.percent.toNumber() ?? NaN;
      expect(Math.abs(figure - percent), `${part} ${String(figure)} for ${String(percent)}`).toBeLessThanOrEqual(tolerance);
    }
  }); // prettier-ignore

  it('these are all', () => {
    const complete = formulas.filter(({ shares }) => shares !== undefined).map(({ id }) => id);
    expect(complete.length).toBe(25 + 12);
  });
});

describe('the published windows', () => {
  it('are as many as were carried over, with limits that go up', () => {
    const windows = publishedWindows();
    expect(tally(windows.map(({ form }) => form))).toEqual({ bar: 13, gel: 5 });
    expect(new Set(windows.map(({ id }) => id)).size).toBe(18);
    const limits = windows.flatMap((window) => window.limits);
    expect(limits).toHaveLength(22);
    for (const { figure, low, high } of limits) {
      expect([figure, low ?? high]).not.toEqual([figure, undefined]);
      if (low === undefined || high === undefined) continue;
      const unit = figure.includes('Per') ? 'partsPerPart' : 'percent';
      expect(valueIn(low as never, unit as never).lt(valueIn(high as never, unit as never)), figure).toBe(true);
    }
  });
});
