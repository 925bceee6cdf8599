import { glycerylResidueMass, molarMass } from '../../chemistry/index.js';
import { fat, fats, type Fat, type SingleFat } from '../../fats/index.js';
import { naohFromKoh } from '../../lye/index.js';
import { ONE, type Decimal } from '../../numbers/index.js';
import { COMMON, RARE } from './hypothesis.js';
import type { SlipCode } from './slip.js';

/** What a slip makes of a saponification value v, mg KOH to a gram: the figure that was taken for it. */
export interface ValueSlip {
  readonly code: SlipCode;
  readonly weight: number;
  readonly taken: (value: Decimal) => Decimal;
}

/** Grams of KOH with the hydroxide of one gram of NaOH. */
function kohPerNaoh(): Decimal {
  const pure = { percent: 100 };
  return ONE.div(naohFromKoh({ koh: { g: 1 }, kohAssay: pure, naohAssay: pure }).naoh.g);
}

/** The slips of a table of saponification values, for one fat. */
export function valueSlips(of: Fat): readonly ValueSlip[] {
  const perMol = molarMass('KOH').times(1000);
  const ratio = kohPerNaoh();
  const slips: ValueSlip[] = [
    { code: 'koh-value-as-naoh', weight: COMMON, taken: (value) => value.times(ratio) },
    { code: 'naoh-value-as-koh', weight: COMMON, taken: (value) => value.div(ratio) },
    { code: 'equivalent-as-value', weight: RARE, taken: (value) => perMol.div(value) },
  ];
  if (of.kind === 'triglyceride') {
    // of a gram of acids instead of a gram of fat: each acid has lost its third of the glyceryl residue
    const residue = glycerylResidueMass().div(3);
    slips.push({
      code: 'value-per-fatty-acids',
      weight: RARE,
      taken: (value) => perMol.div(perMol.div(value).minus(residue)),
    });
  }
  // where a fat is all acid, acid value and saponification value are one
  if ((of.kind === 'triglyceride' || of.kind === 'wax-ester') && !of.acidValue.mgKohPerG.isZero()) {
    const acid = of.acidValue.mgKohPerG;
    slips.push({ code: 'saponification-plus-acid-value', weight: RARE, taken: (value) => value.plus(acid) });
    slips.push({ code: 'ester-value-as-saponification-value', weight: RARE, taken: (value) => value.minus(acid) });
  }
  return slips;
}

/** The fats whose values stand in every book; common practice, no source. */
const COMMON_FATS = [
  'coconut-oil', 'palm-kernel-oil', 'palm-oil', 'olive-oil', 'tallow', 'lard', 'castor-oil', 'sunflower-oil', 'stearic-acid-50',
] as const; // prettier-ignore

export const isCommonFat = ({ id }: SingleFat): boolean => COMMON_FATS.some((one) => one === id);

export const commonFats = (): readonly SingleFat[] => COMMON_FATS.map((id) => fat(id));

/** What a fat is listed under; a blend is in no list. */
export const idOf = (of: Fat): string | undefined => (of.kind === 'blend' ? undefined : of.id);

/** The published fats that stand next to a fat in a list by name, where a slip of the eye finds them. */
export function neighboursOf(of: Fat): readonly SingleFat[] {
  const id = idOf(of);
  const at = byName().findIndex((listing) => listing === id);
  if (at < 0) return [];
  return [byName()[at - 1], byName()[at + 1]].flatMap((neighbour) => (neighbour === undefined ? [] : [fat(neighbour)]));
}

let sorted: readonly string[] | undefined;

function byName(): readonly string[] {
  sorted ??= [...fats].sort((one, other) => (one.name < other.name ? -1 : 1)).map(({ id }) => id);
  return sorted;
}
