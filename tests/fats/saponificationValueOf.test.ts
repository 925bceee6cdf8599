import { fat, fatFromBlend, fatFromCertificate, fats, saponificationValueOf } from 'laurate';
import { describe, expect, it } from 'vitest';
import { textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const lot = fatFromCertificate({
  name: 'Drum 7',
  like: fat('coconut-oil'),
  saponificationValue: { mgKohPerG: '256.4' },
  uncertainty: { mgKohPerG: 1 },
});

describe('saponificationValueOf: worked by hand', () => {
  it('a published fat: the whole range of the standard', () => {
    const { saponificationValue, from, basis } = saponificationValueOf(fat('coconut-oil'));
    expect([saponificationValue.low, saponificationValue.high].map((v) => v.mgKohPerG.toString())).toEqual([
      '248',
      '265',
    ]);
    expect(from).toBe('standard');
    expect(basis).toContain('codex-cxs-210-2024');
  });

  it('a certificate: the value and its uncertainty', () => {
    const { saponificationValue, from } = saponificationValueOf(lot);
    const { low, likely, high } = saponificationValue;
    expect([low, likely, high].map((v) => v.mgKohPerG.toString())).toEqual(['255.4', '256.4', '257.4']);
    expect(from).toBe('certificate');
  });

  it('a blend: the mean of its parts', () => {
    const blend = fatFromBlend({ name: 'B', parts: [{ fat: lot, mass: { g: 1 } }] });
    expect(saponificationValueOf(blend).from).toBe('blend');
    expect(textOf(saponificationValueOf(blend).saponificationValue)).toBe(textOf(lot.saponificationValue));
  });
});

describe('saponificationValueOf: laws', () => {
  it('is what the fat itself says, also after JSON', () => {
    for (const { id } of fats) {
      const { saponificationValue, from, notes, basis, edition } = fat(id);
      const own = textOf({ saponificationValue, from, notes, basis, edition });
      expect(textOf(saponificationValueOf(fat(id)))).toBe(own);
      expect(textOf(saponificationValueOf(throughJson(fat(id)) as never))).toBe(own);
    }
  });
});

describe('saponificationValueOf: refusals', () => {
  it.each([
    [undefined, 'missing'],
    ['coconut-oil', 'bad-shape'],
    [{}, 'missing'],
  ])('%o', (value, code) => {
    expect(refusal(() => saponificationValueOf(value as never)).code).toBe(code);
  });
});
