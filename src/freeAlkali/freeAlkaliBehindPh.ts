import { hydroxideMolarMass, alkaliCautions } from '../lye/index.js';
import { frozen, noted, readShape, refuse, type Decimal, type Remark, type Steps } from '../numbers/index.js';
import {
  readAcidity,
  type Acidity,
  type AcidityInput,
  type AlkaliContent,
  type Temperature,
  type TemperatureInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { CAUSTIC_NOT_RULED_OUT, LOW_PH_IS_NOT_SAFE, PH_IS_NO_ASSAY, TEST_BEFORE_SKIN } from './cautions.js';
import { anySoapAtMost, capAtMost } from './data/ph.js';
import { AMINE_READS_AS_ALKALI } from './notes.js';
import { readFlag } from './readFlag.js';
import {
  causticFreeBand,
  hydroxideAt,
  pKwAt,
  readSoapSolution,
  readSolutionTemperature,
  SOLUTION_KEYS,
  type PhBand,
  type SoapSolution,
  type SoapSolutionGiven,
  type SoapSolutionInput,
} from './soapSolution.js';

/** Input of {@link freeAlkaliBehindPh}. */
export interface FreeAlkaliBehindPhInput {
  /** What the meter or strip shows. */
  readonly reading: AcidityInput;
  /** How far the reading may be off, either way: a strip in soap 0.5 to 1, a meter checked with buffers 0.1. */
  readonly error: AcidityInput;
  /** What it was read in; a reading on a wet bar tells nothing, unless it is above what any soap shows. */
  readonly on: SoapSolutionInput | 'wet-bar';
  /** 10 to 50 °C. */
  readonly temperature: TemperatureInput;
  /** Whether the soap holds triethanolamine; not unless stated. */
  readonly triethanolamine?: boolean;
}

/** Where a reading lies against soap without caustic. */
export type PhFinding = 'below-soap' | 'as-soap' | 'above-soap' | 'cannot-tell';

/** Result of {@link freeAlkaliBehindPh}. */
export interface FreeAlkaliBehindPhResult {
  readonly by: 'freeAlkaliBehindPh';
  /** The inputs as read. */
  readonly given: {
    readonly reading: Acidity;
    readonly error: Acidity;
    readonly on: SoapSolutionGiven | 'wet-bar';
    readonly temperature: Temperature;
    readonly triethanolamine: boolean;
  };
  readonly finding: PhFinding;
  /** Free caustic of the soap as weighed is no more than this, if the reading is right; not of a wet bar, nor above 10 %. */
  readonly atMost?: AlkaliContent;
  /** What soap without caustic has at this dilution. */
  readonly band?: PhBand;
  /** What the reading means. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>([
  'arcis-2020',
  'kanicky-2002',
  'iupac-2021',
  'handbooks-recalled',
  'laurate-convention',
  'ghs-naoh',
]);

const note = (code: string, text: string): Remark => frozen({ code, text });
const MEANINGS: Readonly<Record<PhFinding, Remark>> = {
  'below-soap': /* @__PURE__ */ note(
    'lower-than-soap',
    'Lower than soap by itself can be: free acid, detergent, triethanolamine or a bad strip.',
  ),
  'as-soap': /* @__PURE__ */ note(
    'as-soap-without-caustic',
    'As soap shows, with no caustic or with a little: the reading cannot tell which.',
  ),
  'above-soap': /* @__PURE__ */ note(
    'higher-than-soap',
    'Higher than soap shows without caustic: free caustic, carbonate or silicate. Titrate.',
  ),
  'cannot-tell': /* @__PURE__ */ note(
    'reading-tells-nothing',
    'On a wet bar the dilution is not known: dissolve 1 g in 100 mL, or titrate.',
  ),
};
const ABOVE_ANY_SOAP: Remark = /* @__PURE__ */ note(
  'higher-than-any-soap',
  'Higher than any soap shows without caustic, whatever the dilution (11.5, a convention).',
);
const NO_CAP: Remark = /* @__PURE__ */ note(
  'no-cap',
  'A reading so high, with its error, puts no cap worth the name on the caustic: it would be over 10 % (a convention).',
);

/**
 * How much free caustic a pH can have behind it, at most.
 *
 * Formula: charges balance, `f + S = [OH⁻] + [A⁻]` with all soap S at most whole, so free caustic f is no more than [OH⁻]:
 * `w ≤ 100·10^(pH + δ − pKw)/γ·M(NaOH)/c`, with δ the error of the reading, γ by Davies, c the soap as weighed (g/L). It is a cap and
 * no measurement: soap makes hydroxide of its own, and carbonic acid of the air takes some away. The finding compares the
 * reading, with its error, with what soap without caustic shows (`soapSolutionPhFrom`). Above pH 11.5 no soap does, so that this
 * much can be told of a wet bar and of triethanolamine too. A cap over 10 % is left out. Both are conventions.
 *
 * Validity: as there; a solution fresh from boiled water.
 *
 * Source: pKw: Arcis 2020; the band as there.
 *
 * @param input - the reading and its error, what it was read in, the temperature
 * @returns the cap in percent NaOH, and where the reading lies
 * @throws CalculationError `missing`, `bad-shape`, `outside-table` (dilution), `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const behind = freeAlkaliBehindPh({
 *   reading: { pH: 10 },
 *   error: { pH: '0.5' },
 *   on: { soap: { g: 1 }, solution: { mL: 100 } },
 *   temperature: { celsius: 25 },
 * });
 * behind.finding; // => 'as-soap'
 * behind.atMost?.percentNaoh.toFixed(2); // => '0.15'
 * ```
 */
export function freeAlkaliBehindPh(input: FreeAlkaliBehindPhInput): FreeAlkaliBehindPhResult {
  return freeAlkaliBehindPhSteps(input);
}

/** The kernel, with room for the working. */
export function freeAlkaliBehindPhSteps(input: FreeAlkaliBehindPhInput, steps?: Steps): FreeAlkaliBehindPhResult {
  const fields = readShape('input', input, ['reading', 'error', 'on', 'temperature', 'triethanolamine']);
  const reading = readAcidity('reading', fields['reading']);
  const error = readAcidity('error', fields['error'], { min: 0, max: 3 });
  const temperature = readSolutionTemperature(fields['temperature']);
  const triethanolamine = readFlag('triethanolamine', fields['triethanolamine']);
  const solution = readOn(fields['on']);
  const behind = solution === undefined ? undefined : behindReading(reading, error, solution, temperature, steps);
  const aboveAny = reading.minus(error).gt(anySoapAtMost);
  const told = triethanolamine || behind === undefined ? 'cannot-tell' : behind.finding;
  const finding = aboveAny ? 'above-soap' : told;
  return frozen({
    by: 'freeAlkaliBehindPh',
    given: frozen({
      reading: frozen({ pH: reading }),
      error: frozen({ pH: error }),
      on: solution?.given ?? 'wet-bar',
      temperature,
      triethanolamine,
    }),
    finding,
    ...(behind?.atMost === undefined ? {} : { atMost: behind.atMost }),
    ...(behind === undefined ? {} : { band: behind.band }),
    notes: frozen([
      ...(finding === 'cannot-tell' && solution !== undefined ? [] : [MEANINGS[finding]]),
      ...(aboveAny ? [ABOVE_ANY_SOAP] : []),
      ...(triethanolamine ? [AMINE_READS_AS_ALKALI] : []),
      ...(behind !== undefined && behind.atMost === undefined ? [NO_CAP] : []),
    ]),
    cautions: alkaliCautions(
      ...(finding === 'above-soap' ? [CAUSTIC_NOT_RULED_OUT] : []),
      ...(finding === 'below-soap' || finding === 'cannot-tell' ? [LOW_PH_IS_NOT_SAFE] : []),
      PH_IS_NO_ASSAY,
      TEST_BEFORE_SKIN,
    ),
    basis: BASIS,
    edition: EDITION,
  });
}

interface Behind {
  readonly atMost: AlkaliContent | undefined;
  readonly band: PhBand;
  readonly finding: PhFinding;
}

function behindReading(
  reading: Decimal,
  error: Decimal,
  solution: SoapSolution,
  temperature: Temperature,
  steps: Steps | undefined,
): Behind {
  const pKw = noted(steps, 'pKw of water', 'by temperature', 'pH', pKwAt(temperature.celsius));
  const molar = hydroxideAt(reading.plus(error), pKw, solution);
  noted(steps, 'hydroxide in the solution, at most', '10^(pH + δ − pKw)/γ', 'mol/L', molar);
  const share = molar.times(hydroxideMolarMass('naoh')).times(100).div(solution.gramsPerLitre);
  const isCap = share.lte(capAtMost);
  if (isCap) noted(steps, 'free caustic, at most', '100·[OH⁻]·M(NaOH)/c', 'percent NaOH', share);
  const band = causticFreeBand(solution, pKw);
  const below = reading.plus(error).lt(band.low.pH);
  const above = reading.minus(error).gt(band.high.pH);
  return {
    atMost: isCap ? frozen({ percentNaoh: share }) : undefined,
    band,
    finding: below ? 'below-soap' : above ? 'above-soap' : 'as-soap',
  };
}

function readOn(value: unknown): SoapSolution | undefined {
  if (value === 'wet-bar') return undefined;
  if (typeof value === 'string') refuse('bad-shape', 'on', "{ soap, solution }, or 'wet-bar'", value);
  return readSoapSolution('on', readShape('on', value, SOLUTION_KEYS));
}
