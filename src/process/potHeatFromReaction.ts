import { frozen, noted, ONE, readShape, type Decimal, type Remark, type Steps } from '../numbers/index.js';
import {
  mapEnds,
  type Energy,
  type Estimate,
  type Temperature,
  type TemperatureDifference,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { POT_MAY_BOIL } from './cautions.js';
import { heatOfReaction } from './heatOfReaction.js';
import { ALL_AT_ONCE, DILUTION_NOT_APART, HEAT_CAPACITIES_ASIDE, NO_MEASURED_HEAT } from './heatNotes.js';
import {
  basisOfHeat,
  cautionsOfHeat,
  mixedTemperature,
  readReactingHeat,
  REACTING_HEAT_KEYS,
  type ReactingHeatGiven,
  type ReactingHeatInput,
} from './reactingHeat.js';

/** Input of {@link potHeatFromReaction}. */
export type PotHeatFromReactionInput = ReactingHeatInput;

/** Result of {@link potHeatFromReaction}. */
export interface PotHeatFromReactionResult {
  readonly by: 'potHeatFromReaction';
  /** The inputs as read. */
  readonly given: ReactingHeatGiven;
  /** Heat given out when all of it has reacted. */
  readonly heat: Estimate<Energy>;
  /** Heat that warms the pot by one Celsius degree when all has reacted. */
  readonly heatPerCelsiusDegree: Estimate<Energy>;
  /** Pot and lye together, before anything reacts. */
  readonly mixed: Estimate<Temperature>;
  /** How far the pot lifts itself. */
  readonly rise: Estimate<TemperatureDifference>;
  /** Where that ends, if nothing boils and nothing is lost. */
  readonly final: Estimate<Temperature>;
  /** How far the figures can be trusted. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/** From here on the pot foams, °C. */
const WATER_BOILS = 100;

/**
 * How far a pot heats itself when its fats and lye react all at once: an estimate, with wide bounds.
 *
 * Formula: `Q = min(A, a)·q(acid) + min(max(A − a, 0), g)·q(ester)`, with A hydroxide, a free acid, g esters (mol); rise
 * `Q/Σ m·c` of the pot that has reacted; start: pot and lye mixed by their heat capacities.
 *
 * q(ester): 35.6 to 77.5 kJ/mol, likely 54.3; of coconut oil 160 to 350 kJ/kg. q(acid): 55.8 to 77.5, likely 57.5. Low and
 * high take the lots, assays and heat capacities that suit each. Left out: losses, melting, evaporation, the heat of diluting
 * the lye by itself, carbonate.
 *
 * Source: no measured heat of a fat. Model esters and acids: CRC Handbook, enthalpies of formation; high end recalled. Heat
 * capacities: Zábranský; Fasina and Colley 2008; that of soap recalled.
 *
 * @param input - fats, lye and what is in the pot with the fats, by mass; temperatures of pot and lye
 * @returns kJ, Celsius degrees and °C, each with bounds
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` and the faults of a fat, source or quantity
 *
 * @example
 * ```ts
 * const { rise } = potHeatFromReaction({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 246 }, solution: { hydroxide: { percent: 50 } } }],
 *   start: { pot: { celsius: 50 }, lye: { celsius: 25 } },
 * });
 * [rise.low, rise.likely, rise.high].map(({ celsiusDegrees }) => celsiusDegrees.toFixed(0)); // => ['44', '69', '118']
 * ```
 */
export function potHeatFromReaction(input: PotHeatFromReactionInput): PotHeatFromReactionResult {
  return potHeatFromReactionSteps(input);
}

/** The kernel, with room for the working. */
export function potHeatFromReactionSteps(input: PotHeatFromReactionInput, steps?: Steps): PotHeatFromReactionResult {
  const pot = readReactingHeat(readShape('input', input, REACTING_HEAT_KEYS), steps);
  const { before, lye, after } = pot.heatCapacity;
  const heat = heatOfReaction(pot.meeting, ONE);
  const mixed = mixedTemperature(
    { heatCapacity: before, celsius: pot.start.pot },
    { heatCapacity: lye, celsius: pot.start.lye },
  );
  const rise = frozen({
    low: heat.low.div(after.high),
    likely: heat.likely.div(after.likely),
    high: heat.high.div(after.low),
  });
  const final = frozen({
    low: mixed.low.plus(rise.low),
    likely: mixed.likely.plus(rise.likely),
    high: mixed.high.plus(rise.high),
  });
  noteEnds(steps, 'heat given out', 'Q = min(A, a)·q(acid) + min(max(A − a, 0), g)·q(ester)', 'kJ', heat);
  noteEnds(steps, 'heat that warms the pot by one Celsius degree', 'Σ m·c', 'kJ', after);
  noteEnds(steps, 'pot and lye mixed', 'Σ m·c·t / Σ m·c', '°C', mixed);
  noteEnds(steps, 'rise', 'Q / Σ m·c', 'Celsius degrees', rise);
  noteEnds(steps, 'end', 'mixed + rise', '°C', final);
  return frozen({
    by: 'potHeatFromReaction',
    given: pot.given,
    heat: mapEnds(heat, (kJ) => frozen({ kJ })),
    heatPerCelsiusDegree: mapEnds(after, (kJ) => frozen({ kJ })),
    mixed: mapEnds(mixed, (celsius) => frozen({ celsius })),
    rise: mapEnds(rise, (celsiusDegrees) => frozen({ celsiusDegrees })),
    final: mapEnds(final, (celsius) => frozen({ celsius })),
    notes: frozen([...pot.soap.notes, NO_MEASURED_HEAT, ALL_AT_ONCE, DILUTION_NOT_APART, HEAT_CAPACITIES_ASIDE]),
    cautions: cautionsOfHeat(pot, ...(final.high.gte(WATER_BOILS) ? [POT_MAY_BOIL] : [])),
    basis: basisOfHeat(pot),
    edition: EDITION,
  });
}

function noteEnds(
  steps: Steps | undefined,
  figure: string,
  formula: string,
  unit: string,
  { low, likely, high }: Estimate<Decimal>,
): void {
  noted(steps, `${figure}, low`, formula, unit, low);
  noted(steps, `${figure}, likely`, formula, unit, likely);
  noted(steps, `${figure}, high`, formula, unit, high);
}
