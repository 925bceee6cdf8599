import { sources } from '../../sources/index.js';
import { escaped } from '../markdown.js';
import { cautionsAt } from './placedCautions.js';
import type { Sheet } from './sheet.js';

const PRACTICE =
  'The order of the work, the windows of temperature, and what to do with a pot that is stiff or weighs too much are common practice of the route without spirit; they have no source.';

const REST =
  'How far the pot rises is an estimate: no measured heat of a fat is on file. What that and the place among formulas rest on is told by the notes and sources of the plan itself.';

/** What weights and volumes rest on: assumptions, then publications, then what they are not. */
export function evidence({ batch, cautions }: Sheet): readonly string[] {
  const { composition, volume, heat, order, edition, place } = batch;
  const notes = [...composition.notes, ...heat.notes, ...volume.notes];
  // the hold times that the page prints are of these
  const holds = order.filter(({ id }) => id === 'finish-saponification').flatMap((step) => step.holds);
  const basis = [...new Set([...composition.basis, ...volume.basis, ...holds.map(({ source }) => source)])];
  const cited = [...new Set(sources(basis).map(({ title }) => escaped(title)))];
  return [
    '## What it rests on',
    '',
    `**Among published formulas:** ${escaped(place.precedent.text)}`,
    '',
    `**Assumed:** ${[PRACTICE, ...notes.map(({ text }) => escaped(text)), REST].join(' ')}`,
    '',
    `**Sources:** ${cited.join('; ')}. Figures of edition ${escaped(edition)}.`,
    '',
    ...cautionsAt('end', cautions),
  ];
}
