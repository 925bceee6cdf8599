/** Inputs are read and never written: frozen ones are accepted, and all are as they were afterwards. */
import { describe, expect, it } from 'vitest';
import { textOf } from './exact.js';
import { examples, isDecimal } from './examples.js';

/** A copy that shares nothing with the input and cannot be written to, decimals excepted. */
function frozenCopy(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || isDecimal(value)) return value;
  if (Array.isArray(value)) return Object.freeze(value.map(frozenCopy));
  return Object.freeze(Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, frozenCopy(inner)])));
}

/** A copy that can be written to, so that a write would not be stopped but seen. */
function looseCopy(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || isDecimal(value)) return value;
  if (Array.isArray(value)) return value.map(looseCopy);
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, looseCopy(inner)]));
}

const cases = examples.flatMap(({ name, run, args }) => args.map((set) => [name, run, set] as const));

describe.each(cases)('%s', (_name, run, args) => {
  it('takes frozen inputs', () => {
    expect(textOf(run(...(frozenCopy(args) as unknown[])))).toBe(textOf(run(...args)));
  });

  it('leaves its inputs as they were', () => {
    const loose = looseCopy(args) as unknown[];
    const before = textOf(loose);
    run(...loose);
    expect(textOf(loose)).toBe(before);
  });

  it('keeps nothing of its inputs: what is changed later changes no result', () => {
    const loose = looseCopy(args) as unknown[];
    const result = run(...loose);
    const before = textOf(result);
    const spoil = (value: unknown): void => {
      if (typeof value !== 'object' || value === null || isDecimal(value)) return;
      Object.values(value).forEach(spoil);
      for (const key of Object.keys(value)) Reflect.set(value, key, 'spoilt');
    };
    spoil(loose);
    expect(textOf(result)).toBe(before);
  });
});
