import { SPIRIT_CATCHES_FIRE } from '../composition/index.js';
import { alkaliCautions, HOT_SOAP_SCALDS } from '../lye/index.js';
import {
  Decimal,
  frozen,
  noted,
  onStraightLines,
  readShape,
  readWord,
  refuse,
  type Remark,
  type Steps,
} from '../numbers/index.js';
import {
  readMass,
  readTemperature,
  type Energy,
  type Mass,
  type MassInput,
  type Temperature,
  type TemperatureInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { evaporation, type EvaporatingSolvent } from './data/heats.js';

/** Input of {@link heatOfEvaporation}. */
export interface HeatOfEvaporationInput {
  /** What evaporates. */
  readonly solvent: EvaporatingSolvent;
  readonly mass: MassInput;
  /** Temperature at which it leaves the pot: 20 to 100 °C of water, to 78.3 °C of ethanol. */
  readonly temperature: TemperatureInput;
}

/** Result of {@link heatOfEvaporation}. */
export interface HeatOfEvaporationResult {
  readonly by: 'heatOfEvaporation';
  /** The inputs as read. */
  readonly given: { readonly solvent: EvaporatingSolvent; readonly mass: Mass; readonly temperature: Temperature };
  /** Heat taken up. */
  readonly heat: Energy;
  /** What is left out. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const AS_IF_ALONE: Remark = /* @__PURE__ */ frozen({
  code: 'as-if-alone',
  text: 'The heat is that of the pure liquid. Out of soap and polyols it takes somewhat more to leave, for which no figure is on file; warming the pot to that temperature comes on top.',
});

/**
 * Heat that water or spirit takes up when it evaporates: what a pot has to be given to lose it, or loses with it.
 *
 * Formula: `Q = m·r(t)`, with r the heat of evaporation (kJ/kg) on straight lines between tabulated temperatures, good to
 * 0.1 %. Nothing beyond the table is told.
 *
 * Source: VDI Heat Atlas, enthalpies of vaporization, equation evaluated.
 *
 * @param input - what evaporates, its mass, and the temperature it leaves at
 * @returns kJ
 * @throws CalculationError `outside-table` for a temperature beyond the table, `missing`, `bad-shape` and the faults of a
 *   quantity
 *
 * @example
 * ```ts
 * const { heat } = heatOfEvaporation({ solvent: 'water', mass: { g: 100 }, temperature: { celsius: 80 } });
 * heat.kJ.toFixed(1); // => '230.7'
 * ```
 */
export function heatOfEvaporation(input: HeatOfEvaporationInput): HeatOfEvaporationResult {
  return heatOfEvaporationSteps(input);
}

/** The kernel, with room for the working. */
export function heatOfEvaporationSteps(input: HeatOfEvaporationInput, steps?: Steps): HeatOfEvaporationResult {
  const fields = readShape('input', input, ['solvent', 'mass', 'temperature']);
  const solvent = readWord('solvent', fields['solvent'], ['water', 'ethanol']);
  const mass = readMass('mass', fields['mass']);
  const temperature = readTemperature('temperature', fields['temperature']);
  const perKg = noted(steps, 'heat of evaporation', 'r(t), tabulated', 'kJ/kg', heatPerKg(solvent, temperature));
  const heat = noted(steps, 'heat taken up', 'm·r', 'kJ', mass.times(perKg).div(1000));
  return frozen({
    by: 'heatOfEvaporation',
    given: frozen({ solvent, mass: frozen({ g: mass }), temperature: frozen({ celsius: temperature }) }),
    heat: frozen({ kJ: heat }),
    notes: frozen([AS_IF_ALONE]),
    cautions: alkaliCautions(...(solvent === 'ethanol' ? [SPIRIT_CATCHES_FIRE] : []), HOT_SOAP_SCALDS),
    basis: frozen<readonly SourceId[]>(['vdi-evaporation', 'ghs-naoh']),
    edition: EDITION,
  });
}

function heatPerKg(solvent: EvaporatingSolvent, celsius: Decimal): Decimal {
  const knots = evaporation()[solvent].map(([x, y]) => ({ x: new Decimal(x), y: new Decimal(y) }));
  const tabulated = knots.map(({ x }) => x);
  const [coldest, hottest] = [Decimal.min(...tabulated), Decimal.max(...tabulated)];
  if (celsius.lt(coldest) || celsius.gt(hottest)) {
    const table = `${coldest.toString()} to ${hottest.toString()} °C for ${solvent}`;
    refuse('outside-table', 'temperature', table, `${celsius.toString()} °C`);
  }
  return onStraightLines(knots, celsius);
}
