import { frozen, type Remark } from '../numbers/index.js';
import type { JudgingWindowId } from './data/processWindows.js';
import type { WorkStage } from './stage.js';

/** How the readings of a stage stand to its windows. */
export type StageVerdict =
  /** None beyond the usual window. */
  | 'within'
  /** Beyond the usual window, within the tolerable one. */
  | 'tolerable'
  | 'too-hot'
  | 'too-cold'
  /** No window is known for the stage. */
  | 'cannot-tell';

/** The windows that judge each stage. */
export const windowsOfStage: Readonly<Record<WorkStage, readonly JudgingWindowId[]>> = {
  lye: [],
  saponification: ['saponification-usual', 'saponification-tolerable'],
  clearing: ['clearing-usual'],
  pouring: ['pouring-usual'],
};

const meaning = (code: string, text: string): Remark => frozen({ code, text });

const WITHIN = /* @__PURE__ */ meaning('as-usual', 'Where the trade works, as far as the readings tell.');
const NO_WINDOW = /* @__PURE__ */ meaning(
  'no-window-known',
  'No window of temperature is known for the lye by itself: how hot it gets when it is made is told by lyeTemperatureFromDissolving.',
);
const WARMER_THAN_USUAL = /* @__PURE__ */ meaning(
  'warmer-than-usual',
  'Warmer than usual, still tolerable: cool the pot or add the rest of the lye more slowly.',
);
const DARKENS = /* @__PURE__ */ meaning(
  'darkens',
  'Hotter than the trade tolerates while fat is saponified: the base darkens. How much, in what time, is published nowhere.',
);
const DARKENS_ONCE_CLEARED = /* @__PURE__ */ meaning(
  'darkens-once-cleared',
  'Hotter than usual once sorbitol is in: the base may darken. Before the sorbitol the window is that of saponification; bases from fatty acids are printed hotter.',
);
const POURED_HOT = /* @__PURE__ */ meaning(
  'poured-hot',
  'Hotter than it is usually poured: scent is driven off and the bar sets more slowly. What that does to its clarity is published nowhere.',
);
const SETS_FIRST = /* @__PURE__ */ meaning(
  'sets-before-it-is-poured',
  'Cooler than it is usually poured: it may set in the pot, or in the mould before the bubbles have risen. Where yours sets, only your own test tells.',
);

/** What a verdict means at a stage. */
export function meaningOf(stage: WorkStage, verdict: StageVerdict): Remark {
  switch (verdict) {
    case 'within':
      return WITHIN;
    case 'tolerable':
      return WARMER_THAN_USUAL;
    case 'too-cold':
      return SETS_FIRST;
    case 'cannot-tell':
      return NO_WINDOW;
    case 'too-hot':
      if (stage === 'pouring') return POURED_HOT;
      return stage === 'clearing' ? DARKENS_ONCE_CLEARED : DARKENS;
  }
}
