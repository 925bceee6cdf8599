import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atomicWeights, type Element } from '../../src/chemistry/data/atomicWeights.js';
import { formulaMass } from '../../src/chemistry/formulaMass.js';
import { Decimal } from '../../src/numbers/index.js';
import { refusal } from '../laws/refusal.js';

const mass = (formula: unknown): string => formulaMass('x', formula).toString();

/** `Σ n·A` over atoms counted by hand. */
const massOf = (atoms: Readonly<Record<string, number>>): string =>
  Object.entries(atoms)
    .reduce(
      (sum, [symbol, n]) => sum.plus(new Decimal(atomicWeights[symbol as Element].value).times(n)),
      new Decimal(0),
    )
    .toString();

describe('formulaMass: worked by hand', () => {
  it.each<[string, Record<string, number>]>([
    ['H2O', { H: 2, O: 1 }],
    ['NaOH', { Na: 1, O: 1, H: 1 }],
    ['I2', { I: 2 }],
    ['HCl', { H: 1, Cl: 1 }], // a small letter belongs to the symbol before it
    ['CH3CH2OH', { C: 2, H: 6, O: 1 }], // a symbol may come again
    ['C3H5(OH)3', { C: 3, H: 8, O: 3 }],
    ['Na(OH)', { Na: 1, O: 1, H: 1 }], // no number means one
    ['(CH3(CH2)16CO2)3C3H5', { C: 57, H: 110, O: 6 }], // 3·(1 + 16 + 1) + 3; 3·(3 + 32) + 5; 3·2
    ['((H2)2)3', { H: 12 }],
    ['Na2CO3·10H2O', { Na: 2, C: 1, O: 13, H: 20 }],
    ['Na2CO3.10H2O', { Na: 2, C: 1, O: 13, H: 20 }],
    ['C6H8O7·H2O', { C: 6, H: 10, O: 8 }],
    ['K2CO3·2(H2O)3', { K: 2, C: 1, O: 9, H: 12 }],
    ['NaCl·KCl·6H2O', { Na: 1, Cl: 2, K: 1, H: 12, O: 6 }], // each multiple holds for its own part
    ['C9999', { C: 9999 }],
    ['H'.repeat(64), { H: 64 }],
  ])('%s', (formula, expected) => {
    expect(mass(formula)).toBe(massOf(expected));
  });
});

describe('formulaMass: laws', () => {
  type Counts = Readonly<Record<string, number>>;
  interface Written {
    readonly text: string;
    readonly atoms: Counts;
  }
  const sum = (all: readonly Counts[]): Counts => {
    const total: Record<string, number> = {};
    for (const atoms of all) for (const [symbol, n] of Object.entries(atoms)) total[symbol] = (total[symbol] ?? 0) + n;
    return total;
  };
  const times = (atoms: Counts, n: number): Counts =>
    Object.fromEntries(Object.entries(atoms).map(([symbol, count]) => [symbol, count * n]));
  const multiple = fc.option(fc.integer({ min: 1, max: 20 }), { nil: undefined });
  const joined = (parts: readonly Written[]): Written => ({
    text: parts.map(({ text }) => text).join(''),
    atoms: sum(parts.map(({ atoms }) => atoms)),
  });

  const { part } = fc.letrec<{ part: Written; atom: Written; bracket: Written }>((tie) => ({
    atom: fc
      .tuple(fc.constantFrom('H', 'C', 'N', 'O', 'Na', 'S', 'Cl', 'K', 'I'), multiple)
      .map(([symbol, n]) => ({ text: `${symbol}${String(n ?? '')}`, atoms: { [symbol]: n ?? 1 } })),
    bracket: fc.tuple(fc.array(tie('part'), { minLength: 1, maxLength: 3 }), multiple).map(([parts, n]) => ({
      text: `(${joined(parts).text})${String(n ?? '')}`,
      atoms: times(joined(parts).atoms, n ?? 1),
    })),
    part: fc.oneof({ maxDepth: 3 }, tie('atom'), tie('bracket')),
  }));
  const formula = fc
    .array(part, { minLength: 1, maxLength: 4 })
    .map(joined)
    .filter(({ text }) => text.length <= 60);

  it('weighs what was written, brackets in brackets', () => {
    fc.assert(
      fc.property(formula, ({ text, atoms }) => {
        expect(mass(text)).toBe(massOf(atoms));
      }),
    );
  });

  it('adds up parts joined by a dot, each with its multiple', () => {
    fc.assert(
      fc.property(formula, formula, multiple, fc.constantFrom('·', '.'), (first, second, n, dot) => {
        const text = `${first.text}${dot}${String(n ?? '')}${second.text}`;
        fc.pre(text.length <= 64);
        expect(mass(text)).toBe(massOf(sum([first.atoms, times(second.atoms, n ?? 1)])));
      }),
    );
  });

  it('reads or refuses any text, and never half of one', () => {
    const signs = fc.constantFrom('H', 'C', 'Na', 'X', 'c', '(', ')', '2', '0', '·', '.', ' ', '-', '\u0000');
    fc.assert(
      fc.property(
        fc.array(signs, { maxLength: 70 }).map((all) => all.join('')),
        (text) => {
          let found: Decimal;
          try {
            found = formulaMass('x', text);
          } catch {
            expect(refusal(() => formulaMass('x', text))).toMatchObject({ code: 'bad-shape', path: 'x' });
            return;
          }
          expect(found.gt(0)).toBe(true);
          expect(text).toMatch(/^[HCNaO()\d·.]+$/);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('formulaMass: refusals', () => {
  const EXPECTED = 'a formula such as C3H5(OH)3 or Na2CO3·10H2O of H, C, N, O, Na, S, Cl, K, I';

  it.each([
    ['', 'an empty text'],
    ['Xx2', 'Xx2'], // no element
    ['Fe2O3', 'Fe2O3'], // an element not on file
    ['NaOHFe', 'NaOHFe'],
    ['c6', 'c6'],
    ['naoh', 'naoh'],
    ['C6H12)', 'C6H12)'],
    ['(', '('],
    ['(C6H12', '(C6H12'],
    ['C6(H12', 'C6(H12'], // what stands before an open bracket is not the whole
    ['C6(H12))', 'C6(H12))'],
    [')H(', ')H('],
    ['()', '()'],
    ['NaOH()2', 'NaOH()2'], // brackets around nothing
    ['2H2O', '2H2O'], // so many molecules are no formula
    ['H2O·', 'H2O·'],
    ['·H2O', '·H2O'],
    ['H2O··H2O', 'H2O··H2O'],
    ['H2O·10', 'H2O·10'],
    ['(H2O·NaOH)', '(H2O·NaOH)'],
    ['C12345', 'C12345'],
    ['H2O·100H2O', 'H2O·100H2O'],
    ['H 2O', 'H 2O'],
    [' H2O', ' H2O'],
    ['H2O\n', 'H2O\n'],
    ['H-2', 'H-2'],
    ['H+', 'H+'],
    ['C1.5', 'C1.5'],
    ['H₂O', 'H₂O'],
    ['H2O\u0000', 'H2O\u0000'],
    ['🧼', '🧼'],
    ['constructor', 'constructor'],
    ['H'.repeat(65), 'H'.repeat(65)],
    ['H'.repeat(1_000_000), `${'H'.repeat(79)}…`],
    [undefined, 'nothing'],
    [null, 'null'],
    [12, '12'],
    [['H2O'], 'a list of 1'],
    [Object('H2O'), 'an object'],
  ])('%j is no formula', (formula, received) => {
    expect(refusal(() => formulaMass('x', formula))).toEqual({
      code: 'bad-shape',
      path: 'x',
      message: `x: expected ${EXPECTED}, received ${received}`,
    });
  });
});
