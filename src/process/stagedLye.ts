import { Decimal, frozen, noted, readShape, refuse, toStep, ZERO, type Remark, type Steps } from '../numbers/index.js';
import {
  readOptionalMass,
  readTemperature,
  splitToStep,
  type Estimate,
  type Mass,
  type MassInput,
  type Temperature,
  type TemperatureInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { heatOfReaction, mostHeatPerMol } from './heatOfReaction.js';
import { DILUTION_NOT_APART, HEAT_CAPACITIES_ASIDE, NO_MEASURED_HEAT } from './heatNotes.js';
import { judgingWindow } from './processWindows.js';
import {
  basisOfHeat,
  cautionsOfHeat,
  mixedTemperature,
  readReactingHeat,
  REACTING_HEAT_KEYS,
  type ReactingHeat,
  type ReactingHeatGiven,
  type ReactingHeatInput,
} from './reactingHeat.js';

/** Input of {@link stagedLye}. */
export interface StagedLyeInput extends ReactingHeatInput {
  /** What the pot is not to pass; 65 °C unless given, the end of the usual window. */
  readonly ceiling?: TemperatureInput;
  /** What the scale shows: every portion is a whole multiple of it. Unrounded without. */
  readonly scaleStep?: MassInput;
}

/** A portion of lye. */
export interface LyePortion {
  readonly mass: Mass;
  /** Where the pot is likely to come to with it, from the start. */
  readonly reaches: Temperature;
  /** Where it comes to at the most, with the highest heat and the lowest heat capacities. */
  readonly reachesAtMost: Temperature;
}

/** Result of {@link stagedLye}. */
export interface StagedLyeResult {
  readonly by: 'stagedLye';
  /** The inputs as read. */
  readonly given: ReactingHeatGiven & { readonly ceiling: Temperature; readonly scaleStep?: Mass };
  /** In the order they go in, of equal size but for the step of the scale. */
  readonly portions: readonly LyePortion[];
  /** Alkalis and water together. */
  readonly lye: Mass;
  /** What the step of the scale leaves out; nothing without one. */
  readonly leftOver: Mass;
  /** What it rests on. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/** More portions than this nobody waits for: the start is too near the ceiling. */
const MOST_PORTIONS = 100;

const BROUGHT_BACK: Remark = /* @__PURE__ */ frozen({
  code: 'brought-back-between-portions',
  text: 'Each portion is taken to have reacted completely, and the pot to have been brought back to its start, before the next goes in. Without both the heat adds up. That a portion has reacted shows when the pot has risen and falls again by itself.',
});

/**
 * Into how many equal portions the lye has to be parted so that none of them lifts the pot above a ceiling, even if it
 * gives out the most heat that is on file.
 *
 * Formula: with a share s of the lye in the pot, a portion f of it first mixes to
 * `t = (C(s)·t₀ + f·C(lye)·t(lye))/(C(s) + f·C(lye))`, then reacts and adds `Q(f)/C(s + f)`; C goes on a straight line from
 * that of fats and additions to that of the pot when all has reacted. At the most: `Q = min(f·A, a + g)·q`, q 77.5 kJ/mol,
 * with the lowest heat capacities. The least number of portions that keep this at or below the ceiling, after rounding, is
 * given. The first portion, in the least pot, is what counts.
 *
 * Source: as `potHeatFromReaction`; the ceiling is common practice.
 *
 * @param input - as `potHeatFromReaction`, with a ceiling and the step of the scale
 * @returns portions of lye in grams, and where each brings the pot
 * @throws CalculationError `infeasible` for a start at or above the ceiling, for one that would need more than 100 portions,
 *   and for a step too coarse; and the faults of `potHeatFromReaction`
 *
 * @example
 * ```ts
 * const { portions } = stagedLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 246 }, solution: { hydroxide: { percent: 50 } } }],
 *   start: { pot: { celsius: 45 }, lye: { celsius: 25 } },
 *   scaleStep: { g: 1 },
 * });
 * portions.map(({ mass }) => mass.g.toString()); // => ['25', '25', '25', '25', '25', '25', '24', '24', '24', '24']
 * portions[0]?.reachesAtMost.celsius.toFixed(0); // => '63'
 * ```
 */
export function stagedLye(input: StagedLyeInput): StagedLyeResult {
  return stagedLyeSteps(input);
}

/** The kernel, with room for the working. */
export function stagedLyeSteps(input: StagedLyeInput, steps?: Steps): StagedLyeResult {
  const fields = readShape('input', input, [...REACTING_HEAT_KEYS, 'ceiling', 'scaleStep']);
  const pot = readReactingHeat(fields, steps);
  const ceiling = readTemperature('ceiling', fields['ceiling'] ?? judgingWindow('saponification-usual').to, {
    min: 0,
    max: 100,
  });
  const scaleStep = readOptionalMass('scaleStep', fields['scaleStep'], { above: 0 });
  if (pot.start.pot.gte(ceiling)) {
    refuse(
      'infeasible',
      'start.pot',
      `below the ceiling of ${ceiling.toString()} °C`,
      `${pot.start.pot.toString()} °C`,
    );
  }
  const weighed = scaleStep === undefined ? pot.lyeGrams : toStep(pot.lyeGrams, scaleStep, 'down');
  const portions = fewestPortions(pot, { weighed, ceiling, scaleStep });
  for (const [at, { mass, reaches, reachesAtMost }] of portions.entries()) {
    const portion = `portion ${String(at + 1)}`;
    noted(steps, portion, 'm(lye)/N, to the step', 'g', mass.g);
    noted(steps, `${portion}: likely to reach`, 'mixed + Q(f)/C(s + f)', '°C', reaches.celsius);
    noted(steps, `${portion}: reaches at the most`, 'mixed + Q(f)/C(s + f)', '°C', reachesAtMost.celsius);
  }
  return frozen({
    by: 'stagedLye',
    given: frozen({
      ...pot.given,
      ceiling: frozen({ celsius: ceiling }),
      ...(scaleStep === undefined ? {} : { scaleStep: frozen({ g: scaleStep }) }),
    }),
    portions: frozen(portions),
    lye: frozen({ g: pot.lyeGrams }),
    leftOver: frozen({ g: pot.lyeGrams.minus(weighed) }),
    notes: frozen([...pot.soap.notes, BROUGHT_BACK, NO_MEASURED_HEAT, DILUTION_NOT_APART, HEAT_CAPACITIES_ASIDE]),
    cautions: cautionsOfHeat(pot),
    basis: frozen([...new Set<SourceId>([...basisOfHeat(pot), 'common-practice'])]),
    edition: EDITION,
  });
}

interface Asked {
  /** Lye to be parted, grams. */
  readonly weighed: Decimal;
  readonly ceiling: Decimal;
  readonly scaleStep: Decimal | undefined;
}

function fewestPortions(pot: ReactingHeat, { weighed, ceiling, scaleStep }: Asked): readonly LyePortion[] {
  for (let count = 1; count <= MOST_PORTIONS; count += 1) {
    const equal = Array.from({ length: count }, () => frozen({ g: weighed.div(count) }));
    const masses = scaleStep === undefined ? equal : splitToStep(equal, { g: scaleStep });
    if (masses.some(({ g }) => g.isZero())) {
      refuse('infeasible', 'scaleStep', 'a step fine enough for the portions', `${String(scaleStep)} g`);
    }
    const portions = portionsBelow(pot, masses, ceiling);
    if (portions !== undefined) return portions;
  }
  const expected = `so far below the ceiling of ${ceiling.toString()} °C that ${String(MOST_PORTIONS)} portions are enough`;
  return refuse('infeasible', 'start.pot', expected, `${pot.start.pot.toString()} °C`);
}

/** The portions with what each comes to, or none where one of them passes the ceiling. */
function portionsBelow(
  pot: ReactingHeat,
  masses: readonly Mass[],
  ceiling: Decimal,
): readonly LyePortion[] | undefined {
  const portions: LyePortion[] = [];
  let before = ZERO;
  for (const mass of masses) {
    const portion = mass.g.div(pot.lyeGrams);
    const { likely, high } = reached(pot, before, portion);
    if (high.gt(ceiling)) return undefined;
    portions.push(frozen({ mass, reaches: frozen({ celsius: likely }), reachesAtMost: frozen({ celsius: high }) }));
    before = before.plus(portion);
  }
  return portions;
}

/** Where a portion brings the pot in which a share of the lye has reacted before, °C. */
function reached(pot: ReactingHeat, before: Decimal, portion: Decimal): Pick<Estimate<Decimal>, 'likely' | 'high'> {
  const { lye } = pot.heatCapacity;
  const after = before.plus(portion);
  const mixed = mixedTemperature(
    { heatCapacity: heatCapacityWith(pot, before), celsius: pot.start.pot },
    { heatCapacity: lye.times(portion), celsius: pot.start.lye },
  );
  const { likely, low } = heatCapacityWith(pot, after);
  const { hydroxide, freeAcid, esters } = pot.meeting;
  const heat = heatOfReaction(pot.meeting, after).likely.minus(heatOfReaction(pot.meeting, before).likely);
  // over all lots: as if none of what takes up hydroxide were used up before
  const most = Decimal.min(hydroxide.high.times(portion), freeAcid.high.plus(esters.high)).times(mostHeatPerMol());
  return { likely: mixed.likely.plus(heat.div(likely)), high: mixed.high.plus(most.div(low)) };
}

/** Of a pot with a share of the lye in it that has reacted, kJ/K. */
function heatCapacityWith({ heatCapacity: { before, after } }: ReactingHeat, share: Decimal): Estimate<Decimal> {
  const at = (end: keyof Estimate<unknown>): Decimal => before[end].plus(after[end].minus(before[end]).times(share));
  return frozen({ low: at('low'), likely: at('likely'), high: at('high') });
}
