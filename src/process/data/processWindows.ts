import type { TemperatureInput } from '../../quantities/index.js';
import type { SourceId } from '../../sources/index.js';
import type { WorkStage } from '../stage.js';

/** Name of a window that judges. */
export type JudgingWindowId = 'saponification-usual' | 'saponification-tolerable' | 'clearing-usual' | 'pouring-usual';
/** Name of a window that is kept beside. */
export type PrintedWindowId =
  | 'saponification-1922'
  | 'saponification-1914'
  | 'saponification-1914-long'
  | 'fats-warmed-1908'
  | 'saponification-2020'
  | 'saponification-2019'
  | 'neutralising-jp-5774951'
  | 'pan-ceiling-1908'
  | 'dissolving-1922'
  | 'dissolving-jp-5774951'
  | 'hold-us-1995'
  | 'clarifying-jp-2010-180381'
  | 'filling-1908'
  | 'holding-tank-us-1995';
/** Name of any window. */
export type ProcessWindowId = JudgingWindowId | PrintedWindowId;

/** What a window of temperature is. */
export type ProcessWindowKind =
  /** Where the trade works. */
  | 'usual'
  /** Where it still goes well. */
  | 'tolerable'
  /** What a text bids not to pass. */
  | 'ceiling'
  /** What a text works at. */
  | 'printed';

/** A window as it is printed or customary, before it is converted. */
export interface ProcessWindowRow {
  readonly stage: WorkStage;
  readonly what: ProcessWindowKind;
  readonly from?: TemperatureInput;
  readonly to?: TemperatureInput;
  /** The figures as printed; of common practice as customarily said. */
  readonly printed: string;
  readonly source: SourceId;
  readonly where?: string;
  readonly statement: string;
}

const ALCOHOL_FREE = 'the alcohol-free route: coconut soap made with caustic soda of 50 %, cleared with polyols';

/** The windows that judge: common practice of one route, no source. */
export const judgingWindows: Readonly<Record<JudgingWindowId, ProcessWindowRow>> = {
  'saponification-usual': {
    stage: 'saponification',
    what: 'usual',
    to: { celsius: '65' },
    printed: 'below 65 °C',
    source: 'common-practice',
    where: ALCOHOL_FREE,
    statement: 'The fats are saponified below 65 °C.',
  },
  'saponification-tolerable': {
    stage: 'saponification',
    what: 'tolerable',
    to: { celsius: '75' },
    printed: 'to 75 °C',
    source: 'common-practice',
    where: ALCOHOL_FREE,
    statement: 'Up to 75 °C is tolerable while the fats are saponified; hotter darkens the base.',
  },
  'clearing-usual': {
    stage: 'clearing',
    what: 'usual',
    to: { celsius: '70' },
    printed: 'below 70 °C',
    source: 'common-practice',
    where: ALCOHOL_FREE,
    statement: 'Once the sorbitol is in, the pot is kept below 70 °C.',
  },
  'pouring-usual': {
    stage: 'pouring',
    what: 'usual',
    from: { celsius: '60' },
    to: { celsius: '65' },
    printed: 'near 60 to 65 °C',
    source: 'common-practice',
    where: ALCOHOL_FREE,
    statement: 'The base is poured near 60 to 65 °C, about 62 °C.',
  },
};

/** What publications print, of several routes: kept beside, they judge nothing. */
export const printedWindows: Readonly<Record<PrintedWindowId, ProcessWindowRow>> = {
  'saponification-1922': {
    stage: 'saponification',
    what: 'printed',
    from: { fahrenheit: '140' },
    to: { fahrenheit: '140' },
    printed: '140 °F',
    source: 'thomssen-1922',
    where: 'pages 84 to 86',
    statement: 'Fats warmed before the lye goes in; half-boiled transparent soap with spirit.',
  },
  'saponification-1914': {
    stage: 'saponification',
    what: 'printed',
    from: { fahrenheit: '111' },
    to: { fahrenheit: '111' },
    printed: '111 °F',
    source: 'formulas-1914',
    where: 'page 652',
    statement: 'Lye stirred into the molten fats; glycerin soap with spirit.',
  },
  'saponification-1914-long': {
    stage: 'saponification',
    what: 'printed',
    from: { fahrenheit: '140' },
    to: { fahrenheit: '158' },
    printed: '140 to 158 °F',
    source: 'formulas-1914',
    where: 'page 644',
    statement: 'Saponified for 24 to 36 hours; glycerin soap of almond oil.',
  },
  'fats-warmed-1908': {
    stage: 'saponification',
    what: 'printed',
    from: { fahrenheit: '130' },
    to: { fahrenheit: '130' },
    printed: '130 °F',
    source: 'simmons-appleton-1908',
    where: 'pages 57 and 58',
    statement: 'Fats warmed before the lye goes in; transparent soap by the cold process.',
  },
  'saponification-2020': {
    stage: 'saponification',
    what: 'printed',
    from: { celsius: '70' },
    to: { celsius: '80' },
    printed: '70 to 80 °C',
    source: 'prasetiyo-2020',
    where: 'abstract',
    statement: 'Saponified with caustic soda of 30 %; transparent soap of palm kernel oil.',
  },
  'saponification-2019': {
    stage: 'saponification',
    what: 'printed',
    from: { celsius: '55' },
    to: { celsius: '75' },
    printed: '55 to 75 °C',
    source: 'suhadi-rasmito-2019',
    where: 'abstract',
    statement: 'Saponified for 15 to 30 minutes; transparent soap with sugar and spirit.',
  },
  'neutralising-jp-5774951': {
    stage: 'saponification',
    what: 'printed',
    from: { celsius: '70' },
    to: { celsius: '80' },
    printed: '70 to 80 °C',
    source: 'jp-5774951',
    where: 'paragraphs 0042 to 0044',
    statement: 'Fatty acids neutralised; no fat is saponified.',
  },
  'pan-ceiling-1908': {
    stage: 'clearing',
    what: 'ceiling',
    to: { fahrenheit: '170' },
    printed: 'not above 170 °F',
    source: 'simmons-appleton-1908',
    where: 'pages 57 and 58',
    statement: 'The transparent charge in the pan, sugar solution of 168 °F going in, is not to pass this.',
  },
  'dissolving-1922': {
    stage: 'clearing',
    what: 'printed',
    from: { fahrenheit: '160' },
    to: { fahrenheit: '160' },
    printed: '160 °F',
    source: 'thomssen-1922',
    where: 'pages 84 to 86',
    statement: 'Brought up to dissolve after the spirit is in, in a covered vessel.',
  },
  'dissolving-jp-5774951': {
    stage: 'clearing',
    what: 'printed',
    from: { celsius: '65' },
    to: { celsius: '75' },
    printed: '65 to 75 °C',
    source: 'jp-5774951',
    where: 'paragraphs 0042 to 0044',
    statement: 'Sugars and polyols dissolved in the soap.',
  },
  'hold-us-1995': {
    stage: 'clearing',
    what: 'printed',
    from: { fahrenheit: '175' },
    to: { fahrenheit: '195' },
    printed: '175 to 195 °F',
    source: 'clear-soap-patent-1995',
    where: 'claim 3; the claim gives 195 °F as the ceiling',
    statement: 'Held at least 30 minutes until dissolved; fatty acids in polyol and surfactant, no fat and no spirit.',
  },
  'clarifying-jp-2010-180381': {
    stage: 'clearing',
    what: 'printed',
    from: { celsius: '85' },
    to: { celsius: '100' },
    printed: '85 to 100 °C',
    source: 'jp-2010-180381',
    where: 'abstract',
    statement: 'Held until uniformly clear; fatty acids neutralised in dipropylene glycol with sucrose, no spirit.',
  },
  'filling-1908': {
    stage: 'pouring',
    what: 'printed',
    from: { fahrenheit: '145' },
    to: { fahrenheit: '145' },
    printed: '145 °F',
    source: 'simmons-appleton-1908',
    where: 'pages 57 and 58',
    statement: 'Cooled to this for scent and filling; narrow frames, so that it cools fast.',
  },
  'holding-tank-us-1995': {
    stage: 'pouring',
    what: 'printed',
    from: { fahrenheit: '150' },
    to: { fahrenheit: '155' },
    printed: '150 to 155 °F',
    source: 'clear-soap-patent-1995',
    where: 'US 5,417,876, example 2',
    statement: 'Held in a tank before it is filled; fatty acids in polyol and surfactant.',
  },
};
