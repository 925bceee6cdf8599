/** Fats and alkalis as drawn, read by what the guides say of their values. */
import { fat, type Alkali, type FatKind } from 'laurate';
import type { DrawnFat, DrawnSource } from './drawn.js';
import type { Fraction } from './rational.js';
import { of, ONE, percent, sum, three, threeOf, ZERO, type Range, type Three } from './rational.js';

const AR = { H: of('1.008'), C: of('12.011'), O: of('15.999'), Na: of('22.990'), K: of('39.098') };
const WATER = AR.H.mul(2).add(AR.O);
const GLYCEROL = AR.C.mul(3).add(AR.H.mul(8)).add(AR.O.mul(3));
const CARBONATE = AR.C.add(AR.O.mul(3));
export const METAL = { naoh: AR.Na, koh: AR.K };
/** Molar masses, g/mol. */
export const M = {
  H: AR.H,
  water: WATER,
  glycerol: GLYCEROL,
  /** What a glyceride is more than its three acids: glycerol less three waters. */
  glyceryl: GLYCEROL.sub(WATER.mul(3)),
  carbonDioxide: AR.C.add(AR.O.mul(2)),
  naoh: AR.Na.add(AR.O).add(AR.H),
  koh: AR.K.add(AR.O).add(AR.H),
  carbonate: { naoh: AR.Na.mul(2).add(CARBONATE), koh: AR.K.mul(2).add(CARBONATE) },
};

export interface Lot {
  readonly kind: FatKind;
  readonly mass: Fraction;
  /** Moles of acid, free and bound, in the lean, the likely and the rich lot. */
  readonly acid: Three;
  /** The part of it that is free, in the likely lot. */
  readonly freeShare: Fraction;
  readonly unsaponifiable: Fraction;
  readonly moisture: Fraction;
}

/** Milligrams of KOH to a gram, from the unit a certificate states. */
const mgKohPerG = {
  mgKohPerG: (text: string) => of(text),
  gKohPerG: (text: string) => of(text).mul(1000),
  gNaohPerG: (text: string) => of(text).mul(1000).mul(M.koh).div(M.naoh),
  saponificationEquivalent: (text: string) => M.koh.mul(1000).div(of(text)),
};

const likelyShare = (range: Range = '0'): Fraction => three(range, percent).likely;

/** Free acid of a fatty acid or of rosin is all of it, of a glyceride or wax what its acid value says. */
const freeShareOf = (kind: FatKind, acidValue: Fraction, value: Fraction): Fraction =>
  kind === 'free-fatty-acid' || kind === 'rosin' ? ONE : acidValue.div(value);

export function lotOf(drawn: DrawnFat): Lot {
  const mass = of(drawn.mass);
  const acid = (value: Three): Three => threeOf((at) => mass.mul(value[at]).div(M.koh.mul(1000)));
  if ('published' in drawn) {
    const { kind, saponificationValue, acidValue, unsaponifiable, moisture } = fat(drawn.published);
    const value = threeOf((at) => of(saponificationValue[at].mgKohPerG.toString()));
    return {
      kind,
      mass,
      acid: acid(value),
      freeShare: freeShareOf(kind, of(acidValue.mgKohPerG.toString()), value.likely),
      unsaponifiable: percent(unsaponifiable.likely.percent.toString()),
      moisture: percent(moisture.likely.percent.toString()),
    };
  }
  const { kind, unit, uncertainty = '0', acidValue = '0' } = drawn;
  const stated = three(drawn.value, mgKohPerG[unit]);
  // an equivalent is the greater the leaner the lot
  const [low, high] = unit === 'saponificationEquivalent' ? [stated.high, stated.low] : [stated.low, stated.high];
  const value = { low: low.sub(of(uncertainty)), likely: stated.likely, high: high.add(of(uncertainty)) };
  return {
    kind,
    mass,
    acid: acid(value),
    freeShare: freeShareOf(kind, of(acidValue), value.likely),
    unsaponifiable: likelyShare(drawn.unsaponifiable),
    moisture: likelyShare(drawn.moisture),
  };
}

export const demandOf = (lots: readonly Lot[]): Three => threeOf((at) => sum(lots.map(({ acid }) => acid[at])));
export const massOf = (things: readonly { readonly mass: Fraction }[]): Fraction => sum(things.map(({ mass }) => mass));

/** What an alkali is, as shares of its mass; what is left is water, of solid NaOH something else. */
export interface Source {
  readonly hydroxide: Three;
  readonly carbonate: Fraction;
  readonly water: Fraction;
  readonly other: Fraction;
}

export function sourceOf(alkali: Alkali, drawn: DrawnSource): Source {
  const total = three(drawn.form === 'carbonated' ? drawn.totalAlkali : drawn.hydroxide, percent);
  const carbonate = three(drawn.form === 'carbonated' ? drawn.carbonate : '0', percent);
  // two hydroxides are counted for each carbonate
  const counted = M[alkali].mul(2).div(M.carbonate[alkali]);
  const hydroxide = {
    low: total.low.sub(carbonate.high.mul(counted)),
    likely: total.likely.sub(carbonate.likely.mul(counted)),
    high: total.high.sub(carbonate.low.mul(counted)),
  };
  const rest = ONE.sub(hydroxide.likely).sub(carbonate.likely);
  const isWater = drawn.form === 'solution' || alkali === 'koh';
  return { hydroxide, carbonate: carbonate.likely, water: isWater ? rest : ZERO, other: isWater ? ZERO : rest };
}

/** An alkali in the pot. */
export interface Charge extends Source {
  readonly alkali: Alkali;
  readonly mass: Fraction;
}

/** Moles of hydroxide that a lye brings. */
export const hydroxideOf = (lye: readonly Charge[]): Three =>
  threeOf((at) => sum(lye.map(({ alkali, mass, hydroxide }) => mass.mul(hydroxide[at]).div(M[alkali]))));
