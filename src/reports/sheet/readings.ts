import { judgingWindow } from '../../process/processWindows.js';
import { mapEnds } from '../../quantities/index.js';
import { escaped, table } from '../markdown.js';
import { finished, hidesAlkali, type Sheet } from './sheet.js';
import { causticLimitText } from './targets.js';

/** Where a reading is written by hand. */
const BLANK = '______';

/** Tests and temperatures, with what is expected and room for readings. */
export function readings(sheet: Sheet): readonly string[] {
  const { batch, write } = sheet;
  const { atMost } = causticLimitText(sheet);
  const expected = write.span(
    mapEnds(batch.freeCausticAlkali, ({ percentNaoh }) => percentNaoh),
    3,
  );
  const usual = judgingWindow('saponification-usual');
  const clearing = judgingWindow('clearing-usual');
  const below = ({ to }: typeof usual): string => `below ${write.temperature(to)}`;
  const { to, from = to } = judgingWindow('pouring-usual');
  const row = (when: string, what: string, wanted: string): readonly string[] => [when, what, wanted, BLANK, BLANK];
  return [
    '## Tests and readings',
    '',
    ...table(
      [
        ['when', 'left'],
        ['what', 'left'],
        ['wanted', 'left'],
        ['first', 'left'],
        ['second', 'left'],
      ],
      [
        row('lye into the fats', 'temperature, highest', below(usual)),
        row('hold, an hour of heat apart', 'free caustic, % NaOH', `${expected} when done, ${atMost}`),
        row('from clearing on', 'temperature, highest', below(clearing)),
        row('before pouring', 'mass of the base', write.massSpan(batch.composition.mass)),
        row('before pouring', 'cooled sample', 'clear'),
        row('pouring', 'temperature', write.temperatureSpan(from, to)),
        row(
          hidesAlkali(sheet) ? 'before triethanolamine goes in' : `${finished(sheet)}, before skin`,
          'free caustic, % NaOH',
          atMost,
        ),
      ],
    ),
    '',
    ...written(sheet),
    'A strip or meter for pH cannot tell none from a little caustic: it is no test for skin.',
  ];
}

/** The temperatures that the recipe writes down, and what they mean. */
function written({ batch: { temperatures }, write }: Sheet): readonly string[] {
  if (temperatures === undefined) return [];
  const stages = temperatures.stages.map(
    ({ stage, lowest, highest, meaning }) =>
      `${stage} ${lowest.celsius.eq(highest.celsius) ? write.temperature(lowest) : write.temperatureSpan(lowest, highest)}. ${escaped(meaning.text)}`,
  );
  return [`As the recipe has it: ${stages.join(' ')}`, ''];
}
