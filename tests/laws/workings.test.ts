/** A working tells how a result came about: each step with its name, formula and unit, the same from JSON. */
import { workingOf, type Explainable } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { textOf, throughJson } from './exact.js';
import { results } from './examples.js';

const isExplained = (result: unknown): result is Explainable =>
  typeof result === 'object' && result !== null && 'by' in result && 'given' in result;
const explained = results.flatMap(([name, result]) => (isExplained(result) ? [[name, result] as const] : []));

describe.each(explained)('the working of %s', (_name, result) => {
  it('has a name, a formula, a unit and a figure in each step', () => {
    for (const { figure, formula, unit, value } of workingOf(result)) {
      expect([figure, formula, unit]).toEqual([
        expect.stringMatching(/\S/),
        expect.stringMatching(/\S/),
        expect.any(String),
      ]);
      expect(value.isFinite()).toBe(true);
    }
  });

  it('is the same of a result read back from JSON', () => {
    expect(textOf(workingOf(throughJson(result) as Explainable))).toBe(textOf(workingOf(result)));
  });
});

it('is empty only where nothing is worked out: one test without a second, a reading judged by a band', () => {
  const without = explained.filter(([, result]) => workingOf(result).length === 0).map(([name]) => name);
  expect(without).toEqual(['correctSuperfat', 'freeAlkaliBehindPh']);
});
