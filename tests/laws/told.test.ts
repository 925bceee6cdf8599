/**
 * What each result tells beside its figures: its fields, the inputs it was given, the publications behind it, and the codes
 * of its notes and cautions and the steps of its working, in their order. The list is told.txt; whoever changes it reads the difference.
 */
import { workingOf, type Explainable } from 'laurate/reports';
import { expect, it } from 'vitest';
import { examples } from './examples.js';

interface Told {
  readonly given?: object;
  readonly basis?: readonly string[];
  readonly notes?: readonly { readonly code: string }[];
  readonly cautions?: readonly { readonly code: string }[];
}
const isTold = (result: unknown): result is Told => typeof result === 'object' && result !== null && 'basis' in result;
const isExplainable = (result: Told): result is Told & Explainable => 'by' in result && 'given' in result;
const codes = (remarks: Told['notes']): readonly string[] | undefined => remarks?.map(({ code }) => code);

/** One result, a line for each of its lists. */
function told(name: string, result: Told): string {
  const { given, basis, notes, cautions } = result;
  const steps = isExplainable(result) ? workingOf(result).map(({ figure }) => figure) : [];
  const lines = Object.entries({
    fields: Object.keys(result),
    given: given && Object.keys(given),
    basis,
    notes: codes(notes),
    cautions: codes(cautions),
  }).flatMap(([what, list]) => (list === undefined ? [] : [`  ${what}: ${list.join(' ')}`.trimEnd()]));
  return [name, ...lines, ...(steps.length === 0 ? [] : [`  steps: ${steps.join(', ')}`]), ''].join('\n');
}

it('is what is written', async () => {
  const all = examples.flatMap(({ name, run, args }) =>
    args.flatMap((set, at) => {
      const result = run(...set);
      return isTold(result) ? [told(`${name}, example ${String(at + 1)}`, result)] : [];
    }),
  );
  await expect(all.join('\n')).toMatchFileSnapshot('told.txt');
});
