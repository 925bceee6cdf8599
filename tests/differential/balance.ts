/** Hydroxide against demand. */
import { demandOf, hydroxideOf, M, massOf, type Charge, type Lot } from './charge.js';
import type { Fraction } from './rational.js';
import { least, most, ONE, part, sum, ZERO, type Three } from './rational.js';

/** How far free acid and esters have reacted, as parts of each. */
export interface Extent {
  readonly acid: Fraction;
  readonly ester: Fraction;
}

export const freeAcidOf = (lots: readonly Lot[]): Fraction =>
  sum(lots.map(({ acid, freeShare }) => acid.likely.mul(freeShare)));

/** The part of the esters that so much splits; where there are none, it has got beyond them or not. */
function reached(left: Fraction, esters: Fraction): Fraction {
  if (esters.equals(0)) return left.lt(0) ? ZERO : ONE;
  return least(most(left.div(esters), ZERO), ONE);
}

/** Free acid first, then all esters to one extent. */
export function extentOf(lots: readonly Lot[], hydroxide: Fraction): Extent {
  const acid = freeAcidOf(lots);
  const esters = demandOf(lots).likely.sub(acid);
  return {
    acid: part(least(hydroxide, acid), acid),
    ester: reached(hydroxide.sub(acid), esters),
  };
}

export interface Balance {
  readonly demand: Three;
  readonly charged: Three;
  /** Per cent of the demand. */
  readonly superfat: Three;
  /** Per cent of the mass of the fats. */
  readonly superfatByMass: Fraction;
  /** Per cent of the batch, as NaOH. */
  readonly freeCaustic: Three;
}

export function balanceOf(lots: readonly Lot[], lye: readonly Charge[], batch: Fraction): Balance {
  const demand = demandOf(lots);
  const charged = hydroxideOf(lye);
  const superfat = (lot: Fraction, alkali: Fraction): Fraction => ONE.sub(alkali.div(lot)).mul(100);
  const caustic = (lot: Fraction, alkali: Fraction): Fraction =>
    most(alkali.sub(lot), ZERO).mul(M.naoh).div(batch).mul(100);
  const { acid, ester } = extentOf(lots, charged.likely);
  const kept = lots.map(({ mass, freeShare }) =>
    mass.mul(
      ONE.sub(acid)
        .mul(freeShare)
        .add(ONE.sub(ester).mul(ONE.sub(freeShare))),
    ),
  );
  return {
    demand,
    charged,
    // the leanest lots meet the highest assay, and the richest the lowest
    superfat: {
      low: superfat(demand.low, charged.high),
      likely: superfat(demand.likely, charged.likely),
      high: superfat(demand.high, charged.low),
    },
    superfatByMass: sum(kept).div(massOf(lots)).mul(100),
    freeCaustic: {
      low: caustic(demand.high, charged.low),
      likely: caustic(demand.likely, charged.likely),
      high: caustic(demand.low, charged.high),
    },
  };
}
