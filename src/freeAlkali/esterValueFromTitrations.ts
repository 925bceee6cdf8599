import { frozen, noted, readShape, refuse, ZERO, type Decimal, type Steps } from '../numbers/index.js';
import {
  readSaponificationValue,
  type SaponificationValue,
  type SaponificationValueInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { readTest } from './measured.js';

/** Input of {@link esterValueFromTitrations}; the results of the two titrations fit as they are. */
export interface EsterValueFromTitrationsInput {
  readonly saponification: {
    readonly saponificationValue: SaponificationValueInput;
    readonly standardUncertainty?: SaponificationValueInput;
  };
  readonly acid: {
    readonly acidValue: SaponificationValueInput;
    readonly standardUncertainty?: SaponificationValueInput;
  };
}

/** Result of {@link esterValueFromTitrations}. */
export interface EsterValueFromTitrationsResult {
  readonly by: 'esterValueFromTitrations';
  /** The inputs as read. */
  readonly given: {
    readonly saponification: {
      readonly saponificationValue: SaponificationValue;
      readonly standardUncertainty: SaponificationValue;
    };
    readonly acid: { readonly acidValue: SaponificationValue; readonly standardUncertainty: SaponificationValue };
  };
  /** Alkali that the esters of one gram take. */
  readonly esterValue: SaponificationValue;
  readonly standardUncertainty: SaponificationValue;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iso-3657', 'iso-660']);
const ANY_VALUE = { min: 0, max: 1000 };

/**
 * Ester value of a fat: what is left of its saponification value once the free acid is taken off.
 *
 * Formula: `EV = SV − AV`, `u = √(u²(SV) + u²(AV))`, all in mg KOH/g.
 *
 * Source: ISO 3657 and ISO 660.
 *
 * @param input - the two values, each with its standard uncertainty where that is known
 * @returns mg KOH/g
 * @throws CalculationError `missing`, `out-of-range` (an acid value above the saponification value) and the faults of a
 * quantity
 *
 * @example
 * ```ts
 * const { esterValue } = esterValueFromTitrations({
 *   saponification: { saponificationValue: { mgKohPerG: '196.6' } },
 *   acid: { acidValue: { mgKohPerG: '15.3' } },
 * });
 * esterValue.mgKohPerG; // => '181.3'
 * ```
 */
export function esterValueFromTitrations(input: EsterValueFromTitrationsInput): EsterValueFromTitrationsResult {
  return esterValueFromTitrationsSteps(input);
}

/** The kernel, with room for the working. */
export function esterValueFromTitrationsSteps(
  input: EsterValueFromTitrationsInput,
  steps?: Steps,
): EsterValueFromTitrationsResult {
  const fields = readShape('input', input, ['saponification', 'acid']);
  const whole = readTest(
    'saponification',
    fields['saponification'],
    ['saponificationValue', 'standardUncertainty'],
    ['saponificationValueFromTitration'],
  );
  const part = readTest('acid', fields['acid'], ['acidValue', 'standardUncertainty'], ['acidValueFromTitration']);
  const read = (path: string, value: unknown): Decimal => readSaponificationValue(path, value, ANY_VALUE);
  const optional = (path: string, value: unknown): Decimal => (value === undefined ? ZERO : read(path, value));
  const saponificationValue = read('saponification.saponificationValue', whole['saponificationValue']);
  const acidValue = read('acid.acidValue', part['acidValue']);
  const ofWhole = optional('saponification.standardUncertainty', whole['standardUncertainty']);
  const ofPart = optional('acid.standardUncertainty', part['standardUncertainty']);
  if (acidValue.gt(saponificationValue)) {
    refuse('out-of-range', 'acid.acidValue', 'at most the saponification value', acidValue.toString());
  }
  const value = noted(steps, 'ester value', 'SV − AV', 'mg KOH/g', saponificationValue.minus(acidValue));
  const uncertainty = ofWhole.pow(2).plus(ofPart.pow(2)).sqrt();
  const mg = (mgKohPerG: Decimal): SaponificationValue => frozen({ mgKohPerG });
  return frozen({
    by: 'esterValueFromTitrations',
    given: frozen({
      saponification: frozen({ saponificationValue: mg(saponificationValue), standardUncertainty: mg(ofWhole) }),
      acid: frozen({ acidValue: mg(acidValue), standardUncertainty: mg(ofPart) }),
    }),
    esterValue: mg(value),
    standardUncertainty: mg(noted(steps, 'standard uncertainty', '√(u²(SV) + u²(AV))', 'mg KOH/g', uncertainty)),
    basis: BASIS,
    edition: EDITION,
  });
}
