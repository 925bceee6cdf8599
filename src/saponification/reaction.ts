import { molarMass } from '../chemistry/index.js';
import { carbonateMolarMass, hydroxideMolarMass } from '../lye/index.js';
import { Decimal, leftOf, ONE, ZERO } from '../numbers/index.js';
import { acidOfSoap, esterMass, type FatSums } from './fatSums.js';
import type { LyeSums } from './lyeSums.js';

/** What a reaction leaves, in grams; together with the gas that left it weighs what was charged. */
export const PRODUCTS = [
  'soapSodium',
  'soapPotassium',
  'glycerol',
  'water',
  'freeFat',
  'freeAcid',
  'freeNaoh',
  'freeKoh',
  'sodiumCarbonate',
  'potassiumCarbonate',
  'unsaponifiable',
  'other',
  'carbonDioxide',
] as const;

/** One of the things a reaction leaves. */
export type Product = (typeof PRODUCTS)[number];

/** What a reaction leaves, in grams and, where it is a substance, in moles. */
export interface Products {
  readonly grams: Readonly<Record<Product, Decimal>>;
  /** Moles of soap, by its metal. */
  readonly soapMol: { readonly sodium: Decimal; readonly potassium: Decimal };
  /** Extent to which the esters are split, a fraction of one. */
  readonly extent: Decimal;
  /**
   * Where masses turn, mol: hydroxide less what all fats take up, which above zero is left free; hydroxide less free acid;
   * hydroxide and carbonate less free acid.
   */
  readonly turning: readonly Decimal[];
}

const shareOf = (part: Decimal, other: Decimal): Decimal => (part.isZero() ? ZERO : part.div(part.plus(other)));

/**
 * What fats and lye become.
 *
 * A model in three steps: hydroxide takes free acid first, mole for mole; then it splits all esters to one extent x;
 * what acid is still free, once the hydroxide is gone, takes carbonate, two to one, and carbon dioxide leaves. Sodium and
 * potassium keep the proportion charged, in soap and in free caustic (a convention). A wax leaves its alcohol
 * unsaponifiable.
 */
export function reaction(fats: FatSums, lye: LyeSums): Products {
  const { free, triglyceride, wax, waxAlcohol, unsaponifiable, moisture } = fats;
  const hydroxide = lye.naoh.hydroxide.plus(lye.koh.hydroxide);
  const carbonate = lye.naoh.carbonate.plus(lye.koh.carbonate);
  const esters = triglyceride.mol.plus(wax.mol);

  const neutralised = Decimal.min(hydroxide, free.mol);
  const forEsters = leftOf(hydroxide, free.mol);
  const excess = leftOf(hydroxide, free.mol.plus(esters));
  const extent = excess.gte(0) ? ONE : Decimal.max(forEsters, ZERO).div(esters.isZero() ? ONE : esters);
  const acidLeft = leftOf(free.mol, neutralised);
  const byCarbonate = Decimal.min(acidLeft, carbonate.times(2));
  const acidTaken = free.mol.isZero() ? ZERO : ONE.minus(leftOf(acidLeft, byCarbonate).div(free.mol));

  const sodiumShare = shareOf(lye.naoh.hydroxide, lye.koh.hydroxide);
  const sodiumCarbonateShare = shareOf(lye.naoh.carbonate, lye.koh.carbonate);
  const byHydroxide = neutralised.plus(esters.times(extent));
  const sodium = byHydroxide.times(sodiumShare).plus(byCarbonate.times(sodiumCarbonateShare));
  const soapMol = byHydroxide.plus(byCarbonate);
  const potassium = soapMol.minus(sodium);
  const meanAcid = soapMol.isZero() ? ZERO : acidOfSoap(fats, 'grams', acidTaken, extent).div(soapMol);
  const soapGrams = (mol: Decimal, metal: string): Decimal =>
    mol.times(meanAcid.plus(molarMass(metal)).minus(molarMass('H')));

  const freeCaustic = Decimal.max(excess, ZERO);
  const carbonateLeft = leftOf(carbonate, byCarbonate.div(2));

  return {
    extent,
    turning: [excess, forEsters, hydroxide.plus(carbonate.times(2)).minus(free.mol)],
    soapMol: { sodium, potassium },
    grams: {
      soapSodium: soapGrams(sodium, 'Na'),
      soapPotassium: soapGrams(potassium, 'K'),
      glycerol: triglyceride.mol.times(extent).times(molarMass('C3H8O3')).div(3),
      water: lye.water.plus(moisture).plus(neutralised.plus(byCarbonate.div(2)).times(molarMass('H2O'))),
      freeFat: esterMass(fats).times(ONE.minus(extent)),
      freeAcid: free.grams.times(ONE.minus(acidTaken)),
      freeNaoh: freeCaustic.times(sodiumShare).times(hydroxideMolarMass('naoh')),
      freeKoh: freeCaustic.times(ONE.minus(sodiumShare)).times(hydroxideMolarMass('koh')),
      sodiumCarbonate: carbonateLeft.times(sodiumCarbonateShare).times(carbonateMolarMass('naoh')),
      potassiumCarbonate: carbonate.isZero()
        ? ZERO
        : carbonateLeft.times(ONE.minus(sodiumCarbonateShare)).times(carbonateMolarMass('koh')),
      unsaponifiable: unsaponifiable.plus(waxAlcohol.times(extent)),
      other: lye.other,
      carbonDioxide: byCarbonate.div(2).times(molarMass('CO2')),
    },
  };
}
