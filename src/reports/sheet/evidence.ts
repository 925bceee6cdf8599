import { sources } from '../../sources/index.js';
import { escaped } from '../markdown.js';
import { cautionsAt } from './placedCautions.js';
import type { Sheet } from './sheetBatch.js';

const PRACTICE =
  'The order of the work and the windows of temperature are common practice of the route without spirit; they have no source.';

/** What the figures rest on: assumptions, then publications, then what they are not. */
export function evidence({ batch }: Sheet): readonly string[] {
  const { notes, basis, edition, cautions, place } = batch;
  const cited = [...new Set(sources(basis).map(({ title }) => escaped(title)))];
  return [
    '## What it rests on',
    '',
    ...(place === undefined ? [] : [`**Among published formulas:** ${escaped(place.precedent.text)}`, '']),
    `**Assumed:** ${[PRACTICE, ...notes.map(({ text }) => escaped(text))].join(' ')}`,
    '',
    `**Sources:** ${cited.join('; ')}. Figures of edition ${escaped(edition)}.`,
    '',
    ...cautionsAt('end', cautions),
  ];
}
