import { frozen, refuse, type Decimal } from '../numbers/index.js';
import { mapEnds, unitsByKind, type Unit, type UnitsByKind } from '../quantities/index.js';
import type { FindingValue } from './findingValue.js';
import type { Printed } from './printed.js';
import type { Span } from './span.js';

/** A figure for a program and the same in words. */
export interface Shown {
  readonly value: FindingValue;
  readonly text: string;
}

/** Three digits that count, without trailing noughts, and the sign that print has for less than nothing. */
export function inWords(number: Decimal, digits = 3): string {
  const rounded = number.toSignificantDigits(digits);
  // in plain digits: what is next to nothing is told as less than a thousandth
  if (!rounded.isZero() && rounded.abs().lt('0.001')) return `${rounded.isNeg() ? 'above −' : 'below '}0.001`;
  const text = rounded.abs().gte(1000) ? number.abs().toFixed(0) : rounded.abs().toFixed();
  return rounded.isNeg() && !rounded.isZero() ? `−${text}` : text;
}

/** `159 to 170`, or one figure where both ends read alike. */
export function rangeInWords({ low, high }: { readonly low: Decimal; readonly high: Decimal }, digits = 3): string {
  const [one, other] = [inWords(low, digits), inWords(high, digits)];
  return one === other ? one : `${one} to ${other}`;
}

const UNIT_SIGNS: Readonly<Record<string, string>> = {
  percent: '%',
  percentNaoh: '% NaOH',
  percentKoh: '% KOH',
  percentNa2o: '% Na2O',
  mgKohPerG: 'mg KOH/g',
  gKohPerG: 'g KOH/g',
  gNaohPerG: 'g NaOH/g',
  saponificationEquivalent: 'g to a mole',
  mol: 'mol of hydroxide',
  celsius: '°C',
  fahrenheit: '°F',
  kelvin: 'K',
};

/** A unit as print has it: raw keys are for programs. */
export const signOf = (unit: string): string => UNIT_SIGNS[unit] ?? unit;

/** Shows what a figure of one kind may be, in the unit that was printed. */
export function inUnit(kind: keyof UnitsByKind, unit: string): (span: Span) => Shown {
  const units: Readonly<Record<string, Unit>> = unitsByKind()[kind];
  const printed = units[unit] ?? refuse('unknown-unit', kind, Object.keys(units).join(', '), unit);
  const at = (value: Decimal): Decimal => printed.fromCanonical(value, unit);
  return (span) => {
    const [low, likely, high] = [at(span.low), at(span.likely), at(span.high)];
    // an equivalent runs against the value
    const inOrder = low.lte(high) ? { low, likely, high } : { low: high, likely, high: low };
    return {
      value: mapEnds(inOrder, (value) => frozen({ [unit]: value })) as FindingValue,
      // what is weighed is told to a digit more than what is worked out
      text: `${rangeInWords(inOrder, 4)} ${signOf(unit)}`,
    };
  };
}

/** Shows a figure without unit. */
export function asNumber(span: Span): Shown {
  return { value: mapEnds(span, (number) => frozen({ number })), text: rangeInWords(span) };
}

/** A printed figure as it stands in the recipe. */
export function asPrinted({ text, unit, value }: Printed): Shown {
  // the same sign as in figures that are worked out
  const shown = text.replace(/^-/, '−');
  if (unit === '') return { value: frozen({ number: value }), text: shown };
  return { value: frozen({ [unit]: text }) as unknown as FindingValue, text: `${shown} ${signOf(unit)}` };
}
