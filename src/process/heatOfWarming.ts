import {
  cautionsOfAdditions,
  composedFrom,
  readComposition,
  type ComposedFrom,
  type MadeComposition,
} from '../composition/index.js';
import { alkaliCautions, HOT_SOAP_SCALDS } from '../lye/index.js';
import { frozen, noted, readShape, refuse, type Remark, type Steps } from '../numbers/index.js';
import {
  mapEnds,
  readTemperature,
  type Energy,
  type Estimate,
  type Temperature,
  type TemperatureInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { basisOfHeatCapacity, heatCapacityOf } from './heatCapacityOf.js';
import { HEAT_CAPACITIES_ASIDE, NOTHING_MELTS } from './heatNotes.js';

/** Input of {@link heatOfWarming}. */
export interface HeatOfWarmingInput {
  /** A result of `compositionFrom`, also one read back from JSON. */
  readonly composition: MadeComposition;
  /** 0 to 100 °C. */
  readonly from: TemperatureInput;
  /** At least as warm; to 100 °C. */
  readonly to: TemperatureInput;
}

/** Result of {@link heatOfWarming}. */
export interface HeatOfWarmingResult {
  readonly by: 'heatOfWarming';
  /** The inputs as read. */
  readonly given: { readonly composition: ComposedFrom; readonly from: Temperature; readonly to: Temperature };
  /** Heat the pot takes up; on cooling it gives out as much. */
  readonly heat: Estimate<Energy>;
  /** Heat that warms it by one Celsius degree. */
  readonly heatPerCelsiusDegree: Estimate<Energy>;
  /** What is left out. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Heat that warms a pot from one temperature to another: an estimate.
 *
 * Formula: `Q = Σ m·c·(t₂ − t₁)`, with m each component (kg) and c its heat capacity (kJ/(kg·K)), taken as constant between 25
 * and 60 °C; low and high take those at the ends of what is on file, over all lots and assays. Left out: melting, mixing,
 * evaporation, the vessel, losses.
 *
 * Source: water: Sonntag; polyols and spirits: Zábranský; fats: Fasina and Colley 2008; soap: recalled.
 *
 * @param input - a composition and two temperatures
 * @returns kJ, with bounds
 * @throws CalculationError `out-of-range` for an end below the start, `missing`, `bad-shape` and the faults of a composition or
 *   temperature
 *
 * @example
 * ```ts
 * const soap = soapFromLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 246 }, solution: { hydroxide: { percent: 50 } } }],
 * });
 * const composition = compositionFrom({ soap, additions: [] });
 * const { heat } = heatOfWarming({ composition, from: { celsius: 20 }, to: { celsius: 62 } });
 * heat.likely.kJ.toFixed(0); // => '101'
 * ```
 */
export function heatOfWarming(input: HeatOfWarmingInput): HeatOfWarmingResult {
  return heatOfWarmingSteps(input);
}

/** The kernel, with room for the working. */
export function heatOfWarmingSteps(input: HeatOfWarmingInput, steps?: Steps): HeatOfWarmingResult {
  const fields = readShape('input', input, ['composition', 'from', 'to']);
  const pot = readComposition('composition', fields['composition']);
  const from = readTemperature('from', fields['from'], { min: 0, max: 100 });
  const to = readTemperature('to', fields['to'], { min: 0, max: 100 });
  if (to.lt(from)) refuse('out-of-range', 'to', `at least ${from.toString()} °C`, `${to.toString()} °C`);

  const capacity = heatCapacityOf(pot);
  noted(steps, 'heat that warms it by one Celsius degree, likely', 'Σ m·c', 'kJ', capacity.likely);
  const heat = mapEnds(capacity, (kJ) => kJ.times(to.minus(from)));
  noted(steps, 'heat, low', 'Σ m·c·(t₂ − t₁)', 'kJ', heat.low);
  noted(steps, 'heat, likely', 'Σ m·c·(t₂ − t₁)', 'kJ', heat.likely);
  noted(steps, 'heat, high', 'Σ m·c·(t₂ − t₁)', 'kJ', heat.high);
  return frozen({
    by: 'heatOfWarming',
    given: frozen({
      composition: composedFrom(pot),
      from: frozen({ celsius: from }),
      to: frozen({ celsius: to }),
    }),
    heat: mapEnds(heat, (kJ) => frozen({ kJ })),
    heatPerCelsiusDegree: mapEnds(capacity, (kJ) => frozen({ kJ })),
    notes: frozen([...pot.soap.notes, NOTHING_MELTS, HEAT_CAPACITIES_ASIDE]),
    cautions: alkaliCautions(...cautionsOfAdditions(pot), HOT_SOAP_SCALDS),
    basis: frozen([...new Set<SourceId>([...pot.soap.basis, ...basisOfHeatCapacity(pot), 'ghs-naoh'])]),
    edition: EDITION,
  });
}
