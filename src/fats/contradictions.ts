import { frozen, ONE, type Decimal, type Remark } from '../numbers/index.js';
import {
  saponificationValueUnits,
  type Estimate,
  type IodineValue,
  type SaponificationValue,
} from '../quantities/index.js';
import type { FatKind } from './fatKind.js';
import type { SingleFat } from './fatType.js';
import type { ClosedRange } from './publishedRanges.js';

const isWithin = (value: Decimal, { low, high }: ClosedRange): boolean => value.gte(low) && value.lte(high);
const shown = ({ low, high }: ClosedRange): string => `${low.toString()} to ${high.toString()}`;

/**
 * From the lowest to the highest saponification value, mg KOH/g, that any standard on file allows a triglyceride: written
 * out, because the records weigh more than all the rest of a certificate. A test holds it to them.
 */
const TRIGLYCERIDES = { low: '160', high: '265' };

/** A likely value outside the range of the fat it is a lot of; where none is told, of every published triglyceride. */
export function valueContradictions(
  certified: Estimate<SaponificationValue>,
  { kind, like }: { readonly kind: FatKind; readonly like: SingleFat | undefined },
): readonly Remark[] {
  const value = certified.likely.mgKohPerG;
  if (like !== undefined) {
    const { low, high } = like.saponificationValue;
    const range = { low: low.mgKohPerG, high: high.mgKohPerG };
    return isWithin(value, range) ? [] : [outsideRange(value, like.name, range)];
  }
  const { low, high } = TRIGLYCERIDES;
  if (kind !== 'triglyceride' || (value.gte(low) && value.lte(high))) return [];
  return [
    frozen({
      code: 'certificate-beyond-known-fats',
      text: `The certified ${value.toFixed(1)} mg KOH/g lies outside ${low} to ${high}, within which all published triglycerides lie; is it one, and are figure, unit and basis (KOH or NaOH) right?`,
    }),
  ];
}

function outsideRange(value: Decimal, name: string, range: ClosedRange): Remark {
  return frozen({
    code: 'certificate-outside-published-range',
    text: `The certified ${value.toFixed(1)} mg KOH/g lies outside the published ${shown(range)} of ${name}; ${causeOf(value, range)}`,
  });
}

/** The usual cause: 1.403 times too much or too little is the figure for the other alkali. All are per gram of fat. */
function causeOf(value: Decimal, range: ClosedRange): string {
  // grams of KOH with the hydroxide of one gram of NaOH
  const ratio = saponificationValueUnits.gNaohPerG.toCanonical(ONE, 'gNaohPerG').div(1000);
  const [asKoh, asNaoh] = [value.div(ratio), value.times(ratio)];
  if (isWithin(asKoh, range)) {
    const mg = asKoh.toFixed(1);
    return `${mg} fits if it is mg of KOH, not of NaOH, per gram of fat: then { mgKohPerG: '${mg}' }`;
  }
  if (isWithin(asNaoh, range)) {
    const fits = `${value.toSignificantDigits(4).toString()} fits if it is mg of NaOH, not of KOH, per gram of fat`;
    return `${fits}: then { gNaohPerG: '${value.div(1000).toSignificantDigits(4).toString()}' }`;
  }
  return 'is it a lot of this fat, and the unit right?';
}

/**
 * A certified iodine value far from that of the fat it is a lot of: farther outside the published range than that is wide,
 * a convention. It changes no lye; but it is another fat.
 */
export function iodineContradictions(
  certified: Estimate<IodineValue> | undefined,
  like: SingleFat | undefined,
): readonly Remark[] {
  if (certified === undefined || like?.iodineValue === undefined) return [];
  const value = certified.likely.gI2Per100g;
  const range = { low: like.iodineValue.low.gI2Per100g, high: like.iodineValue.high.gI2Per100g };
  const width = range.high.minus(range.low);
  if (isWithin(value, { low: range.low.minus(width), high: range.high.plus(width) })) return [];
  return [
    frozen({
      code: 'iodine-value-outside-published-range',
      text: `The certified iodine value ${value.toString()} lies far outside the published ${shown(range)} g I2/100 g of ${like.name}; is it a lot of this fat?`,
    }),
  ];
}
