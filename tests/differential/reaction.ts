/** What the reaction makes of the likely lots. */
import type { Alkali, FatKind, Product } from 'laurate';
import { extentOf, freeAcidOf } from './balance.js';
import { hydroxideOf, M, massOf, METAL, type Charge, type Lot } from './charge.js';
import type { Fraction } from './rational.js';
import { least, most, ONE, part, sum, ZERO } from './rational.js';

export type Products = Readonly<Record<Product, Fraction>>;

/** The acids of a lot, free and bound, and all its esters, in grams and moles. */
function partsOf({ kind, mass, acid, freeShare, unsaponifiable, moisture }: Lot) {
  const dry = mass.mul(ONE.sub(unsaponifiable).sub(moisture));
  const esters = acid.likely.mul(ONE.sub(freeShare));
  const acids = {
    triglyceride: dry.sub(esters.div(3).mul(M.glyceryl)),
    'wax-ester': dry.div(2),
    'free-fatty-acid': dry,
    rosin: dry,
  }[kind];
  return { free: acids.mul(freeShare), bound: acids.mul(ONE.sub(freeShare)), acids, dry, esters };
}

const ofKind = (lots: readonly Lot[], kind: FatKind): readonly Lot[] => lots.filter((lot) => lot.kind === kind);

export function productsOf(lots: readonly Lot[], lye: readonly Charge[], added: Fraction): Products {
  const hydroxide = hydroxideOf(lye).likely;
  const carbonate = sum(lye.map((charge) => carbonateOf(charge)));
  const { acid, ester } = extentOf(lots, hydroxide);
  const parts = lots.map(partsOf);

  const freeAcid = freeAcidOf(lots);
  const byHydroxide = freeAcid.mul(acid);
  const byCarbonate = least(freeAcid.sub(byHydroxide), carbonate.mul(2));
  const neutralised = byHydroxide.add(byCarbonate);
  const reacted = part(neutralised, freeAcid);
  const split = sum(parts.map(({ esters }) => esters)).mul(ester);
  const saponified = sum(parts.map(({ free, bound }) => free.mul(reacted).add(bound.mul(ester))));

  const left = most(hydroxide.sub(byHydroxide).sub(split), ZERO);
  const carbonateLeft = carbonate.sub(byCarbonate.div(2));
  const share = (alkali: Alkali, moles: (charge: Charge) => Fraction): Fraction =>
    part(sum(lye.filter((charge) => charge.alkali === alkali).map(moles)), sum(lye.map(moles)));
  const hydroxideShare = (alkali: Alkali): Fraction => share(alkali, (charge) => hydroxideOf([charge]).likely);
  const carbonateShare = (alkali: Alkali): Fraction => share(alkali, carbonateOf);
  /** Acids that have given a hydrogen for a metal. */
  const soap = (alkali: Alkali): Fraction => {
    const moles = byHydroxide
      .add(split)
      .mul(hydroxideShare(alkali))
      .add(byCarbonate.mul(carbonateShare(alkali)));
    const acids = saponified.mul(part(moles, neutralised.add(split)));
    return acids.add(moles.mul(METAL[alkali].sub(M.H)));
  };

  const glycerides = sum(ofKind(lots, 'triglyceride').map((lot) => partsOf(lot).esters));
  const alcohols = sum(
    ofKind(lots, 'wax-ester').map((lot) => {
      const { dry, acids, esters } = partsOf(lot);
      return dry.sub(acids).add(esters.mul(M.water));
    }),
  );
  return {
    soapSodium: soap('naoh'),
    soapPotassium: soap('koh'),
    glycerol: glycerides.mul(ester).div(3).mul(M.glycerol),
    water: sum([
      added,
      ...lye.map(({ mass, water }) => mass.mul(water)),
      ...lots.map(({ mass, moisture }) => mass.mul(moisture)),
      byHydroxide.mul(M.water),
      byCarbonate.div(2).mul(M.water),
    ]),
    freeFat: sum(parts.map(({ dry, free }) => dry.sub(free))).mul(ONE.sub(ester)),
    freeAcid: sum(parts.map(({ free }) => free)).mul(ONE.sub(reacted)),
    freeNaoh: left.mul(hydroxideShare('naoh')).mul(M.naoh),
    freeKoh: left.mul(hydroxideShare('koh')).mul(M.koh),
    sodiumCarbonate: carbonateLeft.mul(carbonateShare('naoh')).mul(M.carbonate.naoh),
    potassiumCarbonate: carbonateLeft.mul(carbonateShare('koh')).mul(M.carbonate.koh),
    unsaponifiable: sum([
      ...lots.map(({ mass, unsaponifiable }) => mass.mul(unsaponifiable)),
      // the alcohol of a wax is no soap either
      alcohols.mul(ester),
    ]),
    other: sum(lye.map(({ mass, other }) => mass.mul(other))),
    carbonDioxide: byCarbonate.div(2).mul(M.carbonDioxide),
  };
}

const carbonateOf = ({ alkali, mass, carbonate }: Charge): Fraction => mass.mul(carbonate).div(M.carbonate[alkali]);

export const chargeOf = (lots: readonly Lot[], lye: readonly Charge[], added: Fraction): Fraction =>
  sum([massOf(lots), massOf(lye), added]);
