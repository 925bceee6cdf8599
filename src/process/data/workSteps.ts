import type { TimeInput } from '../../quantities/index.js';
import type { SourceId } from '../../sources/index.js';
import type { WorkStage } from '../stage.js';
import type { JudgingWindowId } from './processWindows.js';

/** Name of a step of the work. */
export type WorkStepId =
  | 'melt-fats'
  | 'add-lye'
  | 'finish-saponification'
  | 'add-glycerol'
  | 'add-propylene-glycol'
  | 'add-sorbitol'
  | 'clear'
  | 'pour';

/** A time that a publication prints for such a step, of its own route. */
export interface PrintedHoldRow {
  readonly low: TimeInput;
  /** Left out of "at least". */
  readonly high?: TimeInput;
  readonly printed: string;
  readonly of: string;
  readonly source: SourceId;
  readonly where: string;
}

/** A step as it is on file. */
export interface WorkStepRow {
  readonly stage: WorkStage;
  readonly does: string;
  readonly why: string;
  readonly until: string;
  readonly window: JudgingWindowId;
  readonly source: SourceId;
  /** Times printed for it; none where no publication was seen to give one. */
  readonly holds: readonly PrintedHoldRow[];
}

const PRACTICE: SourceId = 'common-practice';

/** The steps of the alcohol-free route, in their order. */
export const workSteps = (): Readonly<Record<WorkStepId, WorkStepRow>> => ({
  'melt-fats': {
    stage: 'saponification',
    does: 'Melt the fats together, the stearic acid in them where there is any.',
    why: 'Free acid takes up lye at once, with heat: melted in, it does so evenly.',
    until: 'All of it is liquid.',
    window: 'saponification-usual',
    source: PRACTICE,
    holds: [],
  },
  'add-lye': {
    stage: 'saponification',
    does: 'Add the lye in portions, stirring, and let the pot come down between them.',
    why: 'Of caustic soda of 50 % little water is left to take out of a clear base; the reaction heats the pot by itself, and above 75 °C the base darkens.',
    until: 'All the lye is in.',
    window: 'saponification-usual',
    source: PRACTICE,
    holds: [
      {
        low: { minutes: '15' },
        printed: 'caustic added over at least 15 minutes',
        of: 'fatty acids neutralised in polyol and surfactant, up to 195 °F',
        source: 'clear-soap-patent-1995',
        where: 'claim 3',
      },
    ],
  },
  'finish-saponification': {
    stage: 'saponification',
    does: 'Keep it warm and stirred until the alkali is used up, and test the free alkali.',
    why: 'What has not reacted is caustic on the skin and fat in the bar.',
    until: 'Two tests an hour of heat apart agree within their uncertainty.',
    window: 'saponification-usual',
    source: 'laurate-convention',
    holds: [
      {
        low: { minutes: '15' },
        high: { minutes: '30' },
        printed: '15 to 30 minutes at 55 to 75 °C',
        of: 'transparent soap with sugar and spirit',
        source: 'suhadi-rasmito-2019',
        where: 'abstract',
      },
      {
        low: { hours: '2' },
        high: { hours: '2' },
        printed: 'covered about two hours, before about one hour of stirring',
        of: 'half-boiled transparent soap with spirit',
        source: 'thomssen-1922',
        where: 'pages 84 to 86',
      },
      {
        low: { hours: '24' },
        high: { hours: '36' },
        printed: '24 to 36 hours at 140 to 158 °F',
        of: 'glycerin soap of almond oil',
        source: 'formulas-1914',
        where: 'page 644',
      },
    ],
  },
  'add-glycerol': {
    stage: 'clearing',
    does: 'Stir in the glycerol.',
    why: 'What is added keeps the soap from crystallising. Why in this order is not in print.',
    until: 'The mass is even.',
    window: 'clearing-usual',
    source: PRACTICE,
    holds: [],
  },
  'add-propylene-glycol': {
    stage: 'clearing',
    does: 'Stir in the propylene glycol.',
    why: 'It clears in the same role as glycerol. Why after it is not in print.',
    until: 'The mass is even.',
    window: 'clearing-usual',
    source: PRACTICE,
    holds: [],
  },
  'add-sorbitol': {
    stage: 'clearing',
    does: 'Stir in the sorbitol, dissolved in water, and keep below 70 °C from here on.',
    why: 'It clears as the others do, and the trade keeps the pot cooler once it is in. Why last is not in print.',
    until: 'The mass is even.',
    window: 'clearing-usual',
    source: PRACTICE,
    holds: [],
  },
  clear: {
    stage: 'clearing',
    does: 'Keep it covered and warm until everything is dissolved.',
    why: 'Soap that is not dissolved stays behind as haze.',
    until: 'All of it is one clear mass, and a cooled sample stays so.',
    window: 'clearing-usual',
    source: PRACTICE,
    holds: [
      {
        low: { minutes: '30' },
        printed: 'at least 30 minutes at 175 to 195 °F, until dissolved',
        of: 'fatty acids neutralised in polyol and surfactant',
        source: 'clear-soap-patent-1995',
        where: 'claim 3',
      },
    ],
  },
  pour: {
    stage: 'pouring',
    does: 'Let it come down near 62 °C, add scent, and pour.',
    why: 'Cooler it may set in the pot. A text of 1908 lets it cool to 145 °F for scent and filling, into narrow frames, so that it cools fast.',
    until: 'The moulds are full.',
    window: 'pouring-usual',
    source: PRACTICE,
    holds: [],
  },
});
