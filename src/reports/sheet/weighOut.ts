import { COARSE_SCALE } from '../../batch/coarseScale.js';
import { frozen } from '../../numbers/index.js';
import { escaped, table } from '../markdown.js';
import { itemNames } from './itemNames.js';
import { cautionsAt } from './placedCautions.js';
import type { Sheet } from './sheet.js';
import { MASS_UNITS } from './sheetWriter.js';

/** What is weighed, to the step of the scale, with room for a tick and the number of the lot. */
export function weighOut(sheet: Sheet): readonly string[] {
  const { batch, pot, write } = sheet;
  const names = itemNames(sheet);
  const scaleStep = batch.given.options.scaleStep?.g;
  const rows = batch.weigh.map(({ kind, mass }, at) => {
    const direction = kind === 'alkali' ? 'down' : 'nearest';
    const masses = write.systems.map((system) => write.weighed(mass, system, { scaleStep, direction }));
    return [names[at] ?? '', ...masses, '☐', ''];
  });
  const coarse = batch.notes.filter(({ code }) => code === COARSE_SCALE);
  const all = write.systems.map((system) =>
    write.weighed(frozen({ g: pot.charge }), system, { scaleStep, direction: 'nearest' }),
  );
  return [
    '## Weigh out',
    '',
    ...cautionsAt('weigh', sheet.cautions),
    '',
    ...table(
      [
        ['item', 'left'],
        ...write.systems.map((system) => [MASS_UNITS[system], 'right'] as const),
        ['weighed', 'left'],
        ['lot', 'left'],
      ],
      [...rows, ['all together', ...all, '', '']],
    ),
    ...(scaleStep === undefined
      ? ['', 'No step of a scale was given: alkali is cut after the last digit shown, the rest is rounded.']
      : []),
    ...coarse.flatMap(({ text }) => ['', escaped(text)]),
  ];
}
