import { molarMass } from '../../chemistry/index.js';
import type { ChargedPot } from '../../composition/index.js';
import { expandedCharges } from '../../fats/index.js';
import { ONE, ZERO, type Decimal } from '../../numbers/index.js';
import {
  acidOfSoap,
  esterMass,
  fatSumsAt,
  type FatSums,
  type Place,
  type Products,
} from '../../saponification/index.js';
import { addedAt, part } from './added.js';
import { besidesFats } from './besidesFats.js';
import type { Declared } from './declared.js';
import type { IngredientNames, Metal } from './ingredientNames.js';

/** What one fat has become, grams. */
interface MadeOfFat {
  readonly sodium: Decimal;
  readonly potassium: Decimal;
  /** Fat and acid that no alkali took. */
  readonly left: Decimal;
}

/** How far the reaction went, for every fat alike. */
interface Extent {
  /** Of the free acid, a fraction of one. */
  readonly acidTaken: Decimal;
  /** Of the esters, a fraction of one. */
  readonly estersSplit: Decimal;
  /** Of the soap, by mole. */
  readonly sodiumShare: Decimal;
}

function extentOf({ grams, soapMol, extent }: Products, fats: readonly FatSums[]): Extent {
  const free = fats.reduce((sum, one) => sum.plus(one.free.grams), ZERO);
  const soap = soapMol.sodium.plus(soapMol.potassium);
  return {
    acidTaken: free.isZero() ? ZERO : ONE.minus(grams.freeAcid.div(free)),
    estersSplit: extent,
    // there is always some alkali, and it always finds a fat
    sodiumShare: soapMol.sodium.div(soap),
  };
}

/** The reaction shared out to one fat: its own acid, at the extent that all fats have in common. */
function madeOf(fat: FatSums, { acidTaken, estersSplit, sodiumShare }: Extent): MadeOfFat {
  const mol = acidOfSoap(fat, 'mol', acidTaken, estersSplit);
  const acid = acidOfSoap(fat, 'grams', acidTaken, estersSplit);
  const soap = (metal: string, share: Decimal): Decimal =>
    acid.plus(mol.times(molarMass(metal).minus(molarMass('H')))).times(share);
  return {
    sodium: soap('Na', sodiumShare),
    potassium: soap('K', ONE.minus(sodiumShare)),
    left: esterMass(fat)
      .times(ONE.minus(estersSplit))
      .plus(fat.free.grams.times(ONE.minus(acidTaken))),
  };
}

const METALS: readonly Metal[] = ['sodium', 'potassium'];

/** Soaps by their fats, glycerol formed and added, fat left, water and additions, after complete reaction. */
export function asFormed(pot: ChargedPot, names: IngredientNames, colourants: readonly string[]): Declared {
  const fats = expandedCharges(pot.soap.fats);
  const gramsAt = (place: Place): readonly Decimal[] => {
    const sums = fats.map((charge) => fatSumsAt([charge], place));
    const products = pot.soap.at(place);
    const extent = extentOf(products, sums);
    const { grams } = pot.at(place);
    const made = products.grams;
    return [
      ...sums.flatMap((one) => {
        const { sodium, potassium, left } = madeOf(one, extent);
        return [sodium, potassium, left];
      }),
      made.freeNaoh,
      made.freeKoh,
      made.sodiumCarbonate,
      made.potassiumCarbonate,
      grams.water,
      grams.glycerol,
      ...addedAt(pot, place),
    ];
  };
  return {
    parts: [
      ...fats.flatMap(({ fat }) => [
        ...METALS.map((metal) => part(names.soap(fat, metal), fat.name)),
        part(names.fat(fat), fat.name),
      ]),
      ...besidesFats(pot, names, colourants),
    ],
    gramsAt,
  };
}
