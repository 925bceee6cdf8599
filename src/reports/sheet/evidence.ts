import { sources } from '../../sources/index.js';
import { escaped } from '../markdown.js';
import { cautionsAt } from './placedCautions.js';
import type { Sheet } from './sheetBatch.js';

const PRACTICE =
  'The order of the work and the windows of temperature are common practice of the route without spirit; they have no source.';

const RISE = 'How far the pot rises is an estimate: no measured heat of a fat is on file.';

/** What the figures rest on: assumptions, then publications, then what they are not. */
export function evidence({ batch, cautions }: Sheet): readonly string[] {
  const { notes, basis, edition, heat, place } = batch;
  const cited = [...new Set(sources([...basis, ...heat.reaction.basis]).map(({ title }) => escaped(title)))];
  return [
    '## What it rests on',
    '',
    `**Among published formulas:** ${escaped(place.precedent.text)}`,
    '',
    `**Assumed:** ${[PRACTICE, RISE, ...[...heat.notes, ...notes].map(({ text }) => escaped(text))].join(' ')}`,
    '',
    `**Sources:** ${cited.join('; ')}. Figures of edition ${escaped(edition)}.`,
    '',
    ...cautionsAt('end', cautions),
  ];
}
