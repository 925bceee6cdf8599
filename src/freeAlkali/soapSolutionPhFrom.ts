import { frozen, noted, readShape, type Remark, type Steps } from '../numbers/index.js';
import type { Temperature, TemperatureInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import {
  causticFreeBand,
  pKwAt,
  readSoapSolution,
  readSolutionTemperature,
  SOLUTION_KEYS,
  type PhBand,
  type SoapSolutionGiven,
  type SoapSolutionInput,
} from './soapSolution.js';

/** Input of {@link soapSolutionPhFrom}. */
export interface SoapSolutionPhFromInput extends SoapSolutionInput {
  /** 10 to 50 °C. */
  readonly temperature: TemperatureInput;
}

/** Result of {@link soapSolutionPhFrom}. */
export interface SoapSolutionPhFromResult {
  readonly by: 'soapSolutionPhFrom';
  /** The inputs as read. */
  readonly given: SoapSolutionGiven & { readonly temperature: Temperature };
  /** Between these a soap without free caustic lies, and without free acid. */
  readonly ph: PhBand;
  /** What the band is not. */
  readonly notes: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>([
  'arcis-2020',
  'kanicky-2002',
  'handbooks-recalled',
  'laurate-convention',
]);
const NO_TEST_OF_CAUSTIC: Remark = /* @__PURE__ */ frozen({
  code: 'band-is-no-test',
  text: 'A pH within the band does not show that caustic is absent: a little of it lifts the pH no further than soap of another chain does.',
});

/**
 * The band of pH that soap without free caustic has in water.
 *
 * Formula: `x² + K·x = K·c + Kw`, `K = Kw/Ka`, `pH = pKw + lg(γ·x)`, with c the soap and x the hydroxide (mol/L), γ by Davies. The low
 * end is fatty acid as single molecules, pKa 4.8, at the least moles that the soap may be; the high end the most that pKa
 * appears to be where acid and soap associate, 8.5 (a convention), at the most moles.
 *
 * Validity: 1 to 100 g of soap to a litre, 10 to 50 °C; pKa of 25 °C. Soap of soda and potash, laurate to stearate; no
 * triethanolamine, no detergent, no carbonate, no carbonic acid of the air.
 *
 * Source: pKw: Arcis 2020; pKa: Kanicky and Shah 2002 for soap, recalled for single molecules.
 *
 * @param input - soap and what it was made up to; its content of anhydrous soap; the temperature
 * @returns the lowest and the highest pH
 * @throws CalculationError `outside-table` (dilution), `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const { ph } = soapSolutionPhFrom({ soap: { g: 1 }, solution: { mL: 100 }, temperature: { celsius: 25 } });
 * [ph.low.pH.toFixed(1), ph.high.pH.toFixed(1)]; // => ['8.3', '10.5']
 * ```
 */
export function soapSolutionPhFrom(input: SoapSolutionPhFromInput): SoapSolutionPhFromResult {
  return soapSolutionPhFromSteps(input);
}

/** The kernel, with room for the working. */
export function soapSolutionPhFromSteps(input: SoapSolutionPhFromInput, steps?: Steps): SoapSolutionPhFromResult {
  const fields = readShape('input', input, [...SOLUTION_KEYS, 'temperature']);
  const solution = readSoapSolution('', fields);
  const temperature = readSolutionTemperature(fields['temperature']);
  const pKw = noted(steps, 'pKw of water', 'by temperature', 'pH', pKwAt(temperature.celsius));
  noted(steps, 'soap, least', 'g/(M·L)', 'mol/L', solution.molar.low);
  noted(steps, 'soap, most', 'g/(M·L)', 'mol/L', solution.molar.high);
  const ph = causticFreeBand(solution, pKw);
  noted(steps, 'pH, least', 'pKw + lg(γ·x) at pKa 4.8', 'pH', ph.low.pH);
  noted(steps, 'pH, most', 'pKw + lg(γ·x) at pKa 8.5', 'pH', ph.high.pH);
  return frozen({
    by: 'soapSolutionPhFrom',
    given: frozen({ ...solution.given, temperature }),
    ph,
    notes: frozen([NO_TEST_OF_CAUSTIC]),
    basis: BASIS,
    edition: EDITION,
  });
}
