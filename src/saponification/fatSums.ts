import { glycerylResidueMass, molarMass } from '../chemistry/index.js';
import type { FatCharge, SingleFat } from '../fats/index.js';
import { refuse, ZERO, type Decimal } from '../numbers/index.js';
import { mapEnds, type Estimate, type Fraction } from '../quantities/index.js';
import { valueAt, type Dimension, type Place } from './place.js';

/** Amount and mass of a kind of acid in a charge. */
export interface AcidSum {
  readonly mol: Decimal;
  /** As free acid, grams. */
  readonly grams: Decimal;
}

/** The fats of one pot, summed up. */
export interface FatSums {
  /** Acid that is free. */
  readonly free: AcidSum;
  /** Acid bound in triglycerides. */
  readonly triglyceride: AcidSum;
  /** Acid bound in waxes. */
  readonly wax: AcidSum;
  /** Alcohol that splitting the waxes sets free, grams. */
  readonly waxAlcohol: Decimal;
  readonly unsaponifiable: Decimal;
  readonly moisture: Decimal;
}

/** Share of a wax's saponifiable mass that counts as acid: half, a convention; the rest is its alcohols. */
const WAX_ACID_SHARE = '0.5';

/** The dimension that a fat's lots vary along. */
export function lotsOf({ kind }: SingleFat): 'triglycerides' | 'waxes' | 'acids' {
  if (kind === 'triglyceride') return 'triglycerides';
  return kind === 'wax-ester' ? 'waxes' : 'acids';
}

/** One fat of one pot: moles of free and of bound acid, and masses in grams. */
interface FatParts {
  readonly acid: Decimal;
  readonly ester: Decimal;
  /** All of its acid, as free acid. */
  readonly acidGrams: Decimal;
  readonly saponifiable: Decimal;
  readonly unsaponifiable: Decimal;
  readonly moisture: Decimal;
}

function partsAt({ fat, grams }: FatCharge<SingleFat>, place: Place): FatParts {
  const perMol = molarMass('KOH').times(1000);
  const sv = mapEnds(fat.saponificationValue, ({ mgKohPerG }) => mgKohPerG);
  const all = grams.times(valueAt(sv, place, lotsOf(fat))).div(perMol);
  const acid = lotsOf(fat) === 'acids' ? all : grams.times(fat.acidValue.mgKohPerG).div(perMol);
  const ester = all.minus(acid);
  const part = (share: Estimate<Fraction>, dimension: Dimension): Decimal =>
    grams
      .times(
        valueAt(
          mapEnds(share, ({ percent }) => percent),
          place,
          dimension,
        ),
      )
      .div(100);
  const unsaponifiable = part(fat.unsaponifiable, 'unsaponifiable');
  const moisture = part(fat.moisture, 'moisture');
  const saponifiable = grams.minus(unsaponifiable).minus(moisture);
  const acidGrams = acidMass(fat, saponifiable, ester);
  if (acidGrams.lt(all)) {
    const rest = `${unsaponifiable.plus(moisture).toPrecision(4)} g of ${grams.toPrecision(4)} g`;
    refuse('infeasible', fat.name, 'unsaponifiable matter and moisture that leave room for the fatty acids', rest);
  }
  return { acid, ester, acidGrams, saponifiable, unsaponifiable, moisture };
}

/** Grams of all acids of a fat, as free acids, from its saponifiable mass and its moles of esters. */
function acidMass({ kind }: SingleFat, saponifiable: Decimal, ester: Decimal): Decimal {
  switch (kind) {
    case 'triglyceride':
      return saponifiable.minus(ester.times(glycerylResidueMass()).div(3));
    case 'wax-ester':
      return saponifiable.times(WAX_ACID_SHARE);
    default:
      return saponifiable;
  }
}

const NONE: AcidSum = { mol: ZERO, grams: ZERO };

/** A sum with so much of an acid added: some moles of it, at its fat's mean molar mass. */
function withAcid({ mol, grams }: AcidSum, more: Decimal, mean: Decimal): AcidSum {
  return { mol: mol.plus(more), grams: grams.plus(more.times(mean)) };
}

/**
 * The fats of one pot, summed up.
 *
 * Each fat's mean acid molar mass M follows from the saponification value in use and its mass balance, n the moles of its
 * acid, g those in esters: `n·M = m·(1 − U − W) − g·(M(glycerol) − 3·M(H2O))/3` for a triglyceride, `m·(1 − U − W)` for what
 * is all acid, and half of that for a wax (a convention), whose other half is alcohols.
 *
 * @throws CalculationError `infeasible` where unsaponifiable matter and water leave no room for the acid
 */
export function fatSumsAt(charges: readonly FatCharge<SingleFat>[], place: Place): FatSums {
  let [free, triglyceride, wax] = [NONE, NONE, NONE];
  let [waxAlcohol, unsaponifiable, moisture] = [ZERO, ZERO, ZERO];
  for (const charge of charges) {
    if (charge.grams.isZero()) continue;
    const { acid, ester, acidGrams, saponifiable, ...rest } = partsAt(charge, place);
    const mean = acidGrams.div(acid.plus(ester));
    free = withAcid(free, acid, mean);
    if (charge.fat.kind === 'triglyceride') triglyceride = withAcid(triglyceride, ester, mean);
    if (charge.fat.kind === 'wax-ester') {
      wax = withAcid(wax, ester, mean);
      // an ester is acid and alcohol less a water
      waxAlcohol = waxAlcohol.plus(saponifiable.minus(acidGrams)).plus(ester.times(molarMass('H2O')));
    }
    unsaponifiable = unsaponifiable.plus(rest.unsaponifiable);
    moisture = moisture.plus(rest.moisture);
  }
  return { free, triglyceride, wax, waxAlcohol, unsaponifiable, moisture };
}

/** Acid that has become soap, mol or grams: of the free acid, and of all esters, what each has been taken of. */
export function acidOfSoap(
  { free, triglyceride, wax }: FatSums,
  of: keyof AcidSum,
  acidTaken: Decimal,
  estersSplit: Decimal,
): Decimal {
  return free[of].times(acidTaken).plus(triglyceride[of].plus(wax[of]).times(estersSplit));
}

/** Grams of triglycerides and waxes before any is split: a triglyceride is acids and glyceryl. */
export function esterMass({ triglyceride, wax, waxAlcohol }: FatSums): Decimal {
  const triglycerideGrams = triglyceride.grams.plus(triglyceride.mol.times(glycerylResidueMass()).div(3));
  return triglycerideGrams.plus(wax.grams.plus(waxAlcohol).minus(wax.mol.times(molarMass('H2O'))));
}
