/**
 * What the live page says of its form: the plan of `planLye` as text. No document is touched here, so that the test of the
 * page can say the same of the same input.
 */
import {
  compositionFrom,
  fat,
  isCalculationError,
  planLye,
  soapFromLye,
  sources,
  type Decimal,
  type Estimate,
  type LyePlan,
  type Mass,
  type PlanLyeInput,
} from 'laurate';
import { compositionChartOf, lotVariationChartOf, type Chart } from 'laurate/reports';

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
  readonly charts: readonly Chart[];
}

/** What the library refused: the field, and why in words. */
export interface Refused {
  readonly path: string;
  readonly text: string;
}

type Source = Pick<Entry, 'state' | 'hydroxide'>;
function sourceOf({ state, hydroxide: percent }: Source) {
  const hydroxide = { percent };
  return state === 'solution' ? { solution: { hydroxide } } : { solid: { hydroxide } };
}

/** The input of `planLye` that a form stands for. */
export function inputOf(entry: Entry): PlanLyeInput {
  const source = sourceOf(entry);
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

/** The charts of a plan: what lots do to it, and what is in the pot when lye and fats have reacted. */
function chartsOf(plan: LyePlan, { alkali, ...source }: Pick<Entry, 'alkali'> & Source): readonly Chart[] {
  const { [alkali]: mass, water } = weighed(plan);
  if (mass === undefined || water === undefined) return [];
  const soap = soapFromLye({ fats: plan.given.fats, lye: [{ alkali, mass, ...sourceOf(source) }], water });
  return [lotVariationChartOf(plan), compositionChartOf(compositionFrom({ soap, additions: [] }))];
}

const weighed = ({ weigh }: LyePlan): Partial<Record<string, Mass>> => weigh;

/** The plan of a form as the page shows it. */
export function shownOf(plan: LyePlan, { alkali, state, hydroxide }: Pick<Entry, 'alkali'> & Source): Shown {
  const { naoh, koh, water } = weighed(plan);
  const grams = (id: string, label: string, mass: Mass | undefined) =>
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
    charts: chartsOf(plan, { alkali, state, hydroxide }),
  };
}

/** What is shown of a form, or what the library refused of it. Any other error is a fault and is thrown on. */
export function answerTo(entry: Entry): { readonly shown: Shown } | { readonly refused: Refused } {
  try {
    return { shown: shownOf(planLye(inputOf(entry)), entry) };
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    const { path, expected, received } = error;
    return { refused: { path, text: `Expected ${expected}; this is ${received}.` } };
  }
}
