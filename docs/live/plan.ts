/**
 * What the live page says of its form: the plan of `planLye` as text. No document is touched here, so that the test of the
 * page can say the same of the same input.
 */
import {
  fat,
  isCalculationError,
  planLye,
  sources,
  type Decimal,
  type Estimate,
  type LyePlan,
  type PlanLyeInput,
} from 'laurate';

/** The form as it is filled in; figures as they were typed. */
export interface Entry {
  readonly fats: readonly { readonly fat: string; readonly grams: string }[];
  readonly alkali: 'naoh' | 'koh';
  readonly state: 'solution' | 'solid';
  /** Hydroxide in the alkali as weighed, percent. */
  readonly hydroxide: string;
  readonly superfat: string;
  /** Strength of the diluted lye, percent. */
  readonly strength: string;
  readonly scaleStep: string;
}

/** One line of the account: its name in the page, what it is, and the text of low, likely and high. */
export interface SpreadRow extends Estimate<string> {
  readonly id: string;
  readonly label: string;
}

/** Everything the page shows of a plan. */
export interface Shown {
  readonly weigh: readonly { readonly id: string; readonly label: string; readonly text: string }[];
  readonly spread: readonly SpreadRow[];
  readonly cautions: readonly string[];
  readonly notes: readonly string[];
  readonly sources: readonly string[];
}

/** What the library refused: the field, and why in words. */
export interface Refused {
  readonly path: string;
  readonly text: string;
}

/** The input of `planLye` that a form stands for. */
export function inputOf(entry: Entry): PlanLyeInput {
  const hydroxide = { percent: entry.hydroxide };
  const source = entry.state === 'solution' ? { solution: { hydroxide } } : { solid: { hydroxide } };
  return {
    fats: entry.fats.map(({ fat: name, grams }) => ({ fat: fat(name), mass: { g: grams } })),
    alkali: entry.alkali === 'naoh' ? { naoh: source } : { koh: source },
    target: { superfat: { percent: entry.superfat } },
    dilution: { strength: { percent: entry.strength } },
    scaleStep: { g: entry.scaleStep },
  };
}

/** Bounds are rounded outward, so that the page promises none that the library does not. */
const UP = 2;
const DOWN = 3;
const PLACES = 1;
function outward({ low, likely, high }: Estimate<Decimal>): Estimate<string> {
  const text = likely.toFixed(PLACES);
  if (low.eq(high)) return { low: text, likely: text, high: text };
  return { low: low.toFixed(PLACES, DOWN), likely: text, high: high.toFixed(PLACES, UP) };
}

/** Free caustic always goes up: only what is nothing reads as none. */
const caustic = (percent: Decimal): string => (percent.isZero() ? 'none' : percent.toFixed(2, UP));

const ALKALI = {
  naoh: { solution: 'sodium hydroxide lye', solid: 'sodium hydroxide, solid' },
  koh: { solution: 'potassium hydroxide lye', solid: 'potassium hydroxide, solid' },
} as const;

/** The plan of a form as the page shows it. */
export function shownOf(plan: LyePlan, { alkali, state }: Pick<Entry, 'alkali' | 'state'>): Shown {
  const { naoh, koh, water } = plan.weigh as Partial<Record<string, { readonly g: Decimal }>>;
  const grams = (id: string, label: string, mass: { readonly g: Decimal } | undefined) =>
    mass === undefined ? [] : [{ id, label, text: `${mass.g.toFixed()} g` }];
  const percents = (id: string, label: string, estimate: Estimate<{ readonly percent: Decimal }>): SpreadRow => {
    const { low, likely, high } = estimate;
    return { id, label, ...outward({ low: low.percent, likely: likely.percent, high: high.percent }) };
  };
  const { low, likely, high } = plan.freeCausticAlkali;
  return {
    weigh: [
      ...grams('weigh-naoh', ALKALI.naoh[state], naoh),
      ...grams('weigh-koh', ALKALI.koh[state], koh),
      ...grams('weigh-water', 'water to add', water),
      ...grams('lye-mass', 'together, the lye for the pot', plan.lye.mass),
    ],
    spread: [
      percents('spread-superfat', 'superfat, % of the alkali demand', plan.superfat),
      percents('spread-superfat-by-mass', 'fat left, % of the fats', plan.superfatByMass),
      {
        id: 'spread-free-caustic',
        label: 'free caustic, % NaOH of fats, lye and water',
        low: caustic(low.percentNaoh),
        likely: caustic(likely.percentNaoh),
        high: caustic(high.percentNaoh),
      },
      percents('spread-strength', `strength of the lye, % ${alkali === 'naoh' ? 'NaOH' : 'KOH'}`, plan.lye.strength),
    ],
    cautions: plan.cautions.map(({ text }) => text),
    notes: plan.notes.map(({ text }) => text),
    sources: sources(plan.basis).map(({ title, edition }) => `${title}; ${edition}`),
  };
}

/** What is shown of a form, or what the library refused of it. Any other error is a fault and is thrown on. */
export function answerTo(entry: Entry): { readonly shown: Shown } | { readonly refused: Refused } {
  try {
    return { shown: shownOf(planLye(inputOf(entry)), entry) };
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    const { path, expected, received } = error;
    return { refused: { path, text: `Expected ${expected}; this is ${received === '' ? 'empty' : received}.` } };
  }
}
